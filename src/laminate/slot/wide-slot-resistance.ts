import { atMost, finite, formula, nonNegative, positive, refuse } from '../../formula/index.js';
import type { EnergyReleaseRate, GaugePressure, Length, Modulus } from '../../quantity/index.js';

export interface WideSlotResistanceInput {
  readonly laminateThickness: Length;
  readonly outsideDiameter: Length;
  readonly slotWidth: Length;
  readonly hoopModulus: Modulus;
  readonly stripModulus: Modulus;
  readonly energyReleaseRate: EnergyReleaseRate;
  readonly serviceFactor: number;
  readonly overshoot?: number;
  readonly bondedShare?: number;
}

/**
 * Pressure that a laminate holds over a wide slot, where the ring of the laminate itself holds it back: the flat strip
 * would be asked for ever more.
 *
 * $$P = f \sqrt{\frac{\gamma}{\frac{b D^2 (1 - s)}{8 E_c t} + \frac{\pi W}{4 E'}}}$$
 *
 * @param input.laminateThickness  t [m], > 0
 * @param input.outsideDiameter    D [m], > 0
 * @param input.slotWidth          W, the smaller extent of the slot [m], >= 0; 0 leaves the half crack out
 * @param input.hoopModulus        E_c [Pa], > 0
 * @param input.stripModulus       E', the lower one of both directions [Pa], > 0
 * @param input.energyReleaseRate  gamma, lower confidence limit for the bond [J/m2], > 0
 * @param input.serviceFactor      f, product of service, temperature and cyclic factor, above 0, at most 1
 * @param input.overshoot          b, release of a curved strip over that of its membrane, >= 1; 1.6 unless given
 * @param input.bondedShare        s, share of the hoop load that the laminate carries where it is bonded to the pipe,
 *   E_c t/(E_c t + E_s t_s), 0 to 1; 0 unless given, a rigid pipe, which is the safe bound
 * @returns pressure [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks With b = 1 and W = 0 the wide form of the rule sets, as recalled. Shells pass it where the slot is about
 *   2 sqrt(D t) wide: by 10.5 to 12 per cent over a slot round the pipe, by 56 over one along it. So b is 1.6, and the half of a
 *   crack stays in, which a wide slot in a thick laminate would otherwise lose. The release is at most the smaller one of
 *   this and of the strip of `slotResistance`, at every width.
 * @see ISO 24817:2017, 7.5.7, as recalled, for b = 1
 */
export function wideSlotResistance(input: WideSlotResistanceInput): GaugePressure {
  const { laminateThickness: t, outsideDiameter: D, slotWidth: W, hoopModulus: Ec, stripModulus: Ep } = input;
  const { energyReleaseRate: gamma, serviceFactor: f, overshoot: b = 1.6, bondedShare: s = 0 } = input;
  positive(t, 'laminateThickness', 'm');
  positive(D, 'outsideDiameter', 'm');
  nonNegative(W, 'slotWidth', 'm');
  positive(Ec, 'hoopModulus', 'Pa');
  positive(Ep, 'stripModulus', 'Pa');
  positive(gamma, 'energyReleaseRate', 'J/m2');
  positive(f, 'serviceFactor', '');
  atMost(f, 1, 'the whole resistance', 'serviceFactor', '');
  positive(b, 'overshoot', '');
  nonNegative(s, 'bondedShare', '');
  if (!(s < 1)) {
    refuse({
      code: 'invalid-input',
      parameter: 'bondedShare',
      value: s,
      unit: '',
      constraint: 'must be below 1: a laminate that carries all of it where it is bonded has no pipe under it',
    });
  }
  const K = (b * D * (D / t) * (1 - s)) / (8 * Ec) + (Math.PI * W) / (4 * Ep);
  const pressure = f * Math.sqrt(gamma / K);
  finite(pressure, 'pressure', 'Pa');
  return pressure as GaugePressure;
}

export const wideSlotResistanceFormula = /* @__PURE__ */ formula<WideSlotResistanceInput, GaugePressure>({
  id: 'laminate/wide-slot-resistance',
  title: 'Pressure held over a wide slot',
  compute: wideSlotResistance,
  equation: { expression: 'f * sqrt(gamma / (b * D^2 * (1 - s) / (8 * E_c * t) + pi * W / (4 * E_p)))' },
  inputs: {
    laminateThickness: { symbol: 't', kind: 'length', name: 'laminate thickness', sample: [0.002, 0.05] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    slotWidth: { symbol: 'W', kind: 'length', name: 'smaller extent of the slot', sample: [0.015, 0.4] },
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [8e9, 80e9] },
    stripModulus: { symbol: 'E_p', kind: 'modulus', name: 'lower modulus of the strip', sample: [4e9, 90e9] },
    energyReleaseRate: {
      symbol: 'gamma',
      kind: 'energy release rate',
      name: 'energy release rate of the bond',
      sample: [50, 500],
    },
    serviceFactor: { symbol: 'f', kind: 'number', name: 'service factor', sample: [0.1, 1] },
    overshoot: {
      symbol: 'b',
      kind: 'number',
      name: 'release of the curved strip over that of its membrane',
      default: 1.6,
      sample: [1, 2],
    },
    bondedShare: {
      symbol: 's',
      kind: 'number',
      name: 'share of the hoop load in the laminate where it is bonded',
      default: 0,
      sample: [0, 0.8],
    },
  },
  output: { symbol: 'P', kind: 'gauge pressure', name: 'pressure held' },
  sources: [{ key: 'iso-24817', locator: '7.5.7, as recalled, without overshoot and half crack' }],
  evidence: {
    form: {
      tag: 'recalled',
      derived: 'hoop energy of a ring that lets go',
      note: 'how the rule sets choose between this form and the strip is not known',
    },
    overshoot: { tag: 'chosen', derived: 'clamped arc and clamped ring' },
  },
  limits: [],
});
