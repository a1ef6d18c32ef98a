import { formula, positive } from '../../formula/index.js';
import type { Length, Stress } from '../../quantity/index.js';
import { modifiedFolias } from '../b31g/folias-modified-b31g.js';
import { checkPipeWall } from '../remaining-strength/part-wall-defect.js';

export interface ThroughWallSlotInput {
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly flowStress: Stress;
  readonly defectLength: Length;
}

/**
 * Hoop stress at which a slot through the wall, along the pipe, tears open.
 *
 * $$\sigma_f = \frac{S_{flow}}{M}$$
 *
 * with M the three-term bulging factor of `foliasModifiedB31g`.
 *
 * @param input.outsideDiameter  D [m], > 0
 * @param input.wallThickness    t [m], > 0 and < D/2
 * @param input.flowStress       S_flow [Pa], > 0
 * @param input.defectLength     L, along the pipe [m], > 0
 * @returns hoop stress at failure [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks The pipe leaks already; this tells whether the leak stays a leak. For tough pipe: a brittle one tears earlier.
 * @see NG-18 through-wall flaw equation
 */
export function throughWallSlot(input: ThroughWallSlotInput): Stress {
  const { outsideDiameter: D, wallThickness: t, flowStress: S, defectLength: L } = input;
  checkPipeWall(D, t);
  positive(S, 'flowStress', 'Pa');
  positive(L, 'defectLength', 'm');
  return (S / modifiedFolias((L / D) * (L / t))) as Stress;
}

export const throughWallSlotFormula = /* @__PURE__ */ formula<ThroughWallSlotInput, Stress>({
  id: 'pipe/through-wall-slot',
  title: 'Hoop stress at which a through-wall slot tears open',
  search: ['crack', 'rupture', 'folias'],
  compute: throughWallSlot,
  equation: {
    where: [{ symbol: 'z', kind: 'number', expression: 'L^2 / (D * t)' }],
    branches: [
      { when: 'z <= 50', expression: 'S_flow / sqrt(1 + 0.6275 * z - 0.003375 * z^2)' },
      { expression: 'S_flow / (0.032 * z + 3.3)' },
    ],
  },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.1, 1.2] },
    wallThickness: { symbol: 't', kind: 'length', name: 'wall thickness', sample: [0.005, 0.03] },
    flowStress: { symbol: 'S_flow', kind: 'stress', name: 'flow stress', sample: [200e6, 700e6] },
    defectLength: { symbol: 'L', kind: 'length', name: 'length of the slot along the pipe', sample: [0.01, 1.2] },
  },
  output: { symbol: 'sigma_f', kind: 'stress', name: 'hoop stress at failure' },
  sources: [{ key: 'kiefner-vieth-1989', locator: 'NG-18 through-wall flaw equation' }],
  evidence: { form: { tag: 'recalled' } },
  limits: [],
});
