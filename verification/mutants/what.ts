import { seeded } from '../oracles/random.js';
import { reasonOf } from './equivalent.js';
import type { Mutant } from './instrument.js';

/** What is changed, and which tests are asked whether they notice. */

export type Of = 'job' | 'rooms';

/** Words, types and lists that compute nothing. */
const WORDS = /\/(?:words|version|index)[^/]*\.ts$|\/case\/table|\/cautions\.ts$|\/case\/case[^/]*\.ts$/u;

const ROOM = /^src\/(?:mechanics|pipe|laminate|wrap|resin|cure|site|seal|acceptance)\//u;

export function mutated(of: Of, sources: readonly string[]): string[] {
  const inside = of === 'job' ? /^src\/repair\//u : ROOM;
  return sources.filter((file) => inside.test(file) && !WORDS.test(file) && !/\.data\.ts$|\/tables\//u.test(file));
}

/** A sample of the changes, the same with every run. */
function drawn(mutants: readonly Mutant[], sample: number): readonly Mutant[] {
  const random = seeded('changes');
  const rest = [...mutants];
  return Array.from({ length: Math.min(sample, rest.length) }, () =>
    rest.splice(Math.floor(random() * rest.length), 1),
  ).flat();
}

/** Asks for the changes that have a reason: a test that notices one proves it wrong. */
export const REASONED = 'reasons';

/** What is asked for in one word: so many changes, drawn, or those of the files whose path holds it, or all. */
export function asked(mutants: readonly Mutant[], word: string): readonly Mutant[] {
  if (word === REASONED) return mutants.filter((mutant) => reasonOf(mutant) !== undefined);
  return /^\d+$/u.test(word) ? drawn(mutants, Number(word)) : mutants.filter(({ file }) => file.includes(word));
}

/** These read the code, or bundle it themselves. */
const ABOUT_CODE = /case-table|no-arithmetic|timeline-imports|hazards\/log|put-back|bench|perturbation|report\.test/u;

/** As long as all others together. */
const LONG = /laws\/laws|each-hour-designed|usual-spans/u;

export function killSuite(of: Of, tests: readonly string[], verification: readonly string[]): string[] {
  const wanted =
    of === 'job'
      ? /^tests\/(?:faults|repair)\/|^verification\/(?:laws|whole-job|hazards)\//u
      : /^tests\/(?:mechanics|pipe|laminate|wrap|resin|cure|site|seal|acceptance|formula|properties)\/|^verification\/(?:derivations|datasets|limits|rules)\/|^verification\/cases\.test/u;
  return [...tests, ...verification].filter((file) => wanted.test(file) && !ABOUT_CODE.test(file) && !LONG.test(file));
}
