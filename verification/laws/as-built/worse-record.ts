import type { Length, Ratio, Temperature, Time } from '../../../src/quantity/index.js';
import { type AsBuiltRecord, type AsBuiltVerdict, compareAsBuilt, type Designed } from '../../../src/repair/index.js';
import { goodRecord } from '../../../tests/faults/records.js';
import type { Random } from '../../oracles/random.js';
import { resinThatHolds, spoiltRecords, testedAt, unfounded } from './claims.js';

/** Records of the finished repair, and ways in which one gets worse by a factor above 1. */

type Worse = (record: AsBuiltRecord, factor: number) => AsBuiltRecord;

const shrink = <T extends number>(value: T | undefined, factor: number): T | undefined =>
  value === undefined ? undefined : ((value / factor) as T);
const colder = (T: number, factor: number): Temperature => (T - 10 * (factor - 1)) as Temperature;

/** What nobody wrote down shows nothing: it may unsay that too little was mixed, and never that something is not shown. */
const LOST: readonly string[] = [
  'a batch that nobody wrote down',
  'a thickness that nobody measured',
  'layers that nobody counted',
];

/** Of a survey that measured the loss. */
const larger =
  (extent: 'axialLength' | 'circumferentialWidth'): Worse =>
  (r, f) =>
    r.survey?.[extent] === undefined
      ? r
      : { ...r, survey: { ...r.survey, [extent]: (r.survey[extent] * f) as Length } };

const worse: Readonly<Record<string, Worse>> = {
  'a longer loss': larger('axialLength'),
  'a wider loss': larger('circumferentialWidth'),
  'fewer layers': (r, f) => ({ ...r, layers: Math.max(1, Math.floor((r.layers ?? 1) / f)) }),
  thinner: (r, f) => ({ ...r, thickness: shrink(r.thickness, f) }),
  'more of it resin without fibre': (r, f) => {
    const { inspection } = r;
    if (inspection === undefined) return r;
    const { resinRichThickness: rich = 0 } = inspection;
    return { ...r, inspection: { ...inspection, resinRichThickness: (rich + 1e-2 * (f - 1)) as Length } };
  },
  // Not so thin that it contradicts what was measured of the whole, nor where it explains why that is thin.
  'a thinner ply on its witness': (r, f) => {
    const { plyThickness: ply, thickness, layers, inspection } = r;
    if (ply === undefined || thickness === undefined || layers === undefined) return r;
    if (thickness - (inspection?.resinRichThickness ?? 0) < (1 - 1e-9) * layers * ply) return r;
    return { ...r, plyThickness: Math.min(ply, Math.max(ply / f, thickness / (1.2 * layers))) as Length };
  },
  shorter: (r, f) => ({ ...r, length: shrink(r.length, f) }),
  'less overlap': (r, f) => ({ ...r, leastOverlap: shrink(r.leastOverlap, f) }),
  'a shorter cure': (r, f) => ({ ...r, cure: r.cure?.map((c) => ({ ...c, duration: (c.duration / f) as Time })) }),
  'a colder cure': (r, f) => ({ ...r, cure: r.cure?.map((c) => ({ ...c, temperature: colder(c.temperature, f) })) }),
  softer: (r, f) =>
    r.hardness === undefined
      ? r
      : { ...r, hardness: { ...r.hardness, readings: r.hardness.readings.map((reading) => reading / f) } },
  'a batch that nobody wrote down': (r) => ({ ...r, batches: r.batches?.slice(1) }),
  'resin used later': (r, f) => ({
    ...r,
    batches: r.batches?.map((batch) => ({ ...batch, usedWithin: (batch.usedWithin * f ** 6) as Time })),
  }),
  'damper air': (r, f) => ({
    ...r,
    climate: r.climate?.map((c) => ({ ...c, relativeHumidity: Math.min(1, c.relativeHumidity * f) as Ratio })),
  }),
  'colder steel': (r, f) => ({
    ...r,
    climate: r.climate?.map((c) => ({ ...c, steelTemperature: colder(c.steelTemperature, f) })),
  }),
  'a smoother surface': (r, f) =>
    r.steel === undefined ? r : { ...r, steel: { ...r.steel, profile: (r.steel.profile / f) as Length } },
  'an older surface': (r, f) =>
    r.steel === undefined
      ? r
      : { ...r, steel: { ...r.steel, sincePreparation: (r.steel.sincePreparation * f ** 6) as Time } },
  'a thickness that nobody measured': ({ thickness: _, ...r }) => r,
  'layers that nobody counted': ({ layers: _, ...r }) => r,
  'a lower test': (r, f) =>
    r.pressureTest === undefined
      ? r
      : { ...r, pressureTest: { ...r.pressureTest, lowestPressure: (r.pressureTest.lowestPressure / f) as never } },
  'a higher test': (r, f) => {
    const { pressureTest: made } = r;
    if (made?.highestPressure === undefined) return r;
    return { ...r, pressureTest: { ...made, highestPressure: (made.highestPressure * f) as never } };
  },
  'a shorter test': (r, f) =>
    r.pressureTest === undefined
      ? r
      : { ...r, pressureTest: { ...r.pressureTest, hold: (r.pressureTest.hold / f) as Time } },
};

const asBuiltWorsenings: readonly string[] = Object.keys(worse);

const RANK: Readonly<Record<AsBuiltVerdict, number>> = { meets: 0, 'not shown': 1, 'does not meet': 2 };

/** In what a worse record does better against its design; nothing where it does not. Both stand on a record drawn before. */
export function betterAsBuilt(design: Designed, random: Random): { readonly by: string; readonly what?: string } {
  const good = { ...goodRecord(design), plyThickness: design.case.laminate.plyThickness };
  let record = random() < 0.5 ? good : testedAt(good, random());
  const pick = (): string => asBuiltWorsenings[Math.floor(random() * asBuiltWorsenings.length)] ?? '';
  const apply = (name: string): AsBuiltRecord => worse[name]?.(record, 1 + 0.5 * random() ** 2) ?? record;
  for (let i = Math.floor(random() * 3); i > 0; i--) record = apply(pick());
  const by = pick();
  const changed = apply(by);
  const [before, after] = [compareAsBuilt(design, record), compareAsBuilt(design, changed)];
  const rankOf = (verdict: AsBuiltVerdict): number => (LOST.includes(by) ? Math.min(1, RANK[verdict]) : RANK[verdict]);
  if (rankOf(after.verdict) < rankOf(before.verdict))
    return { by, what: `verdict: ${before.verdict} to ${after.verdict}` };
  for (const { point, verdict } of before.points) {
    const now = after.points.find((each) => each.point === point);
    // The thickness is held to the layers only where none is missing: else the layers say so, and the whole record does.
    if (point === 'thickness' && /layers/u.test(by)) continue;
    if (now !== undefined && rankOf(now.verdict) < rankOf(verdict))
      return { by, what: `${point}: ${verdict} to ${now.verdict}` };
  }
  const [was, is] = [before.goodFor?.pressure, after.goodFor?.pressure];
  if (was !== undefined && is !== undefined && is > was * (1 + 1e-9)) return { by, what: `pressure: ${was} to ${is}` };
  if (before.goodFor !== undefined && was === undefined && is !== undefined)
    return { by, what: `pressure: not known to ${is}` };
  const what = unfounded(design, changed, after) ?? resinThatHolds(design, changed) ?? spoiltRecords(design, random());
  return what === undefined ? { by } : { by, what };
}
