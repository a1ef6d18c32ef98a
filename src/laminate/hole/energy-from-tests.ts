import { finite, formula, listOfRows, positive, refuse } from '../../formula/index.js';
import { studentQuantile } from '../../numeric/index.js';
import type { EnergyReleaseRate, GaugePressure, Length, Modulus } from '../../quantity/index.js';
import { holeResistance } from './hole-resistance.js';

/** One pressurised hole under the laminate, raised until it leaked. */
export interface HoleTest {
  readonly holeDiameter: Length;
  readonly laminateThickness: Length;
  readonly pressure: GaugePressure;
}

export interface EnergyFromTestsInput {
  readonly tests: readonly HoleTest[];
  readonly hoopModulus: Modulus;
  readonly axialModulus: Modulus;
  readonly poissonRatio: number;
  readonly shearModulus: Modulus;
  readonly confidence?: number;
  readonly leastTests?: number;
  readonly leastSizes?: number;
}

/** What a series of tests says of the bond. */
export interface EnergyFromTests {
  readonly lowerLimit: EnergyReleaseRate;
  readonly mean: EnergyReleaseRate;
  readonly scatter: GaugePressure;
  readonly quantile: number;
}

/**
 * Energy release rate of a bond from tests of pressurised holes: mean and lower confidence limit.
 *
 * $$P_i = A_i \sqrt{\gamma},\quad \sqrt{\bar\gamma} = \frac{\sum A_i P_i}{\sum A_i^2},\quad
 * \sigma^2 = \frac{\sum (P_i - A_i \sqrt{\bar\gamma})^2}{n - 2},\quad
 * \gamma_{LCL} = \left(\sqrt{\bar\gamma} - \frac{t_\nu \sigma}{\sqrt{\sum A_i^2}}\right)^2$$
 *
 * A_i is the pressure that the equation of the hole gives for a unit of energy, by `holeResistance`.
 *
 * @param input.tests         hole diameter [m], laminate thickness [m], pressure at which it leaked [Pa], each > 0
 * @param input.hoopModulus   E_c, of the laminate tested [Pa], > 0
 * @param input.axialModulus  E_a [Pa], > 0
 * @param input.poissonRatio  nu_ca, 0 to 1
 * @param input.shearModulus  G [Pa], > 0
 * @param input.confidence    two-sided, above 0, below 1; 0.95 when left out
 * @param input.leastTests    9 when left out, at least 3
 * @param input.leastSizes    of hole, 3 when left out, at least 1; holes within a tenth of one another are of one size
 * @returns lower confidence limit and mean [J/m2], standard deviation of the pressures [Pa], and Student's t of n - 2 degrees
 * @throws CalculationError `invalid-input`; `outside-validity` for too few tests or sizes; `no-solution` where the tests scatter
 *   so far that nothing is left
 * @remarks n - 2 is the recalled divisor, a little on the safe side of n - 1. The equation that the tests are read by is the one
 *   that the design is held to, so that its error cancels for holes of like proportion: tests on coupons are no such tests. The
 *   edge factor is left at 1: it would raise the energy that small holes seem to show, and with it what wide ones are held to.
 * @see ISO 24817:2017, annex D; ASME PCC-2, mandatory appendix IV, as recalled
 */
export function energyFromTests(input: EnergyFromTestsInput): EnergyFromTests {
  const { tests, hoopModulus, axialModulus, poissonRatio, shearModulus } = input;
  const { confidence = 0.95, leastTests = 9, leastSizes = 3 } = input;
  checkTests(tests, leastTests);
  checkSizes(tests, leastSizes);
  if (!(confidence > 0 && confidence < 1)) refuseInput('confidence', confidence, 'must be above 0 and below 1');
  const A = tests.map(({ holeDiameter, laminateThickness }) =>
    holeResistance({
      holeDiameter,
      laminateThickness,
      hoopModulus,
      axialModulus,
      poissonRatio,
      shearModulus,
      energyReleaseRate: 1 as EnergyReleaseRate,
      serviceFactor: 1,
    }),
  );
  const squares = A.reduce((sum, a) => sum + a * a, 0);
  const root = A.reduce((sum, a, i) => sum + a * (tests[i] as HoleTest).pressure, 0) / squares;
  const off = A.reduce((sum, a, i) => sum + ((tests[i] as HoleTest).pressure - a * root) ** 2, 0);
  const scatter = Math.sqrt(off / (tests.length - 2));
  const quantile = studentQuantile(confidence, tests.length - 2) ?? Number.NaN;
  finite(quantile, 'confidence', '');
  const mean = root * root;
  finite(mean, 'energy release rate', 'J/m2');
  const lower = root - (quantile * scatter) / Math.sqrt(squares);
  if (!(lower > 0))
    refuse({
      code: 'no-solution',
      parameter: 'tests',
      value: scatter,
      unit: 'Pa of scatter',
      constraint: 'must scatter less than {limit}: nothing is left of the mean at this confidence',
      limit: (root * Math.sqrt(squares)) / quantile,
    });
  return {
    lowerLimit: (lower * lower) as EnergyReleaseRate,
    mean: mean as EnergyReleaseRate,
    scatter: scatter as GaugePressure,
    quantile,
  };
}

