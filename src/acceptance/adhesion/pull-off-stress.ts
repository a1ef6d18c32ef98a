import { finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Force, Length, Stress } from '../../quantity/index.js';

export interface PullOffStressInput {
  readonly force: Force;
  readonly diameter: Length;
}

/**
 * Tensile stress at which a dolly was pulled off.
 *
 * $$\sigma = \frac{4 F}{\pi d^2}$$
 *
 * @param input.force    F, force at break [N], >= 0
 * @param input.diameter d, diameter of the dolly [m], > 0
 * @returns tensile stress over the face of the dolly [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks Destructive: pull on a witness plate. Report the place of the break with it: adhesive, cohesive or glue.
 * @see ISO 4624
 */
export function pullOffStress(input: PullOffStressInput): Stress {
  const { force: F, diameter: d } = input;
  nonNegative(F, 'force', 'N');
  positive(d, 'diameter', 'm');
  const sigma = (4 * F) / (Math.PI * d * d);
  finite(sigma, 'pull-off stress', 'Pa');
  return sigma as Stress;
}

/** Whether the dolly is one of the small ones, of which about ten are needed. */
export function pullOffStressSmallDolly(input: PullOffStressInput): boolean {
  return input.diameter < 0.02;
}

export const pullOffStressFormula = /* @__PURE__ */ formula<PullOffStressInput, Stress>({
  id: 'acceptance/pull-off-stress',
  title: 'Pull-off stress at break',
  search: ['adhesion', 'dolly test', 'bond test'],
  compute: pullOffStress,
  equation: { expression: '4 * F / (pi * d^2)' },
  inputs: {
    force: { symbol: 'F', kind: 'force', name: 'force at break', sample: [0, 10000] },
    diameter: { symbol: 'd', kind: 'length', name: 'diameter of the dolly', sample: [0.007, 0.05] },
  },
  output: { symbol: 'sigma', kind: 'stress', name: 'pull-off stress' },
  sources: [{ key: 'iso-4624', locator: 'calculation of the strength' }],
  evidence: {
    form: { tag: 'secondary', derived: 'force over the face of the dolly' },
    pullOffStressSmallDolly: { tag: 'secondary' },
  },
  limits: [
    {
      sort: 'note',
      text: 'A dolly below 20 mm scatters: about ten tests.',
      beyond: pullOffStressSmallDolly,
      source: { key: 'iso-4624', locator: 'number of tests' },
    },
  ],
});
