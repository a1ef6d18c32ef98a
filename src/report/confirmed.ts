import type { RepairDesign, UsedRule } from '../repair/design/design.js';
import type { Block } from './document.js';
import type { ChosenOptions } from './options.js';
import { shownValue } from './shown-value.js';

/** Whether every number of a rule is confirmed: it then stands on that, and no more on what is recalled. */
export function isConfirmed({ confirmed }: UsedRule): boolean {
  return confirmed !== undefined && confirmed.values.length >= confirmed.of;
}

/** Which numbers of the rule set somebody confirmed, by whom and in place of what; and how much is left unconfirmed. */
export function confirmedBlocks({ rules, case: { confirmed = [] } }: RepairDesign, options: ChosenOptions): Block[] {
  const whole = rules.filter(isConfirmed).length;
  const part = rules.filter((rule) => rule.confirmed !== undefined && !isConfirmed(rule)).length;
  const left = rules.length - whole - part;
  const used = rules.flatMap((rule) => (rule.confirmed?.values ?? []).map((value) => ({ value, rule })));
  const items = used.map(({ value: { path, kind, value, instead, by, edition, note }, rule }) => {
    const show = (number: number): string => shownValue(kind, path.split('.').at(-1) ?? path, number, options, false);
    const noted = note === undefined ? '' : `; ${note}`;
    return `${path}: ${show(value)} in place of ${show(instead)}, by ${by}, ${edition} [${rule.clause}]${noted}`;
  });
  const names = new Set(used.map(({ value }) => value.path));
  const unused = confirmed.filter(({ path }) => !names.has(path)).map(({ path }) => path);
  return [
    {
      sort: 'paragraph',
      text: `Rule values confirmed by a reader of the document: ${whole} of ${rules.length}, ${part} more in part, ${left} left unconfirmed.`,
    },
    ...(items.length === 0 ? [] : [{ sort: 'list' as const, items }]),
    ...(unused.length === 0
      ? []
      : [{ sort: 'paragraph' as const, text: `Confirmed, and not used by this design: ${unused.join(', ')}.` }]),
  ];
}
