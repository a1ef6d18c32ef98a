import { type Hazard, shownIn } from '../hazard.js';

const file = 'verification/hazards/shown/shapes.test.ts';
const ofSlot = shownIn(`${file}: a slot`);
const onFitting = shownIn(`${file}: a fitting`);
const asMade = shownIn(`${file}: a slot or a bend as it was made`);

/** Openings that are not round, and pipe that is not straight. */
export const shapes: readonly Hazard[] = [
  {
    could: 'A slot is repaired whose extents nobody measured.',
    would: 'The laminate would be sized for a hole, and a slot peels it off at a fraction of the pressure.',
    guards: ['found/slot.ts: need defect.slot'],
    tests: ofSlot('of no stated extents'),
  },
  {
    could: 'The metal beside a slot cannot hold the pipe together.',
    would: 'It would tear on under the laminate, which only bridges the slot.',
    guards: ['found/slot.ts: reasons <what>: a laminate over a slot bridges it and holds no pipe toge'],
    tests: ofSlot('so long that the pipe tears on', 'round so much of the pipe that it parts', 'all round the pipe'),
  },
  {
    could: 'Nobody knows how tight a bend is.',
    would: 'The laminate would be too thin along its inside.',
    guards: ['laminate/fitting.ts: need fitting.bendRadius'],
    tests: onFitting('that is a bend of no stated radius'),
  },
  {
    could: 'The pipe is counted on where it is no straight pipe.',
    would: 'The laminate would lack what the metal of a bend or at a flange does not carry.',
    guards: [
      'found/coverage.ts: reasons the case names the method "<method>", which counts on metal as i',
      "found/coverage.ts: if method === 'substrate sharing load'",
      "found/coverage.ts: if method === 'substrate yielded'",
    ],
    tests: onFitting('whose metal shares the load', 'whose metal yields'),
  },
  {
    could:
      'A bend is repaired in a way that only straight pipe bears: sheet, a band, a slot, a live line, beside another loss.',
    would: 'Folds, a slack band or a thinned wall would give way.',
    guards: [
      'found/coverage.ts: reasons the wrap is a sheet, and no sheet lies on a bend without folds:',
      'found/coverage.ts: reasons the case states a load on a bend, <name>: a bend flattens under',
      'found/coverage.ts: reasons the slot lies in a bend: the ring that holds a laminate over a w',
      'found/coverage.ts: reasons a neighbouring loss that no laminate covers lies on or near a b',
      'found/coverage.ts: reasons the line stays under pressure while people work on a thinned ben',
      'found/coverage.ts: reasons the leak would be sealed on a bend, where a band slips to the in',
    ],
    tests: onFitting(
      'that is a bend under sheet',
      'that is a bend with a slot',
      'that is a bend beside another loss',
      'that is a bend under pressure',
      'that is a bend with a seal',
      'that is a bend under a bending moment',
    ),
  },
  {
    could: 'The bend is tighter than pipe, filler and laminate are wide.',
    would: 'The turns of tape would fold over each other along its inside.',
    guards: ['wrap/tape.ts: reasons the bend is tighter than the laminate on it is wide, so that it'],
    tests: onFitting('that is tighter than the laminate is wide'),
  },
  {
    could: 'The bend is so tight that the turns of tape hardly move on along its inside.',
    would: 'Twenty turns on one place would wrinkle, and never wet out.',
    guards: ['wrap/tape.ts: reasons the bend is so tight that the turns pile up along its inside: le'],
    tests: onFitting('on whose inside the turns pile up'),
  },
  {
    could: 'Preparation opens a slot further than it was measured, or a hole beside it.',
    would: 'The laminate over it would peel at less than its pressure.',
    guards: [
      'as-built/survey.ts: notShown nobody measured the opening of the slot after the steel was prep',
      'as-built/survey.ts: slotPoints: does not meet',
      'as-built/survey.ts: slotPoints: does not meet (2)',
      'as-built/as-built.ts: nonNegative survey.slot.axialLength',
      'as-built/as-built.ts: nonNegative survey.slot.circumferentialWidth',
    ],
    tests: asMade(
      'whose opening nobody measured',
      'that is longer than designed for',
      'that is wider than designed for',
      'with a hole beside it',
      'by a length below nothing: survey.slot.axialLength',
      'by a length below nothing: survey.slot.circumferentialWidth',
    ),
  },
  {
    could: 'A laminate on a fitting is thinner or shorter than designed, and rated as if it lay on straight pipe.',
    would: 'The line would go back to a pressure that it does not hold.',
    guards: ['as-built/rating.ts: unrated what a thinner or shorter laminate holds on a fitting is not kno'],
    tests: asMade('that is thinner, on a bend'),
  },
];
