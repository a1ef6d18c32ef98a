import type { Amount, Line } from '../quantity/index.js';

/** What may happen to a repair, from the best to the worst. `hold`: something is missing, or must be measured again. */
export type AcceptanceVerdict = 'accept' | 'hold' | 'repair the repair' | 'reject';

/** What a repair must pass before the line goes back to service. */
export type HoldPoint = 'hardness' | 'surface' | 'bond' | 'dimensions' | 'pressure test';

/** Why a repair is not accepted as it stands: what was found, the limit, and what is to be done. */
export interface AcceptanceReason extends Line {
  /** Hold point that it belongs to. */
  readonly holdPoint: HoldPoint;
  /** What it asks for. */
  readonly verdict: Exclude<AcceptanceVerdict, 'accept'>;
  /** What was measured. */
  readonly found?: Amount;
  /** What it is held to. */
  readonly limit?: Amount;
  /** Clause of the limit. */
  readonly clause?: string;
}

const order: readonly AcceptanceVerdict[] = ['accept', 'hold', 'repair the repair', 'reject'];

/** The worst verdict among the reasons; `accept` when there is none. */
export function worstVerdict(reasons: readonly AcceptanceReason[]): AcceptanceVerdict {
  let worst = 0;
  for (const { verdict } of reasons) worst = Math.max(worst, order.indexOf(verdict));
  return order[worst] ?? 'reject';
}
