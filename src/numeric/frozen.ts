/**
 * The value itself, and whatever it holds, closed against change: a table that one part of a program edits would be wrong in
 * all others. For literals at the top of a file, behind a mark of purity, so that bundlers drop what nobody uses.
 */
export function frozen<const T>(value: T): T {
  if (typeof value === 'object') for (const inner of Object.values(value ?? {})) frozen(inner);
  return Object.freeze(value);
}
