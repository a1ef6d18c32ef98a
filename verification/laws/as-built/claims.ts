import type { GaugePressure } from '../../../src/quantity/index.js';
import type { AsBuiltComparison, AsBuiltRecord, Designed } from '../../../src/repair/index.js';
import { compareAsBuilt } from '../../../src/repair/index.js';
import { type Paths, withPaths } from '../../../tests/faults/cases.js';
import { goodRecord } from '../../../tests/faults/records.js';
import { reaches } from '../claims/stated.js';

/** What a verdict on a finished repair rests on. */

/** What a record lacks that meets; nothing where it lacks nothing. */
export function unfounded(
  design: Designed,
  record: AsBuiltRecord,
  { verdict, points, goodFor }: AsBuiltComparison,
): string | undefined {
  const { laminate, extent, case: stated } = design;
  const met = (name: string): boolean => points.find(({ point }) => point === name)?.verdict === 'meets';
  const ply = record.plyThickness ?? stated.laminate.plyThickness;
  const least = Math.max(laminate.thickness.value, laminate.leastPlies * ply);
  const inLayers = (record.layers ?? Number.POSITIVE_INFINITY) * ply;
  const inFibre = (record.thickness ?? 0) - (record.inspection?.resinRichThickness ?? 0);
  if (met('thickness') && !reaches((record.thickness ?? 0) * (1 + 1e-9), least))
    return 'a thickness below the least meets';
  if (met('thickness') && !reaches(inFibre * (1 + 1e-9), least)) return 'a thickness of resin meets';
  if (met('layers') && met('thickness') && !reaches(inLayers * (1 + 1e-9), laminate.thickness.value))
    return 'a thickness meets that the layers do not have';
  if (met('layers') && (record.layers ?? 0) < laminate.plies) return 'fewer layers than planned meet';
  if (met('length') && !reaches(record.length ?? 0, extent.totalLength)) return 'a shorter laminate meets';
  if (met('overlap') && !reaches(record.leastOverlap ?? 0, extent.overlap.value)) return 'a shorter overlap meets';
  if (verdict === 'meets' && points.some((point) => point.verdict !== 'meets'))
    return 'a repair meets and one of its points does not';
  if (goodFor?.pressure === undefined) return undefined;
  if (record.thickness === undefined || record.layers === undefined || record.leastOverlap === undefined)
    return 'what nobody measured is good for a pressure';
  const { pressureTest: made } = record;
  const { medium } = design.acceptance.pressureTest;
  if ((medium === 'liquid' || medium === 'gas') && !reaches(made?.lowestPressure ?? 0, goodFor.pressure))
    return 'a repair is good for more than it was tested at';
  return goodFor.pressure <= stated.service.designPressure * (1 + 1e-9)
    ? undefined
    : 'a repair is good for more than it was designed for';
}

/** What spoils a repair whatever its thickness, or leaves it not shown. */
const SPOILT: Readonly<Record<string, (design: Designed) => Paths>> = {
  'a laminate that stays soft': () => ({ 'hardness.readings': [40, 40, 40, 40, 40] }),
  'a leak under test': () => ({ 'pressureTest.leak': 'at the repair' }),
  'dry fibre': () => ({ 'inspection.findings': [{ feature: 'dry fibre' }] }),
  'oil on the steel': () => ({ 'steel.isFreeOfOil': false }),
  'a wall thinner than surveyed': ({ case: { defect } }) => ({ 'survey.leastWall': defect.remainingWall * 0.9 }),
  'a loss longer than surveyed': ({ case: { defect } }) => ({ 'survey.axialLength': defect.axialLength * 1.01 }),
  'a loss wider than surveyed': ({ case: { defect } }) => ({
    'survey.circumferentialWidth': defect.circumferentialWidth * 1.01,
  }),
  'a hole larger than surveyed': ({ case: { defect } }) => ({ 'survey.hole': (defect.holeDiameter ?? 0) + 1e-3 }),
  'no expiry on a batch': (design) => (mixes(design) ? { 'batches.0.useBefore': undefined } : {}),
  'no day of mixing': (design) => (mixes(design) ? { 'batches.0.mixedOn': undefined } : {}),
  'a hundredth of the mass': (design) => (mixes(design) ? tiny(design) : {}),
  'salts that nobody measured': () => ({ 'steel.salts': undefined }),
  'a cure hotter than tested': () => ({ cure: [{ duration: 2e6, temperature: 373.15 }] }),
  'a cure of an hour': () => ({ cure: [{ duration: 3600, temperature: 298.15 }] }),
  'no signature': () => ({ signed: undefined }),
  'a soft putty': (design) => (design.seal === 'none' ? {} : { 'seal.puttyWasFirm': false }),
  'a seal that wept': (design) => (design.seal === 'none' ? {} : { 'seal.heldDry': false }),
  'bands under the wrap': ({ seal, case: stated }) =>
    seal === 'none' || stated.seal?.bands === 'left' ? {} : { 'seal.bandsWereRemoved': false },
  'a test at three times its pressure': ({ acceptance: { pressureTest } }) =>
    pressureTest.medium === 'none' || pressureTest.medium === 'not stated'
      ? {}
      : {
          'pressureTest.lowestPressure': pressureTest.pressure * 3,
          'pressureTest.highestPressure': pressureTest.pressure * 3,
        },
};

const mixes = (design: Designed): boolean => design.mixes.filler !== 'none' || design.mixes.laminateResin !== 'none';

function tiny(design: Designed): Paths {
  const { batches = [] } = goodRecord(design);
  return { batches: batches.map((batch) => ({ ...batch, base: batch.base / 100, hardener: batch.hardener / 100 })) };
}

/** Resin without fibre takes from a rating what it takes from the thickness. */
export function resinThatHolds(design: Designed, record: AsBuiltRecord): string | undefined {
  const { thickness = 0, inspection } = record;
  const { resinRichThickness: rich = 0 } = inspection ?? {};
  const rated = compareAsBuilt(design, record).goodFor?.pressure;
  if (rated === undefined || rich === 0) return undefined;
  const fibre = thickness - rich;
  const without = { thickness: fibre, 'inspection.resinRichThickness': undefined };
  const least = fibre > 0 ? (compareAsBuilt(design, withPaths(record, without)).goodFor?.pressure ?? 0) : 0;
  return rated > least * (1 + 1e-9) ? `resin without fibre holds: ${rated} Pa for ${least}` : undefined;
}

/** Tested at a share of the pressure that it was tested at: what is thinner or shorter does not bear the whole of it. */
export function testedAt(record: AsBuiltRecord, share: number): AsBuiltRecord {
  const { pressureTest: made } = record;
  if (made === undefined) return record;
  const pressure = (made.lowestPressure * share) as GaugePressure;
  return { ...record, pressureTest: { ...made, lowestPressure: pressure, highestPressure: pressure } };
}

/** What a spoilt repair is still said to be; one of them, by a draw. */
export function spoiltRecords(design: Designed, draw: number): string | undefined {
  const names = Object.keys(SPOILT);
  const name = names[Math.floor(draw * names.length)] ?? '';
  const changes = SPOILT[name]?.(design) ?? {};
  if (Object.keys(changes).length === 0) return undefined;
  const good = goodRecord(design);
  if (compareAsBuilt(design, withPaths(good, changes)).verdict === 'meets') return `${name} meets`;
  const thin = testedAt({ ...good, thickness: (design.laminate.laidThickness * 0.9) as never }, 0.3);
  const rated = compareAsBuilt(design, withPaths(thin, changes)).goodFor?.pressure;
  return rated === undefined ? undefined : `${name} is good for ${rated} Pa`;
}
