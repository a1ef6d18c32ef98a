import { refuse } from '../formula/index.js';

/** The product of both Poisson's ratios, nu_ca nu_ac; refused from 1 upward, which no laminate can have. */
export function checkReciprocity(poissonRatio: number, hoopModulus: number, axialModulus: number): number {
  const product = (poissonRatio * poissonRatio * axialModulus) / hoopModulus;
  if (product < 1) return product;
  refuse({
    code: 'invalid-input',
    parameter: 'poissonRatio',
    value: poissonRatio,
    unit: '',
    constraint: 'must be below {limit} with these moduli',
    limit: Math.sqrt(hoopModulus / axialModulus),
  });
}
