import { finite, formula, positive } from '../../formula/index.js';
import type { Area, GaugePressure, Length } from '../../quantity/index.js';
import { checkPointCount, checkPosition, lossBetween, lossUpTo } from '../remaining-strength/depth-profile.js';
import { weakestSubLength } from '../remaining-strength/weakest-sub-length.js';
import {
  type Api579Shell,
  checkApi579Shell,
  checkThinnestPoint,
  localMetalLossDiscontinuityUnchecked,
} from './api579-shell.js';
import { foliasApi579, quickFoliasApi579 } from './folias-api579.js';

/** One point of a critical thickness profile: the thinnest wall on the ring of the pipe at this position. */
export interface WallPoint {
  /** Along the pipe [m]. */
  readonly position: Length;
  /** Wall left there [m]. */
  readonly wall: Length;
}

export interface LocalMetalLossProfileInput extends Api579Shell {
  readonly profile: readonly WallPoint[];
}

/** The remaining strength factor, the sub-length that gives it, and what follows from it. */
export interface LocalMetalLossProfile {
  readonly remainingStrengthFactor: number;
  readonly from: Length;
  readonly to: Length;
  readonly length: Length;
  readonly area: Area;
  readonly lengthParameter: number;
  readonly foliasFactor: number;
  readonly reducedPressure: GaugePressure;
  readonly accepted: boolean;
}

/**
 * Remaining strength factor of a local metal loss by API 579-1, Part 5, Level 2: the lowest over every contiguous
 * sub-length of a thickness profile.
 *
 * $$\mathrm{RSF} = \min_{i<j} \frac{1 - A_{ij}/A_{0,ij}}{1 - A_{ij}/(A_{0,ij} M_{t,ij})},\qquad A_{0,ij} = s_{ij} t_c$$
 *
 * @param input.insideDiameter           D_i, bore [m], > 0
 * @param input.correctedWall            t_c, wall away from the loss, less what is still to be lost [m], > 0
 * @param input.futureAllowance          FCA, still to be lost over the profile [m], >= 0; 0 by default
 * @param input.workingPressure          MAWP of the sound pipe [Pa], >= 0
 * @param input.allowableFactor          RSF_a, > 0 and at most 1; 0.9 by default
 * @param input.leastWall                least wall that may be left anywhere [m], >= 0; 1.3 mm (pipe) by default
 * @param input.distanceToDiscontinuity  to the nearest structural discontinuity [m]; checked where it is given
 * @param input.profile                  at least two points (position, measured wall) [m], in order along the pipe
 * @returns RSF with the winning sub-length (from, to, length [m], lost area [m2], lambda, M_t), the reduced working pressure [Pa]
 *   and whether RSF >= RSF_a
 * @throws CalculationError `invalid-input`; `outside-validity` as Level 1, for any point
 * @remarks Wall above t_c counts as no loss and not as a gain. A loss shorter than the spacing of the points is not seen.
 * @see API 579-1, Part 5, Level 2
 */
export function localMetalLossProfile(input: LocalMetalLossProfileInput): LocalMetalLossProfile {
  const { insideDiameter: D, correctedWall: tc, profile, workingPressure: MAWP } = input;
  const { futureAllowance: FCA = 0, allowableFactor: RSFa = 0.9 } = input;
  checkApi579Shell(input);
  checkPointCount(profile);
  const positions = new Float64Array(profile.length);
  const depths = new Float64Array(profile.length);
  for (let i = 0; i < profile.length; i++) {
    const { position, wall } = profile[i] as WallPoint;
    checkPosition(position, i === 0 ? Number.NEGATIVE_INFINITY : (positions[i - 1] as number), i);
    positive(wall, `profile[${i}].wall`, 'm');
    checkThinnestPoint(input, wall, `profile[${i}].wall`);
    positions[i] = position;
    depths[i] = Math.max(0, tc - (wall - FCA));
  }
  const perRoot = 1.285 / (Math.sqrt(D) * Math.sqrt(tc));
  const [from, to] = weakestSubLength(positions, lossUpTo(positions, depths), tc, (length) =>
    quickFoliasApi579(perRoot * length),
  );
  const start = positions[from] as number;
  const end = positions[to] as number;
  const length = end - start;
  const area = lossBetween(positions, depths, from, to);
  const share = area / (length * tc);
  const lengthParameter = perRoot * length;
  const foliasFactor = foliasApi579({ lengthParameter });
  const RSF = (1 - share) / (1 - share / foliasFactor);
  finite(RSF, 'remaining strength factor', '');
  return {
    remainingStrengthFactor: RSF,
    from: start as Length,
    to: end as Length,
    length: length as Length,
    area: area as Area,
    lengthParameter,
    foliasFactor,
    reducedPressure: (MAWP * Math.min(1, RSF / RSFa)) as GaugePressure,
    accepted: RSF >= RSFa,
  };
}

