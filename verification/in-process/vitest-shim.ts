import { isDeepStrictEqual } from 'node:util';

/**
 * As much of vitest as the derivations use, so that they can be run hundreds of times in one process. An unknown matcher fails
 * the test; that every test passes on unchanged code is checked before anything is changed.
 */

export interface ShimTest {
  readonly file: string;
  readonly name: string;
  readonly run: () => void;
}

const loaded = new Map<string, ShimTest[]>();
let collected: ShimTest[] = [];
let file = '';
let group = '';

/** The tests of a file, which is loaded on first use; they are collected, not run. @public */
export function inFile(name: string, load: () => void): readonly ShimTest[] {
  const known = loaded.get(name);
  if (known !== undefined) return known;
  [file, group, collected] = [name, '', []];
  loaded.set(name, collected);
  load();
  return collected;
}

function describeOne(name: string, body: () => void): void {
  const outer = group;
  group = outer === '' ? name : `${outer}: ${name}`;
  body();
  group = outer;
}

const context = {
  skip: (): never => {
    throw new Skip();
  },
};
class Skip extends Error {}

function testOne(name: string, body: (given: typeof context) => unknown): void {
  const here = { file, name: group === '' ? name : `${group}: ${name}` };
  const run = (): void => {
    try {
      const result = body(context);
      if (result instanceof Promise) {
        result.catch(() => undefined);
        throw new Error('a test that waits cannot be run here');
      }
    } catch (error) {
      if (!(error instanceof Skip)) throw error;
    }
  };
  collected.push({ ...here, run });
}

// biome-ignore lint/suspicious/noExplicitAny: a table of a test holds rows of any form.
type Row = any;

function each<B extends (...given: Row[]) => unknown>(
  one: (name: string, body: () => unknown) => void,
  spread: boolean,
) {
  return (rows: readonly Row[]) =>
    (name: string, body: B): void => {
      rows.forEach((row, index) => {
        const given: Row[] = spread && Array.isArray(row) ? row : [row];
        one(`${name} [${index}]`, () => body(...given, context));
      });
    };
}

/** @public */
export const describe = Object.assign(describeOne, { each: each(describeOne as typeof testOne, true) });
/** What is known to fail says nothing here. */
const fails = Object.assign(() => undefined, { each: () => () => undefined });

/** @public */
export const it = Object.assign(testOne, { each: each(testOne, true), for: each(testOne, false), fails });
/** The other name of `it`. @public */
export const test = Object.assign((name: string, body: (given: typeof context) => unknown) => testOne(name, body), {
  each: it.each,
  for: it.for,
  fails,
});

/** Types are no matter of a run. @public */
export const expectTypeOf = (): unknown => anything;
const anything: unknown = new Proxy(() => anything, { get: () => anything });

class Mismatch extends Error {}

function includes(actual: unknown, wanted: unknown): boolean {
  if (typeof actual === 'string') return actual.includes(String(wanted));
  return [...(actual as Iterable<unknown>)].includes(wanted);
}

/** A value that stands for many: `expect.any(Number)`. */
class Like {
  constructor(readonly fits: (actual: unknown) => boolean) {}
}

const isPlain = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Equality by structure; a value that stands for many equals what it stands for. */
function equals(actual: unknown, wanted: unknown): boolean {
  if (wanted instanceof Like) return wanted.fits(actual);
  if (Array.isArray(wanted)) {
    if (!Array.isArray(actual) || actual.length !== wanted.length) return false;
    return wanted.every((item, index) => equals(actual[index], item));
  }
  if (!isPlain(wanted) || !isPlain(actual)) return Object.is(actual, wanted);
  const prototype = Object.getPrototypeOf(wanted);
  if (Object.getPrototypeOf(actual) !== prototype) return false;
  if (prototype !== Object.prototype && prototype !== null) return isDeepStrictEqual(actual, wanted);
  const keys = Object.keys(wanted);
  return (
    keys.length === Object.keys(actual).length &&
    keys.every((key) => Object.hasOwn(actual, key) && equals(actual[key], wanted[key]))
  );
}

/** undefined members count as missing, as in toEqual. */
function bare(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(bare);
  if (typeof value !== 'object' || value === null || Object.getPrototypeOf(value) !== Object.prototype) return value;
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, inner]) => (inner === undefined ? [] : [[key, bare(inner)]])),
  );
}

function matches(actual: unknown, wanted: unknown): boolean {
  if (wanted instanceof Like) return wanted.fits(actual);
  if (Array.isArray(wanted))
    return (
      Array.isArray(actual) &&
      actual.length === wanted.length &&
      wanted.every((item, index) => matches(actual[index], item))
    );
  if (typeof wanted !== 'object' || wanted === null) return Object.is(actual, wanted);
  if (typeof actual !== 'object' || actual === null) return false;
  return Object.entries(wanted).every(([key, inner]) => matches((actual as Record<string, unknown>)[key], inner));
}

