import { parseCase } from '../json/decode-case.js';
import { parseRuleSet } from '../json/rule-set.js';
import { echoes } from '../json/typed.js';
import { designRepair, type Verdict } from '../repair/index.js';
import { firstPage } from '../report/first-page.js';
import type { CalculationSheetOptions } from '../report/sheet.js';
import type { UnitSystem } from '../report/units.js';
import type { Form } from './forms.js';
import type { PlanArguments } from './plan-case.js';
import { refuseSlips } from './refuse-slips.js';
import { UsageError } from './usage-error.js';

/** A designed case, to be written in one form or another. */
export interface DesignedCase {
  readonly verdict: Verdict;
  written(form: Form): Promise<string>;
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

/** Designs the case in a text; each form of the answer is loaded when it is asked for. @throws CaseError, CalculationError */
export function designCase(text: string, { units, digits, strict, rules, ...asked }: CaseArguments): DesignedCase {
  const { case: repairCase, typed, lookUps } = parseCase(text);
  const design = designRepair(repairCase, {
    record: true,
    ...(rules === undefined ? {} : { rules: parseRuleSet(rules.text), rulesFrom: rules.from }),
  });
  if (strict) refuseSlips(design, typed, { units, digits });
  const shown = { units, digits, typed: echoes(typed) };
  const sheet = async (format: CalculationSheetOptions['format']): Promise<string> => {
    const { calculationSheet } = await import('../report/sheet.js');
    return calculationSheet(design, { format, ...shown });
  };
  const forms: Readonly<Record<Form, () => Promise<string>>> = {
    'sheet-text': () => sheet('text'),
    'sheet-markdown': () => sheet('markdown'),
    'sheet-html': () => sheet('html'),
    'plan-text': async () => {
      const [{ planCase }, { planText }] = await Promise.all([
        import('./plan-case.js'),
        import('../report/plan-text.js'),
      ]);
      return planText(planCase(design, asked), { units });
    },
    'plan-html': async () => {
      const [{ planCase }, { planHtml }] = await Promise.all([
        import('./plan-case.js'),
        import('../report/plan-html.js'),
      ]);
      return planHtml(planCase(design, asked), { units });
    },
    drawing: async () => {
      const { repairDrawing } = await import('../report/drawing/index.js');
      return repairDrawing(design, { units, digits }) ?? noDrawing(design.verdict);
    },
    'design-json': async () => {
      const { encodeDesign } = await import('../json/encode-design.js');
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
