import { alike, type Equivalent, KNOWN, TIE } from './alike.js';

/** Changes of the formulas that nothing can tell from the original. */

const QUICK = 'the quick look only spares the full one, which refuses the same and nothing else';
const SLACK = 'a slack for the last digits of a unit: no number that anyone writes lies at its very edge';
const GUESS = 'where the search begins; it ends within its tolerance at the same number';

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
  ...alike('src/cure/kinetics/programme.ts', GUESS, [['1 / 64', '1 * 64']]),
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
  ...alike('src/laminate/thickness/thickness-ignored-axial.ts', `${TIE}: nothing`, [
    ['pull <= relief', 'pull < relief'],
  ]),
  ...alike('src/pipe/api579/assess-api579.ts', 'a distance that is not there is the same as none', [
    ['distanceToDiscontinuity === undefined', 'false'],
  ]),
  ...alike('src/pipe/pressure-design/mawp-all.ts', 'no wall stands behind the last: the loop ends there too', [
    ['row < rows', 'row <= rows'],
  ]),
  ...alike(
    'src/pipe/remaining-strength/assess-by-method.ts',
    `${KNOWN}: what is wrong in itself is refused before any method`,
    [["!isCalculationError(error) || error.code === 'invalid-input'", 'false']],
  ),
  ...alike('src/pipe/remaining-strength/depth-profile.ts', QUICK, [
    ['!(Number.isFinite(position) && position > previous)', 'true'],
  ]),
  ...alike(
    'src/pipe/remaining-strength/weakest-sub-length.ts',
    'what is looked at first, and in blocks of what size, spares time: the same sub-lengths are bounded or looked at',
    [
      ['n / FIRST_LOOK', 'n * FIRST_LOOK'],
      ['stride > 1', 'stride <= 1'],
      ['i + stride', 'i - stride'],
      ['power <= SMALLEST', 'true'],
    ],
  ),
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
  ...alike('src/site/air/magnus-set.ts', SLACK, [['t <= set.to + 1e-9', 't < set.to + 1e-9']]),
  ...alike('src/site/gate/judged-climates.ts', 'it only spares judging a climate twice', [
    ['before !== undefined', 'false'],
  ]),
  ...alike('src/site/gate/weather-gate.ts', `${KNOWN}: there is at least the reading of now`, [
    ['looks.at(-1)?.time', 'looks.at(-1).time'],
  ]),
  ...alike('src/site/hours/schedule.ts', `${TIE}, or a hair of rounding that is no slack`, [
    ['free > ROUNDING * end', 'free >= ROUNDING * end'],
  ]),
  ...alike('src/wrap/laying/rolls-along-tape.ts', `${KNOWN}: the tape of all passes is spent at the last of them`, [
    ['index < passes.length - 1', 'true'],
    ['index < passes.length - 1', 'index <= passes.length - 1'],
    ['passes.length - 1', 'passes.length + 1'],
  ]),
  ...alike('src/site/gate/weather-check.ts', 'the humidity is of exponentials: none is that limit to the last digit', [
    ['reading > 0.05', 'reading >= 0.05'],
  ]),
];
