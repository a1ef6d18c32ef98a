import { describe, expect, it } from 'vitest';
import { force, type Length, length, mass, moment } from '../../../src/quantity/index.js';
import { designRepair, type RepairCase } from '../../../src/repair/index.js';
import { designOf } from '../../faults/answers.js';
import { type CaseFile, loss, quietLoss, withPaths } from '../../faults/cases.js';
import { partWall } from '../example-case.js';

/** What is more often a slip than meant: warned of by its field with the number and what bounds it, refused where the case is held strictly. */

const wallThickness = length.mm(4);
/** A pipe so small that the loss is made smaller with it. */
const pipeOf = (size: { outsideDiameter?: Length; circumference?: Length }): RepairCase => ({
  ...partWall,
  pipe: { ...partWall.pipe, outsideDiameter: undefined, wallThickness, ...size },
  defect: { ...partWall.defect, circumferentialWidth: length.mm(20), remainingWall: length.mm(1.5) },
});
const loaded = (loads: Partial<RepairCase['loads']>): RepairCase => ({
  ...partWall,
  loads: { ...partWall.loads, ...loads },
});
const { resin } = partWall;
if (resin === 'none') throw new Error('no resin');
const kilograms = { ...partWall, resin: { ...resin, kitMass: mass.kg(2000) } };
const warnedOf = (repairCase: RepairCase) =>
  designRepair(repairCase).warnings.filter(({ field }) => field !== undefined);

describe('a number outside its usual span', () => {
  it('is warned of once with the span, and with what it would be without the slip', () => {
    const [warning, ...more] = warnedOf(kilograms);
    expect(more).toEqual([]);
    expect(warning?.field).toBe('resin.kitMass');
    expect(warning?.text).toBe(
      'resin.kitMass is {0}, outside the usual {1} to {2}; perhaps kg for g (then {3}), lb for g (then {4}).',
    );
    const kind = { name: 'resin.kitMass', kind: 'mass' };
    expect(warning?.amounts).toEqual([
      { ...kind, value: 2000, toward: 'up' },
      { ...kind, value: 0.02 },
      { ...kind, value: 50 },
      { ...kind, value: expect.closeTo(2, 9) },
      { ...kind, value: expect.closeTo(2 / 0.45359237, 9) },
    ]);
  });

  it.each<[string, RepairCase, string]>([
    ['a mass', kilograms, 'resin.kitMass is 2000 kg; must be within the usual 0.02 to 50'],
    [
      'a count',
      { ...partWall, laminate: { ...partWall.laminate, qualifiedPlies: 30 } },
      'laminate.qualifiedPlies is 30; must be within the usual 1 to 20',
    ],
    [
      'a plain number',
      { ...partWall, laminate: { ...partWall.laminate, poissonRatio: 0.01 } },
      'laminate.poissonRatio is 0.01; must be within the usual 0.02 to 0.6',
    ],
  ])('is refused strictly, in its unit: %s', (_, repairCase, said) => {
    expect(designRepair(repairCase).warnings).not.toEqual([]);
    expect(() => designRepair(repairCase, { strict: true })).toThrow(`${said} where a case is held strictly`);
  });
});

describe('a diameter near no size', () => {
  it('is warned of with the nearest, and with what the slip would make of it', () => {
    const radius = warnedOf(pipeOf({ outsideDiameter: length.mm(109.55) }));
    const kind = { name: 'pipe.outsideDiameter', kind: 'length' };
    expect(radius).toEqual([
      {
        field: 'pipe.outsideDiameter',
        text: 'pipe.outsideDiameter is {0}, not near a size of ASME B36.10M, of which NPS 4 is the nearest with {1}; perhaps the radius for the diameter (then {2}).',
        amounts: [
          { ...kind, value: length.mm(109.55) },
          { ...kind, value: length.mm(114.3) },
          { ...kind, value: length.mm(219.1) },
        ],
      },
    ]);
  });

  it('is warned of beside another number that is strange', () => {
    const both = { ...pipeOf({ outsideDiameter: length.mm(109.55) }), resin: kilograms.resin };
    expect(warnedOf(both).map(({ field }) => field)).toEqual(['resin.kitMass', 'pipe.outsideDiameter']);
  });

  it('is warned of by the circumference that it follows from', () => {
    const [warning, ...more] = warnedOf(pipeOf({ circumference: length.mm(185 * Math.PI) }));
    expect(more).toEqual([]);
    expect(warning?.field).toBe('pipe.circumference');
    const values = warning?.amounts?.slice(0, 2).map(({ name, value }) => [name, value / length.mm(185)]);
    expect(values).toEqual([
      ['pipe.circumference', expect.closeTo(Math.PI, 12)],
      ['pipe.circumference', expect.closeTo(1, 12)],
    ]);
  });

  it('is warned of once where it lies outside its usual span too', () => {
    const texts = (outsideDiameter: Length) => warnedOf(pipeOf({ outsideDiameter })).map(({ text }) => text);
    expect(texts(length.mm(19))).toEqual([expect.stringContaining('outside the usual')]);
  });

  it.each([
    [
      { outsideDiameter: length.mm(185) },
      'pipe.outsideDiameter is 0.185 m; must be near a size of ASME B36.10M, of which NPS 6 is the nearest, 0.1683 m',
    ],
    [
      { circumference: length.mm(580) },
      'pipe.circumference is 0.58 m; must go round a pipe near a size of ASME B36.10M, of which NPS 6 is the nearest, 0.1683 m',
    ],
  ])('is refused strictly: %j', (size, said) => {
    expect(() => designRepair(pipeOf(size), { strict: true })).toThrow(`${said} where a case is held strictly`);
  });
});

