import { askedTests } from './asked-tests.js';
import { bundle } from './bundle.js';
import type { PerturbedConstant, PerturbedResult } from './list.js';
import { Perturber } from './perturber.js';

/** One process of `npm run perturb`: every so manieth constant and result, sent back by its place. */

export interface Share {
  readonly checks: number;
  readonly constants: readonly (readonly [place: number, found: PerturbedConstant])[];
  readonly results: readonly (readonly [id: string, found: PerturbedResult])[];
}

const [first = 0, step = 1] = process.argv.slice(2).map(Number);
const mine = (_: unknown, place: number): boolean => place % step === first;

const built = await bundle(askedTests);
const perturber = new Perturber(built, askedTests);
const results = built.results
  .toSorted()
  .filter(mine)
  .map((id) => [id, perturber.result(id)] as const);
const places = [...built.constants.keys()].filter(mine);
const constants = places.map((place, done) => {
  if (done % 50 === 0) console.log(`process ${first + 1}: ${done} of ${places.length} constants`);
  return [place, perturber.constant(place)] as const;
});
const share: Share = { checks: perturber.checks.length, constants, results };
process.send?.(share, () => process.disconnect());
