import type { AnyFormula } from '../../src/formula/index.js';
import { drawList } from '../../tests/formula/samplers.js';
import { within } from '../in-process/within.js';
import { type Draw, drawCalls } from '../oracles/draw.js';
import { seeded } from '../oracles/random.js';
import type { Bundle, Loaded } from './bundle.js';
import { CATCHERS, type Catcher, type Check, checksOf, Probe, SLOW } from './checks.js';
import type { PerturbedConstant, PerturbedResult } from './list.js';

/** Changes one constant, or the result of one formula, and finds what notices. */

export const CHANGE = 1e-3;
const LADDER_DOWN = [1e-4, 1e-5, 1e-6, 1e-8];
const LADDER_UP = [1e-2, 0.1, 1];
/** Largest relative change of any result for which a constant has no effect: more digits than any value is printed in. */
const IDLE = 1e-9;

/** No check takes so long that ends. */
const LONGEST = 30_000;

/** Whether a check still holds. One that never ends has noticed. */
function holds(check: Check, loaded: Loaded): boolean {
  try {
    return within(LONGEST, () => check.holds(loaded));
  } catch {
    return false;
  }
}

/** The largest relative difference between two results; another word or another form is infinitely far. */
function farthest(a: unknown, b: unknown): number {
  if (typeof a === 'number' && typeof b === 'number') {
    if (Object.is(a, b)) return 0;
    return Math.abs(a - b) / Math.max(Math.abs(a), Math.abs(b));
  }
  if (typeof a === 'object' && typeof b === 'object' && a !== null && b !== null) {
    const [left, right] = [Object.entries(a), b as Readonly<Record<string, unknown>>];
    if (left.length !== Object.keys(b).length) return Number.POSITIVE_INFINITY;
    return Math.max(0, ...left.map(([key, value]) => farthest(value, right[key])));
  }
  return a === b ? 0 : Number.POSITIVE_INFINITY;
}

interface Found {
  readonly catcher: Catcher;
  readonly check: Check;
}

/** The strongest kind of check that notices, and the first of that kind. */
function firstCatch(
  checks: readonly Check[],
  loaded: () => Loaded,
  allow: (calls: number) => void,
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
    const check = checks.find((each) => {
      if (each.catcher !== catcher) return false;
      allow(each.calls);
      return !holds(each, at);
    });
    if (check !== undefined) return { catcher, check };
  }
  return undefined;
}

const percent = (change: number): string => `${Number((change * 100).toPrecision(1))} %`;

export class Perturber {
  private readonly probe: Probe;
  private readonly standing: Loaded;
  private readonly atLoad: ReadonlySet<number>;
  readonly checks: readonly Check[];

  constructor(
    private readonly built: Bundle,
    tests: readonly string[],
  ) {
    this.probe = new Probe(built.constants.map(({ value }) => value));
    this.standing = built.load(this.probe);
    // What stands outside any function, and what a function that runs at load reads.
    const outside = [...built.constants.keys()].filter((index) => built.constants[index]?.atLoad === true);
    this.atLoad = new Set([...outside, ...this.probe.touchedConstants]);
    this.checks = checksOf(this.standing, this.probe, tests);
  }

  /**
   * The checks that a constant can reach: those that touched it; for one that is read at load, those that touched a formula
   * over its file. Rule sets stand beside the formulas, so the tests that import them are asked; units stand under
   * everything, so the cases and the composition of units are.
   */
  private concerned(index: number): readonly Check[] {
    const constant = this.built.constants[index];
    const touched = this.checks.filter(({ constants }) => constants.has(index));
    if (constant === undefined || !this.atLoad.has(index)) return touched;
    if (constant.sort === 'unit')
      return this.checks.filter(({ file }) => file === undefined || file.startsWith('tests/quantity/'));
    if (constant.sort === 'rule') {
      const importers = new Set(['rules', 'repair'].flatMap((room) => [...this.built.testsOf(`src/${room}`)]));
      return this.checks.filter(({ file }) => file !== undefined && importers.has(file));
    }
    const over = this.built.formulasOver(constant.file);
    return this.checks.filter((check) => touched.includes(check) || [...check.results].some((id) => over.has(id)));
  }

  private readonly allow = (calls: number): void => this.probe.allow(calls);

  /** The library with a changed constant that is read at load, by the change: each is asked for more than once. */
  private readonly changed = new Map<number, Loaded>();

