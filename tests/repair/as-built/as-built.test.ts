import { describe, expect, it } from 'vitest';
import { arealWeight, type Length, length, ratio, temperature, time } from '../../../src/quantity/index.js';
import {
  type AsBuiltPoint,
  type AsBuiltPointName,
  type BatchRecord,
  compareAsBuilt,
  type Designed,
  designRepair,
} from '../../../src/repair/index.js';
import { madeOf } from '../../faults/answers.js';
import { emptied, leak, loss, type Paths, quietLoss, withPaths } from '../../faults/cases.js';
import { compared, goodRecord } from '../../faults/records.js';
import { designed } from '../by-use.js';
import { waterTape } from '../plan-cases.js';

/** A record at its limits and just beyond: what was made against what was designed. */

const quiet = (): Designed => madeOf(quietLoss);
const filled = (): Designed => madeOf(withPaths(loss, emptied));
const sealed = (): Designed => madeOf(leak);
const ofWater = (): Designed => designed(waterTape);

const pointIn = (design: Designed, name: AsBuiltPointName, changes: Paths = {}): AsBuiltPoint | undefined =>
  compared(design, changes).points.find(({ point }) => point === name);

const BEYOND = 1 + 1e-6;

describe('the points of a record', () => {
  it('ask about filler, holes and seals only where the design has them', () => {
    expect(pointIn(quiet(), 'filler firm')).toBeUndefined();
    expect(pointIn(filled(), 'filler firm')).toMatchObject({ verdict: 'meets', text: 'the filler took no print' });
    expect(pointIn(filled(), 'filler firm', { fillerWasFirm: false })).toMatchObject({
      verdict: 'does not meet',
      text: 'the filler still took a print when the wrap began',
    });
    expect(pointIn(filled(), 'filler firm', { fillerWasFirm: undefined })).toMatchObject({
      verdict: 'not shown',
      text: 'nobody recorded that the filler took no print',
    });
  });

  it('meet with nothing mixed where nothing is to be mixed', () => {
    const dry = designed({
      ...waterTape,
      filler: 'none',
      defect: { ...waterTape.defect, cause: 'internal erosion', growth: { depth: 0 as never, length: 0 as never } },
    });
    expect(pointIn(dry, 'batches')).toEqual({ point: 'batches', verdict: 'meets', text: 'nothing is mixed on site' });
  });

  it('show the number that falls short, the limit, and what is missing', () => {
    const { laminate, extent, case: repairCase } = quiet();
    const rows = [
      ['layers', 'layers', laminate.plies, laminate.plies - 1],
      ['length', 'length', extent.totalLength, extent.totalLength - 1e-3],
      ['overlap', 'leastOverlap', extent.overlap.value, extent.overlap.value - 1e-3],
      ['wall', 'survey.leastWall', repairCase.defect.remainingWall, repairCase.defect.remainingWall - 1e-4],
    ] as const;
    const { defect } = repairCase;
    for (const [name, path, most] of [
      ['loss length', 'survey.axialLength', defect.axialLength],
      ['loss width', 'survey.circumferentialWidth', defect.circumferentialWidth],
    ] as const) {
      const over = pointIn(quiet(), name, { [path]: most + 1e-3 });
      expect(over).toMatchObject({
        verdict: 'does not meet',
        text: expect.stringMatching(
          /designed for \{1\}: run the design again with the loss as found; \{1\} or less meets/,
        ),
      });
      expect(over?.amounts?.map(({ value }) => value)).toEqual([most + 1e-3, most]);
      expect(over?.shortfall?.value).toBeCloseTo(1e-3, 12);
    }
    for (const [name, path, least, less] of rows) {
      expect(pointIn(quiet(), name, { [path]: least })?.verdict, name).toBe('meets');
      const short = pointIn(quiet(), name, { [path]: less });
      expect(short?.verdict, name).toBe('does not meet');
      expect([short?.found?.value, short?.limit?.value]).toEqual([less, least]);
      expect(short?.shortfall?.value).toBeCloseTo(least - less, 12);
    }
  });
});

/** One degree Fahrenheit in kelvin: what the thermometers of these cases may be off. */
const OFF = 1 / 1.8;

