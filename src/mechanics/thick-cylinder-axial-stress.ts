import { finite, formula, nonNegative, oneOf, positive, within } from '../formula/index.js';
import type { GaugePressure, Length, Stress } from '../quantity/index.js';

/** What holds the ends: caps that carry the pressure thrust, sliding seals, or anchors that allow no axial strain. */
export type CylinderEnds = 'closed' | 'open' | 'restrained';

export interface ThickCylinderAxialStressInput {
  readonly internalPressure: GaugePressure;
  readonly externalPressure?: GaugePressure | undefined;
  readonly innerRadius: Length;
  readonly outerRadius: Length;
  readonly ends: CylinderEnds;
  readonly poissonRatio?: number | undefined;
}

const choices = ['closed', 'open', 'restrained'] as const satisfies readonly CylinderEnds[];

/**
 * Axial stress in a thick cylinder under internal and external pressure, by what holds its ends.
 *
 * $$A = \frac{P_i r_i^2 - P_o r_o^2}{r_o^2 - r_i^2}, \qquad \sigma_z = A,\ 0,\ 2 \nu A$$
 *
 * @param input.internalPressure  P_i [Pa], >= 0
 * @param input.externalPressure  P_o [Pa], >= 0; 0 when left out
 * @param input.innerRadius       r_i [m], > 0
 * @param input.outerRadius       r_o [m], > r_i
 * @param input.ends              `closed`, `open` or `restrained`
 * @param input.poissonRatio      nu, from 0 to 0.5; 0.3 when left out; used for restrained ends only
 * @returns axial stress [Pa], the same over the whole wall, tension positive
 * @throws CalculationError `invalid-input`
 * @remarks Pressure only: the thermal stress of a restrained line is a term of its own. Open ends are sliding seals.
 * @see open lecture notes on cylinders (Lame equations, end conditions)
 */
export function thickCylinderAxialStress(input: ThickCylinderAxialStressInput): Stress {
  const { internalPressure: Pi, externalPressure: Po = 0, innerRadius: ri, outerRadius: ro } = input;
  const { ends, poissonRatio: nu = 0.3 } = input;
  nonNegative(Pi, 'internalPressure', 'Pa');
  nonNegative(Po, 'externalPressure', 'Pa');
  positive(ri, 'innerRadius', 'm');
  positive(ro, 'outerRadius', 'm');
  positive(ro - ri, 'outerRadius - innerRadius', 'm');
  oneOf(ends, choices, 'ends');
  within(nu, 0, 0.5, 'poissonRatio', '');
  const A = (Pi * ri * ri - Po * ro * ro) / ((ro - ri) * (ro + ri));
  finite(A, 'axial stress', 'Pa');
  return (ends === 'closed' ? A : ends === 'open' ? 0 : 2 * nu * A) as Stress;
}

export const thickCylinderAxialStressFormula = /* @__PURE__ */ formula<ThickCylinderAxialStressInput, Stress>({
  id: 'mechanics/thick-cylinder-axial-stress',
  title: 'Axial stress in a thick cylinder',
  search: ['lame', 'thick wall'],
  compute: thickCylinderAxialStress,
  equation: {
    where: [{ symbol: 'A', kind: 'stress', expression: '(P_i * r_i^2 - P_o * r_o^2) / ((r_o - r_i) * (r_o + r_i))' }],
    branches: [
      { when: 'ends == "closed"', expression: 'A' },
      { when: 'ends == "open"', expression: '0 * A' },
      { expression: '2 * nu * A' },
    ],
  },
  inputs: {
    internalPressure: { symbol: 'P_i', kind: 'gauge pressure', name: 'internal pressure', sample: [0, 100e6] },
    externalPressure: {
      symbol: 'P_o',
      kind: 'gauge pressure',
      name: 'external pressure',
      sample: [0, 30e6],
      default: 0,
    },
    innerRadius: { symbol: 'r_i', kind: 'length', name: 'inner radius', sample: [0.05, 0.3], usual: [0.005, 0.9] },
    outerRadius: { symbol: 'r_o', kind: 'length', name: 'outer radius', sample: [0.25, 0.6], usual: [0.005, 0.9] },
    ends: { symbol: 'ends', kind: 'choice', name: 'what holds the ends', choices: ['closed', 'open', 'restrained'] },
    poissonRatio: { symbol: 'nu', kind: 'number', name: "Poisson's ratio", sample: [0.2, 0.4], default: 0.3 },
  },
  output: { symbol: 'sigma_z', kind: 'stress', name: 'axial stress' },
  sources: [{ key: 'mechanics-notes', locator: 'Lame equations, end conditions' }],
  evidence: {
    form: {
      tag: 'secondary',
      derived: 'force balance on an end cap; plane strain from the finite-difference solution',
    },
    poissonRatio: { tag: 'practice', note: '0.3 for steel' },
  },
  limits: [],
});
