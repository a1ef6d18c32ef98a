import type { Line } from '../../quantity/index.js';

/** Whether work may start: now, later, or not before something is done. */
export type GateDecision = 'go' | 'wait' | 'stop';

/** One check of the gate: what it says, by which number, and what would change it. */
export interface GateReason {
  /** What is looked at. */
  readonly check: string;
  /** What the check says by itself. */
  readonly decision: GateDecision;
  /** The number judged, in SI; absent for a yes or no. */
  readonly value?: number;
  /** What it is held to, in SI; absent for a yes or no. */
  readonly limit?: number;
  /** Kind of both numbers; absent for a yes or no. */
  readonly kind?: 'temperature' | 'temperature difference' | 'ratio' | 'length' | 'time' | 'areal weight';
  /** Why it says so. */
  readonly because: Line;
  /** What would turn it to go; for a check that passes, when to look again. */
  readonly change: Line;
}

const ORDER: readonly GateDecision[] = ['go', 'wait', 'stop'];

/**
 * The hardest of several decisions.
 *
 * @internal
 */
export function hardest(decisions: Iterable<GateDecision>): GateDecision {
  let worst = 0;
  for (const decision of decisions) worst = Math.max(worst, ORDER.indexOf(decision));
  return ORDER[worst] ?? 'stop';
}
