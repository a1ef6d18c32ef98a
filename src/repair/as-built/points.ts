import { leastThickness } from '../../acceptance/index.js';
import { coldestBehindReading } from '../../cure/index.js';
import { laidThickness, overlapLeft } from '../../laminate/index.js';
import { agreeWithin, missingTo, reaches } from '../../numeric/index.js';
import { type Amount, joinLines, type Length, type Line, line, roundedDown } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { steelMargin, surfaceGate } from '../../site/index.js';
import type { Designed } from '../design/design.js';
import { sidesOfBend } from '../design/side-of-bend.js';
import { thermometerErrorOf } from '../mix-and-cure/steel-temperatures.js';
import { coldestForCure, hottestForCure } from '../site/span-of-cure.js';
import { laidLength } from '../wrap/wrap.js';
import { extentAsLaid, tooThick } from './as-laid.js';
import { countedAsLaid, fibreThickness } from './counted.js';
import { isFarBeyond } from './far-beyond.js';
import type { AsBuiltPoint, AsBuiltPointName, AsBuiltRecord } from './record.js';

/** What the record does not say. */
export function notShown(point: AsBuiltPointName, text: string): AsBuiltPoint {
  return { point, verdict: 'not shown', text };
}

/** A number that has to reach its limit; a reading of exactly the limit does. */
export function reaching(point: AsBuiltPointName, found: Amount, least: number): AsBuiltPoint {
  const { name, kind, value } = found;
  const limit: Amount = { name: `least ${name}`, kind, value: least, toward: 'up' };
  if (reaches(value, least)) return { point, verdict: 'meets', text: `the ${name} is enough`, found, limit };
  const shortfall: Amount = { name: `${name} short`, kind, value: missingTo(value, least) };
  return { point, verdict: 'does not meet', text: `the ${name} falls short`, found, limit, shortfall };
}

export function layerPoint({ laminate }: Designed, { layers }: AsBuiltRecord): AsBuiltPoint {
  if (layers === undefined) return notShown('layers', 'the layers were not counted');
  if (isFarBeyond(layers, laminate.plies)) return notShown('layers', FAR_BEYOND);
  return reaching('layers', { name: 'number of layers', kind: 'count', value: layers }, laminate.plies);
}

const FAR_BEYOND =
  'the reading is more than twice what the design has, as a slip of a digit or a unit is: measure again';

/** What is required, and the fewest plies that may be laid, at the thickness that a ply of this job has. */
export function thicknessPoint(design: Designed, record: AsBuiltRecord): AsBuiltPoint {
  const { laminate, case: repairCase } = design;
  const { plyThickness: systemPly } = repairCase.laminate;
  const { layers, thickness = 0 as Length, plyThickness = systemPly } = record;
  const least = leastThickness({
    requiredThickness: laminate.thickness.value,
    leastPlies: laminate.leastPlies,
    plyThickness,
    systemPly,
  });
  const point = measured('thickness', record.thickness, least, laminate.laidThickness);
  if (point.verdict !== 'meets') return point;
  const beyond = tooThick(design, record);
  if (beyond !== undefined) {
    const { found, limit } = beyond;
    const text = 'the laminate is too thick for the equations of a thin one, beyond which nothing is designed';
    return { point: 'thickness', verdict: 'does not meet', text, ...(found && { found }), ...(limit && { limit }) };
  }
  const fibre = fibreThickness(record) ?? thickness;
  if (!reaches(fibre, least))
    return {
      point: 'thickness',
      verdict: 'does not meet',
      text: 'what is left of the thickness without the resin-rich layer on it falls short: that layer holds no fibre',
      found: { name: 'thickness without the resin-rich layer', kind: 'length', value: fibre },
      limit: { name: 'least thickness', kind: 'length', value: least, toward: 'up' },
    };
  // Where layers are missing that decides.
  if (layers === undefined || layers < laminate.plies) return point;
  const asCounted = laidThickness({ plies: layers, plyThickness });
  if (!agreeWithin(thickness, asCounted, practice.layerReadingsApart.value))
    return {
      ...notShown(
        'thickness',
        'the thickness contradicts the layers that were counted at the thickness of a ply: one of these readings is wrong, count and measure again',
      ),
      found: { name: 'thickness', kind: 'length', value: thickness },
      limit: { name: 'thickness of the layers counted', kind: 'length', value: asCounted },
    };
  const counted = countedAsLaid(design, record) ?? fibre;
  if (reaches(counted, laminate.thickness.value)) return point;
  return {
    point: 'thickness',
    verdict: 'does not meet',
    text: 'the layers that were counted fall short at the thickness of a ply: whatever else was measured is resin',
    found: { name: 'thickness of the layers counted', kind: 'length', value: counted },
    limit: { name: 'least thickness', kind: 'length', value: laminate.thickness.value, toward: 'up' },
  };
}

export function lengthPoint(design: Designed, record: AsBuiltRecord): AsBuiltPoint {
  const { extent, wrap } = design;
  const name = `length${sidesOfBend(extent).outside}`;
  const { totalLength: least } = extentAsLaid(design, record);
  return measured('length', record.length, least, laidLength(wrap, extent), name);
}

