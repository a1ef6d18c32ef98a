import { inFull } from '../in-process/briefly.js';
import { bundleTests, type WithTests } from '../in-process/bundle-tests.js';
import { asItNeeds, passes } from '../in-process/passes.js';
import type { ShimTest } from '../in-process/vitest-shim.js';
import type { Mutant } from './instrument.js';

/** Runs tests on changed code, in one process, and finds the first that notices. */

/** What the switches of the instrumenter read and count. */
interface Switches {
  activeMutant: string | undefined;
  currentTestId: string | undefined;
  hitCount: number | undefined;
  hitLimit: number;
  /** Counting takes as long as the tests themselves: it ends when it is known which test comes by which change. */
  counting: boolean;
  mutantCoverage: {
    static: Record<string, number>;
    perTest: Record<string, Record<string, number>>;
  };
}

interface Test extends ShimTest {
  readonly index: number;
  /** How long it took on unchanged code: the quick ones are asked first. */
  readonly took: number;
  readonly run: () => void;
  /** Whether fewer runs of its properties are too few for it. */
  readonly needsAll: boolean;
  readonly hits: Readonly<Record<string, number>>;
}

export interface Fate {
  readonly mutant: Mutant;
  /** The test that noticed, or nothing. */
  readonly by: string | undefined;
  /** How many tests come by. */
  readonly asked: number;
}

/** The changed source with a counter that can be switched off. */
const countingByWish = (text: string | undefined): string | undefined =>
  text?.replace('function stryCov_9fa48() {', 'function stryCov_9fa48() { if (!stryNS_9fa48().counting) return;');

/** A change that is looped over this many times more often than on unchanged code does not end. */
const PATIENCE = 200;

/** The same test of a script that was loaded anew. */
function again({ file, name, needsAll }: Test, { testsIn }: WithTests): void {
  const run = (): void =>
    testsIn(file)
      .find((test) => test.name === name)
      ?.run();
  if (needsAll) inFull(run);
  else run();
}

/** Which changes come by when the sources are loaded, and when each file of tests is: designs made outside any test. */
interface AtLoad {
  readonly sources: Readonly<Record<string, number>>;
  readonly tests: ReadonlyMap<string, Readonly<Record<string, number>>>;
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
    // The changed sources are loaded before any test is, so that what runs at their load is known apart.
    const first = [...texts.keys()].map((file, index) => `export * as source${index} from './${file}';`);
    const { load } = await bundleTests(files, (file, text) => countingByWish(texts.get(file)) ?? text, [], first);
    const switches: Switches = {
      counting: true,
      activeMutant: undefined,
      currentTestId: undefined,
      hitCount: undefined,
      hitLimit: Number.POSITIVE_INFINITY,
      mutantCoverage: { static: {}, perTest: {} },
    };
    Object.assign(globalThis, { __stryker__: switches });
    const hitsOf = (name: string): Readonly<Record<string, number>> => switches.mutantCoverage.perTest[name] ?? {};
    const { testsIn } = load({});
    const sources = { ...switches.mutantCoverage.static };
    const all = files.flatMap((file) => {
      switches.currentTestId = file;
      return testsIn(file);
    });
    const atLoad = { sources, tests: new Map(files.map((file) => [file, hitsOf(file)] as const)) };
    const tests: Test[] = [];
    for (const [index, test] of all.entries()) {
      const { run, inFull: needsAll } = asItNeeds(test.run);
      switches.currentTestId = `${index}`;
      const started = performance.now();
      const holds = passes(run);
      const took = performance.now() - started;
      switches.currentTestId = undefined;
      if (holds) tests.push({ ...test, index, run, needsAll, took, hits: hitsOf(`${index}`) });
    }
    tests.sort((a, b) => a.took - b.took);
    switches.counting = false;
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
    const asIs = this.inOrder(
      mutant,
      this.tests.filter(({ hits }) => id in hits),
      before,
    );
    const anew = this.inOrder(
      mutant,
      this.tests.filter(({ file }) => id in this.atLoad.sources || id in (this.atLoad.tests.get(file) ?? {})),
      before,
    );
    const asked = new Set([...asIs, ...anew]).size;
    this.switches.activeMutant = id;
    try {
      const by =
        this.firstToNotice(id, asIs, ({ run }) => run) ??
        (anew.length === 0 ? undefined : this.firstToNotice(id, anew, this.loadedAnew()));
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
    const reloaded = this.load();
    return (test) => () => again(test, reloaded);
  }

  private inOrder({ file }: Mutant, tests: readonly Test[], before: string | undefined): readonly Test[] {
    const counts = this.noticed.get(file);
    const rank = (test: Test): number => (fullName(test) === before ? Infinity : (counts?.get(test) ?? 0));
    return tests.toSorted((a, b) => (rank(a) === rank(b) ? a.took - b.took : rank(b) - rank(a)));
  }

  private firstToNotice(id: string, tests: readonly Test[], runOf: (test: Test) => () => void): Test | undefined {
    return tests.find((test) => {
      this.switches.hitCount = 0;
      this.switches.hitLimit = PATIENCE * ((test.hits[id] ?? 0) + 50);
      return !passes(runOf(test));
    });
  }
}
