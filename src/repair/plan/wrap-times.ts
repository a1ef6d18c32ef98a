import type { Line } from '../../quantity/index.js';
import { exactly, line, roundedDown, roundedUp } from '../../quantity/index.js';
import type { PlanFacts } from './facts.js';

/** What has to be laid within one working time, and how long this crew takes for it. */
export function timeLines({ rolls }: PlanFacts): Line[] {
  const { charge, chargeTime, allowedTime, chargeLength } = rolls;
  if (allowedTime === undefined) return [];
  const limit = roundedDown('time to lay', 'time', allowedTime);
  const length = exactly(`${charge} length`, 'length', chargeLength);
  if (chargeTime === undefined)
    return [
      line(
        `Each ${charge}, {0} long, laid within {1}, from the first contact of resin and hardener to the last turn. The case states no crew: try how long it takes.`,
        length,
        limit,
      ),
    ];
  return [
    line(
      `Each ${charge}, {0} long, laid within {1}, from the first contact of resin and hardener to the last turn; this crew takes {2}.`,
      length,
      limit,
      roundedUp('laying', 'time', chargeTime),
    ),
  ];
}

/** What makes a charge fit that does not. */
export function remedyLines({ rolls }: PlanFacts): Line[] {
  const { fits, remedies, charge } = rolls;
  if (fits !== false) return [];
  const ways: Line[] = [];
  if (remedies?.longestCharge !== undefined)
    ways.push(
      line(
        `What helps: shorter: a ${charge} of {0} at most fits.`,
        roundedDown(`${charge} length`, 'length', remedies.longestCharge),
      ),
    );
  if (remedies?.coolerThan !== undefined)
    ways.push(
      line('What helps: steel and air at {0} or cooler.', roundedDown('steel', 'temperature', remedies.coolerThan)),
    );
  if (remedies?.coolerHour !== undefined)
    ways.push(
      line('What helps: which the forecast has {0} after the start.', exactly('hour', 'time', remedies.coolerHour)),
    );
  const none = ways.length === 0 ? ' nothing that can be computed helps: ask the maker for a slower system.' : '';
  return [line(`DOES NOT FIT: a ${charge} may gel before it is laid.${none}`), ...ways];
}
