import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { potLife, workingTime } from '../../src/cure/index.js';
import { gauge, type Length, length, mass, ratio, speed, temperature, time } from '../../src/quantity/index.js';
import { designRepair, planWork, type RepairCase, type RepairDesign } from '../../src/repair/index.js';
import { usableMass } from '../../src/resin/index.js';
import { partWall } from './example-case.js';
import { planned, waterTape } from './plan-cases.js';

const seeded = { seed: 20261125, numRuns: 200 };
const rollsOf = (repairCase: RepairCase) => {
  const { rolls } = designRepair(repairCase);
  if (rolls === undefined) throw new Error('no rolls');
  return rolls;
};
const tapeOf = ({ wrap }: RepairDesign) => {
  if (wrap?.form !== 'tape') throw new Error('no tape');
  return wrap;
};

describe('the rolls of a tape wrap', () => {
  const design = designRepair(planned);
  const rolls = rollsOf(planned);

  it('start and end as far from the centre as the wrap is long, at least the overlap and taper beyond the defect', () => {
    const { overallLength } = tapeOf(design);
    expect(rolls.end - rolls.start).toBeCloseTo(overallLength, 12);
    expect(rolls.start).toBeCloseTo(-overallLength / 2, 12);
    const { overlap, taper } = design.extent as NonNullable<RepairDesign['extent']>;
    expect(rolls.beforeDefect).toBeGreaterThanOrEqual(overlap.value + taper - 1e-12);
  });

  it('run to and fro, pass by pass', () => {
    expect(rolls.passes.map(({ direction }) => direction)).toEqual(
      rolls.passes.map((_, index) => (index % 2 === 0 ? 'forward' : 'back')),
    );
    for (const { direction, from, to } of rolls.passes)
      expect(Math.sign(to - from)).toBe(direction === 'forward' ? 1 : -1);
  });

  it('use up all the tape of the passes, each roll before the next', () => {
    const passes = rolls.passes.reduce((sum, { tapeLength }) => sum + tapeLength, 0);
    const laid = rolls.rolls.reduce((sum, { length: rollLength }) => sum + rollLength, 0);
    expect(laid).toBeCloseTo(passes, 9);
    for (const { length: rollLength } of rolls.rolls.slice(0, -1))
      expect(rollLength).toBeCloseTo(planned.wrap.rollLength, 12);
    expect(rolls.rolls.at(-1)?.endsAt).toBeCloseTo(rolls.passes.at(-1)?.to ?? Number.NaN, 9);
  });

  it('end where the tape that is laid by then has come', () => {
    // One roll per pass: the turns of the helix counted by hand, half of them laid puts the edge half way along.
    const { passes } = rolls;
    const first = passes[0];
    if (first === undefined) throw new Error('no pass');
    const half = rollsOf({ ...planned, wrap: { ...planned.wrap, rollLength: (first.tapeLength / 2) as Length } });
    const band = (first.to - first.from) / 2;
    expect(half.rolls[0]?.endsInPass).toBe(1);
    // Half of the tape: a closing turn and half of the helix, so the middle of the way the edge travels.
    const width = 0.1 / Math.cos(0) / Math.sqrt(1 - (0.05 / (Math.PI * 0.3327)) ** 2);
    expect(Math.abs((half.rolls[0]?.endsAt ?? 0) - (first.from + width + (2 * band - width) / 2))).toBeLessThan(1e-3);
  });

  it('all end together where the end bands make the taper, and step inwards where the taper is longer', () => {
    const thick = rollsOf({ ...planned, laminate: { ...planned.laminate, plyThickness: (0.0008 * 2.5) as Length } });
    const design = designRepair({
      ...planned,
      laminate: { ...planned.laminate, plyThickness: (0.0008 * 2.5) as Length },
    });
    const { totalLength, taper } = design.extent as NonNullable<RepairDesign['extent']>;
    const { fullCountLength, passes } = tapeOf(design);
    const free = Math.max(0, (fullCountLength - (totalLength - 2 * taper)) / 2);
    expect(thick.stagger).toBeCloseTo(passes < 2 ? 0 : free / (passes - 1), 12);
    const last = thick.passes.at(-1);
    expect(Math.abs((last?.to ?? 0) - (last?.from ?? 0))).toBeCloseTo(
      thick.end - thick.start - 2 * (passes - 1) * thick.stagger,
      12,
    );
  });

  it('have no times where no crew is stated, and change no verdict', () => {
    const without = rollsOf(partWall);
    expect(without.wrapTime).toBeUndefined();
    expect(without.fits).toBeUndefined();
    expect(designRepair(partWall).verdict).toBe('designed');
  });

  it('warn when the wrap begins less than 100 mm before the defect', () => {
    const short = designRepair({
      ...planned,
      pipe: { ...planned.pipe, outsideDiameter: length.mm(60.3), wallThickness: length.mm(3.91) },
      service: { ...planned.service, designPressure: gauge.MPa(1) },
      defect: {
        ...planned.defect,
        axialLength: length.mm(20),
        circumferentialWidth: length.mm(15),
        remainingWall: length.mm(2),
      },
      wrap: { ...planned.wrap, width: length.mm(20) },
    });
    const warns = ({ warnings }: RepairDesign): boolean =>
      warnings.some(
        ({ text, amounts }) =>
          text.includes('less than {0} before the defect') && amounts?.[0]?.value === length.mm(100),
      );
    const says = warns(short);
    expect(warns(designRepair(planned))).toBe(false);
    expect(says).toBe((short.rolls?.beforeDefect ?? 1) < 0.1);
    expect(says).toBe(true);
  });
});

