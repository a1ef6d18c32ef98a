import { writeFileSync } from 'node:fs';
import { bundle, filesIn } from './bundle.js';
import { type PerturbationList, type PerturbedConstant, type PerturbedResult, perturbationText } from './list.js';
import { CHANGE, Perturber } from './perturber.js';

/**
 * Changes every numeric constant by one part in a thousand, and the result of every formula, and says what notices. The check
 * of the declared text against the code is not run: that comes to the same as changing the text along with the code.
 */

const derivations = [
  ...filesIn('verification/derivations', '.test.ts'),
  ...filesIn('verification/datasets', '.test.ts'),
  'verification/oracles/psychrometrics.test.ts',
  'tests/quantity/units.test.ts',
];
/** The rooms that hold formulas, and the whole job; the sheet, the JSON door and the command line only pass values on. */
const own = filesIn('tests', '.test.ts').filter((file) =>
  /^tests\/(?:mechanics|pipe|laminate|wrap|resin|cure|site|seal|acceptance|rules|repair)\//u.test(file),
);

const started = Date.now();
const built = await bundle([...derivations, ...own]);
const perturber = new Perturber(built, [...derivations, ...own]);
const formulas = built.results;
console.log(
  `${built.constants.length} constants, ${formulas.length} results, ${perturber.checks.length} checks, ${Math.round((Date.now() - started) / 1000)} s to start`,
);
const results: Record<string, PerturbedResult> = {};
for (const id of [...formulas].sort()) results[id] = perturber.result(id);
console.log(`results done after ${Math.round((Date.now() - started) / 1000)} s`);
const constants: PerturbedConstant[] = [];
built.constants.forEach((_, index) => {
  constants.push(perturber.constant(index));
  if (index % 25 === 24) console.log(`${index + 1} constants after ${Math.round((Date.now() - started) / 1000)} s`);
});
const list: PerturbationList = { change: CHANGE, constants, results };
writeFileSync(new URL('survivors.json', import.meta.url), `${JSON.stringify(list, undefined, 1)}\n`);
writeFileSync(new URL('survivors.md', import.meta.url), perturbationText(list));
console.log(perturbationText(list).split('\n').slice(0, 30).join('\n'));
