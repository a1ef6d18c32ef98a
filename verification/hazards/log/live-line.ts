import { type Hazard, shownIn } from '../hazard.js';

const file = 'verification/hazards/shown/live-line.test.ts';
const live = shownIn(`${file}: a line under pressure`);
const beside = shownIn(`${file}: the pipe beside the defect`);
const thinned = shownIn(`${file}: a thinned pipe`);

/** People on a line that is under pressure, and the pipe beside them. */
export const liveLine: readonly Hazard[] = [
  {
    could: 'A thin wall under pressure is blasted, or worked at with power tools.',
    would: 'The preparation itself would open it, beside people.',
    guards: ['found/line-at-work.ts: warnCrew The wall under pressure is {0} where it is thinnest, and blastin'],
    tests: live('whose wall preparation could take through'),
  },
  {
    could: 'People grind and wrap a thinned wall under more pressure than it bears.',
    would: 'It would burst under their hands.',
    guards: ['found/line-at-work.ts: reasons the damaged pipe may not be worked on at this pressure: lower it'],
    tests: live('above what its thinned wall bears'),
  },
  {
    could: 'No method tells what the wall bears today.',
    would: 'Any pressure would pass, since nothing is there to hold it against.',
    guards: ['found/limit-on-wall.ts: need line.state'],
    tests: live('of which no method tells what its wall bears'),
  },
  {
    could: 'A pressure that the line carried long ago, or nobody knows when, stands for what its wall bears today.',
    would: 'The wall that carried it is gone: people would work at a pressure that nothing proves.',
    guards: [
      'found/limit-on-wall.ts: warn The pressure that the line is said to have carried lately does n',
      'found/limit-on-wall.ts: if age === undefined',
      'found/limit-on-wall.ts: if age > greatest.value',
    ],
    tests: live('that carried its pressure too long ago', 'that carried its pressure before a survey of no day'),
  },
  {
    could:
      'The pressure that the line is said to have carried lately is above its design pressure: a slip, or an overload.',
    would: 'Four fifths of a number that nobody believes would stand for what the thinned wall bears.',
    guards: ['found/limit-on-wall.ts: need service.recentPressure'],
    tests: live('that carried more than its design pressure'),
  },
  {
    could:
      'People work on live gas or on live hazardous contents without a written procedure of the site, or with one to come.',
    would: 'Nobody would have thought of gas tests, fire watch and the way out before it leaks.',
    guards: [
      'found/line-at-work.ts: reasons the contents are gas or hazardous and the line is under pressure',
      "found/line-at-work.ts: if phase === 'liquid'",
      'found/line-at-work.ts: if hazards.length === 0',
    ],
    tests: live(
      'with gas in it, by no written procedure',
      'with gas in it, by a procedure that nobody has written yet',
      'with a flammable liquid in it, by no written procedure',
    ),
  },
  {
    could: 'The whole thinned length breaks through at once.',
    would: 'The pipe would tear open, where everybody waits for a leak.',
    guards: ['found/rupture.ts: warnCrew If the whole thinned length broke through, the pipe would tear o'],
    tests: thinned('that would tear open if its whole length broke through'),
  },
  {
    could: 'Gas has crept under the wrap, and the line is let down faster than it escapes.',
    would: 'It would press the thin wall in from outside.',
    guards: ['found/vented-gas.ts: warnCrew Let the gas down slowly, now and every time: what has crept unde'],
    tests: thinned('that gas under the wrap would press in'),
  },
  {
    could: 'The sound pipe beside the defect does not bear the design pressure.',
    would: 'It would fail beside a repair that holds.',
    guards: [
      'found/sound-pipe.ts: reasons the sound pipe beside the defect would yield at the design press',
      'found/sound-pipe.ts: warnCrew The hoop stress of the sound pipe beside the defect is above its',
      'found/sound-pipe.ts: warnCrew The hoop stress of the sound pipe beside the defect is above the',
      'found/counts-on-metal.ts: reasons the method "<method>" counts on the pipe, and the pipe is abov',
    ],
    tests: beside(
      'would yield at the design pressure',
      'is above its allowable stress',
      'is above its allowable stress and is to share with the laminate',
      'is above its allowable stress by its loads and is to share with the laminate',
      'is above the factor of its code',
    ),
  },
  {
    could: 'A force along the pipe, bending, torsion or shear come on top of the pressure.',
    would: 'The sound pipe would yield beside the wrap.',
    guards: [
      'found/sound-pipe-along.ts: reasons the sound pipe beside the defect would yield under the stated lo',
      'found/sound-pipe-along.ts: warnCrew The stress of the sound pipe beside the defect, by the stated lo',
      'found/sound-pipe-along.ts: warnCrew The sound pipe beside the defect bears more along itself',
    ],
    tests: beside(
      'would yield under a pull',
      'would yield under bending',
      'would yield under torsion',
      'is above its allowable stress under a push',
      'is above what the pipeline code allows under a pull',
    ),
  },
];
