/** Inputs by name: drawn, or as a row sets them. */
export type Inputs = Readonly<Record<string, unknown>>;

/** One limit as a person typed it in from the clause: which formulas have it, what it bounds and where it lies. */
export interface LimitRow {
  /** Formulas by id, parted by blanks. */
  readonly of: string;
  /** How the declaration of the formula begins to say it; a guard that is not declared has none. */
  readonly says?: string;
  /** The input that is bounded; it is set to the limit, a little to either side. */
  readonly input: string;
  /** What a refusal names, where that is not the input. */
  readonly names?: string;
  /** Accepted up to the limit, or from it on. */
  readonly accepts: 'up to' | 'from';
  readonly limit: number | ((x: Numbers) => number);
  /** How a refusal is coded; a `note` is told by the predicate of the declaration. */
  readonly code: 'invalid-input' | 'outside-validity' | 'no-solution' | 'note';
  /** Other inputs, so that this limit is met before any other. */
  readonly where?: Inputs | ((x: Numbers) => Inputs);
  /** The input at a value of what is bounded, where that is not the value itself. */
  readonly put?: (value: number, x: Numbers) => Inputs;
  /** Just inside it another limit stops the call; only that this one does not is seen. */
  readonly stoppedInside?: true;
  /** Steps off the limit: a part of it, unless it counts whole numbers or is 0. */
  readonly step?: number;
}

/** Drawn inputs where a row needs their numbers. */
export type Numbers = Readonly<Record<string, number>>;
