import { cautionsFor } from '../cautions.js';
import type { DesignOptions, DesignParts, DesignRecord, NotDesigned, RepairDesign } from '../design/design.js';
import { leaksToday } from '../found/opening.js';
import { version } from '../version.js';
import { holdPressure } from './hold-pressure.js';
import { namedRules } from './rule-set.js';
import { type Open, open } from './stage.js';
import type { Workbook } from './workbook.js';

type PartsSoFar = { readonly [K in keyof DesignParts]: DesignParts[K] | Open };

/** The verdict, with the parts that were worked out and what the workbook holds. */
export function conclude(work: Workbook, options: DesignOptions, parts: PartsSoFar): RepairDesign {
  const { case: repairCase, stated, recorder, notCovered, reasons, missing, assumed, warnings } = work;
  const leaks = parts.found === open ? leaksToday(repairCase.defect) : parts.found.throughWall;
  const record: DesignRecord = {
    reasons: [...notCovered, ...reasons],
    missing,
    case: stated,
    options,
    libraryVersion: version,
    ruleSet: namedRules(stated, options),
    assumed,
    rules: [...work.usedRules.values()],
    warnings,
    cautions: cautionsFor(repairCase, leaks),
    ...(recorder === undefined ? {} : { record: recorder.entries }),
  };
  const verdict = verdictOf(work);
  if (verdict !== 'designed') return { verdict, ...record, ...reached(parts) };
  const made = whole(parts);
  holdPressure(repairCase, made.laminate);
  return { ...record, verdict, reasons: [], missing: [], ...made };
}

function verdictOf({ notCovered, reasons, missing }: Workbook): RepairDesign['verdict'] {
  if (notCovered.length > 0) return 'not covered';
  if (reasons.length > 0) return 'not repairable';
  return missing.length > 0 ? 'needs input' : 'designed';
}

function reached(parts: PartsSoFar): Omit<NotDesigned, 'verdict' | keyof DesignRecord> {
  return Object.fromEntries(Object.entries(parts).filter(([, part]) => part !== open));
}

/** A part that stayed open has said why; where none has, the fault is the library's, and no design comes out of it. */
function whole(parts: PartsSoFar): DesignParts {
  for (const [name, part] of Object.entries(parts)) {
    if (part === open)
      throw new Error(`the part "${name}" of the design stayed open and nothing says why: a fault of this library`);
  }
  return parts as DesignParts;
}
