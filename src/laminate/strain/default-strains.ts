import { atLeast, formula, listOfRows, positive, refuse } from '../../formula/index.js';
import type { Modulus, Strain, Time } from '../../quantity/index.js';
import type { DefaultStrainRow } from '../../rules/index.js';

export interface DefaultStrainsInput {
  readonly table: readonly DefaultStrainRow[];
  readonly designLife: Time;
  readonly hoopModulus: Modulus;
  readonly axialModulus: Modulus;
  /** The same two at the design temperature, where they are known. */
  readonly warmHoopModulus?: Modulus;
  readonly warmAxialModulus?: Modulus;
  readonly failureStrain: Strain;
  readonly modulusShare?: number;
  readonly leastFailureStrain?: Strain;
  readonly failureMargin?: number;
}

/** Default strains before temperature and cycles, and the life column they stand in. */
export interface DefaultStrains {
  readonly hoop: Strain;
  readonly axial: Strain;
  readonly lifeColumn: Time;
}

/**
 * Default strains of a rule set: the column of the shortest tabulated life that covers the design life.
 *
 * @param input.table               rows of the rule set for this class and loading, in any order
 * @param input.designLife          L [s], > 0, at most the longest life of the table
 * @param input.hoopModulus         E_c [Pa], > 0
 * @param input.axialModulus        E_a [Pa], > 0
 * @param input.warmHoopModulus     E_c at the design temperature [Pa], > 0; with the next one, or neither
 * @param input.warmAxialModulus    E_a at the design temperature [Pa], > 0
 * @param input.failureStrain       short-term strain to failure of the laminate, at least that which the defaults require
 * @param input.modulusShare        E_a/E_c above which the larger axial strain holds, cold and warm, 0.5 unless given; at the share itself the smaller one is taken, since the recollections differ
 * @param input.leastFailureStrain  0.01 unless given
 * @param input.failureMargin       failureStrain over the default strain of the row at least, 2.5 unless given (chosen: no recollection leaves less, 1 % over 0.4 %), >= 1
 * @returns hoop and axial default strain, and the life of their column
 * @throws CalculationError `invalid-input`; `outside-validity` for a longer life, a more brittle laminate, or a strain too near to where it breaks
 * @remarks A life between two columns takes the longer one; nothing is interpolated.
 * @see ISO 24817:2017, 7.5.5; ASME PCC-2, Table 401-3.4.4, as recalled
 */
export function defaultStrains(input: DefaultStrainsInput): DefaultStrains {
  const { table, designLife: L, hoopModulus: Ec, axialModulus: Ea, failureStrain, modulusShare = 0.5 } = input;
  const { leastFailureStrain = 0.01 as Strain, failureMargin = 2.5 } = input;
  positive(L, 'designLife', 's');
  positive(Ec, 'hoopModulus', 'Pa');
  positive(Ea, 'axialModulus', 'Pa');
  const share = lowerShare(input);
  positive(failureStrain, 'failureStrain', '');
  positive(modulusShare, 'modulusShare', '');
  positive(leastFailureStrain, 'leastFailureStrain', '');
  atLeast(failureMargin, 1, 'the strain itself', 'failureMargin', '');
  if (failureStrain < leastFailureStrain) {
    refuse({
      code: 'outside-validity',
      parameter: 'failureStrain',
      value: failureStrain,
      unit: '',
      constraint: 'must be at least {limit} for default strains; a more brittle laminate needs its own test data',
      limit: leastFailureStrain,
      source: 'after ISO 24817:2017, 7.5.5, as recalled',
    });
  }
  listOfRows(table, 'table');
  let row: DefaultStrainRow | undefined;
  let longest = 0;
  for (const candidate of table) {
    positive(candidate.life, 'table life', 's');
    positive(candidate.hoop, 'table hoop strain', '');
    positive(candidate.axial, 'table axial strain', '');
    positive(candidate.softAxial, 'table soft axial strain', '');
    longest = Math.max(longest, candidate.life);
    if (candidate.life >= L && (row === undefined || candidate.life < row.life)) row = candidate;
  }
  if (row === undefined) {
    return refuse({
      code: 'outside-validity',
      parameter: 'designLife',
      value: L,
      unit: 's',
      constraint: 'must be at most the longest life of the table, {limit}',
      limit: longest,
    });
  }
  const [hoop, axial] = [row.hoop, share > modulusShare ? row.axial : row.softAxial];
  const allowable = Math.max(hoop, axial);
  if (allowable > failureStrain / failureMargin) {
    refuse({
      code: 'outside-validity',
      parameter: 'defaultStrain',
      value: allowable,
      unit: '',
      constraint: `must be at most {limit}, the strain to failure over ${failureMargin}`,
      limit: failureStrain / failureMargin,
    });
  }
  return { hoop, axial, lifeColumn: row.life };
}