describe('the cure of a record', () => {
  const hours = (...steps: readonly (readonly [hours: number, degrees: number])[]): Paths => ({
    cure: steps.map(([each, degrees]) => ({ duration: time.hour(each), temperature: temperature.degC(degrees) })),
  });
  const cureOf = (design: Designed, ...steps: readonly (readonly [number, number])[]) =>
    pointIn(design, 'cure', hours(...steps))?.verdict;

  it("at the maker's temperature lasts as long as the maker says", () => {
    const { cureTime, referenceTemperature } = quiet().case.laminate.cure as never as {
      cureTime: number;
      referenceTemperature: number;
    };
    const reading = referenceTemperature + OFF;
    const at = (seconds: number) => pointIn(quiet(), 'cure', { cure: [{ duration: seconds, temperature: reading }] });
    expect(at(cureTime * 1.000001)).toMatchObject({ verdict: 'meets', limit: { value: cureTime } });
    expect(at(cureTime)?.found?.value).toBeCloseTo(cureTime, 6);
    expect(at(cureTime / BEYOND)?.verdict).toBe('does not meet');
  });

  it('of an energy that nobody states counts by the one that credits least', () => {
    const unstated = madeOf(withPaths(quietLoss, { 'laminate.cure.activationEnergy': undefined }));
    const credited = (design: Designed, degrees: number): number =>
      pointIn(design, 'cure', hours([30, degrees]))?.found?.value ?? Number.NaN;
    for (const degrees of [12, 35]) {
      const stated = [40, 50, 60].map((energy) =>
        credited(madeOf(withPaths(quietLoss, { 'laminate.cure.activationEnergy': `${energy} kJ/mol` })), degrees),
      );
      expect(new Set(stated).size).toBe(3);
      expect(credited(unstated, degrees)).toBe(Math.min(...stated));
    }
  });

  it('says nothing once a part of it lay outside the span that the maker tested', () => {
    expect(cureOf(quiet(), [60, 25], [1, 41])).toBe('not shown');
    expect(cureOf(quiet(), [60, 25], [1, 40])).toBe('meets');
    expect(cureOf(quiet())).toBe('not shown');
  });

  it('on steel as cold as the resin cures counts for nothing behind the error of the thermometer, and colder tells nothing', () => {
    expect([cureOf(quiet(), [60, 10]), cureOf(quiet(), [60, 9.9])]).toEqual(['does not meet', 'not shown']);
  });

  it('by moisture lasts as long as the rows say, and nowhere colder than the sample of the transition', () => {
    const rows = [10, 25, 40].map((degrees, index) => ({
      temperature: `${degrees} degC`,
      humidity: `${[20, 60, 95][index]} %`,
      cureTime: '6 h',
      workingTime: '20 min',
    }));
    const moist = madeOf(withPaths(quietLoss, { 'laminate.cure': { mechanism: 'moisture', rows }, resin: 'none' }));
    const step = moist.timeline.steps.find(({ id }) => id === 'cure')?.duration;
    const wait = step?.known === true ? step.time / 3600 : Number.NaN;
    expect(cureOf(moist, [wait, 25])).toBe('meets');
    expect(cureOf(moist, [wait - 0.01, 25])).toBe('does not meet');
    expect(cureOf(moist, [wait / 2, 25], [wait / 2, 12])).toBe('meets');
    expect(cureOf(moist, [wait, 25], [1, 9])).toBe('not shown');
    expect(cureOf(moist, [1, 9], [wait, 25])).toBe('not shown');
    expect(cureOf(moist, [wait, 10])).toBe('meets');
  });
});

