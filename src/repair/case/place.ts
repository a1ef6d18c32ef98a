/** One place in a case: its key, and the place that holds it. The case itself has none. */
export interface Place {
  readonly within: Place | undefined;
  readonly key: string | number;
}

/** A place as it is written in JavaScript: `defect.profile[3].depth`; empty for the case itself. */
export function writtenPlace(place: Place | undefined): string {
  if (place === undefined) return '';
  const before = writtenPlace(place.within);
  if (typeof place.key === 'number') return `${before}[${place.key}]`;
  return before === '' ? place.key : `${before}.${place.key}`;
}

/** The keys of a written place, in order: a number for a row of a list. */
export function keysOf(path: string): (string | number)[] {
  return [...path.matchAll(/\[(\d+)\]|[^.[\]]+/gu)].map(([key, index]) => (index === undefined ? key : Number(index)));
}

/** What stands at a written place of a case or of a document. */
export function valueAt(held: unknown, path: string): unknown {
  let value = held;
  for (const key of keysOf(path)) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Readonly<Record<PropertyKey, unknown>>)[key];
  }
  return value;
}
