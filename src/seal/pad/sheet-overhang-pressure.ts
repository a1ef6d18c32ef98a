import { formula, positive, within } from '../../formula/index.js';
import type { GaugePressure, Length, Stress } from '../../quantity/index.js';

export interface SheetOverhangPressureInput {
  readonly overhang: Length;
  readonly thickness: Length;
  readonly strength: Stress;
  readonly factor: number;
}

/**
 * Pressure that a sheet carries where it reaches beyond its bands: a strip that is clamped under the band and free at its
 * end, in bending, with a stated factor.
 *
 * $$p = \frac{S}{3 f}\left(\frac{t}{a}\right)^2$$
 *
 * @param input.overhang  a, length of the pad beyond the bands, to one side [m], > 0
 * @param input.thickness t, thickness of the sheet [m], > 0
 * @param input.strength  S, strength of the sheet that the factor counts from [Pa], > 0
 * @param input.factor    f, factor on that strength, 1 or more; no default
 * @returns pressure that the overhang carries [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks On the safe side: the sheet is curved with the pipe, which makes it stiffer than a flat strip, and the pressure
 *   under a round pad acts on less than the whole width.
 * @see Timoshenko, Strength of Materials, Part I, cantilever under a uniform load
 */
export function sheetOverhangPressure(input: SheetOverhangPressureInput): GaugePressure {
  const { overhang: a, thickness: t, strength: S, factor: f } = input;
  positive(a, 'overhang', 'm');
  positive(t, 'thickness', 'm');
  positive(S, 'strength', 'Pa');
  within(f, 1, 100, 'factor', '');
  const slenderness = a / t;
  const pressure = S / (3 * f * slenderness * slenderness);
  positive(pressure, 'pressure', 'Pa');
  return pressure as GaugePressure;
}

export const sheetOverhangPressureFormula = /* @__PURE__ */ formula<SheetOverhangPressureInput, GaugePressure>({
  id: 'seal/sheet-overhang-pressure',
  title: 'Pressure that a sheet carries beyond its bands',
  compute: sheetOverhangPressure,
  equation: { expression: 'S / (3 * f) * (t / a)^2' },
  inputs: {
    overhang: { symbol: 'a', kind: 'length', name: 'pad beyond the bands, to one side', sample: [0.002, 0.06] },
    thickness: { symbol: 't', kind: 'length', name: 'thickness of the sheet', sample: [3e-4, 0.006] },
    strength: {
      symbol: 'S',
      kind: 'stress',
      name: 'strength of the sheet that the factor counts from',
      sample: [100e6, 1e9],
    },
    factor: { symbol: 'f', kind: 'number', name: 'factor on the strength of the sheet', sample: [1, 4] },
  },
  output: { symbol: 'p', kind: 'gauge pressure', name: 'pressure that the overhang carries' },
  sources: [{ key: 'timoshenko', locator: 'cantilever, uniform load' }],
  evidence: { form: { tag: 'secondary', derived: 'moments of the strip summed up slice by slice' } },
  limits: [],
});
