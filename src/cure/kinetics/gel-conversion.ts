import { formula, positive, refuse, within } from '../../formula/index.js';
import type { Ratio } from '../../quantity/index.js';

export interface GelConversionInput {
  readonly epoxyFunctionality: number;
  readonly hardenerFunctionality: number;
}

/**
 * Degree of cure at which a stoichiometric two-part mix gels (Flory and Stockmayer).
 *
 * $$a_{gel} = \frac{1}{\sqrt{(f_e - 1)(f_a - 1)}}$$
 *
 * @param input.epoxyFunctionality    f_e, reactive groups per resin molecule, > 1
 * @param input.hardenerFunctionality f_a, active hydrogens per hardener molecule, > 1
 * @returns degree of cure at the gel point
 * @throws CalculationError `invalid-input`; `no-solution` for groups that make chains only
 * @remarks Equal reactivity, no loops, stoichiometric mix. Gel time follows by running the kinetics to this degree.
 * @see Flory and Stockmayer, as recalled
 */
export function gelConversion(input: GelConversionInput): Ratio {
  const { epoxyFunctionality: fe, hardenerFunctionality: fa } = input;
  positive(fe - 1, 'epoxyFunctionality less 1', '');
  positive(fa - 1, 'hardenerFunctionality less 1', '');
  within(fe, 1, 100, 'epoxyFunctionality', '');
  within(fa, 1, 100, 'hardenerFunctionality', '');
  const branching = (fe - 1) * (fa - 1);
  if (!(branching > 1)) {
    refuse({
      code: 'no-solution',
      parameter: 'hardenerFunctionality',
      value: fa,
      unit: '',
      constraint:
        'with this resin must be high enough to branch: two groups on each side only make chains, which never gel',
    });
  }
  return (1 / Math.sqrt(branching)) as Ratio;
}

export const gelConversionFormula = /* @__PURE__ */ formula<GelConversionInput, Ratio>({
  id: 'cure/gel-conversion',
  title: 'Degree of cure at the gel point',
  compute: gelConversion,
  equation: { expression: '1 / sqrt((f_e - 1) * (f_a - 1))' },
  inputs: {
    epoxyFunctionality: { symbol: 'f_e', kind: 'number', name: 'groups of the resin', sample: [2, 4] },
    hardenerFunctionality: { symbol: 'f_a', kind: 'number', name: 'active hydrogens of the hardener', sample: [3, 6] },
  },
  output: { symbol: 'a_gel', kind: 'ratio', name: 'degree of cure at the gel point' },
  sources: [{ key: 'flory-stockmayer', locator: 'gel point' }],
  evidence: { form: { tag: 'recalled' } },
  limits: [{ sort: 'stop', text: 'Two groups on each side only make chains, which never gel.' }],
});
