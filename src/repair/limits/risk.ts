import { decide, step } from '../../formula/index.js';
import { holeOverDiameter, leakSeverity } from '../../laminate/index.js';
import { reaches } from '../../numeric/index.js';
import type { Length } from '../../quantity/index.js';
import type { HighRiskLimits } from '../../rules/index.js';
import type { AsFound } from '../design/design.js';
import { assumeWord, use, type Workbook, warnOwner } from '../job/workbook.js';

/**
 * Screening only (PCC-2, 401-1.1): it says how the repair counts, it does not change the design. The document rounds its two
 * rows of limits apart, so a repair that either of them calls one of high risk is one.
 */
export function screenRisk(work: Workbook, found: AsFound): void {
  const { si, us } = work.rules.highRisk;
  const rows: HighRiskLimits[] = [];
  for (const [units, rule] of [
    ['SI', si],
    ['US customary', us],
  ] as const)
    if (rule.value !== null) rows.push(use(work, `screening for high risk, ${units}`, rule) as HighRiskLimits);
  if (rows.length === 0) return;
  const why = risksOfService(work, rows);
  if (found.holeAtEndOfLife !== undefined)
    why.push(...risksOfHole(work, rows, found.holeAtEndOfLife, found.outsideDiameter));
  if (why.length === 0) {
    // The screening would allow the simpler route; its rule for the thickness is not known well enough to ship.
    assumeWord(
      work,
      'route',
      'the full rules',
      'chosen',
      `the screening (${si.clause}) finds no high risk, so the set would allow its simpler route; the thickness rule of that is not known well enough to ship, and no design here uses it`,
    );
    return;
  }
  const risks = why.join(', ');
  decide(work.recorder, 'counts as high risk', risks);
  warnOwner(
    work,
    `The repair counts as high risk (${risks}): the full rules apply, none of the simplified ones.`,
    si.clause,
  );
}

function risksOfService(work: Workbook, rows: readonly HighRiskLimits[]): string[] {
  const { hazards, safetyCritical, designPressure, designTemperature } = work.case.service;
  const { lowestTemperature: coldest = designTemperature } = work.case.service;
  const why: string[] = [];
  if (hazards.length > 0) why.push('hazardous contents');
  if (safetyCritical) why.push('safety-critical line');
  if (rows.some(({ pressure }) => reaches(designPressure, pressure))) why.push('design pressure');
  if (rows.some(({ highestTemperature }) => reaches(designTemperature, highestTemperature)))
    why.push('high design temperature');
  if (rows.some(({ lowestTemperature }) => reaches(lowestTemperature, coldest))) why.push('low temperature');
  return why;
}

function risksOfHole(
  work: Workbook,
  rows: readonly HighRiskLimits[],
  holeDiameter: Length,
  outsideDiameter: Length,
): string[] {
  const { recorder, case: repairCase } = work;
  const pressure = repairCase.service.designPressure;
  const severity = step(recorder, 'laminate/leak-severity', leakSeverity, { pressure, holeDiameter });
  const hole = { holeDiameter, outsideDiameter };
  const share = step(recorder, 'laminate/hole-over-diameter', holeOverDiameter, hole);
  const why: string[] = [];
  if (rows.some((limits) => severity > limits.leakSeverity)) why.push('leak severity');
  if (rows.some((limits) => share > limits.holeOverDiameter)) why.push('size of the hole');
  return why;
}
