import { describe, expect, it } from 'vitest';
import { isCalculationError } from '../../../src/formula/index.js';
import { length, temperature, time } from '../../../src/quantity/index.js';
import { designRepair, type RepairCase } from '../../../src/repair/index.js';
import { practice } from '../../../src/rules/index.js';
import { type Paths, withPaths } from '../../faults/cases.js';
import { atWork, leaking, partWall, sealed } from '../example-case.js';

/** Two fields that meet at the limit: which of the two sides it belongs to. The last digit beyond it is beyond it. */

const { pipe, service, defect, laminate, filler } = partWall;
if (filler === 'none' || pipe.outsideDiameter === undefined) throw new Error('the example has filler and a diameter');
const { wallThickness, outsideDiameter, material } = pipe;

/** The field that the door refuses; none where it lets the case in. */
function refused(repairCase: RepairCase, changes: Paths): string | undefined {
  try {
    designRepair(withPaths(repairCase, changes));
    return undefined;
  } catch (error) {
    if (isCalculationError(error) && error.code === 'invalid-input') return error.parameter;
    throw error;
  }
}

const above = (limit: number): number => limit * (1 + 1e-12);
const below = (limit: number): number => limit * (1 - 1e-12);
const still = { depth: 0, length: 0 };
const read = { previousWall: length.mm(6), sincePrevious: time.year(5), service: time.year(20) };
const byReadings = { ...partWall, defect: { ...defect, growth: { ...still, depth: read } } } as RepairCase;
/** 30 mm by 40 mm: 50 mm from corner to corner. */
const wide = withPaths(leaking, { 'defect.axialLength': length.mm(30), 'defect.circumferentialWidth': length.mm(40) });
const opening = { axialLength: length.mm(20), circumferentialWidth: length.mm(20) };
const slotted = withPaths(wide, {
  'defect.kind': 'through-wall slot',
  'defect.holeDiameter': undefined,
  'defect.slot': opening,
});
const neighbour = {
  cause: 'external corrosion',
  remainingWall: length.mm(6),
  axialLength: length.mm(20),
  circumferentialWidth: length.mm(20),
};
const beside = withPaths(partWall, {
  'defect.neighbours': [{ ...neighbour, gapAlong: length.m(2), gapRound: length.mm(0) }],
});
const point = (mm: number, depth: number) => ({ position: length.mm(mm), depth });
const loss = wallThickness - defect.remainingWall;
const alongProfile = (second: number, depth: number) => ({
  'defect.profile': [point(0, 0), point(60, depth), { position: second, depth }, point(120, 0)],
});
const profile = (second: number) => alongProfile(second, loss);
const deepest = (depth: number) => alongProfile(length.mm(80), depth);
const cycles = { lowestPressure: 1e6, highestPressure: 2e6, number: 1000 };
const cycled = withPaths(partWall, { 'loads.cycles': cycles });
const seen = { pressure: 1e6, date: '2026-03-01' };
const surveyed = withPaths(partWall, { date: '2026-03-01', 'service.recentPressure': seen });
const warm = temperature.degC(100);
const sheet = { form: 'sheet', width: length.m(1), rollLength: length.m(20) };
const { cure } = laminate;
if (cure.mechanism !== 'two-part reaction') throw new Error('the example has a resin of two parts');

const row = { temperature: temperature.degC(20), humidity: 0.6, cureTime: time.hour(6), workingTime: time.minute(30) };
const puttyCure = sealed.seal?.putty.cure;
if (puttyCure?.mechanism !== 'two-part reaction') throw new Error('the example has a putty of two parts');
/** Half of it fibre. */
const byWeight = (fabricWeight: number): RepairCase =>
  withPaths(partWall, { 'resin.fabricWeight': fabricWeight, 'resin.fibreMassFraction': 0.5 });

/** A strain of one part in 64 at 16 GPa: 250 MPa. */
const lasting = withPaths(partWall, {
  'laminate.hoopModulus': 16e9,
  'laminate.strainToFailure': 1 / 64,
  'laminate.longTermStrength': {
    strength: 1e8,
    test: '1000 h survival',
    second: { testTemperature: temperature.degC(60), strength: 1e8 },
  },
});

