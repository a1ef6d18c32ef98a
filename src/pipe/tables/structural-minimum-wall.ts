import { positive, refuse } from '../../formula/index.js';
import { type Length, length, type Temperature, temperature } from '../../quantity/index.js';
import type { TableValue } from './table-value.js';

/** Minimum structural wall and the wall that calls for attention, in mm, by nominal pipe size. */
const rows: Readonly<Record<string, readonly [structural: number, alert: number]>> = {
  '1/2': [1.8, 2],
  '3/4': [1.8, 2],
  '1': [1.8, 2],
  '1-1/2': [1.8, 2.3],
  '2': [1.8, 2.5],
  '3': [2, 2.8],
  '4': [2.3, 3.1],
  '6': [2.8, 3.3],
  '8': [2.8, 3.3],
  '10': [2.8, 3.3],
  '12': [2.8, 3.3],
  '14': [2.8, 3.3],
  '16': [2.8, 3.3],
  '18': [2.8, 3.3],
  '20': [3.1, 3.6],
  '22': [3.1, 3.6],
  '24': [3.1, 3.6],
};

export interface StructuralMinimumWall extends TableValue<Length> {
  /** Wall at which the owner should look at the line more closely. */
  readonly alert: Length;
}

/**
 * Wall that carbon and low-alloy steel pipe needs to carry itself, whatever the pressure.
 *
 * @param nps         nominal pipe size as the table writes it: `6`, `1-1/2`
 * @param metalTemperature temperature of the metal [K], below 205 degC
 * @throws CalculationError `invalid-input` for a size that the table does not list (1-1/4, 2-1/2, 3-1/2, 5, above 24),
 *   `outside-validity` at 205 degC and above
 * @see API RP 574, Table 7
 */
export function structuralMinimumWall(nps: string | number, metalTemperature: Temperature): StructuralMinimumWall {
  positive(metalTemperature, 'temperature', 'K');
  const row = Object.hasOwn(rows, String(nps)) ? rows[String(nps)] : undefined;
  if (row === undefined) {
    const constraint = `must be one of ${Object.keys(rows).join(', ')}: for another size give a minimum of your own`;
    refuse({
      code: 'invalid-input',
      parameter: 'nps',
      value: nps,
      unit: '',
      constraint,
      source: 'API RP 574, Table 7',
    });
  }
  const limit = temperature.degC(205);
  if (!(metalTemperature < limit)) {
    const constraint = `must be below ${limit} K (205 degC)`;
    const source = 'API RP 574, Table 7';
    refuse({
      code: 'outside-validity',
      parameter: 'temperature',
      value: metalTemperature,
      unit: 'K',
      constraint,
      source,
    });
  }
  const [structural, alert] = row;
  return {
    value: length.mm(structural),
    alert: length.mm(alert),
    tag: 'secondary',
    source: { key: 'api-574', locator: 'Table 7' },
  };
}
