import type { AnyFormula } from '../../formula/index.js';
import { givenOutputs } from '../../formula/outputs.js';
import { isKind } from '../../quantity/units/index.js';
import type { Block } from '../document.js';
import { statedEquation } from '../formula-sheet.js';
import { type ChosenOptions, chosen, nothingPrinted, type SheetOptions } from '../options.js';
import { givenInputs } from '../problem.js';
import { render } from '../render.js';
import { shownValue } from '../shown-value.js';
import { stepBlocks } from '../step.js';
import { preferredUnit, unitText } from '../units.js';
import { drawExercises, type Exercise } from './draw-exercises.js';

/** How a sheet of exercises is drawn and written. */
export interface ExerciseSheetOptions extends SheetOptions {
  /** How many exercises, 1 to 50; 5 where left out. */
  readonly count?: number | undefined;
  /** The same seed draws the same exercises: a whole number, 1 where left out. */
  readonly seed?: number | undefined;
  /** What to write: the exercises, their worked answers, or both, the answers on a page of their own. */
  readonly part?: 'exercises' | 'answers' | 'both' | undefined;
}

/** Defaults are printed at the length that gives the same answer by hand. */
const IN_FULL = 12;

/**
 * Exercises from a formula for a class, with their worked answers apart: inputs drawn by a seed from the spans over which the formula
 * is tested, rounded as people write them. The answer is worked out from what is printed and from nothing else.
 *
 * @param formula its declaration
 * @param options how many, by which seed, and how the sheet is written
 * @throws RangeError for an option out of its range; for a formula that takes a table or gives no number
 */
export function exerciseSheet(formula: AnyFormula, options: ExerciseSheetOptions = {}): string {
  const { count = 5, seed = 1, part = 'both' } = options;
  whole('count', count, 1, 50);
  whole('seed', seed, 0, 4_294_967_295);
  const all = chosen(options);
  const exercises = drawExercises(formula, { count, seed, units: all.units });
  const blocks: Block[] = [
    { sort: 'title', text: `Exercises: ${formula.title}` },
    {
      sort: 'rows',
      rows: [
        ['Formula', formula.id],
        ['Drawn', `${count} with seed ${seed}; the same seed draws them again`],
        ['Results', `to ${all.digits} significant digits`],
      ],
    },
    ...(part === 'answers' ? [] : exerciseBlocks(formula, exercises, all)),
    ...(part === 'exercises' ? [] : answerBlocks(formula, exercises, options)),
  ];
  return render(blocks, options);
}

function exerciseBlocks(formula: AnyFormula, exercises: readonly Exercise[], options: ChosenOptions): Block[] {
  const symbol = givenOutputs(formula, {})[0]?.declaration.symbol ?? 'result';
  return [
    { sort: 'heading', level: 1, text: 'EXERCISES' },
    ...statedEquation(formula, symbol),
    ...exercises.flatMap((each, index): Block[] => [
      { sort: 'heading', level: 3, text: `Exercise ${index + 1}` },
      { sort: 'rows', code: true, rows: [...givenRows(formula, each, options), wantedRow(formula, each, options)] },
    ]),
  ];
}

/** Every number that the answer needs, with what the formula supplies where nobody states it. */
function givenRows(formula: AnyFormula, { typed, step }: Exercise, options: ChosenOptions): string[][] {
  return givenInputs(formula, step.input).flatMap(({ name, declaration, value }) => {
    if (value === undefined) return [];
    const { symbol, name: words } = declaration;
    const kind: string = declaration.kind;
    const text = typed[name]?.text ?? shownValue(kind, name, value, { ...options, digits: IN_FULL }, false, words);
    const isPressure = kind === 'gauge pressure' || kind === 'absolute pressure';
    return [[symbol, `= ${text}`, isPressure ? `${words} (${kind})` : words]];
  });
}

function wantedRow(formula: AnyFormula, { step }: Exercise, { units }: ChosenOptions): string[] {
  const [main] = givenOutputs(formula, step.result);
  if (main === undefined) return [];
  const { symbol, kind, name: words } = main.declaration;
  const unit = isKind(kind) ? unitText(preferredUnit(kind, main.name, units, words)) : '';
  return [symbol, `= ?${unit === '' ? '' : ` ${unit}`}`, words];
}

function answerBlocks(formula: AnyFormula, exercises: readonly Exercise[], options: ExerciseSheetOptions): Block[] {
  const printed = nothingPrinted();
  return [
    { sort: 'heading', level: 1, text: 'ANSWERS' },
    ...exercises.flatMap(({ step, typed }, index) =>
      stepBlocks(formula, step, { ...options, typed, number: String(index + 1), printed }),
    ),
  ];
}

function whole(name: string, value: number, least: number, most: number): void {
  if (!(Number.isInteger(value) && value >= least && value <= most))
    throw new RangeError(`${name} is ${value}; must be a whole number from ${least} to ${most}`);
}