describe('a roll that brings its own resin', () => {
  const atPace = (metres: number, crews = 1): RepairCase => ({
    ...waterTape,
    crew: { layingSpeed: speed.mPerMin(metres), crews, soakTime: time.minute(0.5), start: '07:30' },
  });

  it('takes soaking and laying; a helix is never divided, so that a second crew makes it no shorter', () => {
    expect(rollsOf(atPace(2)).chargeTime).toBeCloseTo(30 + (10 / 2) * 60, 9);
    expect(rollsOf(atPace(2, 2)).chargeTime).toBeCloseTo(30 + (10 / 2) * 60, 9);
    expect(rollsOf(atPace(2, 2)).wrapTime).toBe(rollsOf(atPace(2)).wrapTime);
  });

  const slow = rollsOf(atPace(0.2));

  it('does not fit when it takes longer than the working time at the warmest hour', () => {
    expect(slow.fits).toBe(false);
    const { cure } = waterTape.laminate;
    if (cure.mechanism !== 'two-part reaction') throw new Error('expected a reaction');
    const { workingTime: allowed } = workingTime({
      ...cure,
      time: cure.workingTime,
      // The warmest hour, and the error of the thermometer.
      temperature: temperature.degC(22.5),
    });
    expect(slow.workingTime).toBeCloseTo(allowed, 9);
    expect(slow.allowedTime).toBeCloseTo(0.8 * allowed, 9);
    expect(slow.chargeTime).toBeGreaterThan(allowed);
    expect(designRepair(atPace(0.2)).verdict).toBe('designed');
  });

  it('fits at the shorter length and on the cooler steel that are named, and not beyond', () => {
    const { longestCharge = 0 as Length, coolerThan } = slow.remedies ?? {};
    const withRoll = (rollLength: number) => ({
      ...atPace(0.2),
      wrap: { ...waterTape.wrap, rollLength: rollLength as Length },
    });
    expect(rollsOf(withRoll(longestCharge * 0.999)).fits).toBe(true);
    expect(rollsOf(withRoll(longestCharge * 1.001)).fits).toBe(false);
    expect(rollsOf(atPace(0.2, 9)).fits).toBe(false);
    const { cure } = waterTape.laminate;
    if (cure.mechanism !== 'two-part reaction' || coolerThan === undefined) throw new Error('expected a temperature');
    const behind = temperature.degC(temperature.inDegC(coolerThan) + 0.5);
    const at = workingTime({ ...cure, time: cure.workingTime, temperature: behind }).workingTime;
    expect((0.8 * at) / (slow.chargeTime ?? 0)).toBeCloseTo(1, 9);
  });

  it('names the first hour of the forecast that is cool enough, or none', () => {
    const { coolerThan, coolerHour } = slow.remedies ?? {};
    const cool = planned.site.forecast?.findIndex(
      ({ pipeTemperature, airTemperature }) => Math.max(pipeTemperature, airTemperature) <= (coolerThan ?? 0),
    );
    expect(coolerHour).toBe(cool === 1 ? time.hour(12) : cool === 0 ? 0 : undefined);
  });
});

