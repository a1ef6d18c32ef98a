import { type Kind, unitOf } from '../quantity/index.js';

/** A quantity as it was typed: its text, the unit that was read from it, and the kind that its field gave it. */
export interface Typed {
  /** As it was typed. */
  readonly text: string;
  /** The unit in it. */
  readonly unit: string;
  /** The kind that its field asks for. */
  readonly kind: Kind;
}

/** Everything that was typed, by the path of its field: `pipe.wallThickness`. */
export type TypedMap = ReadonlyMap<string, Typed>;

const PRESSURE_LIKE: readonly Kind[] = ['gauge pressure', 'absolute pressure', 'stress', 'modulus'];

/**
 * Whether the unit alone leaves open what was meant: a pressure above the atmosphere or from vacuum, or a stress.
 *
 * @param typed as it was read
 */
export function isAmbiguous({ unit, kind }: Typed): boolean {
  return PRESSURE_LIKE.includes(kind) && PRESSURE_LIKE.some((other) => other !== kind && unitOf(other, unit));
}

/**
 * What was typed; where its unit leaves the kind open, with the kind that the field gave it: `150 psi (gauge pressure)`.
 *
 * @param typed as it was read
 */
export function echo(typed: Typed): string {
  const text = typed.text.trim();
  return isAmbiguous(typed) ? `${text} (${typed.kind})` : text;
}

/**
 * The same map with every text as it is echoed.
 *
 * @param typed by the paths of the fields
 */
export function echoes(typed: TypedMap): TypedMap {
  return new Map([...typed].map(([path, entry]) => [path, { ...entry, text: echo(entry) }]));
}
