import { finite, formula, positive } from '../../formula/index.js';
import type { Area, GaugePressure, Length, Stress } from '../../quantity/index.js';
import { checkDepthProfile, type DepthPoint, lossBetween, lossUpTo } from '../remaining-strength/depth-profile.js';
import { checkPipeWall } from '../remaining-strength/part-wall-defect.js';
import { weakestSubLength } from '../remaining-strength/weakest-sub-length.js';
import { modifiedFolias } from './folias-modified-b31g.js';

export interface EffectiveAreaInput {
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly flowStress: Stress;
  readonly profile: readonly DepthPoint[];
}

/** The failure pressure and the sub-length that gives it. */
export interface EffectiveArea {
  readonly failurePressure: GaugePressure;
  readonly from: Length;
  readonly to: Length;
  readonly length: Length;
  readonly area: Area;
  readonly foliasFactor: number;
}

/**
 * Failure pressure of a pipe with a measured depth profile: the lowest over every contiguous sub-length (effective area).
 *
 * $$P_f = \min_{i<j}\ S_{flow} \frac{2t}{D}\,\frac{1 - A_{ij}/(L_{ij} t)}{1 - A_{ij}/(L_{ij} t\,M_{ij})}$$
 *
 * with A the lost area between points i and j by the trapezoid rule and M of `foliasModifiedB31g` at L = x_j - x_i.
 *
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t [m], > 0 and < D/2
 * @param input.flowStress       S_flow [Pa], > 0
 * @param input.profile          at least two points (position, depth) [m] in order along the pipe; depths at most 0.8 t
 * @returns the failure pressure [Pa] with the winning sub-length: from, to, length [m], lost area [m2], bulging factor
 * @throws CalculationError `invalid-input`; `outside-validity` for a depth over 0.8 of the wall
 * @remarks The profile ends at zero depth if the loss ends there. Every point is the deepest on its ring (river bottom).
 * @see ASME B31G, Level 2; PRCI PR-3-805
 */
export function effectiveArea(input: EffectiveAreaInput): EffectiveArea {
  const { outsideDiameter: D, wallThickness: t, flowStress: S, profile } = input;
  checkPipeWall(D, t);
  positive(S, 'flowStress', 'Pa');
  checkDepthProfile(profile, t, 'ASME B31G, Level 2');
  const positions = new Float64Array(profile.length);
  const depths = new Float64Array(profile.length);
  for (let i = 0; i < profile.length; i++) {
    const point = profile[i] as DepthPoint;
    positions[i] = point.position;
    depths[i] = point.depth;
  }
  const [from, to] = weakestSubLength(positions, lossUpTo(positions, depths), t, (L) =>
    modifiedFolias((L / D) * (L / t)),
  );
  const start = positions[from] as number;
  const end = positions[to] as number;
  const length = end - start;
  const area = lossBetween(positions, depths, from, to);
  const share = area / (length * t);
  const foliasFactor = modifiedFolias((length / D) * (length / t));
  const failurePressure = (S * ((2 * t) / D) * (1 - share)) / (1 - share / foliasFactor);
  finite(failurePressure, 'failure pressure', 'Pa');
  finite(foliasFactor, 'bulging factor', '');
  return {
    failurePressure: failurePressure as GaugePressure,
    from: start as Length,
    to: end as Length,
    length: length as Length,
    area: area as Area,
    foliasFactor,
  };
}

export const effectiveAreaFormula = /* @__PURE__ */ formula<EffectiveAreaInput, EffectiveArea>({
  id: 'pipe/effective-area',
  title: 'Failure pressure by the effective area of a profile',
  search: ['river bottom', 'remaining strength', 'metal loss'],
  compute: effectiveArea,
  equation: {
    algorithm:
      'least of S_flow (2 t/D) (1 - A/A_0)/(1 - A/(A_0 M)) over all contiguous sub-lengths, A_0 = L t, M of modified B31G',
    winner: {
      name: 'the weakest sub-length',
      equation: {
        where: [{ symbol: 'A_0', kind: 'area', expression: 'L_eff * t' }],
        expression: 'S_flow * (2 * t / D) * (1 - A_eff / A_0) / (1 - A_eff / (A_0 * M))',
      },
    },
  },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.1, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.005, 0.03] },
    flowStress: { symbol: 'S_flow', kind: 'stress', name: 'flow stress', sample: [200e6, 700e6] },
    profile: {
      symbol: 'profile',
      kind: 'list',
      name: 'deepest loss along the pipe',
      columns: { position: 'length', depth: 'length' },
    },
  },
  output: {
    failurePressure: { symbol: 'P_f', kind: 'gauge pressure', name: 'failure pressure' },
    from: { symbol: 'x_i', kind: 'length', name: 'start of the weakest sub-length' },
    to: { symbol: 'x_j', kind: 'length', name: 'end of the weakest sub-length' },
    length: { symbol: 'L_eff', kind: 'length', name: 'effective length' },
    area: { symbol: 'A_eff', kind: 'area', name: 'lost area on the effective length' },
    foliasFactor: { symbol: 'M', kind: 'number', name: 'bulging factor' },
  },
  sources: [
    { key: 'asme-b31g', locator: 'Level 2' },
    { key: 'kiefner-vieth-1989', locator: 'effective area' },
    { key: 'cfr-49-192', locator: '192.712(b), which names the method' },
  ],
  evidence: {
    form: {
      tag: 'recalled',
      derived: 'brute-force search; the same search in API 579-1 terms reproduces a printed example',
    },
  },
  limits: [
    {
      sort: 'stop',
      text: 'Depth over 0.8 of the wall: repair or replace.',
      source: { key: 'asme-b31g', locator: 'Level 2' },
    },
  ],
});
