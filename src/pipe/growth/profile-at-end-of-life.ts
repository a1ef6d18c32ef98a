import { formula, nonNegative, positive } from '../../formula/index.js';
import type { CorrosionRate, Length, Time } from '../../quantity/index.js';
import { checkPointCount, checkPosition, type DepthPoint } from '../remaining-strength/depth-profile.js';

export interface ProfileAtEndOfLifeInput {
  readonly profile: readonly DepthPoint[];
  readonly depthRate: CorrosionRate;
  readonly lengthRate: CorrosionRate;
  readonly life: Time;
  readonly greatestDepth: Length;
  readonly readingError?: Length;
}

/** The profile as it will be, and how long it is then. */
export interface ProfileAtEndOfLife {
  readonly length: Length;
  readonly profile: readonly DepthPoint[];
}

/**
 * Depth profile of a metal loss at the end of life: each end moves outwards, each point deepens.
 *
 * $$x_1' = x_1 - r_L\,\tau,\quad x_n' = x_n + r_L\,\tau,\quad d_i' = \min(d_i + e + r_d\,\tau,\ d_{max})$$
 *
 * @param input.profile        points (position x, depth d) [m] in order along the pipe, at least two
 * @param input.depthRate      r_d, growth of the depth [m/s], >= 0
 * @param input.lengthRate     r_L, growth at each end [m/s], >= 0
 * @param input.life           tau, design life of the repair [s], >= 0
 * @param input.greatestDepth  d_max, depth of the whole defect at the end of life, at most the wall [m], > 0
 * @param input.readingError   e, how far a depth may have been read short [m], >= 0; 0 unless given
 * @returns length of the profile [m] and its points
 * @throws CalculationError `invalid-input`
 * @remarks A first or last point of depth 0 is sound metal beside the loss and stays sound; a point of depth 0 between others
 *   deepens like them. The points between the ends keep their places.
 */
export function profileAtEndOfLife(input: ProfileAtEndOfLifeInput): ProfileAtEndOfLife {
  const { profile, depthRate, lengthRate, life, greatestDepth: dmax, readingError = 0 } = input;
  checkPointCount(profile);
  nonNegative(depthRate, 'depthRate', 'm/s');
  nonNegative(lengthRate, 'lengthRate', 'm/s');
  nonNegative(life, 'life', 's');
  positive(dmax, 'greatestDepth', 'm');
  nonNegative(readingError, 'readingError', 'm');
  const [deepening, shift] = [readingError + depthRate * life, lengthRate * life];
  const last = profile.length - 1;
  const points: DepthPoint[] = [];
  let before = Number.NEGATIVE_INFINITY;
  for (let i = 0; i <= last; i++) {
    const { position: x, depth: d } = profile[i] as DepthPoint;
    checkPosition(x, before, i);
    nonNegative(d, `profile[${i}].depth`, 'm');
    const isEnd = i === 0 || i === last;
    const position = i === 0 ? x - shift : i === last ? x + shift : x;
    const depth = isEnd && d === 0 ? 0 : Math.min(d + deepening, dmax);
    points.push({ position: position as Length, depth: depth as Length });
    before = x;
  }
  const length = (points[last] as DepthPoint).position - (points[0] as DepthPoint).position;
  positive(length, 'length of the profile', 'm');
  return { length: length as Length, profile: points };
}

export const profileAtEndOfLifeFormula = /* @__PURE__ */ formula<ProfileAtEndOfLifeInput, ProfileAtEndOfLife>({
  id: 'pipe/profile-at-end-of-life',
  title: 'Depth profile of the metal loss at the end of life',
  search: ['corrosion growth', 'river bottom'],
  compute: profileAtEndOfLife,
  equation: {
    algorithm:
      'the first point moves back and the last one on by r_L T; every depth grows by e + r_d T, up to d_max; an end of depth 0 stays sound',
  },
  inputs: {
    profile: {
      symbol: 'profile',
      kind: 'list',
      name: 'depths along the pipe today',
      columns: { position: 'length', depth: 'length' },
    },
    depthRate: { symbol: 'r_d', kind: 'corrosion rate', name: 'growth of the depth', sample: [0, 2e-11] },
    lengthRate: { symbol: 'r_L', kind: 'corrosion rate', name: 'growth at each end', sample: [0, 2e-11] },
    life: { symbol: 'T', kind: 'time', name: 'design life of the repair', sample: [0, 1e9] },
    greatestDepth: {
      symbol: 'd_max',
      kind: 'length',
      name: 'depth of the defect at the end of life',
      sample: [0.002, 0.03],
    },
    readingError: { symbol: 'e', kind: 'length', name: 'error of the depths', sample: [0, 0.001], default: 0 },
  },
  output: {
    length: { symbol: 'L_eol', kind: 'length', name: 'length of the profile at the end of life' },
    profile: {
      symbol: 'profile_eol',
      kind: 'list',
      name: 'depths along the pipe at the end of life',
      columns: { position: 'length', depth: 'length' },
    },
  },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'growth in small steps of time' } },
  limits: [],
});
