import { acceptRepair } from '../acceptance/index.js';
import { energiesOf } from '../cure/energy-bounds.js';
import { equivalentTime } from '../cure/index.js';
import { nonNegative, positive, refuse, wholeNumber } from '../formula/index.js';
import type { ActivationEnergy, Length, Time } from '../quantity/index.js';
import { mixingRatioError } from '../resin/index.js';
import { steelMargin, surfaceGate } from '../site/index.js';
import type { Amount } from './amount.js';
import { type Rated, rateAsBuilt } from './as-built-rating.js';
import type {
  AsBuiltComparison,
  AsBuiltPoint,
  AsBuiltPointName,
  AsBuiltRecord,
  AsBuiltVerdict,
  BatchRecord,
} from './as-built-record.js';
import type { RepairDesign } from './design.js';
import type { AcceptanceDesign, SiteDesign } from './design-work.js';
import { coldestForCure } from './site-stage.js';

interface Design extends Rated {
  readonly site: SiteDesign;
  readonly acceptance: AcceptanceDesign;
}

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
  const { asFound, laminate, extent, site, acceptance, verdict } = design;
  const whole =
    asFound !== undefined &&
    laminate !== undefined &&
    extent !== undefined &&
    site !== undefined &&
    acceptance !== undefined;
  if (verdict !== 'designed' || !whole) {
    refuse({
      code: 'invalid-input',
      parameter: 'design.verdict',
      value: verdict,
      unit: '',
      constraint: 'must be designed: there is nothing to compare with',
    });
  }
  return { design, found: asFound, laminate, extent, site, acceptance };
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

function notShown(point: AsBuiltPointName, text: string): AsBuiltPoint {
  return { point, verdict: 'not shown', text };
}

/** A number that has to reach its limit; a reading of exactly the limit does. */
function reaching(point: AsBuiltPointName, found: Amount, least: number): AsBuiltPoint {
  const limit = { ...found, name: `least ${found.name}`, value: least };
  if (found.value >= least * (1 - 1e-9))
    return { point, verdict: 'meets', text: `the ${found.name} is enough`, found, limit };
  const shortfall = { ...found, name: `${found.name} short`, value: least - found.value };
  return { point, verdict: 'does not meet', text: `the ${found.name} falls short`, found, limit, shortfall };
}

function lengthPoint(
  point: 'thickness' | 'length' | 'overlap',
  value: Length | undefined,
  least: number,
): AsBuiltPoint {
  if (value === undefined) return notShown(point, `the ${point} was not measured`);
  return reaching(point, { name: point, kind: 'length', value }, least);
}

function layerPoint({ laminate }: Design, { layers }: AsBuiltRecord): AsBuiltPoint {
  if (layers === undefined) return notShown('layers', 'the layers were not counted');
  return reaching('layers', { name: 'number of layers', kind: 'count', value: layers }, laminate.plies);
}

