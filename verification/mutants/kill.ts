import { basename, dirname } from 'node:path';
import { inFull } from '../in-process/briefly.js';
import { bundleTests, type WithTests } from '../in-process/bundle-tests.js';
import { passes, type Tried, tried } from '../in-process/passes.js';
import type { ShimTest } from '../in-process/vitest-shim.js';
import { within } from '../in-process/within.js';
import { withComparisons } from './compared.js';
import { Differences } from './differences.js';
import type { Mutant } from './instrument.js';

/** Runs tests on changed code, in one process, and finds the first that notices. */

/** What the switches of the instrumenter read, and what they tell. */
interface Switches {
  activeMutant: string | undefined;
  hitCount: number | undefined;
  hitLimit: number;
  /** What the running test is told of. */
  differences: Differences;
  readonly compared: Differences['compared'];
}

/** As it ran on unchanged code: the quick ones are asked first. */
interface Test extends ShimTest, Tried {
  readonly differences: Differences;
}

export interface Fate {
  readonly mutant: Mutant;
  /** The test that noticed, or nothing. */
  readonly by: string | undefined;
  /** In how many tests it makes a difference where it stands. */
  readonly asked: number;
}

/** The changed source, its own counter replaced. */
function counted(text: string | undefined, how: string): string | undefined {
  return text?.replace('function stryCov_9fa48() {', `function stryCov_9fa48() { ${how} return;`);
}

/**
 * Tests that take so long together, on unchanged code that tells, are asked about a change: the likeliest, then the quickest, and
 * the second route besides. What only another would notice counts as unnoticed.
 */
const ASKED_FOR = 10_000;

/** A change that is looped over this many times more often than on unchanged code does not end. */
const PATIENCE = 200;

/** No test takes so long that ends. */
const LONGEST = 10_000;

/** The same test of a script that was loaded anew. */
function again({ file, name, needsAll }: Test, { testsIn }: WithTests): void {
  const run = (): void =>
    testsIn(file)
      .find((test) => test.name === name)
      ?.run();
  if (needsAll) inFull(run);
  else run();
}

/** Which changes make a difference when the sources are loaded, and when each file of tests is: designs made outside any test. */
interface AtLoad {
  readonly sources: Differences;
  readonly tests: ReadonlyMap<string, Differences>;
}

function withinTime(tests: readonly Test[]): ReadonlySet<Test> {
  let taken = 0;
  return new Set(
    tests.filter(({ took }) => {
      taken += took;
      return taken <= ASKED_FOR;
    }),
  );
}

const fullName = ({ file, name }: Test): string => `${file}: ${name}`;

export class Killer {
  /** How many changes of each source file each test has noticed: a test that noticed one is asked first about the next. */
  private readonly noticed = new Map<string, Map<Test, number>>();

  private constructor(
    private readonly switches: Switches,
    private readonly load: () => WithTests,
    private readonly tests: readonly Test[],
    private readonly atLoad: AtLoad,
  ) {}

  static async over(files: readonly string[], texts: ReadonlyMap<string, string>): Promise<Killer> {
    const differences = new Differences();
    const switches: Switches = {
      activeMutant: undefined,
      hitCount: undefined,
      hitLimit: Number.POSITIVE_INFINITY,
      differences,
      compared: (original, changes) => switches.differences.compared(original, changes),
    };
    Object.assign(globalThis, { __stryker__: switches });
    // The changed sources are loaded before any test is, so that what runs at their load is known apart.
    const first = [...texts.keys()].map((file, index) => `export * as source${index} from './${file}';`);
    const telling = new Map([...texts].map(([file, text]) => [file, withComparisons(text)] as const));
    const { testsIn } = (
      await bundleTests(
        files,
        (file, text) => counted(telling.get(file), 'stryNS_9fa48().differences.met([...arguments]);') ?? text,
        [],
        first,
      )
    ).load({});
    const told = <T>(act: () => T): { readonly result: T; readonly differences: Differences } => {
      switches.differences = new Differences();
      const result = act();
      return { result, differences: switches.differences };
    };
    const loaded = files.map((file) => ({ file, ...told(() => testsIn(file)) }));
    const atLoad = {
      sources: differences,
      tests: new Map(loaded.map((each) => [each.file, each.differences] as const)),
    };
    const tests: Test[] = [];
    for (const test of loaded.flatMap(({ result }) => result)) {
      const { result, differences } = told(() => tried(test.run));
      if (result.holds) tests.push({ ...test, ...result, differences });
    }
    tests.sort((a, b) => a.took - b.took);
    const { load } = await bundleTests(files, (file, text) => counted(texts.get(file), '') ?? text, [], first);
    const uncounted = load({});
    for (const file of files) uncounted.testsIn(file);
    const quick = tests.map((test) => ({ ...test, run: () => again(test, uncounted) }));
    return new Killer(switches, () => load({}), quick, atLoad);
  }