describe('hardness and pressure test of a record', () => {
  it('count on the scale of the design only, and not where it asks for none', () => {
    expect(pointIn(quiet(), 'hardness', { 'hardness.scale': 'Barcol' })?.verdict).toBe('not shown');
    const unasked = madeOf(withPaths(quietLoss, { acceptance: undefined }));
    expect(pointIn(unasked, 'hardness')?.verdict).not.toBe('meets');
  });

  it('is asked for with gas as with liquid', () => {
    const gas = madeOf(
      withPaths(quietLoss, { 'acceptance.pressureTest.medium': 'gas', 'acceptance.pressureTest.liquid': undefined }),
    );
    expect(pointIn(gas, 'pressure test', { pressureTest: undefined })?.verdict).toBe('not shown');
    const { pressure } = gas.acceptance.pressureTest;
    expect(pointIn(gas, 'pressure test')?.verdict).toBe('meets');
    const low = { 'pressureTest.lowestPressure': 0.9 * pressure };
    expect(pointIn(gas, 'pressure test', low)).toMatchObject({ verdict: 'does not meet' });
  });

  it('shows a shortfall in numbers', () => {
    const soft = pointIn(quiet(), 'hardness', { 'hardness.readings': [50, 50, 50, 50, 50] });
    expect(soft?.verdict).toBe('does not meet');
    const [share, least] = [soft?.found?.value ?? Number.NaN, soft?.limit?.value ?? Number.NaN];
    expect([0.8, 0.9]).toContain(least);
    expect(share).toBeCloseTo(50 / 82, 9);
    expect(soft?.shortfall?.value).toBeCloseTo(least - share, 9);
  });

  it('may reach each limit of the test and not pass it', () => {
    const design = quiet();
    const { pressure, resistance } = design.acceptance.pressureTest;
    const over = (highest: number) =>
      pointIn(design, 'pressure test', { 'pressureTest.highestPressure': highest })?.verdict;
    const limit = Math.min(1.05 * pressure, resistance);
    expect(over(limit)).toBe('meets');
    expect(over(limit * BEYOND)).toBe('does not meet');
    expect(pointIn(design, 'pressure test', { 'pressureTest.highestPressure': undefined })?.verdict).toBe('not shown');
    const unsaid = pointIn(design, 'pressure test', {
      'pressureTest.highestPressure': undefined,
      'pressureTest.lowestPressure': 2 * limit,
    });
    expect(unsaid?.verdict).toBe('does not meet');
    expect(unsaid?.text).not.toContain('Nobody recorded the highest');
  });
});

describe('the batches of a record', () => {
  const scaled = (design: Designed, use: BatchRecord['use'], by: number): Paths => ({
    batches: goodRecord(design).batches?.map((batch) =>
      batch.use === use ? { ...batch, base: batch.base * by, hardener: batch.hardener * by } : batch,
    ),
  });

  it.each([
    ['filler', 'filler', 0.25],
    ['laminate resin', 'resin', 0.3],
  ] as const)('reach what has to lie on the pipe, without the waste of that mix: %s', (use, field, waste) => {
    const design = madeOf(withPaths(loss, { ...emptied, [`${field}.waste`]: `${100 * waste} %` }));
    const least = 1 / (1 + waste);
    expect(pointIn(design, 'batches', scaled(design, use, least * BEYOND))?.verdict).toBe('meets');
    const short = pointIn(design, 'batches', scaled(design, use, least / 1.001));
    expect(short?.verdict).toBe('does not meet');
    expect(short?.amounts?.map(({ value }) => value)).toHaveLength(2);
  });

  it('take the waste of practice where the case states none', () => {
    const design = madeOf(withPaths(loss, { ...emptied, 'filler.waste': undefined }));
    expect(pointIn(design, 'batches', scaled(design, 'filler', BEYOND / 1.15))?.verdict).toBe('meets');
    expect(pointIn(design, 'batches', scaled(design, 'filler', 1 / 1.16))?.verdict).toBe('does not meet');
  });

  const first = (design: Designed, changes: Paths): Paths => ({
    batches: goodRecord(design).batches?.map((batch, index) => (index === 0 ? { ...batch, ...changes } : batch)),
  });

  it('are told apart by their numbers, blanks aside, among those of one mix', () => {
    const design = filled();
    const renamed = (place: number, number: string): Paths => ({
      batches: goodRecord(design).batches?.map((batch, index) => (index === place ? { ...batch, number } : batch)),
    });
    const made = goodRecord(design).batches ?? [];
    const [one, other] = made.flatMap(({ use }, index) => (use === 'laminate resin' ? [index] : []));
    const number = made[one ?? 0]?.number ?? '';
    expect(pointIn(design, 'batches', renamed(other ?? -1, ` ${number} `))?.verdict).toBe('not shown');
    expect(pointIn(design, 'batches', renamed(0, number))?.verdict).toBe('meets');
    expect(made[0]?.use).toBe('filler');
  });

  it.each(['filler', 'laminate resin'] as const)(
    'are used up within the working time of their own resin, as warm as it was: %s',
    (use) => {
      const design = madeOf(
        withPaths(loss, { ...emptied, 'filler.cure.activationEnergy': '40 kJ/mol', 'site.instruments': undefined }),
      );
      const batches = (usedWithin: number) =>
        goodRecord(design).batches?.map((batch) => (batch.use === use ? { ...batch, usedWithin } : batch));
      const used = (usedWithin: number, climate?: readonly object[]) =>
        pointIn(design, 'batches', { climate, batches: batches(usedWithin) });
      const cure = use === 'filler' ? design.cures.filler : design.cures.laminate;
      // Four fifths of it are what the plan lets a crew use.
      const working = cure === 'none' ? Number.NaN : 0.8 * cure.workingTime;
      expect(used(working)?.verdict).toBe('meets');
      const late = used(working + 60);
      expect(late?.verdict).toBe('does not meet');
      expect(late?.amounts?.[0]?.value).toBeCloseTo(60, 6);
      // By the law of Arrhenius from the warmest hour of the design, 80 degF, to 35 degC, each with the error of a thermometer.
      const energy = use === 'filler' ? 40_000 : 55_000;
      const [then, planned] = [308.65, ((80 + 459.67) * 5) / 9 + 0.5];
      const hot = [{ steelTemperature: 308.15, airTemperature: 300, relativeHumidity: 0.4 }];
      const shorter = working * Math.exp((energy / 8.314462618) * (1 / then - 1 / planned));
      expect(used(shorter * 0.999, hot)?.verdict).toBe('meets');
      expect(used(shorter * 1.001, hot)?.verdict).toBe('does not meet');
      const cool = [{ steelTemperature: 288.15, airTemperature: 288.15, relativeHumidity: 0.4 }];
      expect(used(working, cool)?.verdict).toBe('meets');
      expect(used(working * 1.001, cool)?.verdict).toBe('does not meet');
    },
  );

  it('are mixed up to their last day', () => {
    const design = filled();
    const mixed = (mixedOn: string | undefined) => pointIn(design, 'batches', first(design, { mixedOn }))?.verdict;
    expect([mixed('2027-06-01'), mixed('2027-06-02'), mixed(undefined)]).toEqual([
      'meets',
      'does not meet',
      'not shown',
    ]);
  });
});