export const localMetalLossProfileFormula = /* @__PURE__ */ formula<LocalMetalLossProfileInput, LocalMetalLossProfile>({
  id: 'pipe/local-metal-loss-profile',
  title: 'Remaining strength factor by API 579-1, Part 5, Level 2',
  search: ['lta', 'ffs', 'fitness for service', 'rsf', 'corrosion'],
  compute: localMetalLossProfile,
  equation: {
    algorithm:
      'least of (1 - A/A_0)/(1 - A/(A_0 M_t)) over all contiguous sub-lengths, A_0 = s t_c, M_t at lambda = 1.285 s/sqrt(D_i t_c)',
    winner: {
      name: 'the weakest sub-length',
      equation: {
        where: [{ symbol: 'A_0', kind: 'area', expression: 's * t_c' }],
        expression: '(1 - A / A_0) / (1 - A / (A_0 * M_t))',
      },
    },
  },
  inputs: {
    insideDiameter: { symbol: 'D_i', kind: 'length', name: 'inside diameter', sample: [0.05, 1.2] },
    correctedWall: {
      symbol: 't_c',
      kind: 'length',
      name: 'wall away from the loss, at end of life',
      sample: [0.008, 0.03],
    },
    futureAllowance: {
      symbol: 'FCA',
      kind: 'length',
      name: 'future corrosion allowance',
      sample: [0, 0.003],
      default: 0,
    },
    workingPressure: {
      symbol: 'MAWP',
      kind: 'gauge pressure',
      name: 'working pressure of the sound pipe',
      sample: [0, 15e6],
    },
    allowableFactor: {
      symbol: 'RSF_a',
      kind: 'number',
      name: 'allowable remaining strength factor',
      sample: [0.8, 1],
      default: 0.9,
    },
    leastWall: {
      symbol: 't_least',
      kind: 'length',
      name: 'least wall at the thinnest point',
      sample: [0.001, 0.0025],
      default: 0.0013,
    },
    distanceToDiscontinuity: {
      symbol: 'L_msd',
      kind: 'length',
      name: 'distance to the nearest discontinuity',
      sample: [0.2, 3],
      optional: true,
    },
    profile: {
      symbol: 'profile',
      kind: 'list',
      name: 'thinnest wall along the pipe',
      columns: { position: 'length', wall: 'length' },
    },
  },
  output: {
    remainingStrengthFactor: { symbol: 'RSF', kind: 'number', name: 'remaining strength factor' },
    from: { symbol: 'x_i', kind: 'length', name: 'start of the weakest sub-length' },
    to: { symbol: 'x_j', kind: 'length', name: 'end of the weakest sub-length' },
    length: { symbol: 's', kind: 'length', name: 'length of the weakest sub-length' },
    area: { symbol: 'A', kind: 'area', name: 'lost area on it' },
    lengthParameter: { symbol: 'lambda', kind: 'number', name: 'length parameter' },
    foliasFactor: { symbol: 'M_t', kind: 'number', name: 'bulging factor' },
    reducedPressure: { symbol: 'MAWP_r', kind: 'gauge pressure', name: 'reduced working pressure' },
    accepted: { symbol: 'accepted', kind: 'flag', name: 'acceptable without reduction' },
  },
  sources: [{ key: 'api-579', locator: 'Part 5, Level 2' }],
  evidence: {
    form: { tag: 'secondary', derived: 'brute-force search' },
    allowableFactor: { tag: 'secondary' },
    leastWall: { tag: 'secondary', note: '1.3 mm for pipe, 2.5 mm for vessels.' },
  },
  limits: [
    { sort: 'stop', text: 'Less than 0.2 of the wall left at a point.', source: { key: 'api-579', locator: 'Part 5' } },
    { sort: 'stop', text: 'Less than 1.3 mm of wall left in a pipe.', source: { key: 'api-579', locator: 'Part 5' } },
    {
      sort: 'stop',
      text: 'Closer than 1.8 sqrt(D_i t_c) to a structural discontinuity.',
      source: { key: 'api-579', locator: 'Part 5' },
    },
    {
      sort: 'note',
      text: 'Nothing shows that the nearest structural discontinuity is at least 1.8 sqrt(D_i t_c) away.',
      beyond: localMetalLossDiscontinuityUnchecked,
      source: { key: 'api-579', locator: 'Part 5' },
    },
  ],
});
