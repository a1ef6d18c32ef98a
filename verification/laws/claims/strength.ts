import type { Designed } from '../../../src/repair/index.js';
import { forceOf, reaches, wallNow, wallThen } from './stated.js';

/** What the thinned pipe is said to bear is never above plain bounds: written from the sources, by other code. */

/** Bulging of a cut of this length along the pipe, as Folias has it for short and long cuts (modified B31G). */
function bulging(length: number, diameter: number, wall: number): number {
  const z = (length * length) / (diameter * wall);
  return z <= 50 ? Math.sqrt(1 + 0.6275 * z - 0.003375 * z * z) : 3.3 + 0.032 * z;
}

/** The flow stress of modified B31G as the case chooses it. */
function flowOf({ pipe, assessment }: Designed['case']): number {
  const { yieldStrength, tensileStrength = 0 } = pipe.material;
  if (assessment?.flowStress === 'SMYS + 69 MPa') return yieldStrength + 69e6;
  return assessment?.flowStress === '(SMYS + SMTS) / 2' ? (yieldStrength + tensileStrength) / 2 : 1.1 * yieldStrength;
}

/** Share of the flow stress at which a pipe fails along itself with so deep and so wide a loss, or a narrower part of it (Kastanas). */
function axialShare(depth: number, wall: number, width: number, diameter: number): number {
  const eta = 1 - depth / wall;
  let least = 1;
  for (let i = 1; i <= 400; i++) {
    const beta = (Math.min(Math.PI, width / diameter) * i) / 400;
    const share = (eta * (Math.PI - beta * (1 - eta))) / (eta * Math.PI + 2 * (1 - eta) * Math.sin(beta));
    least = Math.min(least, share);
  }
  return least;
}

function whole(design: Designed): string | undefined {
  const { case: stated, found } = design;
  const { strength } = found;
  if (strength === undefined) return undefined;
  const { wallThickness: wall, material } = stated.pipe;
  const D = stated.pipe.outsideDiameter as number;
  const least = wallThen(stated);
  const { safePressure, safetyFactor, fitAsItIs } = strength;
  const named = stated.assessment?.method === 'DNV-RP-F101' && wall - least <= 0.85 * wall;
  if ((least < 0.2 * wall * (1 - 1e-9) || least < 1.3e-3) && !named) {
    const plain = least < 1.3e-3 ? 0 : (2 * material.yieldStrength * least) / (D * safetyFactor);
    if (!reaches(plain * (1 + 1e-6), safePressure))
      return 'a pit too deep for every method bears more than its least wall all round';
  }
  const { growth, circumferentialWidth } = stated.defect;
  const rate = growth === 'none' ? 0 : growth.length;
  const width = circumferentialWidth + 2 * rate * stated.repair.life;
  const flow = Math.min(1.1 * material.yieldStrength, material.tensileStrength ?? Number.POSITIVE_INFINITY);
  const stress = (flow * axialShare(wall - least, wall, width, D)) / safetyFactor;
  const along = ((4 * wall) / D) * (stress - Math.max(0, forceOf(stated)) / (Math.PI * D * wall));
  if (!reaches(Math.max(0, along) * (1 + 1e-4), safePressure))
    return 'the thinned pipe bears more than its width leaves along the pipe';
  if (fitAsItIs && !reaches(safePressure, stated.service.designPressure))
    return 'the pipe is fit below its design pressure';
  return undefined;
}

/** Nobody works on a wall that does not carry the pressure of the line with a margin. */
function whileWorking(design: Designed): string | undefined {
  const { case: stated, line } = design;
  if (line.pressure === 0) return undefined;
  const { pipe, defect, service, date } = stated;
  const D = pipe.outsideDiameter as number;
  const left = wallNow(stated);
  if (left === 0) return 'people work under pressure on no wall at all';
  const factor = Math.max(1.25, 1 / (stated.assessment?.designFactor ?? 1), stated.assessment?.safetyFactor ?? 1);
  if (defect.kind === 'through-wall hole') {
    const { yieldStrength } = pipe.material;
    const slot = (2 * 1.1 * yieldStrength * left) / (D * bulging(defect.axialLength, D, left) * factor);
    if (!reaches(slot * 1.01, line.pressure)) return 'people work at a hole whose thinned length would tear open';
    // What is left of the section carries the end load beside a cut of that width (net section, free to bend).
    const half = Math.min(Math.PI, defect.circumferentialWidth / D);
    const net = Math.max(0, 1 - half / Math.PI - (2 / Math.PI) * Math.asin(Math.sin(half) / 2));
    const beside =
      (4 * pipe.wallThickness * 1.1 * yieldStrength * net) / (D * factor) -
      (4 * Math.abs(forceOf(stated))) / (Math.PI * D * D);
    return reaches(Math.max(0, beside) * 1.01, line.pressure)
      ? undefined
      : 'people work at a hole beside which the pipe would tear off';
  }
  if (left < 1.3e-3 || left < 0.2 * pipe.wallThickness * (1 - 1e-9)) {
    const plain = left < 1.3e-3 ? 0 : (2 * pipe.material.yieldStrength * left) / (D * factor);
    return reaches(plain, line.pressure)
      ? undefined
      : 'people work under pressure on a pit too deep for every method, with its margin gone';
  }
  const share = 1 - left / pipe.wallThickness;
  const m = bulging(defect.axialLength, D, pipe.wallThickness);
  const fails = ((2 * pipe.wallThickness * flowOf(stated)) / D) * ((1 - 0.85 * share) / (1 - (0.85 * share) / m));
  const recent = service.recentPressure;
  const lately = recent !== undefined && date !== undefined && recent.date > '2026-01-01' ? 0.8 * recent.pressure : 0;
  if (!reaches(Math.max(fails / factor, Math.min(lately, fails / 1.25)), line.pressure))
    return 'people work under pressure on a wall that does not carry it with its margin';
  return undefined;
}

export function strength(design: Designed): string | undefined {
  return whole(design) ?? whileWorking(design);
}
