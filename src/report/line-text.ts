import type { Line } from '../quantity/index.js';
import type { ChosenOptions } from './options.js';
import { shownValue } from './shown-value.js';

/** A sentence with its amounts in the reader's units. */
export function lineOnSheet({ text, amounts = [] }: Line, options: ChosenOptions): string {
  return text.replaceAll(/\{(\d)\}/gu, (mark, index: string) => {
    const amount = amounts[Number(index)];
    return amount === undefined ? mark : shownValue(amount.kind, amount.name, amount.value, options, true);
  });
}
