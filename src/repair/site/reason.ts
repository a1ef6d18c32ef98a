import type { Amount } from '../../quantity/index.js';
import { type GateDecision, type GateReason, hardest } from '../../site/index.js';
import type { SiteReason } from '../design/design-work.js';

/** A reason of a gate as the design keeps it: its numbers are amounts. */
export function asSiteReason({ value, limit, kind, check, decision, because, change }: GateReason): SiteReason {
  const amount = (name: string, number: number | undefined): Amount | undefined =>
    number === undefined || kind === undefined ? undefined : { name, kind, value: number };
  const [found, bound] = [amount(check, value), amount('limit', limit)];
  return {
    check,
    decision,
    ...(found === undefined ? {} : { found }),
    ...(bound === undefined ? {} : { limit: bound }),
    because,
    change,
  };
}

/** The hardest decision among reasons. */
export function decisionOf(reasons: readonly SiteReason[]): GateDecision {
  return hardest(reasons.map(({ decision }) => decision));
}
