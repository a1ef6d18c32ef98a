import { below, finite, nonNegative, positive } from '../../formula/index.js';
import type {
  AbsolutePressure,
  GaugePressure,
  Length,
  Modulus,
  Ratio,
  Temperature,
  ThermalExpansion,
} from '../../quantity/index.js';

export interface BlockedLinePressureInput {
  readonly pressure: GaugePressure;
  readonly startTemperature: Temperature;
  readonly endTemperature: Temperature;
  readonly startWaterFactor: Ratio;
  readonly endWaterFactor: Ratio;
  readonly outsideDiameter: Length;
  readonly wallThickness: Length;
  readonly compressibility?: Ratio | undefined;
  readonly referencePressure?: AbsolutePressure | undefined;
  readonly restraint?: number | undefined;
  readonly modulus?: Modulus | undefined;
  readonly stretchExpansion?: ThermalExpansion | undefined;
  readonly pipeExpansion?: ThermalExpansion | undefined;
  readonly referenceTemperature?: Temperature | undefined;
}

/** The pressure at which the water of the start fits the line again; below zero it has no meaning but that of a bound. */
export function pressureAfter(input: BlockedLinePressureInput): number {
  const { pressure: P1, startTemperature: T1, endTemperature: T2, startWaterFactor: F1, endWaterFactor: F2 } = input;
  const { outsideDiameter: D, wallThickness: t, compressibility: c = 4.5e-5, restraint: k = 0.91 } = input;
  const { referencePressure: p0 = 101559.77492836995, modulus: E = 206842718795.05084 } = input;
  const { stretchExpansion: alpha = 0.00000648, pipeExpansion: alphaV = 0.00003276 } = input;
  const { referenceTemperature: T0 = 288.7055555555556 } = input;
  nonNegative(P1, 'pressure', 'Pa');
  positive(T1, 'startTemperature', 'K');
  positive(T2, 'endTemperature', 'K');
  positive(F1, 'startWaterFactor', '');
  positive(F2, 'endWaterFactor', '');
  positive(D, 'outsideDiameter', 'm');
  positive(t, 'wallThickness', 'm');
  below(t, D / 2, 'half the outside diameter', 'wallThickness', 'm');
  positive(c, 'compressibility', '');
  positive(p0, 'referencePressure', 'Pa');
  positive(k, 'restraint', '');
  positive(E, 'modulus', 'Pa');
  nonNegative(alpha, 'stretchExpansion', '1/K');
  nonNegative(alphaV, 'pipeExpansion', '1/K');
  positive(T0, 'referenceTemperature', 'K');
  const lost = (c * P1) / p0;
  below(lost, 1, 'the whole volume', 'loss of volume', '');
  positive(1 + alphaV * (T2 - T0), 'warming of the pipe', '');
  // Every factor is one and a little: the littles are carried, or float64 would lose them against the ones.
  const m = (alpha * (T1 - T0) + ((D / t) * k * P1) / E + lost) / (1 - lost);
  const h = (alphaV * (T1 - T2)) / (1 + alphaV * (T2 - T0));
  const r = (F2 - F1) / F1;
  const surplus = m + h + r + m * h + m * r + h * r + m * h * r;
  const P2 = (surplus - alpha * (T2 - T0)) / (((D / t) * k) / E + (c * (1 + surplus)) / p0);
  finite(P2, 'pressure at the end', 'Pa');
  return P2;
}
