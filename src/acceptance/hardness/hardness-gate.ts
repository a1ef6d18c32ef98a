import { formula, oneOf, positive, refuse, wholeNumber, within } from '../../formula/index.js';
import type { Ratio } from '../../quantity/index.js';
import { barcolReadings } from './barcol-readings.js';
import type { HardnessScale, IndentedMaterial } from './hardness-readings.js';
import { hardnessStatistics } from './hardness-statistics.js';

export interface HardnessGate {
  /** Mean over the qualified value. */
  readonly fraction: Ratio;
  readonly passes: boolean;
  readonly mean: number;
  readonly standardDeviation: number;
  readonly minimum: number;
  /** Lowest reading over the qualified value. */
  readonly leastFraction: Ratio;
  readonly count: number;
  readonly readingsNeeded: number;
}

export interface HardnessGateInput {
  readonly scale: HardnessScale;
  readonly readings: readonly number[];
  /** Hardness found in the qualification of the system. Without it nothing can be accepted. */
  readonly qualifiedHardness?: number | undefined;
  readonly material?: IndentedMaterial | undefined;
  readonly leastReadings?: number | undefined;
  readonly leastMean?: Ratio | undefined;
  readonly leastSingle?: Ratio | undefined;
}

/**
 * Whether a cured repair is hard enough: readings against the hardness that the system reached in its qualification.
 *
 * $$\frac{\bar h}{h_q} \ge 0.9, \quad \frac{\min h}{h_q} \ge 0.8$$
 *
 * @param input.scale             Shore D or Barcol, the scale of the qualified value
 * @param input.readings          h, readings on the repair or its witness, 0 to 100, two or more
 * @param input.qualifiedHardness h_q, on the same scale, 1 to 100; refused when it is not given
 * @param input.material          what a Barcol indenter meets; `reinforced`, which needs more readings, when not given
 * @param input.leastReadings     n_q, readings that the procedure asks for, 2 or above; else 5 for Shore D, and for Barcol
 *   those of its table at the lowest mean that passes
 * @param input.leastMean         least mean over the qualified value; 0.9 when not given
 * @param input.leastSingle       least single reading over the qualified value; 0.8 when not given
 * @returns mean and lowest reading over the qualified value, the statistics, the readings needed, and whether all pass
 * @throws CalculationError `invalid-input`; `outside-validity` when the Barcol table does not reach down to the
 *   lowest mean that passes and `leastReadings` is not given
 * @remarks A hardness that stops rising shows that the cure has stopped, not that it is complete.
 * @see ISO 24817 and ASME PCC-2 for the 90 %, as recalled; ISO 868 for five readings
 */
export function hardnessGate(input: HardnessGateInput): HardnessGate {
  const { scale, readings, qualifiedHardness, material, leastReadings } = input;
  const { leastMean = 0.9 as Ratio, leastSingle = 0.8 as Ratio } = input;
  oneOf(scale, ['Shore D', 'Barcol'], 'scale');
  if (material !== undefined) oneOf(material, ['homogeneous', 'reinforced'], 'material');
  const hQ = qualifiedHardness ?? missing();
  within(hQ, 1, 100, 'qualifiedHardness', '');
  positive(leastMean, 'leastMean', '');
  within(leastMean, 0, 1, 'leastMean', '');
  positive(leastSingle, 'leastSingle', '');
  within(leastSingle, 0, 1, 'leastSingle', '');
  if (leastReadings !== undefined) wholeNumber(leastReadings, 2, 'leastReadings');
  const { mean, count, standardDeviation, minimum } = hardnessStatistics({ readings });
  const fraction = mean / hQ;
  const leastFraction = minimum / hQ;
  // At the lowest mean that passes: the crew knows the number beforehand, and no mean that passes needs more.
  const hardness = leastMean * hQ;
  const readingsNeeded = leastReadings ?? (scale === 'Shore D' ? 5 : barcolReadings({ hardness, material }));
  const passes = count >= readingsNeeded && reaches(fraction, leastMean) && reaches(leastFraction, leastSingle);
  return {
    fraction: fraction as Ratio,
    passes,
    mean,
    standardDeviation,
    minimum,
    leastFraction: leastFraction as Ratio,
    count,
    readingsNeeded,
  };
}

/** A mean of exactly 90 % passes, whichever way its quotient rounds. */
function reaches(fraction: number, least: number): boolean {
  return fraction >= least * (1 - 1e-9);
}

function missing(): never {
  refuse({
    code: 'invalid-input',
    parameter: 'qualifiedHardness',
    value: 'missing',
    unit: '',
    constraint:
      'must be given: nothing is accepted without the hardness of the qualification; the maker of the system has it',
  });
}

export const hardnessGateFormula = /* @__PURE__ */ formula<HardnessGateInput, HardnessGate>({
  id: 'acceptance/hardness-gate',
  title: 'Hardness against the qualified value',
  search: ['barcol', 'shore'],
  compute: hardnessGate,
  equation: {
    algorithm:
      'Mean and lowest reading over the qualified hardness; passes when both reach their least fractions and there are enough readings.',
  },
  inputs: {
    scale: { symbol: 'scale', kind: 'choice', name: 'hardness scale', choices: ['Shore D', 'Barcol'] },
    readings: { symbol: 'h', kind: 'list', name: 'hardness readings', columns: { value: 'number' } },
    qualifiedHardness: { symbol: 'h_q', kind: 'number', name: 'qualified hardness', sample: [70, 90], optional: true },
    material: {
      symbol: 'material',
      kind: 'choice',
      name: 'what a Barcol indenter meets',
      choices: ['homogeneous', 'reinforced'],
      default: 'reinforced',
    },
    leastReadings: {
      symbol: 'n_q',
      kind: 'count',
      name: 'readings that the procedure asks for',
      sample: [2, 12],
      optional: true,
    },
    leastMean: {
      symbol: 'r_m',
      kind: 'ratio',
      name: 'least mean over the qualified value',
      sample: [0.85, 1],
      default: 0.9,
    },
    leastSingle: {
      symbol: 'r_1',
      kind: 'ratio',
      name: 'least single reading over the qualified value',
      sample: [0.7, 0.9],
      default: 0.8,
    },
  },
  output: {
    fraction: { symbol: 'r', kind: 'ratio', name: 'mean over the qualified value' },
    passes: { symbol: 'passes', kind: 'flag', name: 'hard enough' },
    mean: { symbol: 'h_m', kind: 'number', name: 'mean hardness' },
    standardDeviation: { symbol: 's_h', kind: 'number', name: 'standard deviation' },
    minimum: { symbol: 'h_1', kind: 'number', name: 'lowest reading' },
    leastFraction: { symbol: 'r_least', kind: 'ratio', name: 'lowest reading over the qualified value' },
    count: { symbol: 'n', kind: 'count', name: 'number of readings' },
    readingsNeeded: { symbol: 'n_min', kind: 'count', name: 'readings needed' },
  },
  sources: [
    { key: 'iso-24817', locator: 'cure acceptance' },
    { key: 'asme-pcc-2', locator: 'cure acceptance' },
    { key: 'iso-868', locator: 'five readings' },
    { key: 'astm-d2583', locator: 'table 1' },
  ],
  evidence: {
    form: { tag: 'recalled' },
    leastMean: { tag: 'recalled' },
    leastSingle: { tag: 'chosen' },
    shoreReadings: { tag: 'secondary' },
    barcolReadings: { tag: 'recalled' },
  },
  limits: [],
});