/** E_a/E_c, the lower of cold and warm: resin softens, and with it the laminate along the pipe more than round it. */
function lowerShare(input: DefaultStrainsInput): number {
  const { hoopModulus: Ec, axialModulus: Ea, warmHoopModulus: warmEc, warmAxialModulus: warmEa } = input;
  if (warmEc === undefined && warmEa === undefined) return Ea / Ec;
  if (warmEc === undefined || warmEa === undefined) {
    const parameter = warmEc === undefined ? 'warmHoopModulus' : 'warmAxialModulus';
    const constraint = 'must be given as well, or neither of the warm moduli';
    return refuse({ code: 'invalid-input', parameter, value: 'missing', unit: '', constraint });
  }
  positive(warmEc, 'warmHoopModulus', 'Pa');
  positive(warmEa, 'warmAxialModulus', 'Pa');
  return Math.min(Ea / Ec, warmEa / warmEc);
}

/** Whether the share lies within 5 per cent of the one at which the axial strain steps: the scatter of a modulus decides it. */
export function defaultStrainsNearStep(input: DefaultStrainsInput): boolean {
  const { modulusShare = 0.5 } = input;
  return Math.abs(lowerShare(input) / modulusShare - 1) <= 0.05;
}

export const defaultStrainsFormula = /* @__PURE__ */ formula<DefaultStrainsInput, DefaultStrains>({
  id: 'laminate/default-strains',
  title: 'Default strains by design life',
  search: ['allowable strain'],
  compute: defaultStrains,
  equation: {
    algorithm:
      'the row of the shortest tabulated life that is not below the design life; the larger axial strain when E_a/E_c exceeds the stated share, cold and at the design temperature',
  },
  inputs: {
    table: {
      symbol: 'table',
      kind: 'list',
      name: 'default strains of the rule set',
      columns: { life: 'time', hoop: 'strain', axial: 'strain', softAxial: 'strain' },
    },
    designLife: { symbol: 'L', kind: 'time', name: 'design life', sample: [1e7, 6e8] },
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [8e9, 80e9] },
    axialModulus: { symbol: 'E_a', kind: 'modulus', name: 'axial modulus of the laminate', sample: [4e9, 40e9] },
    warmHoopModulus: {
      symbol: 'E_c_w',
      kind: 'modulus',
      name: 'hoop modulus at the design temperature',
      sample: [8e9, 80e9],
      optional: true,
    },
    warmAxialModulus: {
      symbol: 'E_a_w',
      kind: 'modulus',
      name: 'axial modulus at the design temperature',
      sample: [4e9, 40e9],
      optional: true,
    },
    failureStrain: {
      symbol: 'eps_u',
      kind: 'strain',
      name: 'short-term strain to failure',
      sample: [0.01, 0.025],
      usual: [0.0015, 0.06],
    },
    modulusShare: {
      symbol: 'r_E',
      kind: 'number',
      name: 'share of the hoop modulus',
      default: 0.5,
      sample: [0.4, 0.6],
    },
    leastFailureStrain: {
      symbol: 'eps_u1',
      kind: 'strain',
      name: 'least strain to failure',
      default: 0.01,
      sample: [0.005, 0.01],
    },
    failureMargin: {
      symbol: 'n_u',
      kind: 'number',
      name: 'strain to failure over the default strain, at least',
      default: 2.5,
      sample: [1, 2.5],
    },
  },
  output: {
    hoop: { symbol: 'eps_c0', kind: 'strain', name: 'default hoop strain' },
    axial: { symbol: 'eps_a0', kind: 'strain', name: 'default axial strain' },
    lifeColumn: { symbol: 'L_col', kind: 'time', name: 'life of the column' },
  },
  sources: [
    { key: 'iso-24817', locator: '7.5.5, as recalled' },
    { key: 'asme-pcc-2', locator: 'Table 401-3.4.4, as recalled' },
  ],
  evidence: {
    form: { tag: 'recalled' },
    modulusShare: { tag: 'recalled' },
    leastFailureStrain: { tag: 'recalled' },
    failureMargin: { tag: 'chosen', note: 'the recalled sets leave no less: 1 % to failure over 0.4 % allowed' },
  },
  limits: [
    { sort: 'stop', text: 'the table ends at its longest life' },
    {
      sort: 'note',
      text: 'the axial modulus lies within 5 per cent of the share at which the axial strain steps',
      beyond: defaultStrainsNearStep,
    },
    { sort: 'stop', text: 'default strains need a short-term strain to failure of at least 1 %' },
    { sort: 'stop', text: 'no default strain above the strain to failure over its margin' },
  ],
});
