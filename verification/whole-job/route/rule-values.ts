/** Numbers of the two rule sets by the path under which a case confirms them (docs/compare.md), out of repair-design.md, 2 and 5. */
export type RuleValues = Readonly<Record<string, number>>;

export const YEAR = 365.25 * 86_400;

type Tree = { readonly [key: string]: number | Tree | readonly Tree[] };

/** A tree of numbers by its paths: a name after a dot, a row in brackets. */
function byPath(tree: Tree): RuleValues {
  const values: Record<string, number> = {};
  const walk = (value: number | Tree | readonly Tree[], path: string): void => {
    if (typeof value === 'number') values[path] = value;
    else if (Array.isArray(value)) for (const [index, row] of value.entries()) walk(row, `${path}[${index}]`);
    else for (const [key, member] of Object.entries(value)) walk(member, path === '' ? key : `${path}.${key}`);
  };
  walk(tree, '');
  return values;
}

const strain = (years: number, hoop: number, softAxial: number): Tree => ({
  life: years * YEAR,
  hoop: hoop / 100,
  axial: hoop / 100,
  softAxial: softAxial / 100,
});

/** Default strains by class (2.6, soft column by section 5): 2, 10 and 20 years. */
const ISO_STRAINS = {
  1: [strain(2, 0.4, 0.25), strain(10, 0.32, 0.16), strain(20, 0.25, 0.1)],
  2: [strain(2, 0.35, 0.22), strain(10, 0.3, 0.15), strain(20, 0.25, 0.1)],
  3: [strain(2, 0.3, 0.18), strain(10, 0.27, 0.13), strain(20, 0.25, 0.1)],
};

const rows = (years: readonly number[], factors: readonly number[]): readonly Tree[] =>
  factors.map((factor, index) => ({ life: (years[index] as number) * YEAR, factor }));
const survival = (...factors: readonly number[]): readonly Tree[] => rows([2, 10, 20], factors);
const allClasses = <T>(value: T): Readonly<Record<1 | 2 | 3, T>> => ({ 1: value, 2: value, 3: value });

const COMMON: Tree = {
  longestLife: 20 * YEAR,
  throughWallBelow: 1e-3,
  modulusShare: 0.5,
  leastFailureStrain: 0.01,
  temperatureFactor: { quadratic: 6e-5, linear: 0.001, constant: 0.7014 },
  // Known up to the last of the cycles, 1 up to the free ones (2.10).
  cyclic: { slope: 2.888, intercept: 7.108, freeCycles: 7000, lastCycles: 1e8 },
  // Kelvin below the transition at which the limit lies (section 5).
  temperatureMargin: {
    glassTransition: { notLeaking: 20, leaking: 30 },
    heatDeflection: { notLeaking: 15, leaking: 25 },
  },
  hole: { leastDiameter: 0.015, validity: 6, aspectRatio: 5 },
  thinLaminateRatio: 12,
  leastPlies: 2,
  // Section 5 keeps 4 MPa with a warning.
  lapShear: { required: 5e6, withWarning: 4e6 },
  components: { bend: 1.2, flange: 1.1, overlayExponent: 2 / 3 },
  systemTest: { factor: 1.1, hold: 3600 },
};
const OVERLAP: Tree = { minimum: 0.05, adhesiveFactor: 3, leastAvailable: 0.025, taper: 5 };

const ISO = byPath({
  ...COMMON,
  classes: {
    1: { highestPressure: 1e6, highestTemperature: 313.15 },
    2: { highestPressure: 2e6, highestTemperature: 373.15 },
  },
  defaultStrains: { rare: ISO_STRAINS, continuous: ISO_STRAINS },
  performance: {
    survivalTest: { 1: survival(0.8, 0.64, 0.5), 2: survival(0.67, 0.58, 0.5), 3: survival(0.59, 0.54, 0.5) },
    designLifeTest: allClasses(rows([20], [0.67])),
  },
  leakFactor: {
    1: { firstYear: 0.83, decay: 0.02088 },
    2: { firstYear: 0.75, decay: 0.01856 },
    3: { firstYear: 0.333, decay: 0 },
  },
  leakFactorOption: { 3: { firstYear: 0.666, decay: 0.01584 } },
  overlap: {
    ...OVERLAP,
    geometry: { coefficient: 2, divisor: 1 },
    hole: { multiple: 4, share: 0.5 },
    bondStrains: { life: 2 * YEAR, table: ISO_STRAINS[1] },
  },
});

const RARE = [strain(20, 0.4, 0.25)];

const PCC = byPath({
  ...COMMON,
  defaultStrains: { rare: allClasses(RARE), continuous: allClasses([strain(20, 0.25, 0.1)]) },
  performance: { survivalTest: allClasses(rows([20], [0.5])), designLifeTest: allClasses(rows([20], [0.67])) },
  leakFactor: allClasses({ firstYear: 0.333, decay: 0 }),
  overlap: { ...OVERLAP, geometry: { coefficient: 2.5, divisor: 2 }, bondStrains: { life: 20 * YEAR, table: RARE } },
});

export interface Confirmed {
  readonly path: string;
  readonly value: number;
}

/** The rule set of a case: each number that it confirms takes the place of the recalled one. */
export function ruleValues(basis: 'ISO 24817' | 'ASME PCC-2', confirmed: readonly Confirmed[] = []): RuleValues {
  const set = basis === 'ISO 24817' ? ISO : PCC;
  return confirmed.length === 0
    ? set
    : { ...set, ...Object.fromEntries(confirmed.map(({ path, value }) => [path, value])) };
}
