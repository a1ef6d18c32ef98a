import { atLeast, nonNegative, positive, refuse, wholeNumber } from '../../formula/index.js';
import { isDay } from '../../quantity/clock.js';
import type { Designed, RepairDesign } from '../design/design.js';
import { acceptancePoints, curePoint, firmPoint } from './acceptance.js';
import { batchPoint } from './batches.js';
import { crackTestPoint } from './crack-test.js';
import { fillerAgePoint } from './filler-age.js';
import { checkKeys } from './known-keys.js';
import { linePoint } from './line.js';
import { lossPoints } from './loss.js';
import { climatePoint, layerPoint, lengthPoint, overlapPoint, steelPoint, thicknessPoint } from './points.js';
import { rateAsBuilt } from './rating.js';
import type { AsBuiltComparison, AsBuiltPointName, AsBuiltRecord } from './record.js';
import { sealPoints } from './seal.js';
import { signaturePoint } from './signatures.js';
import { openingPoints, wallPoint } from './survey.js';
import { witnessPoint } from './witness.js';
import { worst } from './worst.js';
import { checkYesOrNo } from './yes-or-no.js';

/**
 * Compares a repair as it was made with its design, hold point by hold point. Where it is too thin or too short and nothing
 * else is against it, says which pressure it is good for.
 *
 * @param design a design that was made
 * @param record what was measured while it was carried out; what is left out counts as not shown
 * @throws CalculationError `invalid-input` for a design that was not made, or numbers that can never be right
 */
export function compareAsBuilt(design: RepairDesign, record: AsBuiltRecord): AsBuiltComparison {
  checkDesigned(design);
  checkKeys(record);
  checkRecord(record);
  checkYesOrNo(record);
  const points = [
    linePoint(design, record),
    wallPoint(design, record),
    ...crackTestPoint(design, record),
    ...lossPoints(design, record),
    ...openingPoints(design, record),
    ...sealPoints(design, record),
    steelPoint(design, record),
    climatePoint(design, record),
    batchPoint(design, record),
    ...witnessPoint(design, record),
    ...firmPoint(design, record),
    ...fillerAgePoint(design, record),
    layerPoint(design, record),
    thicknessPoint(design, record),
    lengthPoint(design, record),
    overlapPoint(design, record),
    curePoint(design, record),
    ...acceptancePoints(design, record),
    signaturePoint(design, record),
  ];
  const verdict = worst(points);
  const isShort = points.some((point) => DIMENSIONS.includes(point.point) && point.verdict === 'does not meet');
  if (!isShort) return { verdict, points };
  const others = points.filter((point) => !JUDGED_BY_RATING.includes(point.point) && point.verdict !== 'meets');
  return { verdict, points, goodFor: rateAsBuilt(design, record, others) };
}

/** What a rating can make up for; whatever else is against a repair, no pressure makes it good. */
const DIMENSIONS: readonly AsBuiltPointName[] = ['layers', 'thickness', 'length', 'overlap'];

/** What is thinner or shorter is tested at less. */
const JUDGED_BY_RATING: readonly AsBuiltPointName[] = [...DIMENSIONS, 'pressure test'];

function checkDesigned(design: RepairDesign): asserts design is Designed {
  if (design.verdict === 'designed') return;
  refuse({
    code: 'invalid-input',
    parameter: 'design.verdict',
    value: design.verdict,
    unit: '',
    constraint: 'must be designed: there is nothing to compare with',
  });
}

/** The thickness of a ply is checked where the least thickness is counted from it. */
function checkRecord({
  layers,
  thickness,
  length,
  leastOverlap,
  batches = [],
  steel,
  survey,
  pressureTest,
  line,
  laidOn,
  inspection,
}: AsBuiltRecord): void {
  if (line !== undefined) nonNegative(line.highestPressure, 'line.highestPressure', 'Pa');
  checkDay(laidOn, 'laidOn');
  if (inspection !== undefined && !Array.isArray(inspection.findings)) refuseFindings(inspection.findings);
  if (layers !== undefined) wholeNumber(layers, 1, 'layers');
  if (thickness !== undefined) positive(thickness, 'thickness', 'm');
  if (length !== undefined) positive(length, 'length', 'm');
  if (leastOverlap !== undefined) nonNegative(leastOverlap, 'leastOverlap', 'm');
  if (survey !== undefined) nonNegative(survey.leastWall, 'survey.leastWall', 'm');
  if (survey?.axialLength !== undefined) positive(survey.axialLength, 'survey.axialLength', 'm');
  if (survey?.circumferentialWidth !== undefined)
    positive(survey.circumferentialWidth, 'survey.circumferentialWidth', 'm');
  if (survey?.hole !== undefined) nonNegative(survey.hole, 'survey.hole', 'm');
  if (survey?.slot !== undefined) {
    nonNegative(survey.slot.axialLength, 'survey.slot.axialLength', 'm');
    nonNegative(survey.slot.circumferentialWidth, 'survey.slot.circumferentialWidth', 'm');
  }
  if (pressureTest?.highestPressure !== undefined) {
    const { highestPressure, lowestPressure } = pressureTest;
    nonNegative(lowestPressure, 'pressureTest.lowestPressure', 'Pa');
    atLeast(highestPressure, lowestPressure, 'the lowest pressure', 'pressureTest.highestPressure', 'Pa');
  }
  steel?.salts?.forEach((reading, index) => {
    nonNegative(reading, `steel.salts[${index}]`, 'kg/m2');
  });
  batches.forEach(({ base, hardener, usedWithin, useBefore, mixedOn, witnessHardness }, index) => {
    positive(base, `batches[${index}].base`, 'kg');
    positive(hardener, `batches[${index}].hardener`, 'kg');
    nonNegative(usedWithin, `batches[${index}].usedWithin`, 's');
    if (witnessHardness !== undefined) nonNegative(witnessHardness, `batches[${index}].witnessHardness`, '');
    checkDay(useBefore, `batches[${index}].useBefore`);
    checkDay(mixedOn, `batches[${index}].mixedOn`);
  });
}

function refuseFindings(value: unknown): never {
  const constraint = 'must be a list: an empty one where nothing was found';
  refuse({ code: 'invalid-input', parameter: 'inspection.findings', value: String(value), unit: '', constraint });
}

/** Days are compared as text, which orders them only in this form. */
function checkDay(day: string | undefined, parameter: string): void {
  if (day === undefined || isDay(day)) return;
  refuse({ code: 'invalid-input', parameter, value: day, unit: '', constraint: 'must be a day such as 2026-06-30' });
}