/** A limit that may be met, and the first number beyond it. */
const mayMeet: readonly (readonly [string, RepairCase, field: string, limit: number, beyond: number])[] = [
  ['the wall left, the wall', partWall, 'defect.remainingWall', wallThickness, above(wallThickness)],
  [
    'the wall at the last survey, the wall',
    byReadings,
    'defect.growth.depth.previousWall',
    wallThickness,
    above(wallThickness),
  ],
  [
    'the wall at the last survey, the wall of today',
    byReadings,
    'defect.growth.depth.previousWall',
    defect.remainingWall,
    below(defect.remainingWall),
  ],
  [
    'the time between surveys, the service',
    byReadings,
    'defect.growth.depth.sincePrevious',
    read.service,
    above(read.service),
  ],
  ['a hole, its defect', wide, 'defect.holeDiameter', length.mm(50), above(length.mm(50))],
  ['the hole to come, the hole of today', leaking, 'defect.holeAtEndOfLife', length.mm(5), below(length.mm(5))],
  ['a slot along, its defect', slotted, 'defect.slot.axialLength', length.mm(30), above(length.mm(30))],
  ['a slot round, its defect', slotted, 'defect.slot.circumferentialWidth', length.mm(40), above(length.mm(40))],
  [
    'the wall of a neighbour, the wall',
    beside,
    'defect.neighbours.0.remainingWall',
    wallThickness,
    above(wallThickness),
  ],
  [
    'filler over the defect, filler beside it',
    partWall,
    'filler.thicknessOverDefect',
    filler.thickness,
    below(filler.thickness),
  ],
  [
    'tensile strength, yield strength',
    partWall,
    'pipe.material.tensileStrength',
    material.yieldStrength,
    below(material.yieldStrength),
  ],
  [
    'allowable stress, yield strength',
    partWall,
    'pipe.material.allowableStress',
    material.yieldStrength,
    above(material.yieldStrength),
  ],
  [
    'lowest temperature, design temperature',
    partWall,
    'service.lowestTemperature',
    service.designTemperature,
    above(service.designTemperature),
  ],
  [
    'highest pressure of a cycle, its lowest',
    cycled,
    'loads.cycles.highestPressure',
    cycles.lowestPressure,
    below(cycles.lowestPressure),
  ],
  [
    'highest pressure of a cycle, design pressure',
    cycled,
    'loads.cycles.highestPressure',
    service.designPressure,
    above(service.designPressure),
  ],
  [
    'pressure of the work, design pressure',
    { ...partWall, line: atWork(service.designPressure) },
    'line.pressure',
    service.designPressure,
    above(service.designPressure),
  ],
  [
    'wet transition, dry transition',
    withPaths(partWall, { 'laminate.glassTransition': warm }),
    'laminate.wetGlassTransition',
    warm,
    above(warm),
  ],
  [
    'width of a sheet, twice its lap',
    withPaths(partWall, { wrap: sheet }),
    'wrap.width',
    practice.leastSheetWidth.value,
    below(practice.leastSheetWidth.value),
  ],
  [
    'tested from, reference',
    partWall,
    'laminate.cure.testedFrom',
    cure.referenceTemperature,
    above(cure.referenceTemperature),
  ],
  [
    'tested to, reference',
    partWall,
    'laminate.cure.testedTo',
    cure.referenceTemperature,
    below(cure.referenceTemperature),
  ],
  [
    'working time, cure time, of a sheet with rows',
    withPaths(partWall, { 'laminate.cure': { mechanism: 'moisture', rows: [row] } }),
    'laminate.cure.rows.0.workingTime',
    row.cureTime,
    above(row.cureTime),
  ],
  ['strength for years, strength', lasting, 'laminate.longTermStrength.strength', 250e6, above(250e6)],
  [
    'strength for years at another temperature, strength',
    lasting,
    'laminate.longTermStrength.second.strength',
    250e6,
    above(250e6),
  ],
  // 0.5 kg/m2 of fabric, half of the mass of 1 mm: 1000 kg/m3.
  ['a ply, the lightest there is', byWeight(0.5), 'laminate.plyThickness', length.mm(1), above(length.mm(1))],
  // 1.3 kg/m2: 2600 kg/m3.
  ['a ply, the heaviest there is', byWeight(1.3), 'laminate.plyThickness', length.mm(1), below(length.mm(1))],
  [
    'working time, cure time, of the putty',
    sealed,
    'seal.putty.cure.workingTime',
    puttyCure.cureTime,
    above(puttyCure.cureTime),
  ],
  ['working time, cure time', partWall, 'filler.cure.workingTime', time.hour(4), above(time.hour(4))],
];

