import type { Amount, Length, Time } from '../../quantity/index.js';
import { mixingRatioError } from '../../resin/index.js';
import { steelMargin, surfaceGate } from '../../site/index.js';
import type { Designed } from '../design/design.js';
import type { AcceptanceDesign, SiteDesign } from '../design/design-work.js';
import { coldestForCure } from '../site/site.js';
import type { Rated } from './rating.js';
import type { AsBuiltPoint, AsBuiltPointName, AsBuiltRecord, BatchRecord } from './record.js';

/** A design with all that a repair is compared with. */
export interface Design extends Rated {
  readonly site: SiteDesign;
  readonly acceptance: AcceptanceDesign;
}

/** What the record does not say. */
export function notShown(point: AsBuiltPointName, text: string): AsBuiltPoint {
  return { point, verdict: 'not shown', text };
}

/** A number that has to reach its limit; a reading of exactly the limit does. */
export function reaching(point: AsBuiltPointName, found: Amount, least: number): AsBuiltPoint {
  const limit = { ...found, name: `least ${found.name}`, value: least };
  if (found.value >= least * (1 - 1e-9))
    return { point, verdict: 'meets', text: `the ${found.name} is enough`, found, limit };
  const shortfall = { ...found, name: `${found.name} short`, value: least - found.value };
  return { point, verdict: 'does not meet', text: `the ${found.name} falls short`, found, limit, shortfall };
}

export function lengthPoint(
  point: 'thickness' | 'length' | 'overlap',
  value: Length | undefined,
  least: number,
): AsBuiltPoint {
  if (value === undefined) return notShown(point, `the ${point} was not measured`);
  return reaching(point, { name: point, kind: 'length', value }, least);
}

export function layerPoint({ laminate }: Design, { layers }: AsBuiltRecord): AsBuiltPoint {
  if (layers === undefined) return notShown('layers', 'the layers were not counted');
  return reaching('layers', { name: 'number of layers', kind: 'count', value: layers }, laminate.plies);
}

export function steelPoint({ site }: Design, { steel }: AsBuiltRecord): AsBuiltPoint {
  if (steel === undefined) return notShown('steel', 'the prepared steel was not recorded');
  const { decision, reasons } = surfaceGate({
    ...steel,
    requiredGrade: site.requiredGrade,
    requiredProfile: site.requiredProfile,
    openTime: OPEN_TIME,
  });
  const against = reasons.filter((reason) => reason.decision !== 'go').map(({ because }) => because);
  const profile = reaching('steel', { name: 'profile', kind: 'length', value: steel.profile }, site.requiredProfile);
  if (decision === 'go') return { ...profile, text: 'grade, profile, cleanness and freshness as required' };
  return { ...profile, verdict: 'does not meet', text: against.join('; ') };
}

/** From preparation to the first resin: common practice. */
const OPEN_TIME = 14_400 as Time;

export function climatePoint({ design }: Design, { climate = [] }: AsBuiltRecord): AsBuiltPoint {
  if (climate.length === 0) return notShown('climate', 'air and steel were not read');
  const { instruments } = design.case.site;
  const coldest = coldestForCure(design.case);
  const errors = instruments === undefined ? {} : { steelError: instruments.temperatureError, ...instruments };
  const margins = climate.map(({ steelTemperature, airTemperature, relativeHumidity: humidity }) =>
    steelMargin({ steelTemperature, airTemperature, humidity, ...errors }),
  );
  const value = Math.min(...margins.map(({ worstMargin }) => worstMargin));
  const point = reaching('climate', { name: 'margin to the dew point', kind: 'temperature difference', value }, 3);
  const wet = climate.some(({ relativeHumidity }) => relativeHumidity > 0.85);
  const cold = climate.some(({ steelTemperature }) => steelTemperature < coldest);
  const faults = [
    ...(point.verdict === 'meets' ? [] : [point.text]),
    ...(wet ? ['the air was above 85 %'] : []),
    ...(cold ? ['the steel was colder than the resin cures'] : []),
  ];
  return faults.length === 0 ? point : { ...point, verdict: 'does not meet', text: faults.join('; ') };
}

export function batchPoint({ design }: Design, { batches = [] }: AsBuiltRecord): AsBuiltPoint {
  const planned = mixesOf(design);
  if (planned.length === 0) return { point: 'batches', verdict: 'meets', text: 'nothing is mixed on site' };
  const missing = planned.filter((use) => !batches.some((batch) => batch.use === use));
  const faults = batches.flatMap((batch) => batchFaults(design, batch));
  if (faults.length > 0) return { point: 'batches', verdict: 'does not meet', text: faults.join('; ') };
  if (missing.length > 0) return notShown('batches', `no batch of ${missing.join(' and ')} was recorded`);
  const nameless = batches.filter(({ number }) => number.trim() === '').length;
  if (nameless > 0) return notShown('batches', `${nameless} of ${batches.length} batches have no number`);
  return {
    point: 'batches',
    verdict: 'meets',
    text: `${batches.length} batches in their ratio and their working time`,
  };
}

/** Parts of a mix may be off by this much: common practice. */
const RATIO_TOLERANCE = 0.05;

function mixesOf({ mixes: { filler, laminateResin } }: Designed): BatchRecord['use'][] {
  const uses: BatchRecord['use'][] = [];
  if (filler !== 'none') uses.push('filler');
  if (laminateResin !== 'none') uses.push('laminate resin');
  return uses;
}

function batchFaults(design: Designed, batch: BatchRecord): string[] {
  const { filler, resin } = design.case;
  const { cures } = design;
  const mixed = batch.use === 'filler' ? filler : resin;
  const called = `batch ${batch.number.trim() === '' ? 'without a number' : batch.number}`;
  if (mixed === 'none' || !mixesOf(design).includes(batch.use)) return [`${called}: the design has no ${batch.use}`];
  const { base: partsA, hardener: partsB } = mixed.parts;
  const off = mixingRatioError({ massA: batch.base, massB: batch.hardener, partsA, partsB }) - 1;
  const times = batch.use === 'filler' ? cures.filler : cures.laminate;
  const over = times === 'none' ? 0 : batch.usedWithin - times.workingTime;
  return [
    ...(Math.abs(off) > RATIO_TOLERANCE * (1 + 1e-9)
      ? [`${called}: hardener ${off > 0 ? 'over' : 'under'} by ${(Math.abs(off) * 100).toFixed(1)} %`]
      : []),
    ...(over > 0 ? [`${called}: ${Math.ceil(over / 60)} min beyond its working time`] : []),
  ];
}
