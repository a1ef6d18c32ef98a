import type { Amount } from '../../quantity/index.js';
import { type GateDecision, type GateReason, hardest } from '../../site/index.js';
import type { SiteReason } from '../design/design-work.js';

/** A reason of a gate as the design keeps it: its numbers are amounts, each rounded as its words round it. */
export function asSiteReason({ value, limit, kind, check, decision, because, change }: GateReason): SiteReason {
  const amount = (name: string, number: number | undefined): Amount | undefined => {
    if (number === undefined || kind === undefined) return undefined;
    const toward = because.amounts?.find((said) => said.value === number)?.toward;
    return { name, kind, value: number, ...(toward === undefined ? {} : { toward }) };
  };
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
