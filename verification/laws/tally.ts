import { isCalculationError } from '../../src/formula/index.js';
import { designRepair, type RepairCase, type RepairDesign } from '../../src/repair/index.js';
import { seeded } from '../oracles/random.js';
import { betterAsBuilt } from './as-built/worse-record.js';
import { broken } from './holds.js';
import { openExceptions } from './open.js';
import { against, earlierByLongerPreparation } from './order.js';
import { wholeCase } from './whole-case.js';
import { type Worsening, worsenings } from './worse/index.js';

/** What one drawn case says of the laws. */
export interface Outcome {
  /** Nothing where the design was thrown. */
  readonly design?: RepairDesign;
  /** Whether the case had such a thing, and its design where the door let it in. */
  readonly worsened: readonly { readonly law: string; readonly applies: boolean; readonly after?: RepairDesign }[];
  readonly asBuilt?: string;
  readonly violations: readonly Violation[];
}

export interface Violation {
  readonly draw: number;
  readonly law: string;
  readonly what: string;
  /** Why it is known and stays for now. */
  readonly open?: string;
}

/** What a pair breaks, unless the law is restricted there and what that rests on is so. */
function violationOf(
  draw: number,
  law: string,
  what: string,
  before: RepairDesign,
  after: RepairDesign | string,
): Violation {
  if (typeof after === 'string') return { draw, law, what };
  const known = openExceptions.find(
    (each) => each.law === law && each.what.test(what) && each.onlyIf(before, after, what),
  );
  return known === undefined ? { draw, law, what } : { draw, law, what, open: known.open };
}

/** A design, or what was thrown where a design that cannot be made is a result. */
function designOf(repairCase: RepairCase): RepairDesign | string {
  try {
    return designRepair(repairCase);
  } catch (error) {
    if (isCalculationError(error)) return error.message;
    throw error;
  }
}

/** Draws one case, designs it, and again with each of these worsenings, by factors from a thousandth to half as much more. */
export function outcomeOf(draw: number, laws: readonly Worsening[] = worsenings): Outcome {
  const random = seeded(`law ${draw}`);
  const drawn = wholeCase(random);
  const design = designOf(drawn);
  const violations: Violation[] = [];
  if (typeof design === 'string') {
    return { worsened: [], violations: [{ draw, law: 'is a result, not a crash', what: design }] };
  }
  const fault = broken(design);
  if (fault !== undefined) violations.push({ draw, law: 'holds by itself', what: fault });
  const worsened = laws.map(({ name, demands = 'no better', of, from }): Outcome['worsened'][number] => {
    const factor = 1.001 + 0.5 * random() ** 2;
    const base = from === undefined ? drawn : from(drawn, random());
    const worse = base === undefined ? undefined : of(base, factor);
    if (base === undefined || worse === undefined) return { law: name, applies: false };
    const before = base === drawn ? design : designOf(base);
    if (typeof before === 'string') {
      violations.push({ draw, law: 'is a result, not a crash', what: `${name}: ${before}` });
      return { law: name, applies: false };
    }
    const after = designOf(worse);
    for (const what of against(demands, before, after)) violations.push(violationOf(draw, name, what, before, after));
    return typeof after === 'string' ? { law: name, applies: true } : { law: name, applies: true, after };
  });
  if (design.verdict !== 'designed') return { design, worsened, violations };
  const sooner = earlierByLongerPreparation(design);
  if (sooner !== undefined) violations.push({ draw, law: 'a longer preparation', what: sooner });
  const { by, what } = betterAsBuilt(design, random);
  if (what !== undefined) violations.push({ draw, law: `as built, ${by}`, what });
  return { design, worsened, asBuilt: by, violations };
}
