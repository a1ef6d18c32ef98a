import { parseCase } from '../json/decode-case.js';
import { encodeDesign } from '../json/encode-design.js';
import { echoes } from '../json/typed.js';
import type { Kind } from '../quantity/index.js';
import { designRepair, type Verdict } from '../repair/index.js';
import { calculationSheet } from '../report/sheet.js';
import { preferredUnit, type UnitSystem } from '../report/units.js';

/** A designed case, to be written in one format or another. */
export interface DesignedCase {
  readonly verdict: Verdict;
  written(format: string): string;
}

/** Designs the case in a text. @throws CaseError, CalculationError */
export function designCase(
  text: string,
  { units, digits }: { readonly units: UnitSystem; readonly digits: number | undefined },
): DesignedCase {
  const { case: repairCase, typed, lookUps } = parseCase(text);
  const design = designRepair(repairCase, { record: true });
  const written = (format: string): string => {
    if (format === 'json') {
      const unit = (kind: Kind, name: string) => preferredUnit(kind, name, { system: units });
      return `${JSON.stringify(encodeDesign(design, { typed, lookUps, unit, digits }), null, 2)}\n`;
    }
    return calculationSheet(design, {
      format: format === 'markdown' ? 'markdown' : 'text',
      units,
      digits,
      typed: echoes(typed),
    });
  };
  return { verdict: design.verdict, written };
}