function steelPoint({ site }: Design, { steel }: AsBuiltRecord): AsBuiltPoint {
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

function climatePoint({ design }: Design, { climate = [] }: AsBuiltRecord): AsBuiltPoint {
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

function batchPoint({ design }: Design, { batches = [] }: AsBuiltRecord): AsBuiltPoint {
  if (design.mixes.length === 0) return { point: 'batches', verdict: 'meets', text: 'nothing is mixed on site' };
  const missing = design.mixes.filter(({ use }) => !batches.some((batch) => batch.use === use));
  const faults = batches.flatMap((batch) => batchFaults(design, batch));
  if (faults.length > 0) return { point: 'batches', verdict: 'does not meet', text: faults.join('; ') };
  if (missing.length > 0)
    return notShown('batches', `no batch of ${missing.map(({ use }) => use).join(' and ')} was recorded`);
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

function batchFaults({ case: repairCase, cures, mixes }: RepairDesign, batch: BatchRecord): string[] {
  const { filler, resin, laminate } = repairCase;
  const mixed = batch.use === 'filler' ? filler : resin;
  const name = batch.use === 'filler' ? (filler === 'none' ? '' : filler.name) : laminate.name;
  const called = `batch ${batch.number.trim() === '' ? 'without a number' : batch.number}`;
  if (mixed === 'none' || mixes.every(({ use }) => use !== batch.use))
    return [`${called}: the design has no ${batch.use}`];
  const { base: partsA, hardener: partsB } = mixed.parts;
  const off = mixingRatioError({ massA: batch.base, massB: batch.hardener, partsA, partsB }) - 1;
  const workingTime = cures.find(({ material }) => material === name)?.workingTime;
  const over = workingTime === undefined ? 0 : batch.usedWithin - workingTime;
  return [
    ...(Math.abs(off) > RATIO_TOLERANCE * (1 + 1e-9)
      ? [`${called}: hardener ${off > 0 ? 'over' : 'under'} by ${(Math.abs(off) * 100).toFixed(1)} %`]
      : []),
    ...(over > 0 ? [`${called}: ${Math.ceil(over / 60)} min beyond its working time`] : []),
  ];
}

function firmPoint({ design }: Design, { fillerWasFirm }: AsBuiltRecord): AsBuiltPoint[] {
  if (design.case.filler === 'none') return [];
  if (fillerWasFirm === undefined) return [notShown('filler firm', 'nobody recorded that the filler took no print')];
  const text = fillerWasFirm ? 'the filler took no print' : 'the filler still took a print when the wrap began';
  return [{ point: 'filler firm', verdict: fillerWasFirm ? 'meets' : 'does not meet', text }];
}

/** The hours of the steel as hours at the maker's temperature, by the energy that credits least. */
function curePoint({ design }: Design, { cure: steps }: AsBuiltRecord): AsBuiltPoint {
  const { cure } = design.case.laminate;
  if (steps === undefined || steps.length === 0)
    return notShown('cure', 'the temperature over the cure was not recorded');
  if (cure.mechanism === 'moisture') {
    const wait = design.cures.find(({ material }) => material === design.case.laminate.name)?.wait;
    const value = steps.reduce((sum, { duration }) => sum + duration, 0);
    if (wait === undefined) return notShown('cure', 'the maker has no time for this climate');
    return reaching('cure', { name: 'time of cure', kind: 'time', value }, wait);
  }
  const { referenceTemperature, testedFrom, testedTo, minimumTemperature, mechanism, activationEnergy } = cure;
  const span = { referenceTemperature, testedFrom, testedTo, minimumTemperature, mechanism };
  const value = Math.min(
    ...energiesOf({ activationEnergy }).map(
      (energy) => equivalentTime({ ...span, steps, activationEnergy: energy as ActivationEnergy }).equivalentTime,
    ),
  );
  return reaching('cure', { name: "time of cure at the maker's temperature", kind: 'time', value }, cure.cureTime);
}

/** Hardness, surface, bond and pressure test, by the same gate that accepts a repair. */
function acceptancePoints({ laminate, found, acceptance }: Design, record: AsBuiltRecord): AsBuiltPoint[] {
  const { hardness, inspection, pressureTest, thickness } = record;
  const { pressureTest: test, hardness: needed } = acceptance;
  const tested = test.medium === 'liquid' || test.medium === 'gas';
  const decided = acceptRepair({
    laminateThickness: thickness ?? laminate.laidThickness,
    throughWall: found.throughWall,
    hardness:
      hardness === undefined
        ? undefined
        : { scale: needed?.scale ?? 'Shore D', qualifiedHardness: needed?.qualified, ...hardness },
    inspection,
    pressureTest: !tested
      ? 'not required'
      : pressureTest && { requiredPressure: test.pressure, requiredHold: test.hold, ...pressureTest },
  });
  const wanted = ['hardness', 'surface', 'bond', 'pressure test'] as const;
  return wanted.map((point): AsBuiltPoint => {
    if (point === 'pressure test' && !tested) return untested(acceptance);
    const reasons = decided.reasons.filter(({ holdPoint }) => holdPoint === point);
    const [first] = reasons;
    if (first === undefined) return { point, verdict: 'meets', text: `${point}: nothing against it` };
    const failed = reasons.some(({ verdict, found: number }) => verdict !== 'hold' || number !== undefined);
    const numbered = reasons.find(({ found: number, limit }) => number !== undefined && limit !== undefined) ?? first;
    return {
      point,
      verdict: failed ? 'does not meet' : 'not shown',
      text: reasons.map(({ text }) => text).join(' '),
      ...(numbered.found === undefined ? {} : { found: numbered.found }),
      ...(numbered.limit === undefined ? {} : { limit: numbered.limit }),
      ...shortfallOf(numbered.found, numbered.limit),
    };
  });
}

function shortfallOf(found: Amount | undefined, limit: Amount | undefined): { readonly shortfall?: Amount } {
  if (found === undefined || limit === undefined) return {};
  return { shortfall: { ...found, name: `${found.name}, off by`, value: Math.abs(limit.value - found.value) } };
}

function untested({ pressureTest: test }: AcceptanceDesign): AsBuiltPoint {
  if (test.medium === 'none') return { point: 'pressure test', verdict: 'meets', text: 'the case asks for none' };
  return notShown('pressure test', 'the case does not say whether the line is tested');
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
