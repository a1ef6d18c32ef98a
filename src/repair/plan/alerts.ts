import type { Line } from '../../quantity/index.js';
import { exactly, line, roundedDown, roundedUp } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { elapsedTime } from '../../site/index.js';
import { isBeyondRepair } from '../acceptance/pressure-test.js';
import type { PlanFacts } from './facts.js';
import type { PlanStep } from './plan.js';

/** What a foreman has to know before anything else. */
export function alertsFor(facts: PlanFacts, steps: readonly PlanStep[]): Line[] {
  return [...livePressure(facts), ...aboutToday(facts), ...bareTooLong(steps), ...enteredTooEarly(steps)];
}

/** Before anything else: nobody takes a live line for an empty one. */
function livePressure({ line: { pressure } }: PlanFacts): Line[] {
  if (pressure === 0) return [];
  return [line('LINE STAYS UNDER PRESSURE, {0}.', exactly('line pressure', 'gauge pressure', pressure))];
}

function aboutToday({ site, rolls, acceptance, case: repairCase }: PlanFacts): Line[] {
  const alerts: Line[] = [];
  // Above 0 only where the weather is against it now and better later.
  const { earliestStart = 0 } = site;
  if (site.decision === 'stop') {
    alerts.push(line('The site says STOP by the readings and the forecast of the case: see the site gate.'));
  } else if (earliestStart > 0) {
    alerts.push(
      line(
        'The site says WAIT; the forecast first lets the gate open {0} after its first hour.',
        exactly('hour of the gate', 'time', earliestStart),
      ),
    );
  } else if (site.decision === 'wait') {
    alerts.push(line('The site says WAIT by the readings of the case: see the site gate.'));
  }
  if (rolls.fits === false) alerts.push(line('The wrap DOES NOT FIT its working time: see its step.'));
  if (acceptance.pressureTest.medium !== 'none' && isBeyondRepair(acceptance.pressureTest)) {
    alerts.push(line('NO PRESSURE TEST at the level of the design: the laminate does not resist it. See its step.'));
  }
  if (acceptance.hardness === undefined) {
    alerts.push(line('No qualified hardness is stated: the repair cannot be accepted as the case stands.'));
  }
  if (repairCase.crew === undefined) {
    alerts.push(line('The case states no crew: the time of the wrap is not known.'));
  }
  return alerts;
}

/** Bare steel rusts while the filler cures under it. */
function bareTooLong(steps: readonly PlanStep[]): Line[] {
  const [steel, wrap] = ['surface', 'wrap'].map((wanted) => steps.find(({ id }) => id === wanted));
  if (steel === undefined || wrap === undefined || wrap.startsAt < steel.endsAt) return [];
  const bare = elapsedTime({ from: steel.endsAt, to: wrap.startsAt });
  const openTime = practice.openTime.value;
  if (bare <= openTime) return [];
  return [
    line(
      'The wrap starts {0} after the steel was prepared; the trade allows {1} at most. Prepare the bare steel again just before: a step with its own signature.',
      roundedUp('bare', 'time', bare),
      roundedDown('open time', 'time', openTime),
    ),
  ];
}

/** A real hour never shortens a wait: it is marked where the wait was not over. */
function enteredTooEarly(steps: readonly PlanStep[]): Line[] {
  const alerts: Line[] = [];
  for (const step of steps) {
    for (const before of step.after) {
      const earlier = steps.find(({ id }) => id === before);
      if (earlier === undefined) continue;
      if (step.startsAt < earlier.startsAt) {
        alerts.push(line(`"${step.title}" was entered before "${earlier.title}" began.`));
      } else if (step.startsAt < earlier.endsAt && earlier.sort === 'hold point') {
        alerts.push(
          line(
            `"${step.title}" was entered {0} before the end of "${earlier.title}": the hour does not release it, only what is to be seen there does.`,
            exactly('entered early', 'time', elapsedTime({ from: step.startsAt, to: earlier.endsAt })),
          ),
        );
      }
    }
  }
  return alerts;
}
