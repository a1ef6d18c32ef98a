import { createRecorder, type Recorder } from '../../formula/index.js';
import type { RepairCase } from '../case/case.js';
import { sizedBySurge } from '../case/sized-by-surge.js';
import type { DesignOptions } from '../design/design.js';
import { forcesAlongOf } from '../found/forces-along.js';
import { withNeighboursJoined } from '../found/neighbours.js';
import { ruleSetOf } from './rule-set.js';
import type { Workbook } from './workbook.js';

/** An empty workbook for a case, with the rule set that it names or that the options bring; it may write its steps into a recorder that there is. */
export function openWorkbook(repairCase: RepairCase, options: DesignOptions, recorder?: Recorder): Workbook {
  const steps = options.record === true ? createRecorder() : recorder;
  const work = {
    case: withNeighboursJoined(sizedBySurge(repairCase), steps),
    stated: repairCase,
    rules: ruleSetOf(repairCase, options),
    recorder: steps,
    reasons: [],
    notCovered: [],
    missing: [],
    assumed: (repairCase.lookedUp ?? []).map(({ name, kind, value, tag, because }) => ({
      amount: { name, kind, value },
      tag,
      because,
    })),
    warnings: [],
    usedRules: new Map(),
    climates: new Map(),
  };
  return { ...work, along: forcesAlongOf(work) };
}
