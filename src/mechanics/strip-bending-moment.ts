import { finite, formula, positive, within } from '../formula/index.js';
import type { Length, Modulus, Moment } from '../quantity/index.js';

export interface StripBendingMomentInput {
  readonly modulus: Modulus;
  readonly width: Length;
  readonly thickness: Length;
  readonly radius: Length;
  readonly poissonRatio: number;
}

/**
 * Bending moment that holds a flat strip elastically on a round surface.
 *
 * $$M = \frac{E w t^3}{6 (1 - \nu^2)(2R + t)}$$
 *
 * @param input.modulus E, modulus of the strip [Pa], > 0
 * @param input.width w, width of the strip [m], > 0
 * @param input.thickness t, thickness of the strip [m], > 0
 * @param input.radius R, radius of the surface that the strip is bent on [m], > 0
 * @param input.poissonRatio nu, Poisson's ratio of a sheet too wide to curl at its edges; 0 for a narrow strip, 0
 *   to 0.5
 * @returns bending moment [N m]
 * @throws CalculationError `invalid-input`
 * @remarks The curvature is that of the middle of the strip, at R + t/2.
 * @see Gere, Mechanics of Materials; a strip on a drum, on a public page
 */
export function stripBendingMoment(input: StripBendingMomentInput): Moment {
  const { modulus: E, width: w, thickness: t, radius: R, poissonRatio: nu } = input;
  positive(E, 'modulus', 'Pa');
  positive(w, 'width', 'm');
  positive(t, 'thickness', 'm');
  positive(R, 'radius', 'm');
  within(nu, 0, 0.5, 'poissonRatio', '');
  const moment = (E * w * t * t * t) / (6 * (1 - nu * nu) * (2 * R + t));
  finite(moment, 'moment', 'N m');
  return moment as Moment;
}

export const stripBendingMomentFormula = /* @__PURE__ */ formula<StripBendingMomentInput, Moment>({
  id: 'mechanics/strip-bending-moment',
  title: 'Moment that bends a strip to a radius',
  search: ['bend a strip', 'springback'],
  compute: stripBendingMoment,
  equation: { expression: 'E * w * t^3 / (6 * (1 - nu^2) * (2 * R + t))' },
  inputs: {
    modulus: { symbol: 'E', kind: 'modulus', name: 'modulus of the strip', sample: [1e9, 210e9] },
    width: { symbol: 'w', kind: 'length', name: 'width of the strip', sample: [0.005, 0.3] },
    thickness: { symbol: 't', kind: 'length', name: 'thickness of the strip', sample: [2e-4, 0.003] },
    radius: {
      symbol: 'R',
      kind: 'length',
      name: 'radius of the surface that the strip is bent on',
      sample: [0.02, 0.6],
    },
    poissonRatio: {
      symbol: 'nu',
      kind: 'number',
      name: "Poisson's ratio of a sheet too wide to curl at its edges; 0 for a narrow strip",
      sample: [0, 0.4],
    },
  },
  output: { symbol: 'M', kind: 'moment', name: 'bending moment' },
  sources: [
    { key: 'gere', locator: 'problems 5.4-1 and 5.5-2' },
    { key: 'web-seal-examples', locator: 'strip on a drum' },
  ],
  evidence: { form: { tag: 'secondary', derived: 'stress of the bent strip summed over its thickness' } },
  limits: [],
});
