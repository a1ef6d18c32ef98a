import { type HeldLine, heldLine } from './held-line.js';
import type { Job } from './read-job.js';

/** What the loads of a case beside its pressure come to, on the pipe of a diameter (repair-design.md, 2.2, 2.10). */
export interface Beside {
  /** Force along the pipe that stands for pull or push, shear, bending and torsion: the last two terms of F_eq. */
  readonly force: number;
  /** The force alone where nothing bends, twists or shears, a push being no pull; else what stands for all of it. */
  readonly pull: number;
  /** At the pulled and at the pushed edge, along the pipe; a pull takes nothing off the pushed one. */
  readonly pulled: number;
  readonly pushed: number;
  /** 4 q / D of the flow of shear: the pressure below which the equivalent pressure no longer falls. */
  readonly shear: number;
  /** Shear flow round the pipe. */
  readonly flow: number;
  /** Weight of the soil with traffic on the pipe, and all that presses on it from outside. */
  readonly soil: number;
  readonly outside: number;
}

const GRAVITY = 9.80665;
const WATER = 1000;

/** Pull and push along the pipe: a held line adds to a stated force of its own sense and relieves none of the other. */
export function alongPipe(job: Job, diameter: number): HeldLine {
  const { axialForce = 0 } = job.loads;
  const held = heldLine(job, diameter);
  return { pull: Math.max(0, axialForce) + held.pull, push: Math.min(0, axialForce) + held.push };
}

export function besidePressure(job: Job, diameter: number): Beside {
  const { loads } = job;
  const size = (value: number | undefined): number => Math.abs(value ?? 0);
  const { pull, push } = alongPipe(job, diameter);
  // A push counts as a pull of its size; of the two the larger.
  const force = Math.max(pull, -push);
  const [bending, torsion, across] = [size(loads.bendingMoment), size(loads.torsion), size(loads.shearForce)];
  const flow = (across + (2 * torsion) / diameter) / (Math.PI * diameter);
  const { soil } = loads;
  const weight = soil === undefined ? 0 : soil.density * GRAVITY * soil.cover + (soil.traffic ?? 0);
  const edge = (4 * bending) / diameter;
  const together = Math.hypot(force, 2 * across) + (4 / diameter) * Math.hypot(bending, torsion);
  return {
    force: together,
    pull: bending + torsion + across === 0 ? pull : together,
    pulled: pull + edge,
    pushed: push - edge,
    shear: (4 * flow) / diameter,
    flow,
    soil: weight,
    outside: (loads.externalPressure ?? 0) + weight + WATER * GRAVITY * (soil?.waterAbove ?? 0),
  };
}

/** The pull past a thinned wall: what stands for the force with bending, shear and torsion; a push adds to the hoop stress and counts as a pull. */
export function pullOf(job: Job, diameter: number): number {
  const { bendingMoment, torsion, shearForce } = job.loads;
  const alone = bendingMoment === undefined && torsion === undefined && shearForce === undefined;
  const { pull, push } = alongPipe(job, diameter);
  return alone ? Math.max(pull, -push) : besidePressure(job, diameter).force;
}

/** P_eq = P (1 + 4 x2), x the shear flow over P D/2; where that rises again as the pressure falls, its least, 4 x P. */
export function equivalentPressure({ shear }: Beside, pressure: number): number {
  return pressure >= shear ? (shear === 0 ? pressure : pressure + (shear * shear) / pressure) : 2 * shear;
}

/**
 * Moment in the wall of a ring of a radius per pressure on its upper half, held at one line below and by nothing at its sides.
 * By symmetry thrust and moment at the crown are free: the ring closes where the moment over the half ring, and the moment
 * times its depth below the crown, come to nothing.
 */
export function momentOfRing(radius: number): number {
  unitRing ??= momentOfUnitRing();
  return unitRing * radius * radius;
}

let unitRing: number | undefined;

function momentOfUnitRing(): number {
  const STEPS = 2000;
  const cosine = (angle: number): number => 1 - Math.cos(angle);
  const ofLoad = (angle: number): number => (angle <= Math.PI / 2 ? Math.sin(angle) ** 2 / 2 : Math.sin(angle) - 1 / 2);
  const over = (f: (angle: number) => number): number => {
    let sum = 0;
    // Simpson over each quarter, since the load ends at the side.
    for (let step = 0; step <= STEPS; step++) {
      const weight = step === 0 || step === STEPS || step === STEPS / 2 ? 1 : step % 2 === 1 ? 4 : 2;
      sum += (step === STEPS / 2 ? 2 * weight : weight) * f((Math.PI * step) / STEPS);
    }
    return (sum * Math.PI) / STEPS / 3;
  };
  // m(angle) = crown + thrust (1 - cos) - load; both conditions are linear in crown and thrust.
  const [a, b, c] = [Math.PI, over(cosine), over((angle) => cosine(angle) ** 2)];
  const [p, q] = [over(ofLoad), over((angle) => cosine(angle) * ofLoad(angle))];
  const determinant = a * c - b * b;
  const crown = (p * c - q * b) / determinant;
  const thrust = (a * q - b * p) / determinant;
  return Math.abs(crown + thrust * cosine(Math.PI) - ofLoad(Math.PI));
}

/** Moment of the soil grows as the pressure from outside makes the ring more oval: by 1/(1 - 1/3), with the factor 3 on it. */
export const MORE_OVAL = 1.5;
