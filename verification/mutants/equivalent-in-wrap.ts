import { alike, type Equivalent, KNOWN } from './alike.js';

/** Changes of the wrap that nothing can tell from the original. */

export const equivalentInWrap: readonly Equivalent[] = [
  ...alike('src/wrap/laying/rolls-along-tape.ts', `${KNOWN}: the tape of all passes is spent at the last of them`, [
    ['index < passes.length - 1', 'true'],
    ['index < passes.length - 1', 'index <= passes.length - 1'],
    ['passes.length - 1', 'passes.length + 1'],
  ]),
];
