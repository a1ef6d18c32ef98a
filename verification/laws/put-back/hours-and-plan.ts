import { change, type Fault } from './fault.js';
import { OUTPUTS } from './outputs-law.js';

/** Hours, order, plan, site. */

const HELD = 'holds by itself';

export const ofHoursAndPlan: readonly Fault[] = [
  {
    did: 'a wait that ran past the forecast counted as nothing',
    changes: [
      change(
        'repair/timeline/cure-law',
        '{ known: false, because: HISTORY_ENDS, atLeast }',
        '{ known: true, time: 0 }',
      ),
      change('repair/timeline/cure-law', '{ known: false, because: HISTORY_ENDS }', '{ known: true, time: 0 }'),
    ],
    law: 'hours that are foreseen less far',
    says: /return|verdict/u,
  },
  {
    did: 'a longer preparation moved the cure past the forecast and brought the line back earlier',
    changes: [
      change(
        'repair/timeline/cure-law',
        '{ known: false, because: HISTORY_ENDS, atLeast }',
        '{ known: true, time: 0 }',
      ),
      change('repair/timeline/cure-law', '{ known: false, because: HISTORY_ENDS }', '{ known: true, time: 0 }'),
    ],
    law: 'a longer preparation',
    says: /return/u,
  },
  {
    did: 'the return was known while a wait was not',
    changes: [change('repair/timeline/timeline', 'open.size === 0', 'true')],
    law: HELD,
    says: /return is known/u,
  },
  {
    did: 'the cure of the laminate began with the job, not when the wrap lay',
    changes: [change('repair/timeline/cure-law', 'historyLeft(history, laidAt, use, recorder)', 'history ?? []')],
    law: HELD,
    says: /has not cured/u,
  },
  {
    did: 'the gate said GO over hours of 97 per cent humidity',
    changes: [change('repair/site/climate', 'hasForecast ? leastOf(holdTime) : (0 as Time)', '0')],
    law: HELD,
    says: /GO over an hour/u,
  },
  {
    did: 'the climate had to hold for another time than the plan said',
    changes: [change('repair/site/site', "Math.max(from, endOf(hours, 'cure'))", 'from')],
    law: HELD,
    says: /has to hold/u,
  },
  {
    did: 'the steel was prepared before the leak was sealed and the putty firm',
    changes: [
      change(
        'repair/timeline/job-steps',
        "{ id: 'surface', sort: 'hold point', after: [ready], takes: notStated }",
        "{ id: 'surface', sort: 'hold point', after: ['survey'], takes: notStated }",
      ),
    ],
    law: HELD,
    says: /surface begins before/u,
  },
  {
    did: 'steel that lay bare for more than four hours was not prepared again as a step',
    changes: [
      change(
        'repair/timeline/timeline',
        "step(recorder, 'site/elapsed-time', elapsedTime, { from, to }, since) > goodFor",
        'false',
      ),
    ],
    law: HELD,
    says: /not prepared again/u,
  },
  {
    did: 'the plan of a live line did not begin with its pressure',
    changes: [change('repair/plan/alerts', 'pressure === 0', 'true', ['if (', ') return [];'])],
    law: HELD,
    says: /begin with the pressure/u,
  },
  {
    did: 'the plan lost the warnings of the design',
    changes: [change('repair/plan/plan-work', 'at === id', 'false')],
    law: HELD,
    says: /does not warn at/u,
  },
  {
    did: 'the plan tested above what the repair resists',
    changes: [change('repair/acceptance/pressure-test', '!reaches(resistance, pressure)', 'false')],
    law: HELD,
    says: /tests above/u,
  },
  {
    did: 'the test overloaded the weakest flange',
    changes: [
      change('repair/acceptance/lowest-rating', 'lowestRating === undefined || testPressure <= lowestRating', 'true'),
    ],
    law: HELD,
    says: /lowest rating/u,
  },
  {
    did: 'sea water and glycol had the density of fresh water',
    changes: [change('repair/acceptance/test-water', "liquid !== 'fresh water'", 'false')],
    law: HELD,
    says: /no fresh water/u,
  },
  {
    did: "filler and laminate of one name had each other's times",
    changes: [
      change(
        'repair/wrap/rolls',
        'cures.laminate',
        "cures.filler !== 'none' && cures.filler.material === cures.laminate.material ? cures.filler : cures.laminate",
        ['const { workingTime } = ', ';'],
      ),
    ],
    law: 'a filler that is called as the laminate is',
    says: /rolls/u,
  },
  {
    did: 'a wrap fitted with no margin',
    changes: [change('repair/mix-and-cure/allowed-time', 'practice.shareOfWorkingTime.value', '1')],
    law: HELD,
    says: /less than a fifth/u,
  },
  {
    did: 'two crews halved one helix',
    changes: [change('repair/wrap/rolls', "wrap.form === 'tape' ? 1 : crew.crews", 'crew.crews')],
    law: HELD,
    says: /helix is divided/u,
  },
  {
    did: 'two crews halved one charge',
    changes: [
      change(
        'repair/wrap/rolls',
        "{ length: charge.chargeLength, soakings: 1, batches: charge.charge === 'batch' ? 1 : 0, crews: 1 }",
        '{ length: charge.chargeLength, soakings: 1, batches: 0, crews: crew.crews }',
      ),
    ],
    law: HELD,
    says: /charge is divided/u,
  },
  {
    did: 'the working time was that of the thermometer as it read',
    changes: [
      change(
        'repair/mix-and-cure/steel-temperatures',
        "step(work.recorder, 'cure/warmest-behind-reading', warmestBehindReading, { reading, error })",
        'reading',
      ),
    ],
    law: HELD,
    says: /longer than it works/u,
  },
  {
    did: 'waits counted the steel as warm as its thermometer read',
    changes: [
      change(
        'repair/mix-and-cure/steel-temperatures',
        "step(recorder, 'cure/coldest-behind-history', coldestBehindHistory, { steps, error }).steps",
        'steps',
      ),
    ],
    law: HELD,
    says: /has not cured/u,
  },
  {
    did: 'the sheet told another wait than plan and JSON: 42.70 h and 42 h 33 min',
    changes: [
      change('report/answer', 'wait.duration.time', '(wait.duration.time * 42.7) / 42.55', [
        "show('time', 'wait', ",
        ')',
      ]),
    ],
    law: OUTPUTS,
    says: /does not tell the wait/u,
  },
];
