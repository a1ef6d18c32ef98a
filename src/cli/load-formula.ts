import type { AnyFormula } from '../formula/index.js';
import { withKnownInputs } from '../registry/known-inputs.js';

/** The rooms by the first part of the ids of their formulas. */
const rooms: Readonly<Record<string, () => Promise<object>>> = {
  mechanics: () => import('../mechanics/index.js'),
  pipe: () => import('../pipe/index.js'),
  laminate: () => import('../laminate/index.js'),
  wrap: () => import('../wrap/index.js'),
  resin: () => import('../resin/index.js'),
  cure: () => import('../cure/index.js'),
  site: () => import('../site/index.js'),
  seal: () => import('../seal/index.js'),
  acceptance: () => import('../acceptance/index.js'),
};

/** The formula of an id, with its room alone. @throws CaseError that hints at the one that was meant, of all rooms */
export async function loadFormula(id: string): Promise<AnyFormula> {
  const [room = '', name = ''] = id.split('/');
  const members = Object.hasOwn(rooms, room) ? await rooms[room]?.() : undefined;
  const declared = Reflect.get(members ?? {}, declarationName(name)) as AnyFormula | undefined;
  if (declared?.id === id) return withKnownInputs(declared);
  const { formulaNamed } = await import('../evaluate/evaluate.js');
  return formulaNamed(id);
}

/** A formula is called by its id: `pipe/hoop-stress` is `hoopStressFormula`. */
function declarationName(name: string): string {
  return `${name.replaceAll(/-(\w)/gu, (_, letter: string) => letter.toUpperCase())}Formula`;
}
