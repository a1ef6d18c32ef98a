import { finite, formula, positive } from '../../formula/index.js';
import type { Ratio } from '../../quantity/index.js';

export interface WaterWarmingFactorInput {
  readonly pipeFactor: Ratio;
  readonly waterFactor: Ratio;
}

/**
 * Water that fills a line at its temperature, over what fills it at the reference temperature, both measured there.
 *
 * $$F_{pwt} = \frac{F_{pt}}{F_{wt}}$$
 *
 * @param input.pipeFactor  F_pt, warming factor of the pipe [1], > 0
 * @param input.waterFactor F_wt, volume factor of water [1], > 0
 * @returns factor [1]
 * @throws CalculationError `invalid-input`
 * @remarks The handbook words it as a product; its own number is the quotient, which is also what conserves the water.
 * @see Pipeline Rules of Thumb Handbook, pp. 140 to 142
 */
export function waterWarmingFactor(input: WaterWarmingFactorInput): Ratio {
  const { pipeFactor: Fpt, waterFactor: Fwt } = input;
  positive(Fpt, 'pipeFactor', '');
  positive(Fwt, 'waterFactor', '');
  const F = Fpt / Fwt;
  finite(F, 'warming factor', '');
  return F as Ratio;
}

export const waterWarmingFactorFormula = /* @__PURE__ */ formula<WaterWarmingFactorInput, Ratio>({
  id: 'acceptance/water-warming-factor',
  title: 'Warming of pipe and water under test',
  compute: waterWarmingFactor,
  equation: { expression: 'F_pt / F_wt' },
  inputs: {
    pipeFactor: { symbol: 'F_pt', kind: 'ratio', name: 'warming factor of the pipe', sample: [0.999, 1.001] },
    waterFactor: { symbol: 'F_wt', kind: 'ratio', name: 'volume factor of water', sample: [0.999, 1.006] },
  },
  output: { symbol: 'F_pwt', kind: 'ratio', name: 'warming factor of pipe and water' },
  sources: [{ key: 'rules-of-thumb', locator: 'pp. 140 to 142' }],
  evidence: {
    form: { tag: 'published', derived: 'the mass of water in the line stays', note: 'printed as a product' },
  },
  limits: [],
});
