import { writeFileSync } from 'node:fs';
import type { CaseResult } from '../runner/judge.js';
import type { CaseFileReading } from '../runner/run.js';
import { type Bundle, bundle, filesIn, type Hooks, inFull, type Loaded } from './bundle.js';
import { type PerturbationList, type PerturbedConstant, type PerturbedResult, perturbationText } from './list.js';

/**
 * Changes every numeric constant by one part in a thousand, and the result of every formula, and says what notices. The check
 * of the declared text against the code is not run: that comes to the same as changing the text along with the code.
 */

const CHANGE = 1e-3;
const LADDER_DOWN = [1e-4, 1e-5, 1e-6, 1e-8];
const LADDER_UP = [1e-2, 0.1, 1];

/** From the strongest to the weakest. */
const CATCHERS = ['outside print', 'dataset', 'derivation', 'recalled or practice', 'own tests only'] as const;
type Catcher = (typeof CATCHERS)[number];

/** Tests that take long are asked last. */
const SLOW = /blister-elements/u;

/** Something that can turn red: a case or a test. */
interface Check {
  readonly name: string;
  readonly catcher: Catcher;
  /** The file of a test; cases have none. */
  readonly file: string | undefined;
  /** Runs on a loaded library; false means that it noticed. */
  readonly holds: (loaded: Loaded) => boolean;
  /** What it touched in the run on unchanged code. */
  readonly constants: Set<number>;
  readonly results: Set<string>;
}

function catcherOf({ record }: CaseResult): Catcher {
  // The right value behind an erratum is worked out, not printed.
  if (record.class === 'derivation' || record.erratum !== undefined) return 'derivation';
  if (record.class === 'dataset') return 'dataset';
  return record.class === 'recalled' || record.class === 'practice' ? 'recalled or practice' : 'outside print';
}

function catcherOfTest(file: string): Catcher {
  if (file.startsWith('verification/datasets/')) return 'dataset';
  // Output of another program, which runs along.
  if (file === 'verification/oracles/psychrometrics.test.ts') return 'outside print';
  // Units are composed from the definitions of others, which is a derivation.
  return file.startsWith('verification/') || file === 'tests/quantity/units.test.ts' ? 'derivation' : 'own tests only';
}

class Probe implements Hooks {
  private active: number | undefined;
  private shifted: string | undefined;
  private factor = 1;
  touchedConstants = new Set<number>();
  touchedResults = new Set<string>();
  constructor(private readonly values: readonly number[]) {}

  readonly constant = (index: number): number => {
    this.touchedConstants.add(index);
    const value = this.values[index] as number;
    return index === this.active ? value * this.factor : value;
  };
  readonly result = (id: string, value: unknown): unknown => {
    this.touchedResults.add(id);
    return id === this.shifted ? scaled(value, this.factor) : value;
  };

  forget(): void {
    this.touchedConstants = new Set();
    this.touchedResults = new Set();
  }

  set(change: { readonly constant?: number; readonly result?: string; readonly factor: number } | undefined): void {
    this.active = change?.constant;
    this.shifted = change?.result;
    this.factor = change?.factor ?? 1;
  }
}

function scaled(value: unknown, factor: number): unknown {
  if (typeof value === 'number') return value * factor;
  if (Array.isArray(value)) return value.map((item) => scaled(item, factor));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, scaled(inner, factor)]));
}

function passes(act: () => void): boolean {
  try {
    act();
    return true;
  } catch {
    return false;
  }
}

/** Every case and test that holds on unchanged code, with what it touches. */
function checksOf(loaded: Loaded, probe: Probe, tests: readonly string[]): Check[] {
  const checks: Check[] = [];
  const touch = (
    name: string,
    catcher: Catcher,
    file: string | undefined,
    holds: Check['holds'],
    must: boolean,
  ): void => {
    probe.forget();
    const good = holds(loaded);
    if (!good && must) throw new Error(`${name} does not hold on unchanged code`);
    if (good)
      checks.push({ name, catcher, file, holds, constants: probe.touchedConstants, results: probe.touchedResults });
  };
  for (const reading of loaded.readCases()) {
    for (const record of reading.records) {
      const only: CaseFileReading = { file: reading.file, records: [record] };
      const [first] = loaded.runCases([only]);
      if (first === undefined) continue;
      const holds = (given: Loaded): boolean => given.runCases([only])[0]?.verdict !== 'fails';
      touch(record.id, catcherOf(first), undefined, holds, true);
    }
  }
  for (const file of tests) {
    const catcher = catcherOfTest(file);
    loaded.testsIn(file).forEach(({ name }, index) => {
      const brief = (given: Loaded): boolean => passes(() => given.testsIn(file)[index]?.run());
      // A test that counts what it met needs all its runs.
      const holds = brief(loaded) ? brief : (given: Loaded): boolean => inFull(() => brief(given));
      touch(`${file}: ${name}`, catcher, file, holds, catcher !== 'own tests only');
    });
  }
  return checks.sort((a, b) => Number(SLOW.test(a.name)) - Number(SLOW.test(b.name)));
}

interface Found {
  readonly catcher: Catcher;
  readonly check: Check;
}