function thrown(act: unknown): unknown {
  try {
    (act as () => unknown)();
  } catch (error) {
    return error;
  }
  return undefined;
}

function isMessage(error: unknown, wanted: unknown): boolean {
  if (error === undefined) return false;
  const message = error instanceof Error ? error.message : String(error);
  if (wanted === undefined) return true;
  if (wanted instanceof Like) return wanted.fits(error);
  if (wanted instanceof RegExp) return wanted.test(message);
  if (typeof wanted === 'string') return message.includes(wanted);
  return typeof wanted === 'function' && error instanceof wanted;
}

function matchers(actual: unknown, wanted: boolean, about: string) {
  const hold = (holds: boolean, what: string, other?: unknown): void => {
    if (holds !== wanted)
      throw new Mismatch(`${about} ${String(actual)} ${wanted ? '' : 'not '}${what} ${String(other)}`);
  };
  const number = actual as number;
  return {
    toBe: (other: unknown) => hold(Object.is(actual, other), 'toBe', other),
    toEqual: (other: unknown) => hold(equals(bare(actual), bare(other)), 'toEqual', other),
    toStrictEqual: (other: unknown) => hold(isDeepStrictEqual(actual, other), 'toStrictEqual', other),
    toBeCloseTo: (other: number, digits = 2) =>
      hold(number === other || Math.abs(number - other) < 0.5 * 10 ** -digits, 'toBeCloseTo', other),
    toBeLessThan: (other: number) => hold(number < other, 'toBeLessThan', other),
    toBeLessThanOrEqual: (other: number) => hold(number <= other, 'toBeLessThanOrEqual', other),
    toBeGreaterThan: (other: number) => hold(number > other, 'toBeGreaterThan', other),
    toBeGreaterThanOrEqual: (other: number) => hold(number >= other, 'toBeGreaterThanOrEqual', other),
    toContain: (other: unknown) => hold(includes(actual, other), 'toContain', other),
    toContainEqual: (other: unknown) =>
      hold(
        [...(actual as Iterable<unknown>)].some((item) => equals(bare(item), bare(other))),
        'toContainEqual',
        other,
      ),
    toMatch: (other: RegExp | string) =>
      hold(typeof other === 'string' ? String(actual).includes(other) : other.test(String(actual)), 'toMatch', other),
    toMatchObject: (other: unknown) => hold(matches(actual, other), 'toMatchObject', other),
    toHaveLength: (other: number) => hold((actual as { length: number }).length === other, 'toHaveLength', other),
    toHaveProperty: (other: string) => hold(Object.hasOwn(actual as object, other), 'toHaveProperty', other),
    toBeUndefined: () => hold(actual === undefined, 'toBeUndefined'),
    toBeDefined: () => hold(actual !== undefined, 'toBeDefined'),
    toBeNull: () => hold(actual === null, 'toBeNull'),
    toBeNaN: () => hold(Number.isNaN(actual), 'toBeNaN'),
    toBeTruthy: () => hold(Boolean(actual), 'toBeTruthy'),
    toBeFalsy: () => hold(!actual, 'toBeFalsy'),
    toBeInstanceOf: (other: new () => unknown) => hold(actual instanceof other, 'toBeInstanceOf', other.name),
    toSatisfy: (other: (value: unknown) => boolean) => hold(other(actual), 'toSatisfy'),
    toThrow: (other?: unknown) => hold(isMessage(thrown(actual), other), 'toThrow', other),
  };
}

/** @public */
export const expect = Object.assign(
  (actual: unknown, about = '') => ({ ...matchers(actual, true, about), not: matchers(actual, false, about) }),
  {
    fail: (about = ''): never => {
      throw new Mismatch(about);
    },
    any: (kind: unknown) =>
      new Like((actual) => {
        if (kind === Number || kind === String || kind === Boolean)
          return typeof actual === (kind as { name: string }).name.toLowerCase();
        return actual instanceof (kind as new () => unknown);
      }),
    stringMatching: (wanted: RegExp | string) =>
      new Like((actual) => typeof actual === 'string' && new RegExp(wanted, 'u').test(actual)),
    stringContaining: (wanted: string) => new Like((actual) => typeof actual === 'string' && actual.includes(wanted)),
    arrayContaining: (wanted: readonly unknown[]) =>
      new Like(
        (actual) =>
          Array.isArray(actual) && wanted.every((each) => actual.some((item) => equals(bare(item), bare(each)))),
      ),
    objectContaining: (wanted: object) => new Like((actual) => matches(actual, wanted)),
    closeTo: (wanted: number, digits = 2) =>
      new Like((actual) => typeof actual === 'number' && Math.abs(actual - wanted) < 0.5 * 10 ** -digits),
  },
);
