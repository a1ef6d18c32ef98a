/** A change that no admissible case can tell from the original, with its reason. */
export interface Equivalent {
  readonly file: string;
  readonly original: string;
  readonly replacement: string;
  readonly because: string;
}

/** A reason that holds for several changes of a file. */
export function alike(
  file: string,
  because: string,
  changes: readonly (readonly [original: string, replacement: string])[],
): Equivalent[] {
  return changes.map(([original, replacement]) => ({ file, original, replacement, because }));
}

/** What the compiler asks for, and no case comes to: each half of `a || b` alone, both, and the whole left out. */
export function neither(
  file: string,
  because: string,
  first: string,
  second: string,
  ...nothing: readonly string[]
): Equivalent[] {
  const either = `${first} || ${second}`;
  return alike(file, because, [
    [either, `${first} && ${second}`],
    [either, 'false'],
    [first, 'false'],
    [second, 'false'],
    ...nothing.map((empty) => [empty, '["Stryker was here"]'] as const),
  ]);
}

export const TIE =
  'the two differ only where two numbers are the same to the last digit, and then both choices have that number';
export const KNOWN = 'the compiler asks for it; an earlier guard has stopped every case in which it would matter';
