import type { Kind } from '../quantity/index.js';
import { amountOnSheet } from './line-text.js';
import type { ChosenOptions } from './options.js';

type Side = 'up' | 'down';

/**
 * Which way the numbers of an answer are rounded, by their names: what is needed or must be reached up, what is resisted,
 * allowed or left down. What stands here in neither way was given or only describes, and is rounded to the nearest.
 */
const SIDES: Readonly<Record<Side, readonly string[]>> = {
  up: [
    ...[
      'thickness',
      'laidThickness',
      'laid thickness',
      'overlap',
      'taper',
      'totalLength',
      'axial length',
      'insideLength',
    ],
    ...['overallLength', 'defectLength', 'end', 'beforeDefect', 'stagger', 'tapeLength', 'sheetLength', 'fabric'],
    ...['mass', 'volume', 'wait', 'hold', 'return to service, not before', 'wall', 'test pressure'],
    ...['lengthAtEndOfLife', 'holeAtEndOfLife', 'designHole', 'axialLength', 'circumferentialWidth', 'unbonded'],
    ...['unbondedLength', 'jointReach', 'hoopStressSound', 'hoopStressThinned', 'outsidePressure', 'soilPressure'],
    ...['fittingFactor', 'padDiameter', 'forceOnPad', 'forceOnHole', 'fastenerTension', 'torque', 'strapStress'],
    ...['contactPressure', 'bandLength', 'endLoadNotCarried', 'reaction', 'energy', 'pressurePerKelvin', 'humidity'],
  ],
  down: [
    ...['resistance', 'safePressure', 'safe pressure', 'highestPressure', 'hoopStrain', 'axialStrain', 'margin'],
    ...['allowable hoop strain', 'wallAtEndOfLife', 'fullCountLength', 'rollLength', 'workingTime', 'coolerThan'],
  ],
};

const SIDE_OF: ReadonlyMap<string, Side> = /* @__PURE__ */ new Map(
  Object.entries(SIDES).flatMap(([side, names]) => names.map((name) => [name, side as Side] as const)),
);

/** A number of the answer as the reader sees it, by what it is and its name: never to the side that would let more pass. */
export type Show = (kind: Kind | 'number' | 'count', name: string, value: number, toward?: Side) => string;

/** Writes the numbers of an answer, each to its safe side. */
export function showSafely(options: ChosenOptions): Show {
  return (kind, name, value, toward = safeSide(name)) =>
    amountOnSheet(toward === undefined ? { kind, name, value } : { kind, name, value, toward }, options, true);
}

/** The side to which a number of an answer is rounded; nothing where it is the nearest. */
export function safeSide(name: string): Side | undefined {
  return SIDE_OF.get(name);
}
