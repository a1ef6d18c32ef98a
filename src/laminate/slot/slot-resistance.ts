import { atMost, finite, formula, positive } from '../../formula/index.js';
import type { EnergyReleaseRate, GaugePressure, Length, Modulus } from '../../quantity/index.js';
import {
  edgeFactor,
  energyReleaseRate,
  laminateThickness,
  serviceFactor,
  shearModulus,
  slotWidth,
  stripModulus,
  turningRoot,
} from '../declared-inputs.js';

export interface SlotResistanceInput {
  readonly laminateThickness: Length;
  readonly slotWidth: Length;
  readonly stripModulus: Modulus;
  readonly shearModulus: Modulus;
  readonly energyReleaseRate: EnergyReleaseRate;
  readonly serviceFactor: number;
  readonly edgeFactor?: number;
  readonly turningRoot?: number;
}

/**
 * Pressure that a bonded laminate holds as a flat strip over a long through-wall slot before it peels off.
 *
 * $$P = f \sqrt{\frac{\gamma}{m\left(\frac{1}{E'}\left(\frac{W^4}{24 t^3} + \frac{\pi h W}{4}\right) + \frac{3 W^2}{16 G t}\right)}}$$
 *
 * @param input.laminateThickness  t [m], > 0
 * @param input.slotWidth          W, across the slot: along the pipe for a slot round it, the arc for one along it [m], > 0
 * @param input.stripModulus       E', of `stripModulus` in the direction of W [Pa], > 0
 * @param input.shearModulus       G, of the laminate [Pa], > 0
 * @param input.energyReleaseRate  gamma, lower confidence limit for the bond [J/m2], > 0
 * @param input.serviceFactor      f, product of service, temperature and cyclic factor, above 0, at most 1
 * @param input.edgeFactor         h, of `softEdgeFactor`, >= 1; 1 unless given, a laminate alike in all directions
 * @param input.turningRoot        m, release with a root that turns over that of a clamped one, >= 1; 1.4 unless given
 * @returns pressure [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks Bending of a clamped strip, half of a Griffith crack, and transverse shear, summed and set equal to gamma. An
 *   opening of any length has no more to release at any place of its rim than an endless slot of its width, taken either
 *   way, and the curve of the pipe only helps. The root turns, which the clamped strip leaves out, and the edge opens through
 *   the thickness: with h and m = 1 at most 1.18 times as high as finite elements, at widths of 0.25 to 20 t and strips up to
 *   25 times as stiff as in shear, so that with m = 1.4 it is never high there. The recollections have h and m at 1: 17 per cent
 *   high for glass 4 to 8 t wide, 90 for carbon 0.25 t wide. The narrow form over a slot round the pipe is recalled, that over
 *   one along it is not: it is the same strip, turned.
 * @see ISO 24817:2017, 7.5.7; ASME PCC-2, Eq. 13, as recalled
 */
export function slotResistance(input: SlotResistanceInput): GaugePressure {
  const { laminateThickness: t, slotWidth: W, stripModulus: Ep, shearModulus: G } = input;
  const { energyReleaseRate: gamma, serviceFactor: f, edgeFactor: h = 1, turningRoot: m = 1.4 } = input;
  positive(t, 'laminateThickness', 'm');
  positive(W, 'slotWidth', 'm');
  positive(Ep, 'stripModulus', 'Pa');
  positive(G, 'shearModulus', 'Pa');
  positive(gamma, 'energyReleaseRate', 'J/m2');
  positive(f, 'serviceFactor', '');
  atMost(f, 1, 'the whole resistance', 'serviceFactor', '');
  positive(h, 'edgeFactor', '');
  positive(m, 'turningRoot', '');
  const x = W / t;
  const K = m * ((W / Ep) * ((x * x * x) / 24 + (Math.PI * h) / 4) + (3 * W * x) / (16 * G));
  const pressure = f * Math.sqrt(gamma / K);
  finite(pressure, 'pressure', 'Pa');
  return pressure as GaugePressure;
}

export const slotResistanceFormula = /* @__PURE__ */ formula<SlotResistanceInput, GaugePressure>({
  id: 'laminate/slot-resistance',
  title: 'Pressure held over a slot',
  search: ['crack', 'leak', 'through wall'],
  compute: slotResistance,
  equation: {
    expression: 'f * sqrt(gamma / (m * ((W^4 / (24 * t^3) + pi * h * W / 4) / E_p + 3 * W^2 / (16 * G * t))))',
  },
  inputs: {
    laminateThickness,
    slotWidth,
    stripModulus,
    shearModulus,
    energyReleaseRate,
    serviceFactor,
    edgeFactor,
    turningRoot,
  },
  output: { symbol: 'P', kind: 'gauge pressure', name: 'pressure held' },
  sources: [
    { key: 'iso-24817', locator: '7.5.7, as recalled' },
    { key: 'asme-pcc-2', locator: '401-3.4, Eq. 13, as recalled' },
  ],
  evidence: {
    turningRoot: { tag: 'chosen', derived: 'finite elements of a layer on a rigid base' },
    form: { tag: 'recalled', derived: 'clamped strip, half Griffith crack and transverse shear energy' },
    '3/16': {
      tag: 'recalled',
      derived: 'shear factor 2/3',
      note: '1/8 in one recollection: the larger is taken, which fits the hole',
    },
  },
  limits: [],
});
