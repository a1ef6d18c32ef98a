import * as acceptance from '../acceptance/index.js';
import * as cure from '../cure/index.js';
import type { AnyFormula } from '../formula/index.js';
import * as laminate from '../laminate/index.js';
import * as mechanics from '../mechanics/index.js';
import * as pipe from '../pipe/index.js';
import * as resin from '../resin/index.js';
import * as seal from '../seal/index.js';
import * as site from '../site/index.js';
import * as wrap from '../wrap/index.js';
import { withKnownInputs } from './known-inputs.js';

const rooms: readonly object[] = [mechanics, pipe, laminate, wrap, resin, cure, site, seal, acceptance];

function isFormula(value: unknown): value is AnyFormula {
  return typeof value === 'object' && value !== null && 'compute' in value && 'equation' in value;
}

/** Every declared formula, room by room. A formula is listed by exporting its file from the index of its room. */
export const formulas: readonly AnyFormula[] = Object.freeze(
  rooms.flatMap((room) => Object.values(room).filter(isFormula)),
);

const byId = new Map(formulas.map((formula) => [formula.id, formula]));
const byFunction = new Map(formulas.map((formula) => [formula.compute as unknown, formula]));
/** Made when they are first asked for: hundreds at the start would cost more than the rest of it. */
const guarded = new Map<string, AnyFormula>();

/**
 * The formula with this id, such as `pipe/hoop-stress`; its function refuses inputs that are not declared.
 *
 * @param id room and name
 */
export function formulaById(id: string): AnyFormula | undefined {
  const formula = byId.get(id);
  if (formula === undefined) return undefined;
  const made = guarded.get(id) ?? withKnownInputs(formula);
  guarded.set(id, made);
  return made;
}

/**
 * The declaration of a function, if it is one of this library's formulas.
 *
 * @param compute any function
 */
export function formulaOf(compute: unknown): AnyFormula | undefined {
  return byFunction.get(compute);
}
