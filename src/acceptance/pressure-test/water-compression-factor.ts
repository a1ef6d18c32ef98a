import { below, formula, nonNegative, positive } from '../../formula/index.js';
import type { AbsolutePressure, GaugePressure, Ratio } from '../../quantity/index.js';

export interface WaterCompressionFactorInput {
  readonly pressure: GaugePressure;
  readonly compressibility?: Ratio | undefined;
  readonly referencePressure?: AbsolutePressure | undefined;
}

/**
 * Water that goes into a volume under pressure, over what fills it without.
 *
 * $$F_{wp} = \frac{1}{1 - c P / p_0}$$
 *
 * @param input.pressure          P, test pressure [Pa], >= 0
 * @param input.compressibility   c, loss of volume for each reference pressure [1], > 0; 4.5e-5 when not given
 * @param input.referencePressure p_0, one atmosphere of the source [Pa], > 0; 14.73 psi when not given
 * @returns factor, 1 or above [1]
 * @throws CalculationError `invalid-input` where the water would vanish
 * @remarks One compressibility for every temperature and pressure: good to a few per cent of the water that is added.
 * @see Pipeline Rules of Thumb Handbook, pp. 140 to 142
 */
export function waterCompressionFactor(input: WaterCompressionFactorInput): Ratio {
  const { pressure: P, compressibility: c = 4.5e-5 as Ratio } = input;
  const { referencePressure: p0 = 101559.77492836995 as AbsolutePressure } = input;
  nonNegative(P, 'pressure', 'Pa');
  positive(c, 'compressibility', '');
  positive(p0, 'referencePressure', 'Pa');
  const lost = (c * P) / p0;
  below(lost, 1, 'the whole volume', 'loss of volume', '');
  return (1 / (1 - lost)) as Ratio;
}

export const waterCompressionFactorFormula = /* @__PURE__ */ formula<WaterCompressionFactorInput, Ratio>({
  id: 'acceptance/water-compression-factor',
  title: 'Compression of the test water',
  compute: waterCompressionFactor,
  equation: { expression: '1 / (1 - c * P / p_0)' },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'test pressure', sample: [0, 30e6] },
    compressibility: {
      symbol: 'c',
      kind: 'ratio',
      name: 'loss of volume for each reference pressure',
      sample: [4e-5, 5e-5],
      default: 4.5e-5,
    },
    referencePressure: {
      symbol: 'p_0',
      kind: 'absolute pressure',
      name: 'reference pressure',
      sample: [95e3, 105e3],
      default: 101559.77492836995,
    },
  },
  output: { symbol: 'F_wp', kind: 'ratio', name: 'compression factor of water' },
  sources: [{ key: 'rules-of-thumb', locator: 'pp. 140 to 142' }],
  evidence: {
    form: { tag: 'published' },
    compressibility: { tag: 'published' },
    referencePressure: { tag: 'published' },
  },
  limits: [],
});
