import { type Hazard, shownIn } from '../hazard.js';

const file = 'verification/hazards/shown/strength.test.ts';
const growing = shownIn(`${file}: a loss that goes on`);
const strength = shownIn(`${file}: the remaining strength`);

/** The strength that is left in the pipe, today and at the end of the life. */
export const strengthLeft: readonly Hazard[] = [
  {
    could: 'Corrosion from inside goes on under the wrap, and nobody stated how fast.',
    would: 'The wall would be gone before the repair is, and the wrap is sized for a wall.',
    guards: ['found/growth.ts: need defect.growth'],
    tests: growing('from inside, at a rate that nobody stated'),
  },
  {
    could: 'The wall is used up within the life, and the leak that opens is smaller on paper than in the pipe.',
    would: 'The laminate would peel off over a hole larger than the one it is sized for.',
    guards: [
      'found/hole.ts: need defect.holeDiameter',
      'found/hole.ts: warn The wall is used up within the life of the repair, and the hole',
      'found/hole.ts: notCovered the used-up wall is too long and narrow to count as a round hole',
    ],
    tests: growing(
      'through the wall, to a hole that an inspector expects',
      'through the wall, long and narrow',
      'of a hole whose size nobody stated',
    ),
  },
  {
    could: 'The thickness counts on the strength of a pipe that no method can judge, or on no stated factor.',
    would: 'Load would be given to metal that does not carry it.',
    guards: [
      'found/strength-factors.ts: need assessment.designFactor',
      'found/strength-at-end.ts: notCovered refusal',
      'found/strength-at-end.ts: if countsOnIt',
      'found/strength-at-end.ts: if assessment?.method !== undefined',
      'found/strength-at-end.ts: warn notComputed(refusal)',
      'found/strength-at-end.ts: warn The remaining strength of the thinned pipe was not computed: the',
    ],
    tests: strength(
      'that the thickness counts on, without a factor',
      'that nothing asks for, without a factor',
      'that no method reaches and the thickness counts on',
      'by a method that the case names and that does not reach',
      'that no method reaches and nothing counts on',
    ),
  },
  {
    could: 'A less conservative method, factor or flow stress is chosen, and the reader does not see it.',
    would: 'A pipe would be called fit by a number that somebody picked.',
    guards: [
      'found/less-conservative.ts: warn Remaining strength by <by>: <note>.',
      'found/less-conservative.ts: warn The safety factor on the failure pressure of the thinned pipe is',
      'found/less-conservative.ts: warn The flow stress is',
      'found/less-conservative.ts: warn The remaining strength is by',
      'found/less-conservative.ts: if byNamed <= lowest',
      'found/less-conservative.ts: if !BY_PROFILE.includes(method)',
    ],
    tests: strength(
      'with a note of its method',
      'with a factor below the one taken unasked',
      'with another flow stress',
      'by a method that gives more than another',
      'by the measured profile, though it be the lowest',
    ),
  },
];
