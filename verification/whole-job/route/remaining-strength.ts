import { leastOverParts, type ProfilePoint } from './effective-area.js';
import type { Job } from './read-job.js';

/** A wall thinned over a length and a width, under pressure and force along the pipe. */
export interface Thinned {
  readonly diameter: number;
  readonly wall: number;
  readonly depth: number;
  readonly length: number;
  readonly width: number;
  readonly profile?: readonly ProfilePoint[];
  readonly force: number;
}

export interface Strength {
  readonly method: string;
  readonly safePressure: number;
  readonly safetyFactor: number;
  readonly fitAsItIs: boolean;
  /** By method; what does not apply is not there. */
  readonly methods: readonly { readonly criterion: string; readonly value: number }[];
  /** Lowest failure pressure of the methods that predict one. */
  readonly failurePressure?: number;
}

/** Bulging factor of modified B31G and of the effective area. */
export function foliasModified(z: number): number {
  return z <= 50 ? Math.sqrt(1 + 0.6275 * z - 0.003375 * z * z) : 0.032 * z + 3.3;
}

const MT = [
  1.001, -0.014195, 0.2909, -0.09642, 0.02089, -0.003054, 2.957e-4, -1.8462e-5, 7.1553e-7, -1.5631e-8, 1.4656e-10,
];

/** M_t of API 579-1 for a cylinder; from lambda 20 on that of 20. */
function foliasApi(lambda: number): number {
  const l = Math.min(lambda, 20);
  return MT.reduceRight((sum, coefficient) => sum * l + coefficient, 0);
}

/** Flow stress of modified B31G and of the effective area. */
function flowStress({ pipe, assessment }: Job): number | undefined {
  const { yieldStrength: smys, tensileStrength: smts } = pipe.material;
  switch (assessment?.flowStress) {
    case 'SMYS + 69 MPa':
      // A flow stress above the tensile strength is none.
      return smys + 69e6 > (smts ?? Number.POSITIVE_INFINITY) ? undefined : smys + 69e6;
    case '(SMYS + SMTS) / 2':
      return smts === undefined ? undefined : (smys + smts) / 2;
    default:
      return Math.min(1.1 * smys, smts ?? Number.POSITIVE_INFINITY);
  }
}

/** Failure stress along the pipe of a loss of relative depth x over a width (Kastanas), the least over narrower ones too. */
function axialFailureStress(flow: number, x: number, width: number, diameter: number): number {
  const eta = 1 - x;
  const share = (beta: number): number =>
    (eta * (Math.PI - beta * (1 - eta))) / (eta * Math.PI + 2 * (1 - eta) * Math.sin(beta));
  const most = Math.min(width / diameter, Math.PI);
  // One minimum in (0, pi): golden section on [0, most] would do; a fine scan with a local refinement needs no proof.
  let best = 0;
  const STEPS = 400;
  for (let step = 1; step <= STEPS; step++)
    if (share((most * step) / STEPS) < share((most * best) / STEPS)) best = step;
  let low = (most * Math.max(0, best - 1)) / STEPS;
  let high = (most * Math.min(STEPS, best + 1)) / STEPS;
  for (let round = 0; round < 200; round++) {
    const a = low + (high - low) / 3;
    const b = high - (high - low) / 3;
    if (share(a) < share(b)) high = b;
    else low = a;
  }
  return flow * Math.min(1, share((low + high) / 2), share(most));
}

/** Safety factor on the failure pressure: as stated, else 1.25, and at least 1/F; none where neither is stated. */
export function assessmentFactor({ assessment }: Job): number | undefined {
  const { safetyFactor, designFactor } = assessment ?? {};
  if (safetyFactor === undefined && designFactor === undefined) return undefined;
  return Math.max(safetyFactor ?? 1.25, designFactor === undefined ? 0 : 1 / designFactor);
}

