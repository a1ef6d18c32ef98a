import { refuse } from '../../formula/index.js';
import { molarGasConstant } from '../../mechanics/index.js';
import { bisect } from '../../numeric/index.js';
import type { Temperature, Time } from '../../quantity/index.js';
import type { KineticLaw } from './kinetic-law.js';

/** A corner of a temperature programme; between two corners the temperature runs straight. */
export interface ProgrammePoint {
  /** From the start of the programme [s]. */
  readonly time: Time;
  /** Temperature at that time [K]. */
  readonly temperature: Temperature;
}

/** Rate of v = -ln(1 - a), which is r/(1 - a). */
function rate(law: KineticLaw, T: number, v: number, beyondSwitch: boolean): number {
  const a = -Math.expm1(-v);
  const left = Math.exp(-v);
  const k = (factor: number, energy: number): number => factor * Math.exp(-energy / (molarGasConstant * T));
  if (law.law === 'n-th order') return k(law.frequencyFactor, law.activationEnergy) * left ** (law.n - 1);
  if (law.law === 'autocatalytic') {
    const { diffusion } = law;
    const slowed =
      diffusion === undefined
        ? 1
        : 1 + Math.exp(diffusion.constant * (a - (diffusion.atZero + diffusion.perKelvin * T)));
    return (k(law.frequencyFactor, law.activationEnergy) * a ** law.m * left ** (law.n - 1)) / slowed;
  }
  const [A1, A2, A3] = law.frequencyFactors;
  const [E1, E2, E3] = law.activationEnergies;
  if (beyondSwitch) return k(A3, E3);
  return (k(A1, E1) + k(A2, E2) * a) * (law.ceiling - a);
}

/** Less than 2e-16 is left. */
const COMPLETE = 36;

/** Carries v along one straight piece of the programme: fourth-order steps, each checked against its two halves. */
export function march(law: KineticLaw, from: ProgrammePoint, to: ProgrammePoint, start: number): number {
  const duration = to.time - from.time;
  const jump = law.law === 'two-branch' ? -Math.log1p(-law.switchAt) : Number.POSITIVE_INFINITY;
  const temperatureAt = (x: number): number => from.temperature + x * (to.temperature - from.temperature);
  // x runs from 0 to 1 over the piece.
  let [x, v, h] = [0, start, 1 / 64];
  let beyond = v >= jump;
  const slope = (at: number, value: number): number => duration * rate(law, temperatureAt(at), value, beyond);
  const single = (at: number, value: number, by: number): number => {
    const k1 = slope(at, value);
    const k2 = slope(at + by / 2, value + (by / 2) * k1);
    const k3 = slope(at + by / 2, value + (by / 2) * k2);
    const k4 = slope(at + by, value + by * k3);
    return value + (by / 6) * (k1 + 2 * k2 + 2 * k3 + k4);
  };
  const double = (at: number, value: number, by: number): number =>
    single(at + by / 2, single(at, value, by / 2), by / 2);
  for (let steps = 0; x < 1 && v < COMPLETE; steps++) {
    const by = Math.min(h, 1 - x);
    // A law that goes back has stalled; a rate for which no step is short enough is too large.
    if (slope(x, v) < 0 || by === 0 || steps > 1e5) tooHard(v);
    const [rough, fine] = [single(x, v, by), double(x, v, by)];
    const error = Math.abs(fine - rough);
    const isGood = Number.isFinite(fine) && fine >= v && error <= 1e-9 * (1 + fine);
    if (!isGood) {
      h = by / 2;
      continue;
    }
    if (!beyond && fine > jump) {
      const [x0, v0] = [x, v];
      const part = bisect((share) => double(x0, v0, share) - jump, 0, by)?.root ?? by;
      [x, v, beyond] = [x0 + part, jump, true];
      continue;
    }
    [x, v] = [x + by, fine];
    if (error < 1e-11) h = Math.min(1, 2 * by);
  }
  return v;
}

function tooHard(v: number): never {
  refuse({
    code: 'no-solution',
    parameter: 'programme',
    value: -Math.expm1(-v),
    unit: 'conversion',
    constraint: 'the law stalls here, or its rate is too large to follow',
  });
}