  get count(): number {
    return this.tests.length;
  }

  /** @param before the test that noticed it the last time, which is asked first */
  fateOf(mutant: Mutant, before?: string): Fate {
    const { id } = mutant;
    const ordered = this.inOrder(mutant, before);
    const differs = ordered.filter(({ differences }) => differences.has(id));
    const atLoad = ordered.filter(({ file }) => this.atLoad.sources.has(id) || this.atLoad.tests.get(file)?.has(id));
    const asked = new Set([...differs, ...atLoad]).size;
    const inTime = withinTime(differs);
    const asIs = differs.filter((test) => inTime.has(test) || test.file.startsWith('verification/whole-job/'));
    const anew = [...withinTime(atLoad)];
    this.switches.activeMutant = id;
    try {
      const by =
        this.firstToNotice(
          asIs,
          ({ run }) => run,
          ({ differences }) => differences.reached[id] ?? 0,
        ) ??
        (anew.length === 0
          ? undefined
          : this.firstToNotice(anew, this.loadedAnew(), (test) => this.withLoad(test, id)));
      if (by === undefined) return { mutant, by: undefined, asked };
      const counts = this.noticed.get(mutant.file) ?? new Map<Test, number>();
      this.noticed.set(mutant.file, counts.set(by, (counts.get(by) ?? 0) + 1));
      return { mutant, by: fullName(by), asked };
    } catch {
      return { mutant, by: 'loading', asked };
    } finally {
      this.switches.activeMutant = undefined;
      this.switches.hitCount = undefined;
    }
  }

  private loadedAnew(): (test: Test) => () => void {
    this.switches.hitLimit = Number.POSITIVE_INFINITY;
    const reloaded = this.load();
    return (test) => () => again(test, reloaded);
  }

  /** First what noticed it before, then what noticed others of its file, then the tests of its folder, then the quick ones. */
  private inOrder({ file }: Mutant, before: string | undefined): readonly Test[] {
    const counts = this.noticed.get(file);
    const folder = `/${basename(dirname(file))}/`;
    const rank = (test: Test): number =>
      fullName(test) === before ? Infinity : (counts?.get(test) ?? (test.file.includes(folder) ? 0.5 : 0));
    return this.tests.toSorted((a, b) => (rank(a) === rank(b) ? a.took - b.took : rank(b) - rank(a)));
  }

  /** How often the test, its file and the sources come by. */
  private withLoad({ file, differences }: Test, id: string): number {
    const parts = [differences, this.atLoad.tests.get(file), this.atLoad.sources];
    return parts.reduce((sum, part) => sum + (part?.reached[id] ?? 0), 0);
  }

  /** @param reached how often each comes by on unchanged code */
  private firstToNotice(
    tests: readonly Test[],
    runOf: (test: Test) => () => void,
    reached: (test: Test) => number,
  ): Test | undefined {
    return tests.find((test) => {
      this.switches.hitCount = 0;
      this.switches.hitLimit = PATIENCE * (reached(test) + 50);
      return !passes(() => within(LONGEST, runOf(test)));
    });
  }
}
