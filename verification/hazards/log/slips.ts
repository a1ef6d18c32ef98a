import { type Hazard, shownIn } from '../hazard.js';

const file = 'verification/hazards/shown/slips.test.ts';
const warned = shownIn(`${file}: a slip, warned of by its field and value`);
const refused = shownIn(`${file}: a slip, refused where a case is held strictly`);
const typed = shownIn(`${file}: a case that a program makes`);
const slips = [
  'joule for kilojoule',
  'a radius for a diameter',
  'a diameter for a circumference',
  'newton metre for kilonewton metre',
  'newton for kilonewton',
  'ground water for cover',
  'hardener for base',
  'hardener for base of the filler',
];

/** What one field shows by itself. */
export const fieldSlips: readonly Hazard[] = [
  {
    could: 'A number is off by a unit, or is the radius of the pipe instead of its diameter.',
    would: 'A design of another pipe or of another resin, with nothing that looks wrong.',
    guards: ['job/slips.ts: warn <text>.', 'job/slips.ts: refuse <constraint> where a case is held strictly'],
    tests: [...warned(...slips), ...refused(...slips)],
  },
  {
    could: 'A program hands over a case that lacks a field, misspells one or contradicts itself.',
    would: 'Its numbers would be designed with as they are: text as a pressure, a wall thicker than the pipe.',
    guards: ["case/check-case.ts: refuse { code: 'invalid-input', parameter, value: shown(value), unit, c"],
    tests: typed(
      'a field that is missing',
      'a field that nobody knows',
      'a number that is text',
      'a number that is none',
      'a number that can never be right',
      'two fields that contradict each other',
    ),
  },
];
