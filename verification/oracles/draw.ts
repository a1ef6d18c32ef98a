import { type AnyFormula, type InputDeclaration, isCalculationError } from '../../src/formula/index.js';
import type { Random } from './random.js';

/** Draws a value for a list; the caller knows what a list of that name may hold. */
export type ListSource = (
  random: Random,
  id: string,
  name: string,
  input: InputDeclaration<never>,
) => readonly unknown[];

/** One accepted call: the argument as the function got it, the value behind each symbol, and what came back. */
export interface Draw {
  /** What was passed; an input left to its default is absent. */
  readonly input: Readonly<Record<string, unknown>>;
  /** Every value by the symbol of its input, defaults included. */
  readonly bySymbol: Readonly<Record<string, unknown>>;
  readonly result: unknown;
}

function pick<T>(random: Random, items: readonly T[]): T {
  return items[Math.floor(random() * items.length)] as T;
}

/** A number from a span: an end now and then, and as often by its logarithm as by its size where the span is wide. */
function fromSpan(random: Random, [low, high]: readonly [number, number]): number {
  const [place, how] = [random(), random()];
  if (how < 0.03) return low;
  if (how < 0.06) return high;
  const byLogarithm = low > 0 && high / low >= 10 && how < 0.5;
  const value = byLogarithm ? low * (high / low) ** place : low + (high - low) * place;
  return Math.min(high, Math.max(low, value));
}

function fromDeclaration(random: Random, where: string, input: InputDeclaration<never>): unknown {
  const { kind, sample, choices } = input as InputDeclaration;
  if ((kind as string) === 'flag') return random() < 0.5;
  if ((kind as string) === 'choice') {
    if (choices === undefined || choices.length === 0) throw new Error(`${where} is a choice without choices`);
    return pick(random, choices);
  }
  if (sample === undefined) throw new Error(`${where} has no sample: [low, high] to draw from`);
  if ((kind as string) === 'count') return sample[0] + Math.floor(random() * (sample[1] - sample[0] + 1));
  return fromSpan(random, sample);
}

/** Draws the inputs of one formula; an input with a default is left out of every fourth draw. */
export function drawInput(formula: AnyFormula, random: Random, lists?: ListSource): Pick<Draw, 'input' | 'bySymbol'> {
  const input: Record<string, unknown> = {};
  const bySymbol: Record<string, unknown> = {};
  for (const [name, declared] of Object.entries<InputDeclaration<never>>(formula.inputs)) {
    const fallback = declared.default;
    const left = fallback !== undefined && random() < 0.25;
    const isList = (declared.kind as string) === 'list';
    const value = left
      ? fallback
      : isList && lists !== undefined
        ? lists(random, formula.id, name, declared)
        : fromDeclaration(random, `${formula.id}: ${name}`, declared);
    if (!left) input[name] = value;
    bySymbol[declared.symbol] = value;
  }
  return { input, bySymbol };
}

export interface DrawOptions {
  readonly wanted?: number;
  readonly least?: number;
  readonly most?: number;
  readonly lists?: ListSource;
}

/**
 * Draws until `wanted` calls are accepted. Inputs that the function refuses by a CalculationError are drawn again.
 *
 * @throws Error when fewer than `least` of `most` draws are accepted
 */
export function drawCalls(
  formula: AnyFormula,
  random: Random,
  { wanted = 40, least = Math.min(10, wanted), most = 400, lists }: DrawOptions = {},
): Draw[] {
  const accepted: Draw[] = [];
  let refusal = '';
  for (let drawn = 0; drawn < most && accepted.length < wanted; drawn++) {
    const { input, bySymbol } = drawInput(formula, random, lists);
    try {
      accepted.push({ input, bySymbol, result: formula.compute(input) });
    } catch (error) {
      if (!isCalculationError(error)) throw error;
      refusal = error.message;
    }
  }
  if (accepted.length < least) {
    throw new Error(
      `${formula.id} accepted only ${accepted.length} of ${most} draws; choose sample spans that fit together (last refusal: ${refusal})`,
    );
  }
  return accepted;
}
