import { atMost, formula, nonNegative, positive, refuse } from '../../formula/index.js';
import type { Length, Volume } from '../../quantity/index.js';

export interface CollarVolumeInput {
  readonly outsideDiameter: Length;
  readonly thickness: Length;
  readonly axialLength: Length;
  readonly patchLength?: Length | undefined;
  readonly patchWidth?: Length | undefined;
  readonly patchThickness?: Length | undefined;
  readonly defectVolume?: Volume | undefined;
}

/**
 * Volume of filler round a pipe, with a thicker zone over the defect and the defect itself filled.
 *
 * $$V = \pi t (D + t) L + a b (t_p - t) + V_d$$
 *
 * @param input.outsideDiameter D, outside diameter of the pipe [m], > 0
 * @param input.thickness t, thickness of the collar [m], >= 0
 * @param input.axialLength L, length of the collar along the pipe [m], > 0
 * @param input.patchLength a, length of the thicker zone along the pipe [m], >= 0 and <= L; 0 when not given
 * @param input.patchWidth b, width of the thicker zone round the pipe [m], >= 0 and <= pi D; 0 when not given
 * @param input.patchThickness t_p, thickness of the thicker zone [m], >= t where there is a zone; 0 when not given
 * @param input.defectVolume V_d, volume of the defect to fill [m3], >= 0; 0 when not given
 * @returns volume of filler, without waste [m3]
 * @throws CalculationError `invalid-input`
 * @remarks The zone is laid out flat: its curvature adds less than t_p/D of its own volume.
 */
export function collarVolume(input: CollarVolumeInput): Volume {
  const {
    outsideDiameter: D,
    thickness: t,
    axialLength: L,
    patchLength: a = 0 as Length,
    patchWidth: b = 0 as Length,
    patchThickness: tP = 0 as Length,
    defectVolume: Vd = 0 as Volume,
  } = input;
  positive(D, 'outsideDiameter', 'm');
  nonNegative(t, 'thickness', 'm');
  positive(L, 'axialLength', 'm');
  nonNegative(a, 'patchLength', 'm');
  nonNegative(b, 'patchWidth', 'm');
  nonNegative(tP, 'patchThickness', 'm');
  nonNegative(Vd, 'defectVolume', 'm3');
  atMost(a, L, 'the length of the collar', 'patchLength', 'm');
  atMost(b, Math.PI * D, 'the circumference', 'patchWidth', 'm');
  if (a * b > 0 && tP < t) thinPatch(tP, t);
  const V = Math.PI * t * (D + t) * L + a * b * (tP - t) + Vd;
  positive(V, 'collarVolume', 'm3');
  return V as Volume;
}

function thinPatch(value: number, collar: number): never {
  refuse({
    code: 'invalid-input',
    parameter: 'patchThickness',
    value,
    unit: 'm',
    constraint: 'must be at least the thickness of the collar, {limit}',
    limit: collar,
  });
}

export const collarVolumeFormula = /* @__PURE__ */ formula<CollarVolumeInput, Volume>({
  id: 'resin/collar-volume',
  title: 'Volume of a filler collar',
  search: ['putty', 'build up'],
  compute: collarVolume,
  equation: { expression: 'pi * t * (D + t) * L + a * b * (t_p - t) + V_d' },
  inputs: {
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter of the pipe', sample: [0.06, 1.2] },
    thickness: { symbol: 't', kind: 'length', name: 'thickness of the collar', sample: [0, 0.01] },
    axialLength: { symbol: 'L', kind: 'length', name: 'length of the collar along the pipe', sample: [0.1, 2] },
    patchLength: {
      symbol: 'a',
      kind: 'length',
      name: 'length of the thicker zone along the pipe',
      sample: [0, 0.3],
      default: 0,
    },
    patchWidth: {
      symbol: 'b',
      kind: 'length',
      name: 'width of the thicker zone round the pipe',
      sample: [0, 0.2],
      default: 0,
    },
    patchThickness: {
      symbol: 't_p',
      kind: 'length',
      name: 'thickness of the thicker zone',
      sample: [0.01, 0.03],
      default: 0,
    },
    defectVolume: {
      symbol: 'V_d',
      kind: 'volume',
      name: 'volume of the defect to fill',
      sample: [0, 0.0001],
      default: 0,
    },
  },
  output: { symbol: 'V', kind: 'volume', name: 'volume of filler' },
  sources: [],
  evidence: { form: { tag: 'chosen', derived: 'quadrature over the unrolled surface' } },
  limits: [],
});
