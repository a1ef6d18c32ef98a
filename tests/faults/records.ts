import { arealWeight, length, ratio, temperature, time } from '../../src/quantity/index.js';
import {
  type AsBuiltPointName,
  type AsBuiltRecord,
  type AsBuiltVerdict,
  type BatchRecord,
  compareAsBuilt,
  type Designed,
  type MixDesign,
} from '../../src/repair/index.js';
import { type Paths, withPaths } from './cases.js';

/** What was measured on a repair that meets its design in everything: every batch of a mix was mixed, each as planned. */
export function goodRecord(design: Designed): AsBuiltRecord {
  const day = dayOf(design);
  const { laminate, extent, acceptance, mixes, timeline, case: repairCase } = design;
  const { pressure } = acceptance.pressureTest;
  return {
    line: { highestPressure: design.line.pressure },
    survey: {
      leastWall: repairCase.defect.remainingWall,
      axialLength: repairCase.defect.axialLength,
      circumferentialWidth: repairCase.defect.circumferentialWidth,
      hole: repairCase.defect.holeDiameter,
      slot: repairCase.defect.slot,
    },
    ...(design.seal === 'none' ? {} : { seal: { heldDry: true, puttyWasFirm: true, bandsWereRemoved: true } }),
    steel: {
      grade: 'Sa 2 1/2',
      profile: length.um(80),
      isFreeOfOil: true,
      hasRustBloom: false,
      sincePreparation: time.hour(1),
      salts: [arealWeight.gPerM2(0.008)],
    },
    climate: [
      {
        steelTemperature: temperature.degC(25),
        airTemperature: temperature.degC(24),
        relativeHumidity: ratio.percent(50),
      },
    ],
    batches: [...batchesOf('filler', mixes.filler, day), ...batchesOf('laminate resin', mixes.laminateResin, day)],
    fillerWasFirm: true,
    laidOn: day,
    layers: laminate.plies,
    thickness: laminate.laidThickness,
    length: extent.totalLength,
    leastOverlap: extent.overlap.value,
    cure: [{ duration: time.hour(60), temperature: temperature.degC(25) }],
    hardness: { scale: acceptance.hardness?.scale ?? 'Shore D', readings: [82, 82, 82, 82, 82], hasStopped: true },
    inspection: { findings: [], bondMethods: ['tap test', 'ultrasonic'] },
    pressureTest: {
      ...{ lowestPressure: pressure, highestPressure: pressure },
      ...{ hold: time.hour(1), leak: 'none', fall: 'none' },
    },
    signed: timeline.steps.map(({ id }) => ({ holdPoint: id, by: 'A. Inspector' })),
  };
}

/** The first of June, or the day of a later survey. */
function dayOf({ case: { date = '' } }: Designed): string {
  return date > '2026-06-01' ? date : '2026-06-01';
}

/** Every batch of a mix, as the design has it weighed. */
function batchesOf(use: BatchRecord['use'], mix: MixDesign | 'none', day: string): BatchRecord[] {
  if (mix === 'none') return [];
  const { base, hardener, batches } = mix;
  return Array.from({ length: batches }, (_, index) => ({
    ...{ number: `${use} ${index + 1}`, useBefore: '2027-06-01', mixedOn: day },
    ...{ use, base, hardener, usedWithin: time.minute(5) },
    ...(use === 'laminate resin' ? { witnessHardness: 82 } : {}),
  }));
}

/** A good record with some of it changed, against its design. */
export const compared = (design: Designed, changes: Paths = {}) =>
  compareAsBuilt(design, withPaths(goodRecord(design), changes));

/** What one hold point says. */
export function pointOf(design: Designed, changes: Paths, name: AsBuiltPointName): AsBuiltVerdict {
  const point = compared(design, changes).points.find((each) => each.point === name);
  if (point === undefined) throw new Error(`no point ${name}`);
  return point.verdict;
}

/** The pressure that a record is rated for, in bar. */
export function barRatedFor(design: Designed, changes: Paths): number | undefined {
  const pressure = compared(design, changes).goodFor?.pressure;
  return pressure === undefined ? undefined : pressure / 1e5;
}