function checkTests(tests: readonly HoleTest[], least: number): void {
  listOfRows(tests, 'tests');
  if (!(Number.isSafeInteger(least) && least >= 3))
    refuseInput('leastTests', least, 'must be a whole number, 3 or above');
  tests.forEach(({ holeDiameter, laminateThickness, pressure }, index) => {
    positive(holeDiameter, `tests[${index}].holeDiameter`, 'm');
    positive(laminateThickness, `tests[${index}].laminateThickness`, 'm');
    positive(pressure, `tests[${index}].pressure`, 'Pa');
  });
  if (tests.length < least)
    refuseTests(tests.length, 'tests', 'must be at least {limit} for a lower confidence limit', least);
}

/** Holes drilled to one size measure a little apart; a tenth is another size. Chosen here. */
const SIZE_STEP = 1.1;

/** Diameters in order; one that is a step above the smallest of its size begins another. */
function checkSizes(tests: readonly HoleTest[], least: number): void {
  if (!(Number.isSafeInteger(least) && least >= 1))
    refuseInput('leastSizes', least, 'must be a whole number, 1 or above');
  let [sizes, smallest] = [0, 0];
  for (const diameter of tests.map(({ holeDiameter }) => holeDiameter).sort((a, b) => a - b))
    if (diameter > smallest * SIZE_STEP) [sizes, smallest] = [sizes + 1, diameter];
  if (sizes < least) refuseTests(sizes, 'sizes of hole in tests', 'must be at least {limit}', least);
}

function refuseInput(parameter: string, value: unknown, constraint: string): never {
  refuse({ code: 'invalid-input', parameter, value, unit: '', constraint });
}

function refuseTests(value: number, parameter: string, constraint: string, limit: number): never {
  refuse({ code: 'outside-validity', parameter, value, unit: '', constraint, limit });
}

export const energyFromTestsFormula = /* @__PURE__ */ formula<EnergyFromTestsInput, EnergyFromTests>({
  id: 'laminate/energy-from-tests',
  title: 'Energy release rate from tests of holes',
  search: ['blister', 'toughness', 'qualification'],
  compute: energyFromTests,
  equation: {
    algorithm:
      'least squares of the pressures against those of the equation of the hole for a unit of energy, through the origin; the mean less Student t of n - 2 times its standard error, squared',
  },
  inputs: {
    tests: {
      symbol: 'tests',
      kind: 'list',
      name: 'tests of pressurised holes',
      columns: { holeDiameter: 'length', laminateThickness: 'length', pressure: 'gauge pressure' },
    },
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [8e9, 80e9] },
    axialModulus: { symbol: 'E_a', kind: 'modulus', name: 'axial modulus of the laminate', sample: [4e9, 40e9] },
    poissonRatio: { symbol: 'nu_ca', kind: 'number', name: "Poisson's ratio, hoop to axial", sample: [0, 0.4] },
    shearModulus: { symbol: 'G', kind: 'modulus', name: 'shear modulus of the laminate', sample: [1e9, 6e9] },
    confidence: { symbol: 'c', kind: 'number', name: 'confidence, two-sided', default: 0.95, sample: [0.8, 0.99] },
    leastTests: { symbol: 'n_min', kind: 'count', name: 'fewest tests', default: 9, sample: [3, 9] },
    leastSizes: { symbol: 'k_min', kind: 'count', name: 'fewest sizes of hole', default: 3, sample: [1, 3] },
  },
  output: {
    lowerLimit: { symbol: 'gamma_LCL', kind: 'energy release rate', name: 'lower confidence limit' },
    mean: { symbol: 'gamma_mean', kind: 'energy release rate', name: 'mean' },
    scatter: { symbol: 'sigma', kind: 'gauge pressure', name: 'standard deviation of the pressures' },
    quantile: { symbol: 't_nu', kind: 'number', name: "Student's t" },
  },
  sources: [
    { key: 'iso-24817', locator: 'annex D, as recalled' },
    { key: 'asme-pcc-2', locator: 'mandatory appendix IV, as recalled' },
  ],
  evidence: {
    form: { tag: 'recalled', derived: 'sum of squares stepped over energies; t by the integral of its density' },
    confidence: { tag: 'recalled' },
    leastTests: { tag: 'recalled' },
    leastSizes: { tag: 'recalled' },
  },
  limits: [
    { sort: 'stop', text: 'at least nine tests' },
    { sort: 'stop', text: 'at least three sizes of hole' },
  ],
});
