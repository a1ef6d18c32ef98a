import { describe, expect, it } from 'vitest';
import { encodeDesign } from '../../../src/json/index.js';
import { designOf } from '../../faults/answers.js';
import { bend, leak, loss, slot } from '../../faults/cases.js';

/** Which way a number of an answer is rounded: what is needed or to be reached up, what is resisted or left down. */

const up = [
  ...['thickness', 'laidThickness', 'overlap', 'taper', 'totalLength', 'overallLength', 'tapeLength'],
  ...['mass', 'volume', 'lengthAtEndOfLife', 'designHole', 'hoopStressSound', 'hoopStressThinned'],
  ...['padDiameter', 'forceOnPad', 'fastenerTension', 'torque', 'contactPressure', 'reaction', 'storedEnergy'],
  ...['wrapTime', 'chargeTime', 'waterToAdd', 'forceOnHole', 'bandLength', 'endLoadNotCarried', 'strapStress'],
  ...['defectLength', 'insideLength', 'end', 'beforeDefect', 'leastThickness', 'leastOverlap', 'pressurePerKelvin'],
  ...['duration', 'holdTime', 'axialLength', 'circumferentialWidth', 'holeAtEndOfLife', 'depthAtEndOfLife'],
  ...['widthAtEndOfLife', 'steelNeeded', 'highestDewPoint', 'earliestStart', 'leastWall', 'startsAt', 'endsAt'],
];
const down = [
  ...['resistance', 'safePressure', 'highestPressure', 'hoopStrain', 'axialStrain', 'wallAtEndOfLife'],
  ...['fullCountLength', 'workingTime', 'inspectWithin', 'after', 'wallLasts', 'highestWrinkle', 'margin'],
  ...['wallToday', 'allowedTime', 'start'],
];

/** The reasons of a site as they are written out. */
interface EncodedSite {
  readonly site: {
    readonly reasons: readonly {
      readonly found?: { readonly name: string; readonly value: number };
      readonly because: { readonly amounts?: readonly { readonly value: number }[] };
    }[];
  };
}

/** What units do to the last digits. */
const LAST_DIGIT = 1e-12;

/** Every number of a written design by the name that it stands under. */
function numbersIn(held: unknown, name = ''): [name: string, value: number][] {
  if (typeof held !== 'object' || held === null) return [];
  const { value, unit, name: own } = held as Readonly<Record<string, unknown>>;
  if (typeof value === 'number' && typeof unit === 'string')
    return [[name === 'amount' || name === 'found' || name === 'limit' ? String(own) : name, value]];
  const isInner = (key: string): boolean => Array.isArray(held) || key === 'value' || key === 'time';
  return Object.entries(held).flatMap(([key, inner]) => numbersIn(inner, isInner(key) ? name : key));
}

/** The ways in which numbers are moved when they are written with one digit, by their names. */
function waysOfNumbers(): ReadonlyMap<string, ReadonlySet<string>> {
  const ways = new Map<string, Set<string>>();
  for (const design of [leak, loss, bend, slot].map(designOf)) {
    const rounded = numbersIn(encodeDesign(design, { units: 'si', digits: 1 }));
    for (const [place, [name, exact]] of numbersIn(encodeDesign(design, { units: 'si' })).entries()) {
      const moved = ((rounded[place]?.[1] ?? Number.NaN) - exact) / Math.abs(exact);
      if (Math.abs(moved) > LAST_DIGIT) ways.set(name, (ways.get(name) ?? new Set()).add(moved > 0 ? 'up' : 'down'));
    }
  }
  return ways;
}

describe('a design that is written with few digits', () => {
  it('has no less of what is needed, and no more of what is left', () => {
    const ways = waysOfNumbers();
    const of = (names: readonly string[]) => names.map((name) => [name, ...(ways.get(name) ?? [])]);
    expect(of(up)).toEqual(up.map((name) => [name, 'up']));
    expect(of(down)).toEqual(down.map((name) => [name, 'down']));
  });

  it('has the numbers of a reason of the site on the side on which its words have them', () => {
    const { site } = encodeDesign(designOf(leak), { units: 'si', digits: 2 }) as unknown as EncodedSite;
    const judged = site.reasons.flatMap(({ found, because: { amounts = [] } }) =>
      found === undefined ? [] : [{ found, said: amounts.map(({ value }) => value) }],
    );
    expect(judged.length).toBeGreaterThan(3);
    for (const { found, said } of judged) expect(said, found.name).toContain(found.value);
  });
});
