import { CaseError } from '../json/case-error.js';
import { echoes, type TypedMap } from '../json/typed.js';
import { valueAt } from '../repair/case/place.js';
import type { RepairDesign } from '../repair/index.js';
import { chosen, type SheetOptions } from '../report/options.js';
import { warningOnSheet } from '../report/warning.js';

/** Refuses a design whose case holds what looks like a slip, each in a sentence. @throws CaseError */
export function refuseSlips(design: RepairDesign, typed: TypedMap, options: SheetOptions): void {
  const all = chosen(options);
  const issues = design.warnings.flatMap((warning) => {
    const { field } = warning;
    if (field === undefined) return [];
    const message = warningOnSheet(warning, all, echoes(typed));
    return [
      { path: field, value: typed.get(field)?.text ?? valueAt(design.case, field), expected: 'a usual value', message },
    ];
  });
  if (issues.length > 0) throw new CaseError(issues);
}