describe('steel and air of a record', () => {
  it('may hold salts up to the limit at every place, and not more at one', () => {
    const salts = (...readings: number[]): Paths => ({
      'steel.salts': readings.map((each) => arealWeight.gPerM2(each)),
    });
    expect(pointIn(quiet(), 'steel', salts(0.001, 0.001, 0.02))?.verdict).toBe('meets');
    expect(pointIn(quiet(), 'steel', salts(0.001, 0.001, 0.0201))?.verdict).toBe('does not meet');
    // One reading of the limit itself may be off by more.
    expect(pointIn(quiet(), 'steel', salts(0.02))?.verdict).toBe('does not meet');
    const good = pointIn(quiet(), 'steel');
    expect(good).toMatchObject({ verdict: 'meets', found: { value: length.um(80) } });
    expect(pointIn(quiet(), 'steel', { 'steel.salts': undefined })?.verdict).toBe('not shown');
  });

  const read = (steel: number, air: number, humidity: number) => ({
    steelTemperature: temperature.degC(steel),
    airTemperature: temperature.degC(air),
    relativeHumidity: ratio.percent(humidity),
  });
  const air = (design: Designed, ...readings: ReturnType<typeof read>[]) =>
    pointIn(design, 'climate', { climate: readings });
  const good = read(25, 24, 50);

  it.each([
    ['damp', read(38, 24, 85.1), /the air was above/u],
    ['on cold steel', read(9.9, 4, 50), /colder than the resin cures/u],
    ['on hot steel', read(40.1, 24, 50), /hotter than the maker tested/u],
    ['at its dew point', read(24.5, 24, 80), /falls short/u],
  ])('is bad where one reading of several is bad, and says what: %s', (_, bad, words) => {
    for (const readings of [[good, bad], [bad, good], [bad]]) {
      const point = air(quiet(), ...readings);
      expect(point?.verdict).toBe('does not meet');
      expect(point?.text).toMatch(words);
    }
  });

  it('says only what is bad', () => {
    expect(air(quiet(), read(9.9, 0, 30))?.text).toBe('the steel was colder than the resin cures');
    expect(air(quiet(), read(24.5, 24, 90))?.text).toMatch(/falls short; the air was above/u);
    expect(air(quiet(), read(24.5, 24, 80))?.text).toMatch(/^the margin to the dew point falls short$/u);
  });

  it('may reach each limit', () => {
    expect(air(quiet(), read(38, 24, 85))?.verdict).toBe('meets');
    expect(air(quiet(), read(10.001 + OFF, 0, 50))?.verdict).toBe('meets');
    expect(air(quiet(), read(9.999 + OFF, 0, 50))?.verdict).toBe('does not meet');
    expect(air(quiet(), read(40, 24, 50))?.verdict).toBe('meets');
  });

  it('keeps its margin behind the errors of the instruments', () => {
    const margin = (instruments: Paths | undefined): number =>
      air(madeOf(withPaths(quietLoss, { 'site.instruments': instruments })), good)?.found?.value ?? Number.NaN;
    const exact = margin({ temperatureError: '0 K', humidityError: '0 %' });
    const rough = margin({ temperatureError: '2 K', humidityError: '0 %' });
    const damp = margin({ temperatureError: '0 K', humidityError: '10 %' });
    expect(rough).toBeLessThan(exact - 3.5);
    expect(damp).toBeLessThan(exact - 1);
  });
});

