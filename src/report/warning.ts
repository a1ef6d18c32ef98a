import { written } from '../quantity/index.js';
import type { Warning } from '../repair/design/design.js';
import { amountOnSheet } from './line-text.js';
import type { ChosenOptions } from './options.js';

/** A warning as the sheet has it; the value of the field that it speaks of, which comes first, as it was typed. */
export function warningOnSheet(
  { clause, field, ...said }: Warning,
  options: ChosenOptions,
  typed?: ReadonlyMap<string, { readonly text: string }>,
): string {
  const asTyped = field === undefined ? undefined : typed?.get(field)?.text.trim();
  const text = written(said, (amount) =>
    asTyped !== undefined && amount === said.amounts?.[0] ? asTyped : amountOnSheet(amount, options, true),
  );
  return clause === undefined ? text : `${text} [${clause}]`;
}
