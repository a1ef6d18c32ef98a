import { echoes, type TypedMap } from '../../../src/json/index.js';
import type { UnitSystem } from '../../../src/quantity/index.js';
import type { RepairDesign } from '../../../src/repair/index.js';
import { amountText, reasonItem } from '../../../src/report/answer.js';
import { answerInShort } from '../../../src/report/answer-in-short.js';
import { chosen } from '../../../src/report/options.js';
import { warningOnSheet } from '../../../src/report/warning.js';

/** The answer as it stands on the screen: what speaks against it as long as the numbers, and before them. */
export interface AnswerCard {
  readonly verdict: RepairDesign['verdict'];
  readonly ruleSet: string;
  readonly reasons: readonly string[];
  readonly missing: readonly { readonly field: string; readonly text: string }[];
  readonly warnings: readonly string[];
  readonly numbers: readonly { readonly what: string; readonly howMuch: string; readonly by: string }[];
  readonly assumed: readonly string[];
  /** How many values of the rule set are written down from memory. */
  readonly recalled: string;
  readonly cautions: readonly string[];
}

/** The texts are those of the sheet, so that the two cannot say different things. */
export function answerCard(design: RepairDesign, typed: TypedMap, units: UnitSystem): AnswerCard {
  const options = chosen({ units });
  const { verdict, ruleSet, reasons, missing, warnings, assumed, rules, cautions } = design;
  const recalled = rules.filter(({ tag, confirmed }) => tag === 'recalled' && confirmed === undefined).length;
  return {
    verdict,
    ruleSet,
    reasons: reasons.map((reason) => reasonItem(reason, options)),
    missing: missing.map(({ field, why, askWhom }) => ({ field, text: `${why}; ask ${askWhom}` })),
    warnings: warnings.map((warning) => warningOnSheet(warning, options, echoes(typed))),
    numbers: answerInShort(design, options).map(([what, howMuch, by]) => ({ what, howMuch, by })),
    assumed: assumed.map(({ amount, tag, because }) => {
      const value = 'word' in amount ? `${amount.name}: ${amount.word}` : amountText(amount, options);
      return `${value} [${tag}]: ${because}`;
    }),
    recalled: `${recalled} of ${rules.length} rule values are written down from memory of the named document and not confirmed.`,
    cautions,
  };
}