describe('a record of another job', () => {
  it('holds a tape that water activates to its wraps and to nothing mixed for them', () => {
    const points = compareAsBuilt(ofWater(), goodRecord(ofWater())).points.map(({ point }) => point);
    expect(points).toContain('filler firm');
    expect(pointIn(ofWater(), 'batches')?.verdict).toBe('meets');
    const foreign = { number: 'R 1', use: 'laminate resin', base: 1, hardener: 0.3, usedWithin: 60 };
    const batches = [...(goodRecord(ofWater()).batches ?? []), foreign];
    expect(pointIn(ofWater(), 'batches', { batches })).toMatchObject({
      verdict: 'does not meet',
      text: expect.stringContaining('the design has no laminate resin'),
    });
  });

  it('asks for a hole as it is, and says how much too large it is', () => {
    const hole = (metres: number | undefined) => pointIn(sealed(), 'hole', { 'survey.hole': metres });
    expect(hole(0.004)).toMatchObject({ verdict: 'meets', found: { value: 0.004 }, limit: { value: 0.004 } });
    const large = hole(0.0045);
    expect(large?.verdict).toBe('does not meet');
    expect(large?.shortfall?.value).toBeCloseTo(0.0005, 9);
    expect(hole(undefined)?.verdict).toBe('not shown');
    const none = (size: Length | undefined) => pointIn(quiet(), 'hole', { 'survey.hole': size });
    expect([none(undefined), none(0 as Length)]).toEqual([undefined, undefined]);
    expect(none(length.mm(1))?.verdict).toBe('does not meet');
  });

  it('is compared with no design that was not made', () => {
    const open = designRepair({
      ...waterTape,
      laminate: { ...waterTape.laminate, cure: waterTape.laminate.cure, strainToFailure: undefined },
    });
    expect(() => compareAsBuilt(open, {})).toThrow(/must be designed/u);
  });
});

