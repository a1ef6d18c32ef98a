import { type Draw, figure } from './random.js';
import { type RuleValues, ruleValues } from './route/rule-values.js';

type Drawn = Record<string, unknown>;

/** What the last name of a path is stated in; the rest are plain numbers. */
const UNITS: readonly (readonly [RegExp, string])[] = [
  [/(life|longestLife|hold)$/u, 's'],
  [/(highestPressure|^lapShear\..*)$/u, 'Pa'],
  [/(highestTemperature|^temperatureMargin\..*)$/u, 'K'],
  [/(throughWallBelow|leastDiameter|overlap\.minimum|leastAvailable)$/u, 'm'],
  [/(hoop|xial|leastFailureStrain)$/u, '%'],
];

function asStated(path: string, value: number): string | number {
  const unit = UNITS.find(([pattern]) => pattern.test(path))?.[1];
  if (unit === undefined) return figure(value);
  return `${figure(unit === '%' ? value * 100 : value)} ${unit}`;
}

/** Within what a number is drawn as somebody might read it, where that is no share of the recalled one. */
const WITHIN: readonly (readonly [RegExp, number, number])[] = [
  [/decay$/u, 0, 0.03],
  [/^systemTest\.factor$/u, 1, 1.3],
  [/^components\.(bend|flange)$/u, 1, 1.4],
  [/^cyclic\.freeCycles$/u, 1500, 9000],
  [/^cyclic\.lastCycles$/u, 1e6, 5e8],
  [/^temperatureFactor\.constant$/u, 0.6, 0.75],
];

/** Another value: a row of a table stays between its neighbours, strains falling and lives rising. */
function otherValue(values: RuleValues, path: string, { between, one }: Draw): number {
  const value = values[path] as number;
  if (path === 'leastPlies') return one(1, 2, 3, 4);
  const within = WITHIN.find(([pattern]) => pattern.test(path));
  if (within !== undefined) return between(within[1], within[2]);
  const beside = (step: number): number | undefined =>
    values[path.replace(/\[(\d+)\]/u, (_, row: string) => `[${Number(row) + step}]`)];
  const inTable = path.includes('[');
  const rows = inTable ? [beside(-1), beside(1)].filter((row) => row !== undefined) : [];
  const low = Math.max(0.8 * value, ...rows.filter((row) => row < value));
  const high = Math.min(1.2 * value, ...rows.filter((row) => row > value));
  return between(low, high);
}

/** Numbers of the rule set as somebody with the document reads them there, mostly of the class and the table that count. */
export function withConfirmed(document: Drawn, draw: Draw): Drawn {
  const { repair, basis } = document as { repair: { class: number }; basis: 'ISO 24817' | 'ASME PCC-2' };
  const values = ruleValues(basis);
  const ofOthers = new RegExp(`\\.(?!${repair.class})[123](\\.|\\[)`, 'u');
  const paths = Object.keys(values).filter((path) => !ofOthers.test(path) || draw.chance(0.05));
  const confirmed = new Map<string, Drawn>();
  for (let count = draw.one(1, 2, 3, 5, 8); count > 0; count--) {
    const path = draw.one(...paths);
    // One row of a table: two that are drawn apart might cross.
    const table = path.replace(/\[\d+\].*/u, '');
    const value = asStated(path, otherValue(values, path, draw));
    const note = draw.chance(0.3) ? { note: 'as drawn' } : {};
    confirmed.set(table, { path, value, by: 'A. Reader', edition: '2017', ...note });
  }
  return { ...document, confirmed: [...confirmed.values()] };
}
