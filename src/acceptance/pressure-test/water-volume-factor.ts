import { formula, positive, refuse } from '../../formula/index.js';
import type { Ratio, Temperature } from '../../quantity/index.js';

export interface WaterVolumeFactorInput {
  readonly temperature: Temperature;
}

/** Printed rows: degrees Fahrenheit, and the specific volume of water over that at 60 degF. */
const rows: readonly (readonly [fahrenheit: number, factor: number])[] = [
  [35, 0.9990777],
  [40, 0.9990357],
  [45, 0.999115],
  [50, 0.9993061],
  [55, 0.9996046],
  [60, 1],
  [65, 1.0004674],
  [70, 1.0010364],
  [75, 1.0016883],
  [80, 1.0024178],
  [85, 1.0031919],
  [90, 1.0040642],
  [95, 1.0050043],
  [100, 1.006009],
];

/**
 * Volume of water over its volume at 60 degF, both without pressure.
 *
 * @param input.temperature T, temperature of the water [K], 35 to 100 degF
 * @returns factor, straight between the printed rows [1]
 * @throws CalculationError `invalid-input`; `outside-validity` outside the printed rows
 * @remarks For the examples of the handbook; a day's work goes by `waterDensity`. Every row lies within 2.2e-5 of that
 *   density; straight lines between the rows add at most 2e-5. Lowest between 39 and 40 degF: colder water swells again.
 * @see Pipeline Rules of Thumb Handbook, pp. 140 to 142
 */
export function waterVolumeFactor(input: WaterVolumeFactorInput): Ratio {
  const { temperature: T } = input;
  positive(T, 'temperature', 'K');
  // Slack of a billionth: 35 degF in kelvin may round to just below 35 when it is read back.
  const fahrenheit = (T * 9) / 5 - 459.67;
  const next = rows.findIndex(([end]) => fahrenheit <= end + 1e-9);
  const [to, above] = rows[next] ?? outside(T);
  const [from, under] = rows[next - 1] ?? [to, above];
  if (fahrenheit < from - 1e-9) outside(T);
  if (to === from) return above as Ratio;
  return (under + ((fahrenheit - from) / (to - from)) * (above - under)) as Ratio;
}

function outside(value: number): never {
  refuse({
    code: 'outside-validity',
    parameter: 'temperature',
    value,
    unit: 'K',
    constraint: 'must be from 35 degF (274.8 K) to 100 degF (310.9 K), the rows of the table',
    source: 'Pipeline Rules of Thumb Handbook, pp. 140 to 142',
  });
}

export const waterVolumeFactorFormula = /* @__PURE__ */ formula<WaterVolumeFactorInput, Ratio>({
  id: 'acceptance/water-volume-factor',
  title: 'Volume of water by temperature',
  compute: waterVolumeFactor,
  equation: { algorithm: 'Straight line between the two printed rows that the temperature lies between.' },
  inputs: {
    temperature: { symbol: 'T', kind: 'temperature', name: 'temperature of the water', sample: [275, 310.5] },
  },
  output: { symbol: 'F_wt', kind: 'ratio', name: 'volume factor of water' },
  sources: [{ key: 'rules-of-thumb', locator: 'pp. 140 to 142' }],
  evidence: { form: { tag: 'published', derived: 'density of water at one atmosphere' }, between: { tag: 'chosen' } },
  limits: [{ sort: 'stop', text: 'Nothing outside the printed rows, 35 to 100 degF.' }],
  inhomogeneous: 'its rows are tied to degrees Fahrenheit',
});
