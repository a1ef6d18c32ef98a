import { filesIn } from '../in-process/files.js';

/** The tests that are asked whether they notice. */

const derivations = [
  ...filesIn('verification/derivations', '.test.ts'),
  ...filesIn('verification/datasets', '.test.ts'),
  ...filesIn('verification/rules', '.test.ts'),
  ...filesIn('verification/limits', '.test.ts'),
  'verification/oracles/psychrometrics.test.ts',
  'tests/quantity/units.test.ts',
  'tests/quantity/clock.test.ts',
];

/** The rooms that hold formulas, and the whole job; the sheet, the JSON door and the command line only pass values on. */
const own = filesIn('tests', '.test.ts').filter((file) =>
  /^tests\/(?:mechanics|pipe|laminate|wrap|resin|cure|site|seal|acceptance|rules|repair)\//u.test(file),
);

/** These read the code or its types, not what it computes. */
const aboutCode = ['case-table', 'no-arithmetic', 'timeline-imports'].map((name) => `tests/repair/${name}.test.ts`);

export const askedTests: readonly string[] = [...derivations, ...own.filter((file) => !aboutCode.includes(file))];