  /** The library in which a constant is changed as the probe says: loaded anew only for one that is read at load. */
  private with(index: number, change: number): Loaded {
    if (!this.atLoad.has(index)) return this.standing;
    const known = this.changed.get(change);
    if (known !== undefined) return known;
    // What a check before it was allowed, and may have used up, is no limit for loading.
    this.probe.allow(Number.POSITIVE_INFINITY);
    const loaded = this.built.load(this.probe);
    this.changed.set(change, loaded);
    return loaded;
  }

  private try(index: number, change: number, checks: readonly Check[], upTo?: readonly Catcher[]): Found | undefined {
    this.probe.set({ constant: index, factor: 1 + change });
    const found = firstCatch(checks, () => this.with(index, change), this.allow, upTo);
    this.probe.set(undefined);
    return found;
  }

  constant(index: number): PerturbedConstant {
    this.changed.clear();
    const { file, text, code, sort } = this.built.constants[index] as Bundle['constants'][number];
    const checks = this.concerned(index);
    const both = [CHANGE, -CHANGE].map((change) => this.try(index, change, checks));
    const strongest = CATCHERS.find((catcher) => both.some((found) => found?.catcher === catcher));
    const about = { file, constant: text, code, sort };
    if (strongest === undefined) {
      const caughtBy = sort === 'coefficient' && this.isIdle(index) ? 'no effect' : 'nothing';
      return { ...about, caughtBy, by: '', oneWay: false, smallest: this.larger(index, checks) };
    }
    const found = both.find((each) => each?.catcher === strongest) as Found;
    const oneWay = both.some((each) => each === undefined);
    const sign = both[0]?.catcher === strongest ? 1 : -1;
    const slow = SLOW.test(found.check.name);
    const own = checks.filter(({ catcher, name }) => catcher === strongest && SLOW.test(name) === slow);
    let smallest = CHANGE;
    // How little the project's own tests would see is no measure of evidence.
    for (const change of strongest === 'own tests only' ? [] : LADDER_DOWN) {
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

  /** Whether no drawn call of any formula over the constant gives another result, though at least one reads it. */
  private isIdle(index: number): boolean {
    const { file } = this.built.constants[index] as Bundle['constants'][number];
    let reads = this.atLoad.has(index);
    for (const id of this.built.formulasOver(file)) {
      for (const { input, result } of this.drawn(id)) {
        this.probe.forget();
        const changed = [CHANGE, -CHANGE].map((change) => {
          this.probe.set({ constant: index, factor: 1 + change });
          try {
            return farthest(result, this.formula(this.with(index, change), id).compute(input));
          } catch {
            return Number.POSITIVE_INFINITY;
          }
        });
        this.probe.set(undefined);
        if (Math.max(...changed) > IDLE) return false;
        reads ||= this.probe.touchedConstants.has(index);
      }
    }
    return reads;
  }

  private formula(of: Loaded, id: string): AnyFormula {
    const found = of.formulas.find((formula) => formula.id === id);
    if (found === undefined) throw new Error(`there is no formula ${id}`);
    return found;
  }

  private readonly draws = new Map<string, readonly Draw[]>();

  private drawn(id: string): readonly Draw[] {
    const known = this.draws.get(id);
    if (known !== undefined) return known;
    const draws = drawCalls(this.formula(this.standing, id), seeded(`${id} perturbed`), {
      wanted: 20,
      lists: drawList,
    });
    this.draws.set(id, draws);
    return draws;
  }

  result(id: string): PerturbedResult {
    const checks = this.checks.filter(({ results }) => results.has(id));
    this.probe.set({ result: id, factor: 1 + CHANGE });
    const found = firstCatch(checks, () => this.standing, this.allow);
    const files = [...new Set(checks.filter(({ catcher }) => catcher === 'derivation').map(({ file }) => file))];
    const derivations = files.filter(
      (file): file is string =>
        file !== undefined &&
        checks.some((check) => check.file === file && check.catcher === 'derivation' && this.isNoticed(check)),
    );
    this.probe.set(undefined);
    return { caughtBy: found?.catcher ?? 'nothing', by: found?.check.name ?? '', derivations: derivations.sort() };
  }

  private isNoticed(check: Check): boolean {
    this.allow(check.calls);
    return !holds(check, this.standing);
  }
}