describe('the seal and the signatures of a record', () => {
  it.each([
    ['seal', 'seal.heldDry', /the seal held dry/u, /the seal wept/u, /held the steel dry/u],
    [
      'putty firm',
      'seal.puttyWasFirm',
      /the putty took no print/u,
      /still took a print/u,
      /that the putty took no print/u,
    ],
    ['bands', 'seal.bandsWereRemoved', /were taken off/u, /lie under the wrap/u, /that the bands were taken off/u],
  ] as const)('say what was seen, what was not, and what nobody saw: %s', (name, path, good, bad, open) => {
    const at = (seen: boolean | undefined) => pointIn(sealed(), name, { [path]: seen });
    expect(at(true)).toMatchObject({ verdict: 'meets', text: expect.stringMatching(good) });
    expect(at(false)).toMatchObject({ verdict: 'does not meet', text: expect.stringMatching(bad) });
    expect(at(undefined)).toMatchObject({ verdict: 'not shown', text: expect.stringMatching(open) });
    expect(pointIn(quiet(), name, { [path]: undefined })).toBeUndefined();
    expect(pointIn(quiet(), name, { [path]: false })?.verdict).toBe('does not meet');
  });

  it('ask for a name under every hold point before the return, and for none under work', () => {
    const design = sealed();
    const holds = design.timeline.steps.filter(({ sort }) => sort === 'hold point').map(({ id }) => id);
    const asked = holds.filter((id) => id !== 'return');
    expect(asked.length).toBeGreaterThan(8);
    expect(pointIn(design, 'signatures', { signed: undefined })?.text).toBe(
      `nobody has signed by name: ${asked.join(', ')}`,
    );
    const signed = asked.map((holdPoint) => ({ holdPoint, by: 'A. Inspector' }));
    expect(pointIn(design, 'signatures', { signed })?.verdict).toBe('meets');
    for (const by of ['  ', '?', '-', 'n/a', 'nobody']) {
      const blank = signed.map((each, index) => (index === 0 ? { ...each, by } : each));
      expect(pointIn(design, 'signatures', { signed: blank })?.text).toBe(`nobody has signed by name: ${asked[0]}`);
    }
  });
});

