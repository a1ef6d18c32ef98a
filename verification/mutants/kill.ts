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

export class Killer {
  private constructor(
    private readonly switches: Switches,
    private readonly load: () => WithTests,
    private readonly tests: readonly Test[],
    private readonly atLoad: Readonly<Record<string, number>>,
  ) {}

  static async over(files: readonly string[], texts: ReadonlyMap<string, string>): Promise<Killer> {
    const { load } = await bundleTests(files, (file, text) => texts.get(file) ?? text, []);
    const switches: Switches = {
      activeMutant: undefined,
      currentTestId: undefined,
      hitCount: undefined,
      hitLimit: Number.POSITIVE_INFINITY,
      mutantCoverage: { static: {}, perTest: {} },
    };
    Object.assign(globalThis, { __stryker__: switches });
    const { testsIn } = load({});
    const all = files.flatMap((file) => testsIn(file));
    const atLoad = { ...switches.mutantCoverage.static };
    const tests: Test[] = [];
    for (const [index, test] of all.entries()) {
      const { run, inFull: needsAll } = asItNeeds(test.run);
      switches.currentTestId = `${index}`;
      const started = performance.now();
      const holds = passes(run);
      const took = performance.now() - started;
      switches.currentTestId = undefined;
      if (holds)
        tests.push({ ...test, index, run, needsAll, took, hits: switches.mutantCoverage.perTest[`${index}`] ?? {} });
    }
    tests.sort((a, b) => a.took - b.took);
    // What is counted from here on is of no use.
    switches.mutantCoverage = { static: {}, perTest: {} };
    return new Killer(switches, () => load({}), tests, atLoad);
  }

  get count(): number {
    return this.tests.length;
  }

  fateOf(mutant: Mutant): Fate {
    const { id } = mutant;
    const isAtLoad = id in this.atLoad;
    const asked = isAtLoad ? this.tests : this.tests.filter(({ hits }) => id in hits);
    this.switches.activeMutant = id;
    try {
      const reloaded = isAtLoad ? this.load() : undefined;
      for (const test of asked) {
        this.switches.hitCount = 0;
        this.switches.hitLimit = PATIENCE * ((test.hits[id] ?? 0) + 50);
        const run = reloaded === undefined ? test.run : (): void => again(test, reloaded);
        if (!passes(run)) return { mutant, by: `${test.file}: ${test.name}`, asked: asked.length };
      }
      return { mutant, by: undefined, asked: asked.length };
    } catch {
      return { mutant, by: 'loading', asked: asked.length };
    } finally {
      this.switches.activeMutant = undefined;
      this.switches.hitCount = undefined;
    }
  }
}
