import { alike, type Equivalent, TIE } from './alike.js';

/** Changes of the formulas of the pipe, but for its remaining strength, that nothing can tell from the original. */

export const equivalentInPipeRest: readonly Equivalent[] = [
  ...alike('src/pipe/api579/assess-api579.ts', 'no number is compared with one that is not there', [
    ['free !== undefined', 'true'],
  ]),
  ...alike(
    'src/pipe/b31g/b31g-1991-allowable-length.ts',
    'a share over nothing is endless too; no depth at all is unlimited before',
    [['rest > 0', 'rest >= 0']],
  ),
  ...alike('src/pipe/dnv/dnv-axial-compression.ts', `${TIE}: the share of two like numbers is 1`, [
    ['numerator < denominator', 'numerator <= denominator'],
  ]),
  ...alike(
    'src/pipe/pressure-design/mawp-all.ts',
    'the loop without a supplement only spares time: twice a wall is never thinner than it, and the numbers are the same',
    [['tsl === 0', 'false']],
  ),
  ...alike(
    'src/pipe/rupture/critical-through-wall-length.ts',
    'where the forms meet both come to 50, but for the last digit',
    [
      ['M >= 4.9', 'M > 4.9'],
      ['over >= 22.9375', 'over > 22.9375'],
    ],
  ),
  ...alike('src/pipe/stress/hoop-stress-all.ts', 'no wall stands behind the last: the loop ends there too', [
    ['row < rows', 'row <= rows'],
  ]),
];
