import type { AcceptanceReason } from '../../acceptance/index.js';
import { missingTo } from '../../numeric/index.js';
import { type Amount, joinLines, type Line } from '../../quantity/index.js';
import type { AsBuiltPoint, AsBuiltPointName } from './record.js';
import { worst } from './worst.js';

/** What speaks against a hold point, or leaves it open. */
export interface Against {
  readonly verdict: 'not shown' | 'does not meet';
  readonly says: Line;
  readonly found?: Amount | undefined;
  readonly limit?: Amount | undefined;
  readonly shortfall?: Amount | undefined;
}

/** A reason of the acceptance: a hold that no number falls short in is only open, since a second look may settle it. */
export function byAcceptance(reason: AcceptanceReason): Against {
  const { verdict, found, limit } = reason;
  const shortfall = shortOf(found, limit);
  const failed = verdict !== 'hold' || shortfall !== undefined;
  return { verdict: failed ? 'does not meet' : 'not shown', says: reason, found, limit, shortfall };
}

/** How much is missing, where the number had to reach its limit. */
function shortOf(found: Amount | undefined, limit: Amount | undefined): Amount | undefined {
  if (found === undefined || limit === undefined) return undefined;
  const value = missingTo(found.value, limit.value);
  return value === 0 ? undefined : { name: `${found.name}, short by`, kind: found.kind, value };
}

/** A hold point by all that speaks against it: the worst decides, and the first number is the one that is shown. */
export function pointBy(point: AsBuiltPointName, against: readonly Against[], good: string): AsBuiltPoint {
  const [first] = against;
  if (first === undefined) return { point, verdict: 'meets', text: good };
  const numbered = against.find(({ found }) => found !== undefined) ?? first;
  const { found, limit, shortfall } = numbered;
  return {
    point,
    verdict: worst(against),
    ...joinLines(
      against.map(({ says }) => says),
      ' ',
    ),
    ...(found === undefined ? {} : { found }),
    ...(limit === undefined ? {} : { limit }),
    ...(shortfall === undefined ? {} : { shortfall }),
  };
}
