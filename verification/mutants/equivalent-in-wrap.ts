import { alike, type Equivalent, KNOWN } from './alike.js';

/** Changes of the wrap that nothing can tell from the original. */

export const equivalentInWrap: readonly Equivalent[] = [
  ...alike('src/wrap/laying/joint-offsets.ts', 'the pattern goes on: a window behind its end is its first one again', [
    ['first < places', 'first <= places'],
  ]),
  ...alike('src/wrap/laying/rolls-along-tape.ts', `${KNOWN}: the tape of all passes is spent at the last of them`, [
    ['index < passes.length - 1', 'true'],
    ['index < passes.length - 1', 'index <= passes.length - 1'],
    ['passes.length - 1', 'passes.length + 1'],
  ]),
  ...alike(
    'src/wrap/laying/sheet-layers.ts',
    'a slack for the last digits of a sum: no edge lies so far from the end to the last digit',
    [['edge >= end - 1e-9 * w', 'edge > end - 1e-9 * w']],
  ),
  ...alike(
    'src/wrap/passes.ts',
    'so near each other, two overlaps from a quarter on differ by a multiple of a power of two, and 0.05 is none',
    [['next - overlap <= 0.05', 'next - overlap < 0.05']],
  ),
];
