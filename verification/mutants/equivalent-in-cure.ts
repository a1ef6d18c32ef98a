import { alike, type Equivalent, KNOWN, TIE } from './alike.js';

/** Changes of the cure that no admissible case can tell from the original. */

const kinetics = (file: string): string => `src/cure/kinetics/${file}.ts`;
const shift = (file: string): string => `src/cure/shift/${file}.ts`;
const GUESS = 'where the search begins; it ends within its tolerance at the same number';

export const equivalentInCure: readonly Equivalent[] = [
  ...alike(
    kinetics('degree-of-cure'),
    'the other laws have no exponent m, and no number is above one that is not there',
    [["law.law === 'autocatalytic'", 'true']],
  ),
  ...alike(
    kinetics('programme'),
    'a step that ends at the switch to the last digit: the next begins there and switches',
    [['fine > jump', 'fine >= jump']],
  ),
  ...alike(
    kinetics('programme'),
    'no step ends at that number to the last digit, and what is left beyond is below 2e-16',
    [['v < COMPLETE', 'v <= COMPLETE']],
  ),
  ...alike(kinetics('programme'), 'only finer: no step is less exact than a billionth in either case', [
    ['1e-9 * (1 + fine)', '1e-9 / (1 + fine)'],
  ]),
  ...alike(kinetics('programme'), 'how far the next step reaches is tried anew by its two halves', [
    ['error < 1e-11', 'error <= 1e-11'],
    ['Math.min(1, 2 * by)', 'Math.max(1, 2 * by)'],
    ['2 * by', '2 / by'],
  ]),
  ...alike(
    kinetics('programme'),
    'a last resort: what stalls goes back, and what is too large ends in a step of nothing',
    [
      ['steps > 1e5', 'false'],
      ['steps++', 'steps--'],
    ],
  ),
  ...alike(kinetics('programme'), 'what no step is short enough for then ends by the number of steps', [
    ['by === 0', 'false'],
  ]),
  ...alike(kinetics('programme'), `${KNOWN}: the switch lies between the ends of the step`, [
    [
      'bisect((share) => double(x0, v0, share) - jump, 0, by)?.root',
      'bisect(share => double(x0, v0, share) - jump, 0, by).root',
    ],
  ]),
  ...alike(kinetics('two-branch-time'), `${TIE}: at the switch the second branch takes no time`, [
    ['a <= as', 'a < as'],
  ]),
  ...alike(shift('daily-swing'), 'a panel without length adds nothing, and where nothing swings nothing is crossed', [
    ['half > 0', 'true'],
    ['half > 0', 'half >= 0'],
    ['mark > start', 'mark >= start'],
    ['mark < start + 1', 'mark <= start + 1'],
  ]),
  ...alike(shift('daily-swing'), 'one mark more or less: the panels are summed finely in any case', [
    ['1 / 8', '1 * 8'],
    ['1 / 4', '1 * 4'],
    ['3 / 8', '3 * 8'],
    ['1 / 2', '1 * 2'],
    ['5 / 8', '5 * 8'],
    ['3 / 4', '3 * 4'],
  ]),
  ...alike(shift('equivalent-time-ramp'), `${TIE}: all of the ramp or none`, [['minimum > hot', 'minimum >= hot']]),
  ...alike(
    shift('temperature-step'),
    'the quick look only spares the full one, which refuses the same and nothing else',
    [
      ['!(Number.isFinite(duration) && duration >= 0)', 'true'],
      ['Number.isFinite(duration) && duration >= 0', 'false'],
      ['!(Number.isFinite(temperature) && temperature > 0)', 'true'],
      ['Number.isFinite(temperature) && temperature > 0', 'false'],
    ],
  ),
  ...alike('src/cure/wait/cure-wait-over-swing.ts', GUESS, [
    ['Math.max(0, days - 1)', 'Math.min(0, days - 1)'],
    ['Math.max(0, days - 1) * period', 'Math.max(0, days - 1) / period'],
  ]),
  ...alike('src/cure/wait/warmest-for-working-time.ts', `${TIE}: an infinite one bounds nothing`, [
    ['reciprocal > 0', 'reciprocal >= 0'],
  ]),
];
