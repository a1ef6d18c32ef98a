import type { Designed } from '../../../src/repair/index.js';
import { bundleTests } from '../../in-process/bundle-tests.js';
import type { Outcome, Violation } from '../tally.js';
import type { Worsening } from '../worse/index.js';
import type { Fault } from './fault.js';
import { OUTPUTS } from './outputs-law.js';

/**
 * The library and the laws in one script, in which each fault can be put back alone: every place that a fault changes
 * asks whether that fault is the one.
 */

interface Laws {
  readonly outcomeOf: (draw: number, laws: readonly Worsening[]) => Outcome;
  readonly outputsApart: (design: Designed) => string | undefined;
  readonly worsenings: readonly Worsening[];
}

export interface Machine {
  /** Whether its law goes red in a draw with the fault put back. */
  readonly sees: (fault: Fault, draw: number) => boolean;
  /** Whether it says the same of the library as it is. */
  readonly breaks: (fault: Fault, draw: number) => boolean;
  /** The first draw in which the fault turns its law red. */
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
      `export { outputsApart } from './verification/laws/outputs/index.js';`,
      `export { worsenings } from './verification/laws/worse/index.js';`,
    ],
  );
  const putBack = { index: -1 };
  const { outcomeOf, outputsApart, worsenings } = bundle.load({ putBack });
  const violationsIn = (law: string, draw: number): readonly Violation[] => {
    const { design, violations } = outcomeOf(
      draw,
      worsenings.filter(({ name }) => name === law),
    );
    if (law !== OUTPUTS || design?.verdict !== 'designed') return violations;
    const what = outputsApart(design);
    return what === undefined ? violations : [...violations, { draw, law, what }];
  };
  const isRed = ({ law: wanted, says }: Fault, draw: number, index: number): boolean => {
    putBack.index = index;
    try {
      return violationsIn(wanted, draw).some(
        ({ law, what, open }) =>
          open === undefined && (law === wanted || law.startsWith(`${wanted}, `)) && says.test(what),
      );
    } catch {
      // The library noticed by itself: no law did.
      return false;
    } finally {
      putBack.index = -1;
    }
  };
  const sees: Machine['sees'] = (fault, draw) => isRed(fault, draw, faults.indexOf(fault));
  const breaks: Machine['breaks'] = (fault, draw) => isRed(fault, draw, -1);
  return {
    sees,
    breaks,
    firstSeen: (fault, draws) => {
      for (let draw = 0; draw < draws; draw++) if (sees(fault, draw) && !breaks(fault, draw)) return draw;
      return undefined;
    },
  };
}
