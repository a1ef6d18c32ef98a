import { bundleTests } from '../../in-process/bundle-tests.js';
import type { Outcome, Violation } from '../tally.js';
import type { Worsening } from '../worse/index.js';
import type { Fault } from './fault.js';

/**
 * The library and the laws in one script, in which each fault can be put back alone: every place that a fault changes
 * asks whether that fault is the one.
 */

interface Laws {
  readonly outcomeOf: (draw: number, laws: readonly Worsening[]) => Outcome;
  readonly worsenings: readonly Worsening[];
}

export interface Machine {
  /** What the laws say of a draw with a fault put back, or of the library as it is. */
  readonly violations: (fault: Fault | undefined, draw: number) => readonly Violation[];
  /** The first draw in which a fault turns its law red. */
  readonly firstSeen: (fault: Fault, draws: number) => number | undefined;
}

/** Each place of a file that faults change, with what each puts there. */
function placesOf(faults: readonly Fault[], file: string): Map<string, [index: number, putBack: string][]> {
  const places = new Map<string, [number, string][]>();
  for (const [index, { changes }] of faults.entries()) {
    for (const { file: changed, text, putBack, around } of changes) {
      if (changed !== file) continue;
      const place = JSON.stringify([around[0], text, around[1]]);
      places.set(place, [...(places.get(place) ?? []), [index, putBack]]);
    }
  }
  return places;
}

export async function putBackMachine(faults: readonly Fault[]): Promise<Machine> {
  const edited = (file: string, text: string): string => {
    let changed = text;
    for (const [place, putBacks] of placesOf(faults, file)) {
      const [before, own, after] = JSON.parse(place) as [string, string, string];
      if (text.split(before + own + after).length !== 2)
        throw new Error(`"${before}${own}${after}" does not stand once in ${file}`);
      let asked = `(${own})`;
      for (const [index, putBack] of putBacks) asked = `(putBack.index === ${index} ? (${putBack}) : ${asked})`;
      changed = changed.replace(before + own + after, () => `${before}${asked}${after}`);
    }
    return changed;
  };
  const bundle = await bundleTests<Laws, { readonly putBack: { index: number } }>(
    [],
    edited,
    ['putBack'],
    [
      `export { outcomeOf } from './verification/laws/tally.js';`,
      `export { worsenings } from './verification/laws/worse/index.js';`,
    ],
  );
  const putBack = { index: -1 };
  const { outcomeOf, worsenings } = bundle.load({ putBack });
  const violations = (fault: Fault | undefined, draw: number, name = ''): readonly Violation[] => {
    const worse = worsenings.filter((each) => each.name === name);
    putBack.index = fault === undefined ? -1 : faults.indexOf(fault);
    try {
      return outcomeOf(draw, worse).violations;
    } catch (error) {
      return [{ draw, law: 'is a result, not a crash', what: String(error) }];
    } finally {
      putBack.index = -1;
    }
  };
  const seesIt = (fault: Fault, found: readonly Violation[]): boolean =>
    found.some(
      ({ law, what, open }) =>
        open === undefined && (law === fault.law || law.startsWith(`${fault.law}, `)) && fault.says.test(what),
    );
  const seen = (fault: Fault, draw: number): boolean => seesIt(fault, violations(fault, draw, fault.law));
  return {
    violations: (fault, draw) => violations(fault, draw, fault === undefined ? '' : fault.law),
    firstSeen: (fault, draws) => {
      for (let draw = 0; draw < draws; draw++) {
        // A draw that says so without the fault too shows nothing.
        if (seen(fault, draw) && !seesIt(fault, violations(undefined, draw, fault.law))) return draw;
      }
      return undefined;
    },
  };
}
