import { finite, formula, listOfRows, positive, refuse } from '../../formula/index.js';
import { molarGasConstant } from '../../mechanics/index.js';
import type {
  ActivationEnergy,
  MolarHeatCapacity,
  RateConstant,
  Ratio,
  Temperature,
  TemperatureDifference,
} from '../../quantity/index.js';
import { gasConstant } from '../declared-inputs.js';

/** A rate measured at a temperature. */
export interface MeasuredRate {
  /** At which it was measured [K]. */
  readonly temperature: Temperature;
  /** Rate constant there [1/s]. */
  readonly rate: RateConstant;
}

export interface ArrheniusFitInput {
  readonly rows: readonly MeasuredRate[];
  readonly gasConstant?: MolarHeatCapacity | undefined;
}

export interface ArrheniusFit {
  readonly activationEnergy: ActivationEnergy;
  readonly frequencyFactor: RateConstant;
  readonly slope: TemperatureDifference;
  readonly determination: Ratio;
}

/**
 * Activation energy and frequency factor from rates at several temperatures, by least squares on the Arrhenius line.
 *
 * $$\ln k = \ln A - \frac{E}{R}\,\frac{1}{T}$$
 *
 * @param input.rows        temperature [K] and rate [1/s], at least two different temperatures
 * @param input.gasConstant R [J/(mol K)], > 0
 * @returns E, A, the slope of ln k against 1/T [K], and the coefficient of determination r2
 * @throws CalculationError `invalid-input`; `outside-validity` when the rates fall with temperature
 * @remarks Least squares on the logarithm weighs relative errors alike. A low r2 says that one energy does not describe
 *   the rows; the reciprocal of a time to one stage serves as the rate of that stage.
 * @see worked answers on public web pages
 */
export function arrheniusFit(input: ArrheniusFitInput): ArrheniusFit {
  const { rows, gasConstant: R = molarGasConstant } = input;
  positive(R, 'gasConstant', 'J/(mol K)');
  checkRates(rows);
  const { temperature: T1, rate: k1 } = rows[0] as MeasuredRate;
  // Against the first row, so that logarithms are taken of plain ratios.
  const x = rows.map(({ temperature }) => T1 / temperature - 1);
  const y = rows.map(({ rate }) => Math.log(rate / k1));
  const [xm, ym] = [mean(x), mean(y)];
  let [sxx, sxy, syy] = [0, 0, 0];
  x.forEach((xi, index) => {
    const [dx, dy] = [xi - xm, (y[index] ?? 0) - ym];
    sxx += dx * dx;
    sxy += dx * dy;
    syy += dy * dy;
  });
  if (!(sxx > 0)) refuseRows(T1, 'must hold at least two different temperatures');
  const slope = sxy / sxx;
  if (!(slope < 0)) falling(slope * T1);
  const frequencyFactor = k1 * Math.exp(ym - slope * (xm + 1));
  const determination = (sxy * sxy) / (sxx * syy);
  finite(frequencyFactor, 'rows', '1/s');
  finite(slope * T1 * R, 'rows', 'J/mol');
  finite(determination, 'rows', '');
  return {
    activationEnergy: (-slope * T1 * R) as ActivationEnergy,
    frequencyFactor: frequencyFactor as RateConstant,
    slope: (slope * T1) as TemperatureDifference,
    determination: determination as Ratio,
  };
}

function checkRates(rows: readonly MeasuredRate[]): void {
  listOfRows(rows, 'rows');
  if (rows.length < 2) refuseRows(`${rows.length} long`, 'must hold at least two rows');
  rows.forEach(({ temperature, rate }, index) => {
    positive(temperature, `rows[${index}].temperature`, 'K');
    positive(rate, `rows[${index}].rate`, '1/s');
    positive(rate / (rows[0] as MeasuredRate).rate, `rows[${index}].rate`, '1/s');
  });
}

function refuseRows(value: unknown, constraint: string): never {
  refuse({ code: 'invalid-input', parameter: 'rows', value, unit: '', constraint });
}

function falling(slope: number): never {
  refuse({
    code: 'outside-validity',
    parameter: 'rows',
    value: slope,
    unit: 'K for the slope of ln k against 1/T',
    constraint: 'the rates must rise with temperature',
  });
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

export const arrheniusFitFormula = /* @__PURE__ */ formula<ArrheniusFitInput, ArrheniusFit>({
  id: 'cure/arrhenius-fit',
  title: 'Arrhenius line through measured rates',
  compute: arrheniusFit,
  equation: { algorithm: 'Least squares of ln k against 1/T over all rows; E = -slope R, A = exp(intercept).' },
  inputs: {
    rows: {
      symbol: 'rows',
      kind: 'list',
      name: 'measured rates',
      columns: { temperature: 'temperature', rate: 'rate constant' },
    },
    gasConstant,
  },
  output: {
    activationEnergy: { symbol: 'E', kind: 'activation energy', name: 'activation energy' },
    frequencyFactor: { symbol: 'A', kind: 'rate constant', name: 'frequency factor' },
    slope: { symbol: 's', kind: 'temperature difference', name: 'slope of ln k against 1/T' },
    determination: { symbol: 'r2', kind: 'ratio', name: 'coefficient of determination' },
  },
  sources: [{ key: 'web-cure-examples', locator: 'least squares on three rates' }],
  evidence: { form: { tag: 'secondary', derived: 'normal equations of the straight line' } },
  limits: [{ sort: 'stop', text: 'The rates must rise with temperature.' }],
});
