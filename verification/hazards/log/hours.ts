import { type Hazard, shownIn } from '../hazard.js';

const file = 'verification/hazards/shown/hours.test.ts';
const cure = shownIn(`${file}: a cure`);
const working = shownIn(`${file}: a working time`);

/** Waits, and what they rest on. */
export const hours: readonly Hazard[] = [
  {
    could: 'The steel is too cold for the resin to cure.',
    would: 'The line would go back to service on soft resin.',
    guards: [
      'mix-and-cure/reaction-cure.ts: reasons <material> does not cure',
      'timeline/plan-timeline.ts: warnCrew Part of the temperature history',
    ],
    tests: cure('on steel that is too cold for it', 'over hours that are too cold to count'),
  },
  {
    could: 'The steel is hotter or colder than the maker tested.',
    would: 'The law of the cure would be drawn out to where nobody saw it hold.',
    guards: [
      'mix-and-cure/reaction-cure.ts: warnCrew cure of <material>',
      'mix-and-cure/reaction-cure.ts: warnCrew working time of <material>',
      'timeline/plan-timeline.ts: warnCrew cure of <material>',
    ],
    tests: [
      ...cure('outside what the maker tested, at one temperature', 'outside what the maker tested, at some hour'),
      ...working('outside what the maker tested'),
    ],
  },
  {
    could: 'The hours of the cure count on a heating that nobody told the crew of.',
    would: 'A cold laminate would be taken for a cured one.',
    guards: ['timeline/plan-timeline.ts: warnCrew The hours of each cure rest on steel that is heated'],
    tests: cure('on steel that is heated above its forecast'),
  },
  {
    could: 'Nobody foresees the steel over the hours of the cure, and the air is colder than it.',
    would: 'It would cool while the plan counts it as warm, and the laminate would stay soft.',
    guards: ['timeline/plan-timeline.ts: warnCrew The case foresees no hours of the steel: every cure takes it'],
    tests: cure('in air that is colder than steel that nobody foresees'),
  },
  {
    could: 'A history or a forecast keeps the steel warmer than the air that draws its heat.',
    would: 'It would cool while the plan counts it as warm, and the laminate would stay soft.',
    guards: ['timeline/plan-timeline.ts: warnCrew The hours of each cure count on steel of {0} in air of {1}'],
    tests: cure('on a history far above the air', 'on a forecast far above its own air'),
  },
  {
    could: 'The forecast ends before the laminate has cured.',
    would: 'A wait that nobody can tell would count as nothing.',
    guards: ['timeline/plan-timeline.ts: need site.history'],
    tests: cure('that no forecast reaches'),
  },
];
