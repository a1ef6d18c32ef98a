import { isCalculationError } from '../../src/formula/index.js';
import { designRepair, type RepairCase, type RepairDesign } from '../../src/repair/index.js';
import { seeded } from '../oracles/random.js';
import { betterAsBuilt } from './as-built.js';
import { broken } from './holds.js';
import { openExceptions } from './open.js';
import { better } from './order.js';
import { wholeCase } from './whole-case.js';
import { type Worsening, worsenings } from './worse.js';

/** What one drawn case says of the laws. */
export interface Outcome {
  /** Nothing where the design was thrown. */
  readonly design?: RepairDesign;
  readonly worsened: readonly { readonly law: string; readonly after?: RepairDesign }[];
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

function violation(draw: number, law: string, what: string): Violation {
  const known = openExceptions.find((each) => each.law === law && each.what.test(what));
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
    return { worsened: [], violations: [violation(draw, 'is a result, not a crash', design)] };
  }
  const fault = broken(design);
  if (fault !== undefined) violations.push(violation(draw, 'holds by itself', fault));
  const worsened = laws.map(({ name, of, from }): Outcome['worsened'][number] => {
    const factor = 1.001 + 0.5 * random() ** 2;
    const base = from === undefined ? drawn : from(drawn, random());
    const worse = base === undefined ? undefined : of(base, factor);
    if (base === undefined || worse === undefined) return { law: name };
    const before = base === drawn ? design : designOf(base);
    if (typeof before === 'string') {
      violations.push(violation(draw, 'is a result, not a crash', `${name}: ${before}`));
      return { law: name };
    }
    const after = designOf(worse);
    if (typeof after === 'string') {
      violations.push(violation(draw, 'is a result, not a crash', `${name}: ${after}`));
      return { law: name };
    }
    for (const what of better(before, after)) violations.push(violation(draw, name, what));
    return { law: name, after };
  });
  if (design.verdict !== 'designed') return { design, worsened, violations };
  const { by, what } = betterAsBuilt(design, random);
  if (what !== undefined) violations.push(violation(draw, `as built, ${by}`, what));
  return { design, worsened, asBuilt: by, violations };
}
