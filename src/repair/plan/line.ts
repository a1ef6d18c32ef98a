import type { Amount } from '../job/amount.js';
import type { PlanAmount, PlanLine } from './plan.js';

/** A sentence with its amounts in order of `{0}`, `{1}`. */
export function line(text: string, ...amounts: readonly PlanAmount[]): PlanLine {
  return { text, amounts };
}

/** An amount that is as it is. */
export function exactly(name: string, kind: Amount['kind'], value: number): PlanAmount {
  return { name, kind, value };
}

/** An amount that must be reached: written rounded up. */
export function atLeast(name: string, kind: Amount['kind'], value: number): PlanAmount {
  return { name, kind, value, toward: 'up' };
}

/** An amount that must not be passed: written rounded down. */
export function atMost(name: string, kind: Amount['kind'], value: number): PlanAmount {
  return { name, kind, value, toward: 'down' };
}
