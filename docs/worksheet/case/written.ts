import { isNumber } from '../../../src/json/formula-input.js';
import { textOfBoxes } from './amount-text.js';
import type { AmountControl, ChoiceControl, TextControl, TicksControl } from './control.js';

/** What stands in the case for what was typed or chosen; nothing for an empty box. */
export function writtenAmount(control: AmountControl, number: string, unit: string): string | undefined {
  return orNothing(control.keepsPlace, textOfBoxes(control.kind, { number, unit }));
}

/** A number is one in the case too; what cannot be read as one stays as typed, and the door says so. */
export function writtenText({ sort, keepsPlace }: TextControl, typed: string): unknown {
  const text = typed.trim();
  if ((sort === 'number' || sort === 'name') && isNumber(text)) return Number(text);
  return orNothing(keepsPlace, text);
}

export function writtenChoice({ options, keepsPlace }: ChoiceControl, words: string): unknown {
  const option = options.find((each) => each.words === words);
  return option === undefined ? orNothing(keepsPlace, '') : option.value;
}

/** A word ticked or not; the last one taken away leaves the question open, since none has to be said. */
export function writtenTicks({ ticked, options }: TicksControl, word: string | number, on: boolean): unknown {
  const left = options.filter((each) => (each === word ? on : ticked.includes(each)));
  return left.length === 0 ? undefined : left;
}

function orNothing(keepsPlace: boolean, text: string): string | undefined {
  return text === '' && !keepsPlace ? undefined : text;
}
