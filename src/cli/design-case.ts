import { parseCase } from '../json/decode-case.js';
import { encodeDesign } from '../json/encode-design.js';
import { parseRuleSet } from '../json/rule-set.js';
import { echoes } from '../json/typed.js';
import { designRepair, type Verdict } from '../repair/index.js';
import { repairDrawing } from '../report/drawing/index.js';
import { firstPage } from '../report/first-page.js';
import { planHtml } from '../report/plan-html.js';
import { planText } from '../report/plan-text.js';
import { calculationSheet } from '../report/sheet.js';
import type { UnitSystem } from '../report/units.js';
import type { Form } from './forms.js';
import { type PlanArguments, planCase } from './plan-case.js';
import { refuseSlips } from './refuse-slips.js';
import { UsageError } from './usage-error.js';

/** A designed case, to be written in one form or another. */
export interface DesignedCase {
  readonly verdict: Verdict;
  written(form: Form): string;
  /** On one screen, with where the files stand that were written. */
  firstPage(out: string | undefined, paths: readonly string[]): string;
}

/** What the command line says beside the case. */
export interface CaseArguments extends PlanArguments {
  readonly units: UnitSystem;
  readonly digits: number | undefined;
  /** Refuses a value outside its usual span. */
  readonly strict: boolean;
  /** Text of a rule set of the user's own, and the name of its file. */
  readonly rules?: { readonly text: string; readonly from: string } | undefined;
}

/** Designs the case in a text. @throws CaseError, CalculationError */
export function designCase(text: string, { units, digits, strict, rules, ...asked }: CaseArguments): DesignedCase {
  const { case: repairCase, typed, lookUps } = parseCase(text);
  const design = designRepair(repairCase, {
    record: true,
    ...(rules === undefined ? {} : { rules: parseRuleSet(rules.text), rulesFrom: rules.from }),
  });
  if (strict) refuseSlips(design, typed, { units, digits });
  const shown = { units, digits, typed: echoes(typed) };
  const forms: Readonly<Record<Form, () => string>> = {
    'sheet-text': () => calculationSheet(design, { format: 'text', ...shown }),
    'sheet-markdown': () => calculationSheet(design, { format: 'markdown', ...shown }),
    'sheet-html': () => calculationSheet(design, { format: 'html', ...shown }),
    'plan-text': () => planText(planCase(design, asked), { units }),
    'plan-html': () => planHtml(planCase(design, asked), { units }),
    drawing: () => repairDrawing(design, { units, digits }) ?? noDrawing(design.verdict),
    'design-json': () => {
      return `${JSON.stringify(encodeDesign(design, { typed, lookUps, units, digits }), null, 2)}\n`;
    },
  };
  return {
    verdict: design.verdict,
    written: (form) => forms[form](),
    firstPage: (out, paths) =>
      firstPage(design, { ...shown, files: out === undefined ? undefined : placed(out, paths) }),
  };
}

/** A drawing of a design that was not made would be read as one of something to build. */
function noDrawing(verdict: Verdict): never {
  throw new UsageError(`there is nothing to draw: the verdict is ${verdict}`);
}

/** Files by their folder and their names in it. */
function placed(out: string, paths: readonly string[]): { folder: string; names: string[] } {
  const [first = out] = paths;
  const folder = first.replace(/[^/\\]*$/u, '');
  return { folder: folder === '' ? './' : folder, names: paths.map((path) => path.slice(folder.length)) };
}