describe('a load far below what the pipe bears', () => {
  const { outsideDiameter: D = Number.NaN, wallThickness: t } = partWall.pipe;
  const yields = {
    force: Math.PI * t * (D - t) * 241e6,
    moment: ((Math.PI * (D ** 4 - (D - 2 * t) ** 4)) / (32 * D)) * 241e6,
  };
  const unit = { force: 'N for kN', moment: 'N m for kN m' };

  it.each([
    ['axialForce', 'force', { axialForce: force.N(1500) }, 1500],
    ['axialForce', 'force', { axialForce: force.N(-1500) }, -1500],
    ['shearForce', 'force', { shearForce: force.N(1500) }, 1500],
    ['bendingMoment', 'moment', { bendingMoment: moment.Nm(100) }, 100],
    ['torsion', 'moment', { torsion: moment.Nm(100) }, 100],
  ] as const)(
    'is warned of by its field with the loads that are worth stating: %s, %s %j',
    (name, kind, loads, value) => {
      const [warning, ...more] = warnedOf(loaded(loads));
      expect(more).toEqual([]);
      expect(warning?.field).toBe(`loads.${name}`);
      expect(warning?.text).toContain(`loads.${name} is {0}, outside {1} to {2}, from a thousandth of the load`);
      expect(warning?.text).toContain(unit[kind]);
      const side = Math.sign(value);
      const ends = [side * 1e-3 * yields[kind], side * yields[kind]].sort((a, b) => a - b);
      const [stated, ...span] = warning?.amounts ?? [];
      expect(stated).toEqual({ name: `loads.${name}`, kind, value });
      expect(span.slice(0, 2).map((amount) => amount.value / yields[kind])).toEqual(
        ends.map((end) => expect.closeTo(end / yields[kind], 12)),
      );
      expect(span.every((amount) => amount.kind === kind)).toBe(true);
      expect(() => designRepair(loaded(loads), { strict: true })).toThrow(
        `loads.${name} is ${value} ${kind === 'force' ? 'N' : 'N m'}; must lie within`,
      );
    },
  );

  it('is none of a load that is none, nor of one that the pipe feels', () => {
    expect(warnedOf(partWall)).toEqual([]);
    expect(warnedOf(loaded({ axialForce: force.kN(10), torsion: moment.kNm(1) }))).toEqual([]);
  });
});

describe('two numbers that may be swapped', () => {
  const soil = { cover: '1.4 m', density: '2000 kg/m3', waterAbove: '1 m', traffic: 'none' };
  const buried = { 'loads.soil': soil, 'pipe.cathodicProtection': 'none' };
  const warnedBy = (file: CaseFile, field: string) =>
    designOf(file).warnings.flatMap(({ field: of, text, amounts = [] }) =>
      of === field ? [{ text, values: amounts.map(({ value }) => value) }] : [],
    );

  it.each([
    ['resin.parts.hardener', 'resin.parts', loss, { base: 30, hardener: 100 }, [100, 30]],
    ['filler.parts.hardener', 'filler.parts', loss, { base: 25, hardener: 100 }, [100, 25]],
    ['loads.soil.waterAbove', 'loads.soil', withPaths(loss, buried), { ...soil, waterAbove: '1.5 m' }, [1.5, 1.4]],
  ])('are warned of with both: %s', (field, path, file, swapped, values) => {
    expect(warnedBy(file, field)).toEqual([]);
    expect(warnedBy(withPaths(file, { [path]: swapped }), field)).toEqual([
      { text: expect.stringContaining('they may be swapped'), values },
    ]);
  });

  it.each([
    ['one to one', loss, { 'resin.parts': { base: 50, hardener: 50 } }, 'resin.parts.hardener'],
    ['a line without filler or resin', quietLoss, { resin: 'none' }, 'resin.parts.hardener'],
    ['water to the surface', withPaths(loss, buried), { 'loads.soil.waterAbove': '1.4 m' }, 'loads.soil.waterAbove'],
    ['no ground water', withPaths(loss, buried), { 'loads.soil.waterAbove': 'none' }, 'loads.soil.waterAbove'],
  ])('are no slip: %s', (_, file, changes, field) => {
    expect(warnedBy(withPaths(file, changes), field)).toEqual([]);
  });
});
