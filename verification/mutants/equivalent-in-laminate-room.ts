import { alike, type Equivalent, TIE } from './alike.js';

/** Changes of the formulas of the laminate that nothing can tell from the original. */

const room = (file: string): string => `src/laminate/${file}.ts`;
const NOTHING = `${TIE}: nothing`;
const ENDLESS = 'at the ceiling itself the thickness is without end, which is refused as no length';
const FORMS = 'at 0 both forms of the root are the same';
const ROW = 'two rows of one life contradict each other: either is the row of that life';

export const equivalentInLaminateRoom: readonly Equivalent[] = [
  ...alike(room('bond/tapered-end-shear'), 'two steps more, where the force has long been that far from any end', [
    ['steps - 1', 'steps + 1'],
  ]),
  ...alike(
    room('hole/energy-from-tests'),
    "Student's t is a root found to its tolerance: no tests leave 0 to the digit",
    [['lower > 0', 'lower >= 0']],
  ),
  ...alike(room('hole/leak-service-factor'), `${TIE}: ten to the power of 0 is 1`, [['L <= L1', 'L < L1']]),
  ...alike(room('hole/leak-temperature-factor'), `${TIE}: the root of 1 is 1`, [['share >= 1', 'share > 1']]),
  ...alike(room('hole/thickness-hole'), ENDLESS, [['q > 0', 'q >= 0']]),
  ...alike(room('hole/thickness-ring'), ENDLESS, [['left > 0', 'left >= 0']]),
  ...alike(room('slot/thickness-slot'), ENDLESS, [['q > 0', 'q >= 0']]),
  ...alike(room('slot/thickness-wide-slot'), ENDLESS, [['left > 0', 'left >= 0']]),
  ...alike(room('lamination/strengths'), NOTHING, [['value >= 0', 'value > 0']]),
  ...alike(room('lamination/tsai-hill-ratio'), 'a stress of 0 takes nothing of either strength', [
    ['s1 < 0', 's1 <= 0'],
    ['s2 < 0', 's2 <= 0'],
  ]),
  ...alike(room('lamination/tsai-wu'), FORMS, [['b >= 0', 'b > 0']]),
  ...alike(room('resistance/pressure-sharing-biaxial'), 'what no pressure changes is met at a pressure without end', [
    ['byPressure > 0', 'byPressure >= 0'],
  ]),
  ...alike(
    room('resistance/pressure-sharing-biaxial'),
    'the strain by the force holds pi: none leaves 0 to the digit',
    [['left < 0', 'left <= 0']],
  ),
  ...alike(room('strain/default-strains'), ROW, [['candidate.life < row.life', 'candidate.life <= row.life']]),
  ...alike(room('strain/default-strains'), 'close to 1 no share is 0.05 away from it to the last digit', [
    ['Math.abs(lowerShare(input) / modulusShare - 1) <= 0.05', 'Math.abs(lowerShare(input) / modulusShare - 1) < 0.05'],
  ]),
  ...alike(room('strain/performance-factor'), ROW, [['candidate.life < row.life', 'candidate.life <= row.life']]),
  ...alike(room('thickness/equivalent-pressure'), TIE, [['P < Pq', 'P <= Pq']]),
  ...alike(room('thickness/thickness-ignored-axial'), NOTHING, [['pull <= relief', 'pull < relief']]),
  ...alike(room('thickness/thickness-ignored-hoop'), NOTHING, [['whole <= relief', 'whole < relief']]),
  ...alike(room('thickness/thickness-long-term'), NOTHING, [['whole <= pipe', 'whole < pipe']]),
  ...alike(
    room('thickness/thickness-sharing-biaxial'),
    'a limit that is met at one thickness and passed at none holds at any thickness',
    [['inside < 0', 'inside <= 0']],
  ),
  ...alike(room('thickness/thickness-sharing-axial'), NOTHING, [['F <= held', 'F < held']]),
  ...alike(room('thickness/thickness-sharing-hoop'), NOTHING, [['P <= Ps', 'P < Ps']]),
  ...alike(room('thickness/thickness-yielded-axial'), NOTHING, [['whole <= pipe', 'whole < pipe']]),
  ...alike(room('thickness/thickness-yielded-hoop'), NOTHING, [['whole <= pipe', 'whole < pipe']]),
  ...alike(room('thickness/thickness-yielded-live'), NOTHING, [['whole <= pipe', 'whole < pipe']]),
  ...alike(room('thickness/thickness-yielded-live'), FORMS, [['b >= 0', 'b > 0']]),
];
