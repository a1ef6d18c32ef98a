import { type AnyFormula, type InputDeclaration, isCalculationError, type Limit } from '../../formula/index.js';
import { givenOutputs } from '../../formula/outputs.js';
import type { RecordedStep } from '../../formula/recorder.js';
import { mersenneTwister, openFraction } from '../../numeric/index.js';
import { readQuantity, unitOf } from '../../quantity/index.js';
import { fromSi } from '../../quantity/quantity.js';
import { isKind } from '../../quantity/units/index.js';
import { formatGiven } from '../number.js';

import { preferredUnit, type UnitPreferences } from '../units.js';

/** A formula with numbers that somebody could have measured, and what it gives for them. */
export interface Exercise {
  /** The inputs as they are printed, by name: to work with these and no others gives the answer. */
  readonly typed: Readonly<Record<string, { readonly text: string }>>;
  /** The same as a step, in SI. */
  readonly step: RecordedStep;
}

/** Significant digits of a drawn number: what people read off an instrument and write down. */
const WRITTEN = 3;
/** Spans wider than this are drawn by their logarithm, so that small numbers come too. */
const WIDE = 20;
/** Draws for each exercise that is wanted. */
const PATIENCE = 500;

/**
 * Exercises drawn from the spans over which a formula is tested, each input rounded to three digits in the unit in which it is
 * printed. Inputs that the formula refuses are never drawn, nor those without a number for an answer; those that it has a note against only
 * where its spans hold hardly any others.
 *
 * @throws RangeError for a formula that takes a table or gives no number, or where the spans hold too few inputs that it takes
 */
export function drawExercises(
  formula: AnyFormula,
  { count, seed, units }: { readonly count: number; readonly seed: number; readonly units: UnitPreferences },
): Exercise[] {
  const inputs = Object.entries(formula.inputs as Readonly<Record<string, InputDeclaration>>);
  const table = inputs.find(([, { kind }]) => (kind as string) === 'list');
  if (table !== undefined)
    throw new RangeError(`${formula.id} takes a table for ${table[0]}; there are no exercises of such`);
  const next = mersenneTwister(seed);
  const random = (): number => openFraction(next());
  const found: Exercise[] = [];
  for (let drawn = 0; drawn < count * PATIENCE && found.length < count; drawn += 1) {
    // What may be left out is, and what has a note against it is passed over, unless hardly anything is left.
    const isPlain = drawn < (count * PATIENCE) / 2;
    const typed = Object.fromEntries(
      inputs.flatMap(([name, declared]) => {
        const isLeft = declared.default !== undefined || (declared.optional === true && (isPlain || random() < 0.5));
        const text = isLeft ? undefined : writtenOf(name, declared, units, random);
        return text === undefined ? [] : [[name, { text }] as const];
      }),
    );
    const input = Object.fromEntries(
      Object.entries(typed).map(([name, { text }]) => [name, valueIn(text, inputs, name)]),
    );
    const result = accepted(formula, input);
    if (result === undefined || (isPlain && isNoted(formula, input))) continue;
    found.push({ typed, step: { sort: 'step', formula: formula.id, input, result } });
  }
  if (found.length < count)
    throw new RangeError(
      `${formula.id} gave ${found.length} of ${count} exercises in ${count * PATIENCE} draws; ask for fewer`,
    );
  return found;
}

/** The text of a drawn input. */
function writtenOf(
  name: string,
  { kind, sample, choices, name: words }: InputDeclaration,
  units: UnitPreferences,
  random: () => number,
): string | undefined {
  if ((kind as string) === 'flag') return random() < 0.5 ? 'no' : 'yes';
  if ((kind as string) === 'choice') return choices?.[Math.floor(random() * choices.length)];
  if (sample === undefined) throw new RangeError(`${name} has no span to draw from`);
  if ((kind as string) === 'count') return String(sample[0] + Math.floor(random() * (sample[1] - sample[0] + 1)));
  const symbol = isKind(kind) ? preferredUnit(kind, name, units, words) : '1';
  const unit = isKind(kind) ? unitOf(kind, symbol) : undefined;
  const [low, high] = sample.map((si) => (unit === undefined ? si : fromSi(si, unit))) as [number, number];
  const place = random();
  const isWide = low > 0 && high / low > WIDE;
  const value = isWide ? low * (high / low) ** place : low + (high - low) * place;
  const rounded = Number(value.toPrecision(WRITTEN));
  // Rounded out of its span it would be one that nobody tests.
  const number = formatGiven(Math.min(high, Math.max(low, rounded)), WRITTEN);
  return symbol === '1' ? number : `${number} ${symbol}`;
}

function valueIn(text: string, inputs: readonly (readonly [string, InputDeclaration])[], name: string): unknown {
  const kind = inputs.find(([each]) => each === name)?.[1].kind as string;
  if (kind === 'flag') return text === 'yes';
  if (kind === 'choice') return text;
  if (!isKind(kind)) return Number(text);
  const reading = readQuantity(kind, text);
  if (!reading.ok) throw new Error(`${name} was written as ${text}: ${reading.problem}`);
  return reading.quantity;
}

/** Whether a limit of the formula warns of these inputs, which it takes. */
function isNoted({ limits }: AnyFormula, input: Readonly<Record<string, unknown>>): boolean {
  return limits.some(({ beyond }: Limit<never>) => beyond?.(input as never) === true);
}

/** The result, where the formula takes these inputs and gives a number that is not nought. */
function accepted(formula: AnyFormula, input: Readonly<Record<string, unknown>>): unknown {
  try {
    const result = formula.compute(input as never);
    const main = givenOutputs(formula, result)[0]?.value;
    return typeof main === 'number' && Number.isFinite(main) && main !== 0 ? result : undefined;
  } catch (error) {
    if (isCalculationError(error)) return undefined;
    throw error;
  }
}
