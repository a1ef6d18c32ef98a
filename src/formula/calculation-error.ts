/**
 * Why a calculation was refused.
 *
 * - `invalid-input`: the value can never be right (a negative wall, NaN).
 * - `outside-validity`: the source forbids the equation beyond a limit.
 * - `no-solution`: nothing satisfies the demand (no thickness holds this pressure).
 */
export type CalculationErrorCode = 'invalid-input' | 'outside-validity' | 'no-solution';

/** What a refusal says: the parameter, its value, the constraint it breaks, and the source of the constraint. */
export interface Refusal {
  /** What sort of refusal it is. */
  readonly code: CalculationErrorCode;
  /** Name of the input in the function's argument. */
  readonly parameter: string;
  /** The value that was refused. */
  readonly value: unknown;
  /** Unit of `value`; empty for plain numbers. */
  readonly unit: string;
  /** What would pass, as the end of a sentence: "must be above 0"; `{limit}` stands for the limit. */
  readonly constraint: string;
  /** In the unit of `value`, where the constraint names it. */
  readonly limit?: number;
  /** Who sets the constraint. */
  readonly source?: string;
}

/** The only error that the calculations of this library throw. */
export class CalculationError extends Error implements Refusal {
  /** Tells the class across copies of this library. */
  override readonly name = 'CalculationError';
  /** What sort of refusal it is. */
  readonly code: CalculationErrorCode;
  readonly parameter: string;
  /** The value that was refused. */
  readonly value: unknown;
  readonly unit: string;
  /** As a sentence in SI: the limit stands in it. */
  readonly constraint: string;
  declare readonly limit?: number;
  declare readonly source?: string;

  constructor(refusal: Refusal) {
    const { parameter, value, unit, limit, source } = refusal;
    const constraint = limit === undefined ? refusal.constraint : withLimit(refusal.constraint, limit, unit);
    const amount = inWords(value, unit);
    super(`${parameter} is ${amount}; ${constraint}${source === undefined ? '' : ` (${source})`}`);
    this.code = refusal.code;
    this.parameter = parameter;
    this.value = value;
    this.unit = unit;
    this.constraint = constraint;
    if (limit !== undefined) this.limit = limit;
    if (source !== undefined) this.source = source;
  }
}

function withLimit(constraint: string, limit: number, unit: string): string {
  return constraint.replace('{limit}', inWords(limit, unit));
}

/** A value in a sentence: twelve digits are beyond any gauge, and what arithmetic leaves behind them is nobody's number. */
export function inWords(value: unknown, unit: string): string {
  const shown = typeof value === 'number' ? Number(value.toPrecision(12)) : value;
  return unit === '' ? String(shown) : `${String(shown)} ${unit}`;
}

/**
 * Whether a caught value is a `CalculationError`, also one thrown by another copy of this library.
 *
 * @param error whatever was caught
 */
export function isCalculationError(error: unknown): error is CalculationError {
  return error instanceof Error && error.name === 'CalculationError' && 'constraint' in error;
}

/** Throws the refusal. A function of its own keeps the throw out of the formula's hot path. */
export function refuse(refusal: Refusal): never {
  throw new CalculationError(refusal);
}