export function overlapPoint(design: Designed, record: AsBuiltRecord): AsBuiltPoint {
  const { extent } = design;
  const name = `overlap${sidesOfBend(extent).inside}`;
  const laid = extentAsLaid(design, record);
  const point = measured('overlap', record.leastOverlap, laid.overlap.value, extent.overlap.value, name);
  const { length: totalLength = 0 as Length, leastOverlap = 0 as Length } = record;
  // Where the length falls short that decides.
  if (point.verdict !== 'meets' || !reaches(totalLength, laid.totalLength)) return point;
  const { defectLength, taper: taperLength } = laid;
  // Overlap and taper share what lies beside the defect: without the one the length leaves the other.
  const left = overlapLeft({ totalLength, defectLength, taperLength: leastOverlap });
  if (!agreeWithin(Math.min(left, taperLength), taperLength, practice.taperMayLack.value))
    return {
      ...notShown('overlap', STEEP),
      found: { name: 'taper left', kind: 'length', value: left },
      limit: { name: 'taper as designed', kind: 'length', value: taperLength },
    };
  const most = overlapLeft({ totalLength, defectLength, taperLength });
  if (leastOverlap <= most || agreeWithin(leastOverlap, most, practice.layerReadingsApart.value)) return point;
  return notShown(
    'overlap',
    'the overlap does not fit into the length that was measured: one of these readings is wrong, measure again',
  );
}

const STEEP =
  'the overlap leaves too little of the designed taper on the length that was measured: steep ends peel, or one of these readings is wrong, measure again';

function measured(
  point: 'thickness' | 'length' | 'overlap',
  value: Length | undefined,
  least: number,
  planned: number,
  name: string = point,
): AsBuiltPoint {
  if (value === undefined) return notShown(point, `the ${name} was not measured`);
  if (isFarBeyond(value, planned)) return notShown(point, FAR_BEYOND);
  return reaching(point, { name, kind: 'length', value }, least);
}

export function steelPoint({ site }: Designed, { steel }: AsBuiltRecord): AsBuiltPoint {
  if (steel === undefined) return notShown('steel', 'the prepared steel was not recorded');
  const { salts = [], ...seen } = steel;
  const read = salts.length === 0 ? undefined : salts;
  const { reasons } = surfaceGate({
    ...seen,
    requiredGrade: site.requiredGrade,
    requiredProfile: site.requiredProfile,
    openTime: practice.openTime.value,
    saltLimit: read === undefined ? undefined : practice.highestSalts.value,
    saltReadings: read,
  });
  const against = reasons.filter((reason) => reason.decision !== 'go').map(({ because }) => because);
  const profile = reaching('steel', { name: 'profile', kind: 'length', value: steel.profile }, site.requiredProfile);
  // The plan lets no place pass above the limit, and a mean hides one.
  const limit = practice.highestSalts.value;
  if (salts.some((reading) => reading > limit))
    against.push(line('one place has more salts than {0}', roundedDown('salts', 'areal weight', limit)));
  if (against.length > 0) return { ...profile, verdict: 'does not meet', ...joinLines(against, '; ') };
  if (!reaches(practice.deepestProfile.value, steel.profile))
    return notShown(
      'steel',
      'the profile is deeper than any blasting leaves it, as a slip of a unit is: measure again',
    );
  if (read === undefined) return notShown('steel', 'nobody recorded the soluble salts on the prepared steel');
  return { ...profile, text: 'grade, profile, salts, cleanness and freshness as required' };
}

export function climatePoint({ case: repairCase }: Designed, { climate = [] }: AsBuiltRecord): AsBuiltPoint {
  if (climate.length === 0) return notShown('climate', 'air and steel were not read');
  const { instruments } = repairCase.site;
  const coldest = coldestForCure(repairCase);
  const hottest = hottestForCure(repairCase);
  const errors = instruments === undefined ? {} : { steelError: instruments.temperatureError, ...instruments };
  let margin = Number.POSITIVE_INFINITY;
  for (const { steelTemperature, airTemperature, relativeHumidity: humidity } of climate) {
    margin = Math.min(margin, steelMargin({ steelTemperature, airTemperature, humidity, ...errors }).worstMargin);
  }
  const point = reaching(
    'climate',
    { name: 'margin to the dew point', kind: 'temperature difference', value: margin },
    practice.dewPointMargin.value,
  );
  const highest = practice.highestHumidity.value;
  const faults: Line[] = point.verdict === 'meets' ? [] : [{ text: point.text }];
  if (climate.some(({ relativeHumidity }) => relativeHumidity > highest))
    faults.push(line('the air was above {0}', roundedDown('humidity', 'ratio', highest)));
  const error = thermometerErrorOf(repairCase.site);
  if (climate.some(({ steelTemperature: reading }) => coldestBehindReading({ reading, error }) < coldest))
    faults.push({ text: 'the steel was colder than the resin cures' });
  if (climate.some(({ steelTemperature }) => steelTemperature > hottest))
    faults.push(
      line('the steel was hotter than the maker tested, {0}', roundedDown('hottest steel', 'temperature', hottest)),
    );
  if (faults.length === 0) return point;
  return { ...point, verdict: 'does not meet', ...joinLines(faults, '; ') };
}