/** Failure pressures by method. `deep` ends the methods at 0.80 of the wall or 1.3 mm left. */
function failurePressures(job: Job, thinned: Thinned, named?: string): Map<string, number> {
  const { diameter: D, wall: t, depth: d, length: L, profile } = thinned;
  const { yieldStrength: smys, tensileStrength: smts } = job.pipe.material;
  const x = d / t;
  const z = (L * L) / (D * t);
  const barlow = (stress: number): number => (stress * 2 * t) / D;
  const flow = flowStress(job);
  const found = new Map<string, number>();
  const left = t - d;
  const deep = x > 0.8 || left < Math.max(0.2 * t, 1.3e-3);
  if (!deep) {
    const m = Math.sqrt(1 + 0.8 * z);
    const own = 1.1 * smys;
    found.set('original B31G', barlow(z <= 20 ? (own * (1 - (2 / 3) * x)) / (1 - ((2 / 3) * x) / m) : own * (1 - x)));
    const modified = foliasModified(z);
    if (flow !== undefined) found.set('modified B31G', barlow((flow * (1 - 0.85 * x)) / (1 - (0.85 * x) / modified)));
    if (flow !== undefined && profile !== undefined) {
      const share = leastOverParts(profile, t, (part) => foliasModified((part * part) / (D * t)));
      found.set('effective area', barlow(flow * share));
    }
  }
  const dnvDepth = named === 'DNV-RP-F101' ? x <= 0.85 && left >= 1.3e-3 : !deep;
  if (smts !== undefined && dnvDepth) {
    const q = Math.sqrt(1 + 0.31 * z);
    found.set('DNV-RP-F101', (((2 * t * smts) / (D - t)) * (1 - x)) / (1 - x / q));
  }
  return found;
}

/** What the sound pipe carries: under its own code by its allowable stress, else its yield strength by the design factor. */
function soundPressure({ pipe }: Job, diameter: number, share: number): number {
  const { allowableStress, yieldStrength } = pipe.material;
  if (allowableStress === undefined) return (2 * yieldStrength * share * pipe.wallThickness) / diameter;
  return (2 * allowableStress * pipe.wallThickness) / (diameter - 2 * 0.4 * pipe.wallThickness);
}

/** DNV-RP-F101 holds a modelling factor beside the usage factor. */
const MODELLING_FACTOR = 0.9;

/** Safe pressure by every method, and the lowest; a named method in place of the others, but never of the axial stress. */
export function remainingStrength(
  job: Job,
  thinned: Thinned,
  safetyFactor: number,
  named?: string,
  yieldShare: number = job.assessment?.designFactor ?? 1 / safetyFactor,
): Strength {
  const { diameter: D, wall: t, depth: d, length: L, width, profile, force } = thinned;
  const { yieldStrength: smys } = job.pipe.material;
  const sound = soundPressure(job, D, yieldShare);
  const failures = failurePressures(job, thinned, named);
  const methods: { criterion: string; value: number }[] = [];
  for (const [criterion, pressure] of failures) {
    const modelling = criterion === 'DNV-RP-F101' ? MODELLING_FACTOR : 1;
    methods.push({ criterion, value: Math.min(sound, (pressure * modelling) / safetyFactor) });
  }
  const left = t - d;
  const deep = d / t > 0.8 || left < Math.max(0.2 * t, 1.3e-3);
  if (!deep) {
    const bore = D - 2 * t;
    const lambda = (length: number): number => (1.285 * length) / Math.sqrt(bore * t);
    const rest = left / t;
    const whole = rest / (1 - (1 - rest) / foliasApi(lambda(L)));
    const reduced = (rsf: number): number => sound * Math.min(1, rsf / 0.9);
    methods.push({ criterion: 'API 579-1 Level 1', value: reduced(whole) });
    if (profile !== undefined) {
      const rsf = leastOverParts(profile, t, (part) => foliasApi(lambda(part)));
      methods.push({ criterion: 'API 579-1 Level 2', value: reduced(rsf) });
    }
  }
  const counted = methods.filter(({ criterion }) => named === undefined || criterion === named);
  const answers = named === 'DNV-RP-F101' ? counted.length > 0 : !deep;
  const across = axialFailureStress(1.1 * smys, d / t, width, D);
  // A push may be gone when the pressure is there.
  const along = (across / safetyFactor - Math.max(0, force) / (Math.PI * D * t)) * ((4 * t) / D);
  if (left > 0) methods.push({ criterion: 'axial stress over the width', value: Math.max(0, Math.min(sound, along)) });
  if (deep) {
    // Nothing below 1.3 mm; never more than the share of the sound wall that is left.
    const least = left >= 1.3e-3 ? Math.min((2 * smys * left) / (D * safetyFactor), (sound * left) / t) : 0;
    methods.push({ criterion: 'least wall all round', value: least });
  }
  const candidates = methods.filter(
    (each) =>
      each.criterion === 'axial stress over the width' ||
      (each.criterion === 'least wall all round' && !answers) ||
      counted.includes(each),
  );
  const lowest = candidates.reduce((a, b) => (b.value < a.value ? b : a));
  return {
    method: lowest.criterion,
    safePressure: lowest.value,
    safetyFactor,
    fitAsItIs: lowest.value >= job.service.designPressure,
    methods,
    ...(failures.size > 0 ? { failurePressure: Math.min(...failures.values()) } : {}),
  };
}
