import { parseCase } from '../json/decode-case.js';
import { encodeDesign } from '../json/encode-design.js';
import { echoes } from '../json/typed.js';
import type { Kind } from '../quantity/index.js';
import { designRepair, type Verdict } from '../repair/index.js';
import { planHtml } from '../report/plan-html.js';
import { planText } from '../report/plan-text.js';
import { calculationSheet } from '../report/sheet.js';
import { preferredUnit, type UnitSystem } from '../report/units.js';
import { type PlanArguments, planCase } from './plan-case.js';
import { refuseSlips } from './refuse-slips.js';

/** A designed case, to be written in one format or another. */
export interface DesignedCase {
  readonly verdict: Verdict;
  written(format: string): string;
}

/** What the command line says beside the case. */
export interface CaseArguments extends PlanArguments {
  readonly units: UnitSystem;
  readonly digits: number | undefined;
  /** Refuses a value outside its usual span. */
  readonly strict: boolean;
}

/** Designs the case in a text. @throws CaseError, CalculationError */
export function designCase(text: string, { units, digits, strict, ...asked }: CaseArguments): DesignedCase {
  const { case: repairCase, typed, lookUps } = parseCase(text);
  const design = designRepair(repairCase, { record: true });
  if (strict) refuseSlips(design, typed, { units, digits });
  const written = (format: string): string => {
    if (format === 'json') {
      const unit = (kind: Kind, name: string) => preferredUnit(kind, name, { system: units });
      return `${JSON.stringify(encodeDesign(design, { typed, lookUps, unit, digits }), null, 2)}\n`;
    }
    if (format === 'plan') return planText(planCase(design, asked), { units });
    if (format === 'plan-html') return planHtml(planCase(design, asked), { units });
    return calculationSheet(design, {
      format: format === 'markdown' ? 'markdown' : 'text',
      units,
      digits,
      typed: echoes(typed),
    });
  };
  return { verdict: design.verdict, written };
}
