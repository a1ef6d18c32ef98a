import { alike, type Equivalent, TIE } from './alike.js';

/** Changes of the laminate's formulas that nothing can tell from the original. */

const at = (file: string): string => `src/laminate/${file}.ts`;
const NOTHING = `${TIE}: nothing`;
const CEILING = 'such a ceiling holds pi: no stated pressure meets it to the last digit';
const ROW = 'a table has one row for a life: two of them contradict each other';
const FAR = 'the force twelve shear-lag lengths past the taper is no more than its hundred thousandth part at the tip';

export const equivalentInLaminateRoom: readonly Equivalent[] = [
  ...alike(at('bond/tapered-end-shear'), FAR, [
    ['i < steps', 'i <= steps'],
    ['rest / (1 - share)', 'rest * (1 - share)'],
    ['1 - share', '1 + share'],
  ]),
  ...alike(
    at('hole/energy-from-tests'),
    'a lower limit whose square is no number lies under a mean whose square is none, or is nothing: both are refused',
    [['lower * lower', 'lower / lower']],
  ),
  ...alike(
    at('hole/energy-from-tests'),
    'the two differ only where the largest square that a number holds lies between the lower limit and the mean',
    [['root * root', 'root / root']],
  ),
  ...alike(at('hole/energy-from-tests'), 'no scatter of measured pressures leaves nothing to the last digit', [
    ['lower > 0', 'lower >= 0'],
  ]),
  ...alike(
    at('hole/energy-from-tests'),
    'at the very tenth the rounding of the unit decides, as between 10 and 11 mm written in metres',
    [['diameter > smallest * SIZE_STEP', 'diameter >= smallest * SIZE_STEP']],
  ),
  ...alike(at('hole/leak-service-factor'), `${TIE}: the factor of the first year`, [['L <= L1', 'L < L1']]),
  ...alike(at('hole/leak-temperature-factor'), `${TIE}: 1`, [['share >= 1', 'share > 1']]),
  ...alike(at('hole/thickness-hole'), CEILING, [['q > 0', 'q >= 0']]),
  ...alike(at('hole/thickness-ring'), CEILING, [['left > 0', 'left >= 0']]),
  ...alike(at('slot/thickness-slot'), CEILING, [['q > 0', 'q >= 0']]),
  ...alike(at('slot/thickness-slot'), 'the step mends the last two digits of a root that has the others', [
    [
      'start - (start * start * start + p * start - q) / (3 * start * start + p)',
      'start + (start * start * start + p * start - q) / (3 * start * start + p)',
    ],
  ]),
  ...alike(at('slot/thickness-wide-slot'), CEILING, [['left > 0', 'left >= 0']]),
  ...alike(at('lamination/strengths'), NOTHING, [['value >= 0', 'value > 0']]),
  ...alike(at('lamination/tsai-hill-ratio'), NOTHING, [
    ['s1 < 0', 's1 <= 0'],
    ['s2 < 0', 's2 <= 0'],
  ]),
  ...alike(at('lamination/tsai-wu'), `${TIE}: both forms are those of a root without b`, [['b >= 0', 'b > 0']]),
  ...alike(
    at('resistance/pressure-sharing-biaxial'),
    'pressure adds nothing only along a pipe without end load, where the force is a push or none: no bound either way',
    [['byPressure > 0', 'byPressure >= 0']],
  ),
  ...alike(
    at('resistance/pressure-sharing-biaxial'),
    'what a force leaves holds pi: none leaves nothing to the last digit',
    [['least < 0', 'least <= 0']],
  ),
  ...alike(at('thickness/thickness-sharing-biaxial'), 'a limit that is touched in one root holds at any thickness', [
    ['inside < 0', 'inside <= 0'],
  ]),
  ...alike(at('strain/default-strains'), ROW, [['candidate.life < row.life', 'candidate.life <= row.life']]),
  ...alike(at('strain/performance-factor'), ROW, [['candidate.life < row.life', 'candidate.life <= row.life']]),
  ...alike(at('strain/default-strains'), 'a quotient less 1 is never the number that 0.05 is, to the last digit', [
    ['Math.abs(lowerShare(input) / modulusShare - 1) <= 0.05', 'Math.abs(lowerShare(input) / modulusShare - 1) < 0.05'],
  ]),
  ...alike(at('thickness/equivalent-pressure'), `${TIE}: twice the pressure of the shear`, [['P < Pq', 'P <= Pq']]),
  ...alike(at('thickness/thickness-ignored-axial'), NOTHING, [['pull <= relief', 'pull < relief']]),
  ...alike(at('thickness/thickness-ignored-hoop'), NOTHING, [['whole <= relief', 'whole < relief']]),
  ...alike(at('thickness/thickness-long-term'), NOTHING, [['whole <= pipe', 'whole < pipe']]),
  ...alike(at('thickness/thickness-sharing-axial'), NOTHING, [['F <= held', 'F < held']]),
  ...alike(at('thickness/thickness-sharing-hoop'), NOTHING, [['P <= Ps', 'P < Ps']]),
  ...alike(at('thickness/thickness-yielded-axial'), NOTHING, [['whole <= pipe', 'whole < pipe']]),
  ...alike(at('thickness/thickness-yielded-hoop'), NOTHING, [['whole <= pipe', 'whole < pipe']]),
  ...alike(at('thickness/thickness-yielded-live'), NOTHING, [['whole <= pipe', 'whole < pipe']]),
  ...alike(at('thickness/thickness-yielded-live'), `${TIE}: both forms are those of a root without b`, [
    ['b >= 0', 'b > 0'],
  ]),
];
