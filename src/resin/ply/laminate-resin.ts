import { atMost, finite, formula, nonNegative, positive } from '../../formula/index.js';
import type { Area, ArealWeight, Mass, Ratio } from '../../quantity/index.js';

export interface LaminateResinInput {
  readonly fabricArea: Area;
  readonly arealWeight: ArealWeight;
  readonly fibreMassFraction: Ratio;
  readonly waste?: Ratio | undefined;
  readonly primerMass?: Mass | undefined;
}

/**
 * Mass of mixed resin for all plies of a wet lay-up, with waste and a primer coat.
 *
 * $$m = A W_f \frac{1 - w_f}{w_f} (1 + \omega) + m_p$$
 *
 * @param input.fabricArea A, area of fabric in all plies [m2], > 0
 * @param input.arealWeight W_f, mass of dry fabric per area of one ply [kg/m2], > 0
 * @param input.fibreMassFraction w_f, mass of fibre in the mass of the laminate [1], above 0, at most 1
 * @param input.waste omega, waste as a part of the amount [1], >= 0; 0.15 when not given
 * @param input.primerMass m_p, resin of the primer coat [kg], >= 0; 0 when not given
 * @returns mass of mixed resin [kg]
 * @throws CalculationError `invalid-input`
 * @remarks For tape the area is tape width times tape length; for sheet the area of the sheets, laps included.
 * @see worked examples of mixing on public web pages
 */
export function laminateResin(input: LaminateResinInput): Mass {
  const {
    fabricArea: A,
    arealWeight: Wf,
    fibreMassFraction: wF,
    waste: omega = 0.15 as Ratio,
    primerMass: mP = 0 as Mass,
  } = input;
  positive(A, 'fabricArea', 'm2');
  positive(Wf, 'arealWeight', 'kg/m2');
  positive(wF, 'fibreMassFraction', '');
  atMost(wF, 1, 'the whole', 'fibreMassFraction', '');
  nonNegative(omega, 'waste', '');
  nonNegative(mP, 'primerMass', 'kg');
  const m = ((A * Wf * (1 - wF)) / wF) * (1 + omega) + mP;
  finite(m, 'laminateResin', 'kg');
  return m as Mass;
}

export const laminateResinFormula = /* @__PURE__ */ formula<LaminateResinInput, Mass>({
  id: 'resin/laminate-resin',
  title: 'Resin for a wet lay-up',
  search: ['wet out', 'how much resin'],
  compute: laminateResin,
  equation: { expression: 'A * W_f * (1 - w_f) / w_f * (1 + omega) + m_p' },
  inputs: {
    fabricArea: { symbol: 'A', kind: 'area', name: 'area of fabric in all plies', sample: [0.1, 50] },
    arealWeight: {
      symbol: 'W_f',
      kind: 'areal weight',
      name: 'mass of dry fabric per area of one ply',
      sample: [0.1, 1.5],
    },
    fibreMassFraction: {
      symbol: 'w_f',
      kind: 'ratio',
      name: 'mass of fibre in the mass of the laminate',
      sample: [0.2, 0.85],
    },
    waste: { symbol: 'omega', kind: 'ratio', name: 'waste as a part of the amount', sample: [0, 0.4], default: 0.15 },
    primerMass: { symbol: 'm_p', kind: 'mass', name: 'resin of the primer coat', sample: [0, 2], default: 0 },
  },
  output: { symbol: 'm', kind: 'mass', name: 'mass of mixed resin' },
  sources: [{ key: 'web-mixing-examples', locator: 'resin for a fibre mass fraction of 0.30' }],
  evidence: { form: { tag: 'secondary', derived: 'mass balance' }, waste: { tag: 'practice', note: '10 to 25 %' } },
  limits: [],
});
