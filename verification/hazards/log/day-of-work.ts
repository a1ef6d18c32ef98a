import { type Hazard, shownIn } from '../hazard.js';

const file = 'verification/hazards/shown/day-of-work.test.ts';
const gate = shownIn(`${file}: the site gate`);
const alert = shownIn(`${file}: an alert of the plan`);
const hour = shownIn(`${file}: an hour that is entered`);

/** What the site and the crew of the day make of a design. */
export const dayOfWork: readonly Hazard[] = [
  {
    could: 'Resin is opened into weather that nobody looked ahead to.',
    would: 'Dew or cold would reach the laminate before it has cured.',
    guards: [
      'site/climate.ts: reasons noForecast(',
      'site/climate.ts: reasons cureBeyondForecast(openHours)',
      'plan/alerts.ts: alerts The site says WAIT; the forecast first lets the gate open {0}',
    ],
    tests: [
      ...gate('without a forecast over the cure', 'with a cure that the history does not reach, ten hours later'),
      ...alert('where the weather is better later'),
    ],
  },
  {
    could: 'The steel was not prepared, or not well enough, and the crew starts all the same.',
    would: 'The laminate would lie on rust and come off under the end load.',
    guards: [
      'site/surface.ts: reason steel prepared',
      'plan/alerts.ts: alerts The site says STOP by the readings and the forecast of the case:',
      'plan/alerts.ts: alerts The site says WAIT by the readings of the case: see the site gat',
    ],
    tests: [
      ...gate('without a word about the steel'),
      ...alert('where the steel stops the work', 'where the steel lets the work wait'),
    ],
  },
  {
    could: 'The crew takes a line for empty that stays under pressure.',
    would: 'People would scrape and drill at a wall that holds back pressure.',
    guards: ['plan/alerts.ts: reason LINE STAYS UNDER PRESSURE, {0}.'],
    tests: alert('on a line that stays under pressure'),
  },
  {
    could: 'A roll or a batch gels before it lies, or nobody knows how long the wrap takes.',
    would: 'Plies would not wet out, and the laminate would come apart between them.',
    guards: [
      'plan/alerts.ts: alerts The wrap DOES NOT FIT its working time: see its step.',
      'plan/alerts.ts: alerts The case states no crew: the time of the wrap is not known.',
    ],
    tests: alert('where a roll is not laid in its working time', 'where nobody stated a crew'),
  },
  {
    could: 'The plan tests the repair at a pressure that it does not resist.',
    would: 'The test would break the repair, with people near.',
    guards: ['plan/alerts.ts: alerts NO PRESSURE TEST at the level of the design: the laminate does n'],
    tests: alert('where the test would break the repair'),
  },
  {
    could: 'The repair is finished, and nothing tells how hard it has to be.',
    would: 'A laminate that never cured would go into service.',
    guards: ['plan/alerts.ts: alerts No qualified hardness is stated: the repair cannot be accepted a'],
    tests: alert('where nobody stated a qualified hardness'),
  },
  {
    could: 'Bare steel waits while the filler cures.',
    would: 'Fresh rust would lie under the wrap.',
    guards: ['plan/alerts.ts: reason The wrap starts {0} after the steel was prepared; the trade allo'],
    tests: alert('where the steel lies bare while the filler cures'),
  },
  {
    could: 'A real hour is entered that skips a wait or turns two steps round.',
    would: 'What follows would be planned on filler or putty that is still soft.',
    guards: [
      'plan/alerts.ts: alerts "<step.title>" was entered before "<earlier.title>" began.',
      'plan/alerts.ts: alerts "<step.title>" was entered {0} before the end of "<earlier.title',
    ],
    tests: alert('where a step is entered before another began', 'where the wrap is entered before the filler is firm'),
  },
  {
    could: 'The day goes otherwise than planned, and the plan stays as it was.',
    would: 'The crew would work by waits and weather of another hour.',
    guards: ['plan/entered-hours.ts: if late === 0', 'plan/entered-hours.ts: if actual === undefined'],
    tests: [
      ...gate('with a cure that the history does not reach, ten hours later'),
      ...alert('where a step is entered before another began'),
    ],
  },
  {
    could: 'A plan is asked for from an hour before the first that the case foresees, or a step is entered there.',
    would: 'It would be read as an hour of the next day, on steel that may be warmer: waits too short.',
    guards: ['plan/entered-hours.ts: refuse start', 'plan/entered-hours.ts: refuse actual.<id>'],
    tests: hour('as a start before the foreseen hours', 'for a step before the foreseen hours'),
  },
  {
    could: 'An hour is mistyped, has no start to count from, or is entered for a step that there is not.',
    would: 'The plan would go on by hours that nobody meant.',
    guards: [
      'plan/clock.ts: refuse must be a clock time such as 07:30, or 2 07:30 on the second day',
      'plan/entered-hours.ts: refuse actual.<id> (2)',
      'plan/entered-hours.ts: refuse <option>.<name>',
      'plan/entered-hours.ts: nonNegative durations.<id>',
      'plan/entered-hours.ts: if durations === undefined',
    ],
    tests: hour(
      'as no hour of a clock',
      'without a start on the clock',
      'for a step that the job does not have',
      'as a time of a step that is less than nothing',
    ),
  },
];
