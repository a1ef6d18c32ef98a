import { Tally } from './summary.js';
import { outcomeOf } from './tally.js';
import { type Worsening, worsenings } from './worse/index.js';

/** One process of `npm run laws`: every so manieth case, with two of the laws in turn. */

const [first = 0, step = 1, cases = 0] = process.argv.slice(2).map(Number);

const tally = new Tally();
for (let draw = first; draw < cases; draw += step) {
  const at = (offset: number): Worsening => worsenings[(2 * draw + offset) % worsenings.length] as Worsening;
  tally.add(outcomeOf(draw, [at(0), at(1)]));
}
process.send?.(tally, () => process.disconnect());
