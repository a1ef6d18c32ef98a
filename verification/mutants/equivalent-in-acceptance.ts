import { alike, type Equivalent, TIE } from './alike.js';

/** Changes of acceptance, seal, resin and mechanics that no admissible case can tell from the original. */

const test = (file: string): string => `src/acceptance/pressure-test/${file}.ts`;
const layers = 'src/mechanics/wrapped-layers.ts';
const SLACK = 'a slack for the last digits of a unit or a quotient: no number that anyone writes lies at its very edge';

export const equivalentInAcceptance: readonly Equivalent[] = [
  ...alike('src/acceptance/accept-repair.ts', SLACK, [
    ['fraction < leastMean * slack', 'fraction <= leastMean * slack'],
    ['leastFraction < leastSingle * slack', 'leastFraction <= leastSingle * slack'],
  ]),
  ...alike('src/acceptance/findings/judge-findings.ts', SLACK, [
    ['value <= greatest * (1 + 1e-9)', 'value < greatest * (1 + 1e-9)'],
  ]),
  ...alike('src/acceptance/hardness/hardness-gate.ts', SLACK, [
    ['fraction >= least * (1 - 1e-9)', 'fraction > least * (1 - 1e-9)'],
  ]),
  ...alike(test('pressure-fall'), `${TIE}: the turn is then looked at twice`, [['turn < high', 'turn <= high']]),
  ...alike(test('water-density'), SLACK, [
    ['T < coldest - 1e-9', 'T <= coldest - 1e-9'],
    ['T > warmest + 1e-9', 'T >= warmest + 1e-9'],
  ]),
  ...alike(test('water-volume-factor'), SLACK, [
    ['fahrenheit <= end + 1e-9', 'fahrenheit < end + 1e-9'],
    ['fahrenheit < from - 1e-9', 'fahrenheit <= from - 1e-9'],
  ]),
  ...alike(
    'src/acceptance/stored-energy/log-ratio.ts',
    'about half and twice, and where a is the larger, either form has all digits of the logarithm',
    [
      ['a > b / 2', 'a >= b / 2'],
      ['a < 2 * b', 'true'],
      ['a < 2 * b', 'a <= 2 * b'],
    ],
  ),
  ...alike(
    'src/mechanics/arrhenius-shift.ts',
    'how large a shift is beyond numbers is chosen: at its very edge, which no exponential meets but by chance, either answer is as good',
    [
      ['aT > 1e-300', 'aT >= 1e-300'],
      ['aT < 1e300', 'aT <= 1e300'],
    ],
  ),
  ...alike(
    layers,
    'the power is 1: the hoop stress is asked at the bore of the pipe, whose k is 1, and at the radius 1',
    [['(c.rt * k + c.tt) * r ** (k - 1)', '(c.rt * k + c.tt) / r ** (k - 1)']],
  ),
  ...alike(layers, 'either form holds about there: no wrap is a millionth or a billionth apart to the last digit', [
    ['Math.abs(apart) > 1e-6', 'Math.abs(apart) >= 1e-6'],
    ['Math.abs(pull) < 1e-9', 'Math.abs(pull) <= 1e-9'],
  ]),
  ...alike(layers, 'k is 1 to the last digits, or a millionth and more beside it: nothing lies between', [
    ['Math.abs(n) < 1e-9', 'Math.abs(n) <= 1e-9'],
  ]),
  ...alike(layers, 'where n is 0 the layer is alike round and through, and what this is multiplied by is nothing', [
    ['to / from', 'to * from'],
  ]),
];
