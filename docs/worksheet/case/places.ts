import { keysOf } from '../../../src/repair/case/place.js';

type Holder = Record<string | number, unknown>;

/** A document with another value at a written place: what lies on the way to it is copied, or made where it is not there. */
export function put(document: unknown, path: string, value: unknown): unknown {
  return placed(document, keysOf(path), value);
}

function placed(held: unknown, [key, ...rest]: readonly (string | number)[], value: unknown): unknown {
  if (key === undefined) return value;
  const copy = copyFor(key, held);
  const inside = placed(Object.hasOwn(copy, key) ? copy[key] : undefined, rest, value);
  if (inside === undefined && !Array.isArray(copy)) Reflect.deleteProperty(copy, key);
  else Object.defineProperty(copy, key, { value: inside, writable: true, enumerable: true, configurable: true });
  return copy;
}

function copyFor(key: string | number, held: unknown): Holder {
  if (typeof key === 'number') return (Array.isArray(held) ? [...held] : []) as unknown as Holder;
  return typeof held === 'object' && held !== null && !Array.isArray(held) ? { ...(held as Holder) } : {};
}
