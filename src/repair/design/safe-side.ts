/** Which way a number is rounded. */
export type Side = 'up' | 'down';

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
      'meanThickness',
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
    ...['leastThickness', 'leastOverlap', 'storedEnergy', 'tntEquivalent', 'distance', 'duration', 'earliestReturn'],
    ...['holdTime', 'wrapTime', 'chargeTime', 'waterToAdd', 'depthAtEndOfLife', 'widthAtEndOfLife', 'highestDewPoint'],
    ...['steelNeeded', 'earliestStart', 'leastWall', 'startsAt', 'endsAt'],
  ],
  down: [
    ...['resistance', 'safePressure', 'safe pressure', 'highestPressure', 'hoopStrain', 'axialStrain', 'margin'],
    ...['allowable hoop strain', 'wallAtEndOfLife', 'fullCountLength', 'rollLength', 'workingTime', 'coolerThan'],
    ...['highestWrinkle', 'inspectWithin', 'after', 'wallLasts', 'longestCharge', 'wallToday', 'allowedTime'],
    'start',
  ],
};

const SIDE_OF: ReadonlyMap<string, Side> = /* @__PURE__ */ new Map(
  Object.entries(SIDES).flatMap(([side, names]) => names.map((name) => [name, side as Side] as const)),
);

/** The side to which a number of an answer is rounded; nothing where it is the nearest. */
export function safeSide(name: string): Side | undefined {
  return SIDE_OF.get(name);
}