/** A limit that nothing may meet, and the last number before it. */
const mayNotMeet: readonly (readonly [string, RepairCase, field: string, limit: number, before: number])[] = [
  ['the wall, half the diameter', partWall, 'pipe.wallThickness', outsideDiameter / 2, below(outsideDiameter / 2)],
  [
    'a bend, half the diameter',
    withPaths(partWall, { fitting: { kind: 'bend' } }),
    'fitting.bendRadius',
    outsideDiameter / 2,
    above(outsideDiameter / 2),
  ],
  // The square root of 4 over 16.
  [
    "Poisson's ratio, its limit",
    withPaths(partWall, { wrap: sheet, 'laminate.hoopModulus': 4e9, 'laminate.axialModulus': 16e9 }),
    'laminate.poissonRatio',
    0.5,
    below(0.5),
  ],
];

/** As the door writes it. */
const written = (field: string): string => field.replace('.0.', '[0].');

describe('two fields that meet', () => {
  it.each(mayMeet)('may be alike, and not a digit beyond: %s', (_, repairCase, field, limit, beyond) => {
    expect(refused(repairCase, { [field]: limit })).toBeUndefined();
    expect(refused(repairCase, { [field]: beyond })).toBe(written(field));
  });

  it.each(mayNotMeet)('may not be alike, and are let in a digit before: %s', (_, repairCase, field, limit, before) => {
    expect(refused(repairCase, { [field]: limit })).toBe(field);
    expect(refused(repairCase, { [field]: before })).toBeUndefined();
  });

  it('are a reading of the day of the survey, and not of the day after it', () => {
    expect(refused(surveyed, {})).toBeUndefined();
    expect(refused(surveyed, { date: '2026-02-28' })).toBe('service.recentPressure.date');
    // What is no day orders nothing.
    expect(refused(surveyed, { date: '1 March 2026' })).toBe('date');
  });

  it('are the wall of today and a wall of the past below it, however whole the pipe is today', () => {
    expect(refused(byReadings, { 'defect.remainingWall': wallThickness })).toBe('defect.growth.depth.previousWall');
  });

  it('are the least wall and the deepest point of a profile, which leave the same', () => {
    const reading = 'defect.remainingWall';
    const [through, whole] = [{ [reading]: 0 }, { [reading]: wallThickness }];
    expect(refused(partWall, { ...through, ...deepest(wallThickness) })).toBeUndefined();
    expect(refused(partWall, { ...through, ...deepest(above(wallThickness)) })).toBe('defect.profile[1].depth');
    expect(refused(partWall, deepest(wallThickness))).toBe(reading);
    expect(refused(partWall, { ...whole, ...deepest(loss) })).toBe(reading);
  });

  it('are two deepest points of a profile that is too shallow: the first is named', () => {
    const flat = [0, 60, 120].map((mm) => point(mm, 0));
    expect(refused(partWall, { 'defect.profile': flat })).toBe('defect.profile[0].depth');
    expect(refused(partWall, deepest(length.mm(1)))).toBe('defect.profile[1].depth');
  });

  it('are two points of a profile at one place: they stand in no order', () => {
    expect(refused(partWall, profile(length.mm(80)))).toBeUndefined();
    expect(refused(partWall, profile(length.mm(60)))).toBe('defect.profile[2].position');
  });
});

describe('a bound of a field', () => {
  const worked = withPaths(partWall, { crew: { layingSpeed: 0.03, crews: 1, start: '07:30' } });

  it.each<[string, RepairCase, string, within: number, beyond: number]>([
    ['at least', partWall, 'defect.remainingWall', 0, -Number.MIN_VALUE],
    ['at least', withPaths(partWall, { wrap: sheet }), 'laminate.poissonRatio', 0, -Number.MIN_VALUE],
    ['above', partWall, 'service.designPressure', 1, 0],
    ['above', partWall, 'repair.life', 1, 0],
    ['below', partWall, 'wrap.overlap', 0.5, 1],
    ['at most', partWall, 'site.relativeHumidity', 1, 1 + Number.EPSILON],
    ['a whole number from', worked, 'crew.crews', 1, 0],
    ['a whole number', worked, 'crew.crews', 2, 1.5],
  ])('is kept as it says: %s, %s', (_, repairCase, field, within, beyond) => {
    expect(refused(repairCase, { [field]: within })).not.toBe(field);
    expect(refused(repairCase, { [field]: beyond })).toBe(field);
  });
});
