import { decide, step } from '../../formula/index.js';
import { holeOverDiameter, leakSeverity } from '../../laminate/index.js';
import type { Length } from '../../quantity/index.js';
import type { HighRiskLimits } from '../../rules/index.js';
import type { AsFound } from '../design/design.js';
import { use, type Workbook, warn } from '../job/workbook.js';

/** Screening only (PCC-2, 401-1.1): it says how the repair counts, it does not change the design. */
export function screenRisk(work: Workbook, found: AsFound): void {
  const { si } = work.rules.highRisk;
  const { value: limits, clause } = si;
  if (limits === null) return;
  use(work, 'screening for high risk', si);
  const why: string[] = [];
  addRisksOfService(work, limits, why);
  if (found.holeAtEndOfLife !== undefined) {
    addRisksOfHole(work, limits, found.holeAtEndOfLife, found.outsideDiameter, why);
  }
  if (why.length === 0) return;
  const risks = why.join(', ');
  decide(work.recorder, 'counts as high risk', risks);
  warn(work, `The repair counts as high risk (${risks}): the full rules apply, none of the simplified ones.`, clause);
}

function addRisksOfService(work: Workbook, limits: HighRiskLimits, why: string[]): void {
  const { hazards, safetyCritical, designPressure, designTemperature } = work.case.service;
  if (hazards.length > 0) why.push('hazardous contents');
  if (safetyCritical) why.push('safety-critical line');
  if (designPressure >= limits.pressure) why.push('design pressure');
  if (designTemperature >= limits.highestTemperature) why.push('high design temperature');
  if (designTemperature <= limits.lowestTemperature) why.push('low design temperature');
}

function addRisksOfHole(
  work: Workbook,
  limits: HighRiskLimits,
  holeDiameter: Length,
  outsideDiameter: Length,
  why: string[],
): void {
  const { recorder, case: repairCase } = work;
  const pressure = repairCase.service.designPressure;
  const severity = step(recorder, 'laminate/leak-severity', leakSeverity, { pressure, holeDiameter });
  const hole = { holeDiameter, outsideDiameter };
  const share = step(recorder, 'laminate/hole-over-diameter', holeOverDiameter, hole);
  if (severity > limits.leakSeverity) why.push('leak severity');
  if (share > limits.holeOverDiameter) why.push('size of the hole');
}
