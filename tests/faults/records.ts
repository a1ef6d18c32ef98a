import {
  type AsBuiltPointName,
  type AsBuiltRecord,
  type AsBuiltVerdict,
  compareAsBuilt,
  type RepairDesign,
} from '../../src/repair/index.js';
import { type Paths, withPaths } from './cases.js';

const HOUR = 3600;

/**
 * What was measured on a repair that meets its design in everything, in SI. `useBefore` of a batch and `salts` of the steel are
 * proposals: the record of today does not know them and passes them by.
 */
export function goodRecord(design: RepairDesign): AsBuiltRecord {
  const { laminate, extent, acceptance, mixes } = design;
  if (laminate === undefined || extent === undefined || acceptance === undefined) throw new Error(design.verdict);
  const batches = mixes.flatMap(({ use, base, hardener, batches: count }) =>
    Array.from({ length: count }, (_, index) => ({
      number: `${use} ${index + 1}`,
      use,
      base,
      hardener,
      usedWithin: HOUR / 12,
      useBefore: '2027-06-01',
    })),
  );
  const record: object = {
    steel: {
      grade: 'Sa 2 1/2',
      profile: 80e-6,
      isFreeOfOil: true,
      hasRustBloom: false,
      sincePreparation: HOUR,
      salts: 8e-6,
    },
    climate: [{ steelTemperature: 298.15, airTemperature: 297.15, relativeHumidity: 0.5 }],
    batches,
    fillerWasFirm: true,
    layers: laminate.plies,
    thickness: laminate.laidThickness,
    length: extent.totalLength,
    leastOverlap: extent.overlap.value,
    cure: [{ duration: 60 * HOUR, temperature: 298.15 }],
    hardness: { readings: [82, 82, 82, 82, 82], hasStopped: true },
    inspection: { findings: [], bondMethods: ['tap test', 'ultrasonic'] },
    pressureTest: { lowestPressure: acceptance.pressureTest.pressure, hold: HOUR, leak: 'none', fall: 'none' },
  };
  return record as AsBuiltRecord;
}

/** A good record with some of it changed, against its design. */
export const compared = (design: RepairDesign, changes: Paths = {}) =>
  compareAsBuilt(design, withPaths(goodRecord(design), changes));

/** What one hold point says. */
export function pointOf(design: RepairDesign, changes: Paths, name: AsBuiltPointName): AsBuiltVerdict {
  const point = compared(design, changes).points.find((each) => each.point === name);
  if (point === undefined) throw new Error(`no point ${name}`);
  return point.verdict;
}

/** The pressure that a record is rated for, in bar. */
export function barRatedFor(design: RepairDesign, changes: Paths): number | undefined {
  const pressure = compared(design, changes).goodFor?.pressure;
  return pressure === undefined ? undefined : pressure / 1e5;
}
