/** What is changed, and which tests are asked whether they notice. */

/** Words, types and lists that compute nothing. */
const WORDS = /\/(?:words|version|index)[^/]*\.ts$|\/case\/table|\/cautions\.ts$|\/case\/case[^/]*\.ts$/u;

const ROOM = /^src\/(?:mechanics|pipe|laminate|wrap|resin|cure|site|seal|acceptance)\//u;

export function mutated(of: 'job' | 'rooms', sources: readonly string[]): string[] {
  const inside = of === 'job' ? /^src\/repair\//u : ROOM;
  return sources.filter((file) => inside.test(file) && !WORDS.test(file) && !/\.data\.ts$|\/tables\//u.test(file));
}

/** These read the code, or bundle it themselves. */
const ABOUT_CODE = /case-table|no-arithmetic|timeline-imports|hazards\/log|bench|perturbation|report\.test/u;

export function killSuite(of: 'job' | 'rooms', tests: readonly string[], verification: readonly string[]): string[] {
  const wanted =
    of === 'job'
      ? /^tests\/(?:faults|repair)\/|^verification\/(?:laws|whole-job|hazards)\//u
      : /^tests\/(?:mechanics|pipe|laminate|wrap|resin|cure|site|seal|acceptance|formula|properties)\/|^verification\/(?:derivations|datasets)\/|^verification\/cases\.test/u;
  return [...tests, ...verification].filter((file) => wanted.test(file) && !ABOUT_CODE.test(file));
}
