import { type Hazard, shownIn } from '../hazard.js';

const file = 'verification/hazards/shown/loads.test.ts';
const pushed = shownIn(`${file}: a pipe that is pushed along itself`);
const outside = shownIn(`${file}: a pipe under pressure from outside`);

/** What acts on the pipe beside the pressure inside it. */
export const otherLoads: readonly Hazard[] = [
  {
    could: 'The pipe is pushed along itself, and nobody says how far it hangs free.',
    would: 'It would buckle sideways between its supports.',
    guards: ['asked/span.ts: need loads.freeSpan'],
    tests: pushed('whose free span nobody stated'),
  },
  {
    could: 'A pushed pipe hangs free too far, or its wall is used up on the way.',
    would: 'It would buckle sideways between its supports, and a laminate does not hold that.',
    guards: [
      'found/free-span.ts: reasons the free span would buckle under the push along the pipe: suppor',
      'found/free-span.ts: reasons the case states a push along a free span whose wall is used up a',
    ],
    tests: pushed('over a span that buckles', 'over a span whose wall is used up'),
  },
  {
    could: 'Vacuum, water or soil press on the pipe.',
    would: 'The sound pipe beside the wrap would fold, or the thinned one before the laminate holds it.',
    guards: [
      'found/pipe-from-outside.ts: reasons the sound pipe beside the defect would collapse under the pressu',
      'found/pipe-from-outside.ts: warnCrew Until the laminate has cured the thinned pipe bears {0} from out',
    ],
    tests: outside('collapses beside the defect', 'is not held before the laminate has cured'),
  },
  {
    could: 'Soil lies on the laminate for years, or before its resin is hard.',
    would: 'It would creep, or be pressed out of round while it is soft.',
    guards: [
      'laminate/outside.ts: warn The soil presses for years',
      'laminate/outside.ts: warnCrew Bury the line only after the hardness has passed',
    ],
    tests: outside('of soil that lies there for years', 'of soil that comes back before the laminate is hard'),
  },
  {
    could: 'A line in soil is called free to move along itself.',
    would: 'The push of heat or the pull of cold would be missing in every line along the pipe.',
    guards: ['asked/held-line.ts: warn The case says that the line is free to move along itself, and it'],
    tests: outside('of soil that holds a line along itself'),
  },
  {
    could: 'The laminate that was laid is thinner than the one that keeps the pipe round.',
    would: 'The empty pipe would fold under the wrap, at no pressure inside.',
    guards: ['laminate/outside.ts: reasons the laid thickness does not keep the pipe round under the pressu'],
    tests: outside('and a laminate that was laid too thin for it'),
  },
];
