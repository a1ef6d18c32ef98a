import { describe, expect, it } from 'vitest';
import { ratio, temperature } from '../../src/quantity/index.js';
import { condensationPoint, dewPoint, frostPoint } from '../../src/site/index.js';
import { type DewPointRow, readDewPointTable } from './dewpoint-table.js';

const rows = readDewPointTable();
const of = (status: DewPointRow['status']): readonly DewPointRow[] => rows.filter((row) => row.status === status);
const air = ({ airCelsius, humidityPercent }: DewPointRow) => ({
  temperature: temperature.degC(airCelsius),
  humidity: ratio.percent(humidityPercent),
});
const beyond = (
  list: readonly DewPointRow[],
  computed: (row: DewPointRow) => number,
  tolerance: number,
): readonly (DewPointRow & { computed: number })[] =>
  list
    .map((row) => ({ ...row, computed: computed(row) }))
    .filter((row) => !(Math.abs(row.computed - row.printedCelsius) <= tolerance));

/**
 * The table prints tenths and was made by an equation that it does not name; its values scatter about every Magnus form
 * by up to 0.2 K, far above the 0.04 K by which those differ among themselves. Hence 0.2 K, and 0.25 K for its frost points.
 */
describe('a published table of dew points', () => {
  it('is read whole', () => {
    expect(rows.length).toBe(248);
    expect([of('ok').length, of('frost').length, of('misprint').length, of('suspect').length]).toEqual([211, 33, 1, 3]);
    for (const row of rows) expect(Object.values(row).slice(0, 3)).toSatisfy((v: number[]) => v.every(Number.isFinite));
  });

  it('agrees with the dew point over water within 0.2 K at and above 0 degC', () => {
    expect(beyond(of('ok'), (row) => temperature.inDegC(dewPoint(air(row))), 0.2)).toEqual([]);
  });

  it('has no bias: its mean difference is below a tenth', () => {
    const list = of('ok');
    const sum = list.reduce((total, row) => total + (row.printedCelsius - temperature.inDegC(dewPoint(air(row)))), 0);
    expect(Math.abs(sum / list.length)).toBeLessThan(0.1);
  });

  it('agrees with the frost point within 0.25 K below 0 degC, and not with the dew point over water', () => {
    expect(beyond(of('frost'), (row) => temperature.inDegC(frostPoint(air(row))), 0.25)).toEqual([]);
    expect(beyond(of('frost'), (row) => temperature.inDegC(dewPoint(air(row))), 0.25).length).toBeGreaterThan(10);
  });

  it('agrees with the condensation point in all rows, which tells frost from water as the table does', () => {
    const point = (row: DewPointRow): number => temperature.inDegC(condensationPoint(air(row)).point);
    expect(beyond(of('ok'), point, 0.2)).toEqual([]);
    expect(beyond(of('frost'), point, 0.25)).toEqual([]);
    expect(of('frost').filter((row) => !condensationPoint(air(row)).isFrost)).toEqual([]);
  });

  it('has one misprint, which is a whole kelvin off', () => {
    const [row] = of('misprint');
    if (row === undefined) throw new Error('the misprint is gone');
    expect(Math.abs(row.printedCelsius - 1 - temperature.inDegC(dewPoint(air(row))))).toBeLessThan(0.2);
  });
});