describe('what a thin or short repair is good for', () => {
  // Thick enough that a ply less is more than the fewest.
  const strong = (changes: Paths = { 'acceptance.pressureTest': 'none' }): Designed =>
    madeOf(withPaths(quietLoss, { 'service.designPressure': '60 bar', ...changes }));
  const rated = (changes: Paths, design = strong()) =>
    compared(design, { pressureTest: undefined, ...changes }).goodFor;
  /** What the passes of the tape lay, and so many layers more. */
  const asWound = ({ wrap }: Designed, more = 0): Paths => ({
    layers: wrap.layers + more,
    thickness: (wrap.layers + more) * 0.8e-3,
  });
  const thin = (design: Designed): Paths => ({
    layers: design.laminate.plies - 1,
    thickness: design.laminate.thickness.value * 0.8,
  });

  it('is nothing that anybody states while something else is against it, which is named', () => {
    const { pressure, because } = rated({ ...thin(strong()), cure: undefined, 'steel.isFreeOfOil': false }) ?? {};
    expect(pressure).toBeUndefined();
    expect(because?.text).toMatch(/while these do not meet: steel, cure$/u);
  });

  it.each(['layers', 'thickness', 'leastOverlap'])('is not stated where it was not measured: %s', (path) => {
    const rating = rated({ length: 0.1, [path]: undefined });
    expect(rating?.pressure).toBeUndefined();
    expect(rating?.because.text).toMatch(/have to be measured/u);
  });

  it('is in proportion to the thickness along the hoop line, and names what governs', () => {
    const design = strong();
    const { value, governing } = design.laminate.resistance;
    const measured = design.laminate.laidThickness * 0.85;
    const rating = rated({ ...thin(design), thickness: measured });
    expect(rating?.because.text).toMatch(new RegExp(`^governed by ${governing}`, 'u'));
    expect((rating?.pressure ?? 0) / value).toBeCloseTo(0.85, 6);
  });

  it('gives no credit for plies that are thicker than those of the system', () => {
    const design = strong();
    const { laminate, case: stated } = design;
    const ply = stated.laminate.plyThickness;
    // The fibre of one ply less, in as much resin again as makes up the whole thickness.
    const few = { layers: laminate.plies - 1, thickness: (laminate.plies - 1) * ply };
    const rating = (changes: Paths) => rated({ ...few, ...changes }, design)?.pressure ?? Number.NaN;
    const alone = rating({});
    expect(alone).toBeGreaterThan(0);
    expect(rating({ thickness: few.thickness * 1.2, plyThickness: ply * 1.2 })).toBeCloseTo(alone, 3);
    // As thick as planned, but of plies that are thicker: so many fewer of them lie there than were counted.
    expect(rating({ plyThickness: ply * 1.2 })).toBeLessThan(alone);
  });

  it('goes by the shorter one of the overlap that was measured and the one that the length leaves', () => {
    const design = strong();
    const needed = design.extent.overlap.value;
    const full = design.extent.totalLength;
    const pressure = (leastOverlap: number, length: number | undefined) =>
      rated({ ...thin(design), leastOverlap, length }, design)?.pressure ?? Number.NaN;
    const enough = pressure(needed, undefined);
    expect(pressure(needed, full)).toBeCloseTo(enough, 6);
    expect(pressure(needed, full - 0.06)).toBeLessThan(enough);
    expect(pressure(needed - 0.03, full)).toBeCloseTo(pressure(needed, full - 0.06), 3);
    expect(pressure(needed - 0.03, undefined)).toBeCloseTo(pressure(needed - 0.03, full), 6);
    expect(pressure(needed + 0.05, full)).toBeCloseTo(enough, 6);
  });

  it('gives no credit on a short overlap for layers beyond the plan', () => {
    const design = strong({ 'service.designPressure': '45 bar', 'acceptance.pressureTest': 'none' });
    const on = (more: number) =>
      rated({ leastOverlap: 0.06, length: undefined, ...asWound(design, more) }, design)?.pressure ?? Number.NaN;
    expect(on(0)).toBeGreaterThan(0);
    expect(on(1)).toBeLessThanOrEqual(on(0));
  });

  it('falls with the overlap to the least of which anything is known, and ends there', () => {
    const at = (leastOverlap: number) => rated({ leastOverlap, length: undefined });
    expect(at(0.025)?.pressure).toBeGreaterThan(0);
    expect(at(0.0249)?.pressure).toBeUndefined();
    expect(at(0.0249)?.because.text).toMatch(/shorter than the least/u);
  });

  const bonded = (axialForce: string, leastOverlap: number) => {
    const design = madeOf(
      withPaths(quietLoss, {
        'service.designPressure': '60 bar',
        'acceptance.pressureTest': 'none',
        'loads.axialForce': axialForce,
        'loads.freeSpan': '3 m',
        'laminate.lapShearStrength': '5 MPa',
      }),
    );
    return rated({ leastOverlap, length: undefined, ...asWound(design) }, design);
  };

  it('is what the bond on the overlap holds beside a stated force, pull or push, where that is less', () => {
    // pi D l tau / 3 carries the end load and the stated force.
    const D = 0.1683;
    const held = (Math.PI * D * 0.0251 * 5e6) / 3;
    for (const [stated, force] of [
      ['none', 0],
      ['10 kN', 10e3],
      ['-10 kN', 10e3],
    ] as const) {
      const rating = bonded(stated, 0.0251);
      expect(rating?.because.text).toMatch(/^governed by the bond on the overlap/u);
      expect((rating?.pressure ?? 0) / ((held - force) / ((Math.PI / 4) * D * D))).toBeCloseTo(1, 6);
    }
    expect(bonded('none', 0.035)?.because.text).toMatch(/^governed by hoop strain/u);
  });

  it('is nothing where bond or laminate does not even carry the stated force', () => {
    const byBond = bonded('22.5 kN', 0.0251);
    expect(byBond?.pressure).toBeUndefined();
    expect(byBond?.because.text).toMatch(/does not carry the axial force/u);
    const byStrain = bonded('30 kN', 0.0251);
    expect(byStrain?.pressure).toBeUndefined();
    expect(byStrain?.because.text).toMatch(/^rating: external force is \{0\}/u);
    expect(byStrain?.because.amounts?.[0]?.value).toBe(30e3);
  });
});

describe('the wall as the prepared steel shows it', () => {
  it('is never more than the pipe was made with', () => {
    const { wallThickness } = quiet().case.pipe;
    expect(pointIn(quiet(), 'wall', { 'survey.leastWall': wallThickness * 1.01 })?.text).toContain('was made with');
  });
});

