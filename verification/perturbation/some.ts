import { askedTests } from './asked-tests.js';
import { bundle } from './bundle.js';
import { Perturber } from './perturber.js';

/**
 * `npm run perturb:some -- laminate/bond-force clock` changes only the constants of these formulas or files
 * and says what notices each, in seconds rather than minutes; `limit` stands for all limits. Nothing is written: the summary
 * is of all constants.
 */
const wanted = process.argv.slice(2);
const built = await bundle(askedTests);
const places = [...built.constants.entries()].filter(
  ([, { of, sort }]) => wanted.includes(of) || wanted.includes(sort),
);
if (places.length === 0) throw new Error(`no constant is of ${wanted.join(' or ')}`);
const perturber = new Perturber(built, askedTests);
for (const [place, { of }] of places) {
  const { constant, sort, code, caughtBy, by, smallest } = perturber.constant(place);
  const what = caughtBy === 'nothing' ? `${smallest}; ${code}` : by;
  console.log([of, constant, sort, caughtBy, what].join(' | '));
}
