import { atMost, finite, formula, positive } from '../../formula/index.js';
import type { EnergyReleaseRate, GaugePressure, Length, Modulus } from '../../quantity/index.js';

export interface RingResistanceInput {
  readonly laminateThickness: Length;
  readonly outsideDiameter: Length;
  readonly unbondedLength: Length;
  readonly hoopModulus: Modulus;
  readonly energyReleaseRate: EnergyReleaseRate;
  readonly serviceFactor: number;
  readonly overshoot?: number;
}

/**
 * Pressure that a laminate holds as a ring that is bonded nowhere round the pipe over a length, before it peels along the
 * pipe.
 *
 * $$P = f \sqrt{\frac{\gamma}{\frac{b D^2}{8 E_c t} + \frac{\pi W}{4 E_c}}}$$
 *
 * @param input.laminateThickness  t [m], > 0
 * @param input.outsideDiameter    D [m], > 0
 * @param input.unbondedLength     W, largest extent along the pipe of what nothing bonds to [m], > 0
 * @param input.hoopModulus        E_c [Pa], > 0
 * @param input.energyReleaseRate  gamma, lower confidence limit for the bond [J/m2], > 0
 * @param input.serviceFactor      f, product of service, temperature and cyclic factor, above 0, at most 1
 * @param input.overshoot          b, release of the curved strip over that of its membrane, 1.55 unless given
 * @returns pressure [Pa]
 * @throws CalculationError `invalid-input`
 * @remarks Own form. A long ring releases its membrane energy, D^2/(8 E t); clamped at both ends it passes that by up to
 *   1.12, whatever the moduli. A strip that bridges an arc and has no end along the pipe passes it by about 1.56 near
 *   2.2 sqrt(D t), by 1.59 where it is thick: b stands between, since no footprint is that long. The second term is half of
 *   a crack of length W. Against numerical shells over round patches that are bonded beside: the mean release along the
 *   rim stays below 0.75 of it, and no place passes it by more than 6 per cent.
 */
export function ringResistance(input: RingResistanceInput): GaugePressure {
  const { laminateThickness: t, outsideDiameter: D, unbondedLength: W, hoopModulus: Ec } = input;
  const { energyReleaseRate: gamma, serviceFactor: f, overshoot: b = 1.55 } = input;
  positive(t, 'laminateThickness', 'm');
  positive(D, 'outsideDiameter', 'm');
  positive(W, 'unbondedLength', 'm');
  positive(Ec, 'hoopModulus', 'Pa');
  positive(gamma, 'energyReleaseRate', 'J/m2');
  positive(f, 'serviceFactor', '');
  atMost(f, 1, 'the whole resistance', 'serviceFactor', '');
  positive(b, 'overshoot', '');
  const K = ((b * D * (D / t)) / 8 + (Math.PI * W) / 4) / Ec;
  const pressure = f * Math.sqrt(gamma / K);
  finite(pressure, 'pressure', 'Pa');
  return pressure as GaugePressure;
}

export const ringResistanceFormula = /* @__PURE__ */ formula<RingResistanceInput, GaugePressure>({
  id: 'laminate/ring-resistance',
  title: 'Pressure held by a ring that is bonded nowhere round the pipe',
  search: ['unbonded', 'sleeve'],
  compute: ringResistance,
  equation: { expression: 'f * sqrt(gamma / (b * D^2 / (8 * E_c * t) + pi * W / (4 * E_c)))' },
  inputs: {
    laminateThickness: { symbol: 't', kind: 'length', name: 'laminate thickness', sample: [0.002, 0.05] },
    outsideDiameter: { symbol: 'D', kind: 'length', name: 'outside diameter', sample: [0.0213, 1.2] },
    unbondedLength: { symbol: 'W', kind: 'length', name: 'unbonded length along the pipe', sample: [0.015, 0.4] },
    hoopModulus: { symbol: 'E_c', kind: 'modulus', name: 'hoop modulus of the laminate', sample: [8e9, 80e9] },
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
      default: 1.55,
      sample: [1, 2],
    },
  },
  output: { symbol: 'P', kind: 'gauge pressure', name: 'pressure held' },
  sources: [],
  evidence: {
    form: { tag: 'chosen', derived: 'membrane of a ring and half of a crack; shallow shell over a finite patch' },
    overshoot: { tag: 'chosen', derived: 'clamped ring and clamped arc' },
  },
  limits: [],
});
