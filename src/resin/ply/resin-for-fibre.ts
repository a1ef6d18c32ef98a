import { atMost, formula, positive } from '../../formula/index.js';
import type { Mass, Ratio } from '../../quantity/index.js';

export interface ResinForFibre {
  readonly resinMass: Mass;
  readonly laminateMass: Mass;
}

export interface ResinForFibreInput {
  readonly fibreMass: Mass;
  readonly fibreMassFraction: Ratio;
}

/**
 * Mass of resin that goes with a mass of dry fibre at a fibre mass fraction.
 *
 * $$m_m = m_f \frac{1 - w_f}{w_f}$$
 *
 * @param input.fibreMass m_f, mass of dry fibre [kg], > 0
 * @param input.fibreMassFraction w_f, mass of fibre in the mass of the laminate [1], above 0, at most 1
 * @returns mass of resin and mass of laminate [kg]
 * @throws CalculationError `invalid-input`
 * @see worked examples of mixing on public web pages
 */
export function resinForFibre(input: ResinForFibreInput): ResinForFibre {
  const { fibreMass: mF, fibreMassFraction: wF } = input;
  positive(mF, 'fibreMass', 'kg');
  positive(wF, 'fibreMassFraction', '');
  atMost(wF, 1, 'the whole', 'fibreMassFraction', '');
  const laminateMass = mF / wF;
  positive(laminateMass, 'laminateMass', 'kg');
  return { resinMass: ((mF * (1 - wF)) / wF) as Mass, laminateMass: laminateMass as Mass };
}

export const resinForFibreFormula = /* @__PURE__ */ formula<ResinForFibreInput, ResinForFibre>({
  id: 'resin/resin-for-fibre',
  title: 'Resin for a mass of fibre',
  search: ['wet out', 'how much resin'],
  compute: resinForFibre,
  equation: { expression: 'm_f * (1 - w_f) / w_f' },
  inputs: {
    fibreMass: { symbol: 'm_f', kind: 'mass', name: 'mass of dry fibre', sample: [0.1, 50] },
    fibreMassFraction: {
      symbol: 'w_f',
      kind: 'ratio',
      name: 'mass of fibre in the mass of the laminate',
      sample: [0.2, 0.85],
    },
  },
  output: {
    resinMass: { symbol: 'm_m', kind: 'mass', name: 'mass of resin' },
    laminateMass: { symbol: 'm', kind: 'mass', name: 'mass of laminate' },
  },
  sources: [{ key: 'web-mixing-examples', locator: 'resin for a fibre mass fraction of 0.30' }],
  evidence: { form: { tag: 'secondary', derived: 'mass balance' } },
  limits: [],
});
