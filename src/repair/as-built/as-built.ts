import { nonNegative, positive, refuse, wholeNumber } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';
import type { RepairDesign } from '../design/design.js';
import { acceptancePoints, curePoint, firmPoint } from './acceptance.js';
import { batchPoint, climatePoint, type Design, layerPoint, lengthPoint, steelPoint } from './points.js';
import { rateAsBuilt } from './rating.js';
import type { AsBuiltComparison, AsBuiltRecord, AsBuiltVerdict } from './record.js';

/**
 * Compares a repair as it was made with its design, hold point by hold point. Where it is too thin or too short, says which
 * pressure it is good for.
 *
 * @throws CalculationError `invalid-input` for a design that was not made, or numbers that can never be right
 */
export function compareAsBuilt(design: RepairDesign, record: AsBuiltRecord): AsBuiltComparison {
  const made = parts(design);
  checkRecord(record);
  const points = [
    steelPoint(made, record),
    climatePoint(made, record),
    batchPoint(made, record),
    ...firmPoint(made, record),
    layerPoint(made, record),
    lengthPoint('thickness', record.thickness, made.laminate.thickness.value),
    lengthPoint('length', record.length, made.extent.totalLength),
    lengthPoint('overlap', record.leastOverlap, made.extent.overlap.value),
    curePoint(made, record),
    ...acceptancePoints(made, record),
  ];
  const short = points.filter(
    ({ point, verdict }) => ['layers', 'thickness', 'length', 'overlap'].includes(point) && verdict === 'does not meet',
  );
  return {
    verdict: worst(points),
    points,
    ...(short.length === 0 ? {} : { goodFor: rateAsBuilt(made, laidBy(made, record)) }),
  };
}

function parts(design: RepairDesign): Design {
  if (design.verdict !== 'designed') {
    refuse({
      code: 'invalid-input',
      parameter: 'design.verdict',
      value: design.verdict,
      unit: '',
      constraint: 'must be designed: there is nothing to compare with',
    });
  }
  const { found, laminate, extent, site, acceptance } = design;
  return { design, found, laminate, extent, site, acceptance };
}

function checkRecord({ layers, thickness, length, leastOverlap, batches = [] }: AsBuiltRecord): void {
  if (layers !== undefined) wholeNumber(layers, 1, 'layers');
  if (thickness !== undefined) positive(thickness, 'thickness', 'm');
  if (length !== undefined) positive(length, 'length', 'm');
  if (leastOverlap !== undefined) nonNegative(leastOverlap, 'leastOverlap', 'm');
  batches.forEach(({ base, hardener, usedWithin }, index) => {
    positive(base, `batches[${index}].base`, 'kg');
    positive(hardener, `batches[${index}].hardener`, 'kg');
    nonNegative(usedWithin, `batches[${index}].usedWithin`, 's');
  });
}

const ORDER: readonly AsBuiltVerdict[] = ['meets', 'not shown', 'does not meet'];

function worst(points: readonly { readonly verdict: AsBuiltVerdict }[]): AsBuiltVerdict {
  return ORDER[Math.max(0, ...points.map(({ verdict }) => ORDER.indexOf(verdict)))] ?? 'does not meet';
}

/** What lies on the pipe, on the safe side: the thinner of what was measured and of the layers that were counted. */
function laidBy({ design, laminate, extent }: Design, record: AsBuiltRecord) {
  const { layers, thickness, length, leastOverlap } = record;
  const { plyThickness } = design.case.laminate;
  const byLayers = layers === undefined ? laminate.laidThickness : layers * plyThickness;
  const { defectLength, taper, overlap } = extent;
  const byLength = length === undefined ? overlap.value : (length - defectLength - 2 * taper) / 2;
  return {
    thickness: Math.min(byLayers, thickness ?? byLayers) as Length,
    overlap: Math.max(0, Math.min(byLength, leastOverlap ?? byLength)) as Length,
  };
}