describe('the pressure test of a thin or short repair', () => {
  const untested = madeOf(
    withPaths(quietLoss, { 'service.designPressure': '60 bar', 'acceptance.pressureTest': 'none' }),
  );
  const design = madeOf(withPaths(quietLoss, { 'service.designPressure': '60 bar' }));
  const short = { leastOverlap: 0.03, length: undefined };
  const { pressure: planned } = design.acceptance.pressureTest;
  const alone = compared(untested, { ...short, pressureTest: undefined }).goodFor?.pressure ?? Number.NaN;
  const at = (bar: number, changes: Paths = {}, of = design) =>
    compared(of, {
      ...short,
      'pressureTest.lowestPressure': bar * 1e5,
      'pressureTest.highestPressure': bar * 1e5,
      ...changes,
    }).goodFor;

  it('leaves nothing to rate where it went above what was laid resists, however well that stood it', () => {
    const { pressure, because } = at(planned / 1e5) ?? {};
    expect(alone).toBeGreaterThan(0);
    expect(pressure).toBeUndefined();
    expect(because?.text).toMatch(/the test went to \{0\}, above \{1\}, what the laminate resists as it was laid/u);
    expect(because?.amounts?.[0]?.value).toBeCloseTo(planned, 3);
    const limit = because?.amounts?.[1]?.value ?? Number.NaN;
    expect(limit).toBeLessThan(planned);
    // On either side of that limit.
    expect(at(limit / 1e5)?.pressure).toBeGreaterThan(0);
    expect(at((limit / 1e5) * 1.0001)?.pressure).toBeUndefined();
    const once = { 'pressureTest.highestPressure': limit * 1.0001 };
    expect(at(10, once)?.pressure).toBeUndefined();
    expect(at(limit / 1e5, {}, untested)?.pressure).toBeCloseTo(alone, 3);
    expect(at((limit / 1e5) * 1.0001, {}, untested)?.pressure).toBeUndefined();
    // A test that nobody asked for bounds nothing but by what it strained.
    expect(at(10, {}, untested)?.pressure).toBeCloseTo(alone, 3);
  });

  it('bears out no more than it was, by the factor between a test and its design pressure', () => {
    const factor = planned / 60e5;
    expect(factor).toBeGreaterThan(1);
    expect(at(10)?.pressure).toBeCloseTo(10e5 / factor, 3);
    expect(at(10)?.because.text).toMatch(/^governed by the pressure of its test/u);
    const gas = { 'acceptance.pressureTest.medium': 'gas', 'acceptance.pressureTest.liquid': undefined };
    const withGas = madeOf(withPaths(quietLoss, { 'service.designPressure': '60 bar', ...gas }));
    expect(at(10, {}, withGas)?.pressure).toBeCloseTo(10e5 / factor, 3);
  });

  it('has to be made before anything is rated, and says how high it may go', () => {
    const { pressure, because } = at(10, { pressureTest: undefined }) ?? {};
    expect(pressure).toBeUndefined();
    expect(because?.text).toMatch(/before its test, and that may not go above \{0\}/u);
    const most = because?.amounts?.[0]?.value ?? Number.NaN;
    expect(at(most / 1e5)?.pressure).toBeGreaterThan(0);
  });

  it.each<[string, Paths]>([
    ['leaked', { 'pressureTest.leak': 'at the repair' }],
    ['fell', { 'pressureTest.fall': 'undecided' }],
    ['was held too short', { 'pressureTest.hold': 60 }],
    ['went nobody knows how high', { 'pressureTest.highestPressure': undefined }],
  ])('bears out nothing where it %s', (_, changes) => {
    const { pressure, because } = at(10, changes) ?? {};
    expect(pressure).toBeUndefined();
    expect(because?.text).toMatch(/while these do not meet: pressure test$/u);
  });
});

describe('a point that several things are against', () => {
  it('says all of them and shows the first number', () => {
    const { pressure } = quiet().acceptance.pressureTest;
    const both = { 'pressureTest.leak': 'at the repair', 'pressureTest.highestPressure': 3 * pressure };
    const point = pointIn(quiet(), 'pressure test', both);
    expect(point?.verdict).toBe('does not meet');
    expect(point?.found?.value).toBe(3 * pressure);
    expect(point?.shortfall?.value).toBeGreaterThan(pressure);
    expect(point?.text).toMatch(/leak/iu);
    expect(point?.text).toMatch(/look the whole length over/u);
  });

  it('shows no number where none is short', () => {
    expect(pointIn(quiet(), 'surface', { inspection: undefined })).toStrictEqual({
      point: 'surface',
      verdict: 'not shown',
      text: 'The surface was not inspected.',
    });
  });
});
