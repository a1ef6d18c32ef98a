import { alike, type Equivalent, TIE } from './alike.js';

/** Changes of the formulas that nothing can tell from the original. */

const QUICK = 'the quick look only spares the full one, which refuses the same and nothing else';

export const equivalentInRooms: readonly Equivalent[] = [
  ...alike('src/acceptance/pressure-test/pressure-fall.ts', `${TIE}: the turn is then looked at twice`, [
    ['low < turn', 'low <= turn'],
  ]),
  ...alike('src/cure/kinetics/nth-order-conversion.ts', 'at 1 the logarithm of nothing left comes to a cure of 1 too', [
    ['spent >= 1', 'spent > 1'],
  ]),
  ...alike('src/cure/kinetics/programme.ts', 'no number is compared with one that is not there', [
    ["law.law === 'two-branch'", 'true'],
  ]),
  ...alike(
    'src/cure/kinetics/programme.ts',
    'one step more or less, or an error at its very bound, before it is the same',
    [
      ['error <= 1e-9 * (1 + fine)', 'error < 1e-9 * (1 + fine)'],
      ['steps > 1e5', 'steps >= 1e5'],
    ],
  ),
  ...alike('src/cure/kinetics/rate-integral.ts', 'how finely it is summed: far below the digits that are told', [
    ['(to - from) / 6', '(to - from) * 6'],
  ]),
  ...alike('src/cure/kinetics/rate-integral.ts', `${TIE}: the end of one panel is the start of the next`, [
    ['clock + panel >= time', 'clock + panel > time'],
  ]),
  ...alike('src/cure/shift/daily-swing.ts', 'one mark more or less: the panels are summed finely in any case', [
    ['7 / 8', '7 * 8'],
  ]),
  ...alike('src/cure/shift/temperature-step.ts', QUICK, [['duration >= 0', 'duration > 0']]),
  ...alike('src/cure/wait/makers-rows.ts', 'what is written beyond the end of the list is dropped', [
    ['at < tree.length', 'at <= tree.length'],
  ]),
  ...alike(
    'src/resin/ply/burn-off.ts',
    'parts of one whole: their sum leaves what a number holds only where one of them does',
    [['Vf + Vm', 'Vf - Vm']],
  ),
  ...alike('src/resin/ratio/mixing-ratio-error.ts', 'close to 1 no ratio is 0.05 away from it to the last digit', [
    ['Math.abs(mixingRatioError(input) - 1) > 0.05', 'Math.abs(mixingRatioError(input) - 1) >= 0.05'],
  ]),
  ...alike('src/seal/band/pipe-under-band.ts', `${TIE}: both govern alike`, [
    ['buckling <= yielding', 'buckling < yielding'],
  ]),
];
