import { atMost, finite, formula, positive } from '../../formula/index.js';
import type { Length, Strain, Stress } from '../../quantity/index.js';
import {
  bondShearModulus,
  bondThickness,
  innerModulus,
  innerThickness,
  outerModulus,
  outerThickness,
} from './declared-inputs.js';
import { checkJoint, type Joint, lagOf } from './joint.js';

export interface TaperedEndShearInput extends Joint {
  readonly tipThickness: Length;
  readonly taperLength: Length;
  readonly strainApart: Strain;
}

/**
 * Largest shear stress in the bond at the tapered end of a long wrap.
 *
 * $$\frac{h}{G} N'' = \frac{N}{E_o t(x)} + \frac{N}{E_i t_i} - \varepsilon,\qquad N(0) = 0,\qquad \tau = N'$$
 *
 * @param input.innerModulus      E_i [Pa], > 0
 * @param input.innerThickness    t_i [m], > 0; half the thickness of a layer that is bonded on both its faces (double lap)
 * @param input.outerModulus      E_o [Pa], > 0
 * @param input.outerThickness    t_o, of one outer layer [m], > 0
 * @param input.bondShearModulus  G [Pa], > 0
 * @param input.bondThickness     h [m], > 0
 * @param input.tipThickness      t_0, of the outer layer at its end [m], > 0 and at most t_o
 * @param input.taperLength       l_t, over which it grows to t_o [m], > 0
 * @param input.strainApart       eps, by which the bare inner layer strains more than the free outer one, > 0
 * @returns shear stress [Pa]
 * @throws CalculationError `invalid-input`, also where the taper is more than 400 times the shear-lag length of its tip
 * @remarks On the middle of equal steps, a hundred to the shear-lag length of the tip, to 12 shear-lag lengths past the taper. A taper
 *   of no length is the blunt end.
 * @see Differences of a shear lag with a thickness that grows; own form
 */
export function taperedEndShear(input: TaperedEndShearInput): Stress {
  const { tipThickness: t0, taperLength: lt, strainApart: eps, outerThickness: to } = input;
  checkJoint(input);
  positive(t0, 'tipThickness', 'm');
  atMost(t0, to, 'the whole outer layer', 'tipThickness', 'm');
  positive(lt, 'taperLength', 'm');
  positive(eps, 'strainApart', '');
  const { inner, lag } = lagOf(input);
  const give = input.bondThickness / input.bondShearModulus;
  const tip = Math.sqrt((inner + 1 / (input.outerModulus * t0)) / give);
  const over = tip * (lt + 12 / lag);
  atMostSteps(over);
  const steps = Math.ceil(100 * over);
  const dx = (lt + 12 / lag) / steps;
  // Elimination from the tip: the force at one point as a share of the next one, and what is left.
  let [share, rest] = [0, 0];
  const passed: (readonly [number, number])[] = [];
  for (let i = 1; i < steps; i++) {
    const thickness = Math.min(to, t0 + ((to - t0) * i * dx) / lt);
    const across = ((inner + 1 / (input.outerModulus * thickness)) * (dx * dx)) / give;
    const diagonal = 2 + across - share;
    [share, rest] = [1 / diagonal, (rest + (eps * (dx * dx)) / give) / diagonal];
    passed.push([share, rest]);
  }
  // No shear at the far end: the last two forces are alike.
  let force = rest / (1 - share);
  for (const [part, left] of passed.toReversed()) force = part * force + left;
  // The outer layer grows from its tip on, and its force lags behind: the shear is greatest at the tip, where it is that of
  // the first half step and the slope of the shear there.
  const stress = force / dx + (eps * dx) / (2 * give);
  finite(stress, 'shear stress', 'Pa');
  return stress as Stress;
}

function atMostSteps(over: number): void {
  atMost(over, 400, 'as far as the steps reach', 'taperLength over the shear-lag length of the tip', '');
}

export const taperedEndShearFormula = /* @__PURE__ */ formula<TaperedEndShearInput, Stress>({
  id: 'laminate/tapered-end-shear',
  title: 'Largest shear stress at the tapered end of a wrap',
  search: ['chamfer', 'peel', 'debond'],
  compute: taperedEndShear,
  equation: {
    algorithm:
      'the force in the outer layer by differences over equal steps, none at the tip and none passed 12 shear-lag lengths past the taper; its steepest slope',
  },
  inputs: {
    innerModulus,
    innerThickness,
    outerModulus,
    outerThickness,
    bondShearModulus,
    bondThickness,
    tipThickness: { symbol: 't_0', kind: 'length', name: 'thickness at the tip', sample: [0.0005, 0.002] },
    taperLength: { symbol: 'l_t', kind: 'length', name: 'length of the taper', sample: [0.01, 0.1] },
    strainApart: { symbol: 'eps', kind: 'strain', name: 'strain apart', sample: [1e-4, 2e-3] },
  },
  output: { symbol: 'tau', kind: 'stress', name: 'largest shear stress' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'march of force and shear from the tip, shot at the far end' } },
  limits: [],
});