/** The strongest kind of check that notices, and the first of that kind. */
function firstCatch(
  checks: readonly Check[],
  loaded: () => Loaded,
  upTo: readonly Catcher[] = CATCHERS,
): Found | undefined {
  let at: Loaded;
  try {
    at = loaded();
  } catch {
    const [check] = checks;
    return check === undefined ? undefined : { catcher: check.catcher, check };
  }
  for (const catcher of upTo) {
    const check = checks.find((each) => each.catcher === catcher && !each.holds(at));
    if (check !== undefined) return { catcher, check };
  }
  return undefined;
}

const percent = (change: number): string => `${Number((change * 100).toPrecision(1))} %`;

class Perturber {
  private readonly probe: Probe;
  private readonly standing: Loaded;
  readonly checks: readonly Check[];

  constructor(
    private readonly built: Bundle,
    tests: readonly string[],
  ) {
    this.probe = new Probe(built.constants.map(({ value }) => value));
    this.standing = built.load(this.probe);
    this.checks = checksOf(this.standing, this.probe, tests);
  }

  /**
   * The checks that a constant can reach: those that touched it; for one that is read at load, those that touched a formula
   * over its file. Rule sets stand beside the formulas, so the tests that import them are asked; units stand under
   * everything, so the cases and the composition of units are.
   */
  private concerned(index: number): readonly Check[] {
    const constant = this.built.constants[index];
    if (constant === undefined || !constant.atLoad) return this.checks.filter(({ constants }) => constants.has(index));
    if (constant.sort === 'unit')
      return this.checks.filter(({ file }) => file === undefined || file === 'tests/quantity/units.test.ts');
    if (constant.sort === 'rule') {
      const importers = new Set(['rules', 'repair'].flatMap((room) => [...this.built.testsOf(`src/${room}/index.ts`)]));
      return this.checks.filter(({ file }) => file !== undefined && importers.has(file));
    }
    const over = this.built.formulasOver(constant.file);
    return this.checks.filter(({ results }) => [...results].some((id) => over.has(id)));
  }

  private try(index: number, change: number, checks: readonly Check[], upTo?: readonly Catcher[]): Found | undefined {
    const atLoad = this.built.constants[index]?.atLoad === true;
    this.probe.set({ constant: index, factor: 1 + change });
    const found = firstCatch(checks, () => (atLoad ? this.built.load(this.probe) : this.standing), upTo);
    this.probe.set(undefined);
    return found;
  }

  constant(index: number): PerturbedConstant {
    const { file, text, code, sort } = this.built.constants[index] as Bundle['constants'][number];
    const checks = this.concerned(index);
    const both = [CHANGE, -CHANGE].map((change) => this.try(index, change, checks));
    const strongest = CATCHERS.find((catcher) => both.some((found) => found?.catcher === catcher));
    const about = { file, constant: text, code, sort };
    if (strongest === undefined)
      return { ...about, caughtBy: 'nothing', by: '', oneWay: false, smallest: this.larger(index, checks) };
    const found = both.find((each) => each?.catcher === strongest) as Found;
    const oneWay = both.some((each) => each === undefined);
    const sign = both[0]?.catcher === strongest ? 1 : -1;
    const slow = SLOW.test(found.check.name);
    const own = checks.filter(({ catcher, name }) => catcher === strongest && SLOW.test(name) === slow);
    let smallest = CHANGE;
    for (const change of LADDER_DOWN) {
      if (this.try(index, sign * change, own, [strongest]) === undefined) break;
      smallest = change;
    }
    return { ...about, caughtBy: strongest, by: found.check.name, oneWay, smallest: percent(smallest) };
  }

  /** For a constant that nothing notices: from which change on anything would. */
  private larger(index: number, checks: readonly Check[]): string {
    if (checks.length === 0) return 'nothing runs it';
    // A bound is met or not; by how much it may move is a question of the inputs that happen to be tried.
    if (this.built.constants[index]?.sort === 'limit') return 'not sought';
    const quick = checks.filter(({ name, catcher }) => !SLOW.test(name) && catcher !== 'own tests only');
    for (const change of LADDER_UP) {
      const found = this.try(index, change, quick) ?? this.try(index, -Math.min(change, 0.9), quick);
      if (found !== undefined) return `${percent(change)} (${found.catcher}: ${found.check.name})`;
    }
    return `not up to ${percent(LADDER_UP.at(-1) ?? 1)}`;
  }

  result(id: string): PerturbedResult {
    const checks = this.checks.filter(({ results }) => results.has(id));
    this.probe.set({ result: id, factor: 1 + CHANGE });
    const found = firstCatch(checks, () => this.standing);
    const files = [...new Set(checks.filter(({ catcher }) => catcher === 'derivation').map(({ file }) => file))];
    const derivations = files.filter(
      (file): file is string =>
        file !== undefined &&
        checks.some((check) => check.file === file && check.catcher === 'derivation' && !check.holds(this.standing)),
    );
    this.probe.set(undefined);
    return { caughtBy: found?.catcher ?? 'nothing', by: found?.check.name ?? '', derivations: derivations.sort() };
  }
}

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
