import type { Designed, WorkPlan } from '../../../src/repair/index.js';
import { bond } from './bond.js';
import { equilibrium } from './equilibrium.js';
import { hours } from './hours.js';
import { leak } from './leak.js';
import { liveLine } from './live-line.js';
import { plan } from './plan.js';
import { strains } from './strains.js';
import { strength } from './strength.js';
import { wrap } from './wrap.js';

/** What a design claims, each held by a computation of its own; nothing where all hold. */
export function claims(design: Designed, planned: WorkPlan): string | undefined {
  return (
    liveLine(design, planned) ??
    strength(design) ??
    strains(design) ??
    equilibrium(design) ??
    leak(design) ??
    bond(design) ??
    wrap(design) ??
    hours(design) ??
    plan(design, planned)
  );
}