describe('a sheet', () => {
  const sheet: RepairCase = { ...planned, wrap: { form: 'sheet', width: length.m(0.2), rollLength: length.m(20) } };

  it('is laid layer by layer in bands from end to end, each layer a step inside the one below', () => {
    const rolls = rollsOf(sheet);
    const { extent, laminate } = designRepair(sheet);
    const layers = new Set(rolls.passes.map(({ pass }) => pass));
    expect(layers.size).toBe(laminate?.plies);
    for (const layer of layers) {
      const bands = rolls.passes.filter(({ pass }) => pass === layer);
      const half = (extent?.totalLength ?? 0) / 2 - (layer - 1) * rolls.stagger;
      expect(bands[0]?.from).toBeCloseTo(-half, 12);
      expect(bands.at(-1)?.to).toBeCloseTo(half, 12);
      bands.slice(1).forEach((band, index) => {
        expect(band.from).toBeLessThan(bands[index]?.to ?? 0);
      });
    }
  });

  it('has one row a layer in the plan, which says where each of its bands begins', () => {
    const design = designRepair(sheet);
    const rows = planWork(design).steps.flatMap(({ id, does }) =>
      id === 'wrap' ? does.filter(({ text }) => /^Layer \d+: bands begin/.test(text)) : [],
    );
    expect(rows.length).toBe(design.laminate?.plies);
    rows.forEach(({ amounts = [] }, index) => {
      const bands = design.rolls?.passes.filter(({ pass }) => pass === index + 1) ?? [];
      expect(amounts.map(({ value }) => value)).toEqual(bands.flatMap(({ begins, width }) => [begins, width]));
    });
  });

  it('counts along the pipe only the plies that go through, and needs no more where one band reaches over all', () => {
    const { laminate } = designRepair(sheet);
    const whole = designRepair({ ...sheet, wrap: { form: 'sheet', width: length.m(3), rollLength: length.m(20) } });
    expect(whole.laminate?.joints).toBeUndefined();
    expect(laminate?.joints?.lostPlies).toBeGreaterThan(0);
    expect((laminate?.joints?.carryingPlies ?? 0) + (laminate?.joints?.lostPlies ?? 0)).toBe(laminate?.plies);
    expect(laminate?.plies).toBeGreaterThan(whole.laminate?.plies ?? Number.POSITIVE_INFINITY);
    expect(laminate?.resistance.value).toBeGreaterThanOrEqual(sheet.service.designPressure * (1 - 1e-9));
  });

  it('is refused where it is so narrow that every layer has a joint near every place', () => {
    const narrow = designRepair({ ...sheet, wrap: { form: 'sheet', width: length.mm(70), rollLength: length.m(20) } });
    expect(narrow.verdict).not.toBe('designed');
  });
});

describe('the wrap over its inputs', () => {
  it('takes no less tape with more overlap while layers and passes stay', () => {
    const span = fc.double({ min: 0.5, max: 0.66, noNaN: true });
    fc.assert(
      fc.property(span, span, (a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)].map((overlap) =>
          tapeOf(
            designRepair({
              ...partWall,
              wrap: { ...partWall.wrap, form: 'tape', width: length.m(0.1), overlap: ratio.fraction(overlap) },
            }),
          ),
        );
        expect(more?.passes).toBe(less?.passes);
        expect(more?.tapeLength).toBeGreaterThanOrEqual(less?.tapeLength ?? 0);
      }),
      seeded,
    );
  });

  it('loses no larger share of a smaller batch to gelling, at the pot life of that batch', () => {
    const { cure } = partWall.laminate;
    if (cure.mechanism !== 'two-part reaction' || partWall.resin === 'none') throw new Error('expected a reaction');
    const { rate } = partWall.resin;
    const lost = (mixedMass: number): number => {
      const { workingTime } = potLife({
        ...cure,
        time: cure.workingTime,
        temperature: temperature.degC(25),
        testedMass: mass.kg(0.5),
        batchMass: mass.kg(mixedMass),
      });
      return Math.max(0, 1 - usableMass({ placingRate: rate, workingTime, mixingTime: time.minute(5) }) / mixedMass);
    };
    const mixedMass = fc.double({ min: 0.5, max: 20, noNaN: true });
    fc.assert(
      fc.property(mixedMass, mixedMass, (a, b) => {
        expect(lost(Math.min(a, b))).toBeLessThanOrEqual(lost(Math.max(a, b)) + 1e-12);
      }),
      seeded,
    );
  });
});
