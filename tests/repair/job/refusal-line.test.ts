import { describe, expect, it } from 'vitest';
import { timeAtTemperature } from '../../../src/cure/index.js';
import { attempt, type CalculationError } from '../../../src/formula/index.js';
import {
  activationEnergy,
  force,
  gauge,
  length,
  stress,
  temperature,
  thermalExpansion,
  time,
} from '../../../src/quantity/index.js';
import { designRepair, type RepairCase } from '../../../src/repair/index.js';
import { refusalLine } from '../../../src/repair/job/refusal-line.js';
import { iso24817 } from '../../../src/rules/index.js';
import { atWork, leaking, partWall } from '../example-case.js';

/** What a calculation refuses, as a reason of the design: a sentence, and its numbers in the unit of choice. */

const changed = <S extends 'pipe' | 'service' | 'defect' | 'laminate' | 'repair' | 'loads'>(
  section: S,
  fields: Partial<RepairCase[S]>,
  base: RepairCase = partWall,
): RepairCase => ({ ...base, [section]: { ...base[section], ...fields } });

const { filler } = partWall;
if (filler === 'none') throw new Error('no filler');
const byHoles = (diameters: readonly number[], megapascals: readonly number[]): RepairCase => {
  const holeTests = diameters.map((diameter, index) => ({
    holeDiameter: length.mm(diameter),
    laminateThickness: length.mm(6),
    pressure: gauge.MPa(megapascals[index] as number),
  }));
  return changed('laminate', { energyReleaseRate: undefined, holeTests }, leaking);
};
const nine = [10, 10, 10, 15, 15, 15, 25, 25, 25];
const reasonOf = (repairCase: RepairCase, words: string) => {
  const reason = designRepair(repairCase).reasons.find(({ text }) => text.includes(words));
  if (reason === undefined) throw new Error(`no such reason: ${words}`);
  return reason;
};

const narrowSheet: RepairCase = {
  ...partWall,
  wrap: { form: 'sheet', width: length.mm(60), rollLength: length.m(20) },
};
const onSharing = changed('repair', { method: 'substrate sharing load' });

describe('a reason from a calculation', () => {
  it.each([
    [
      'temperature',
      'down',
      'laminate: design temperature is {0}; must be at most the temperature of the long-term tests, {1}: above it they say nothing',
      changed(
        'laminate',
        {
          longTermStrength: {
            strength: stress.MPa(120),
            test: '1000 h survival',
            testTemperature: temperature.degC(40),
          },
        },
        changed('repair', { method: 'long-term strength' }),
      ),
      temperature.degC(50),
      temperature.degC(40),
    ],
    [
      'gauge pressure',
      'down',
      'live pressure is {0}; must be below {1}, which takes the remaining wall to its allowable stress',
      { ...changed('defect', { remainingWall: length.mm(4) }, onSharing), line: atWork(gauge.MPa(3.8)) },
      gauge.MPa(3.8),
      // 2 s t / D, round 4 mm of filler.
      (2 * 138e6 * 0.004) / (0.3239 + 2 * 0.004),
    ],
    [
      'number',
      'up',
      'sizes of hole in tests is {0}; must be at least {1}',
      byHoles(Array(9).fill(15), Array(9).fill(20)),
      1,
      3,
    ],
  ] as const)(
    'holds the value and the limit as a %s, the limit rounded %s',
    (kind, toward, said, repairCase, value, limit) => {
      const { text, amounts = [] } = reasonOf(repairCase, said);
      expect(text).not.toContain('(');
      expect(amounts).toMatchObject([{ kind }, { name: 'limit', kind, toward }]);
      expect(amounts[0]?.value).toBe(value);
      expect((amounts[1]?.value ?? Number.NaN) / limit).toBeCloseTo(1, 12);
    },
  );

  it('has a limit that has to be passed rounded up: a sheet as wide as on paper is wide enough', () => {
    const { amounts = [] } = reasonOf(narrowSheet, 'sheet width is {0}; must be more than {1}, the lap and twice');
    expect(amounts).toMatchObject([
      { kind: 'length', value: length.mm(60) },
      { kind: 'length', toward: 'up' },
    ]);
  });

  it('has a working time that is too short beside the time for mixing, which must be below it', () => {
    const cure = { ...filler.cure, workingTime: time.minute(2) };
    const { amounts = [] } = reasonOf(
      { ...partWall, filler: { ...filler, cure } },
      'mixing: mixing time is {0}; must be below',
    );
    expect(amounts).toMatchObject([
      { name: 'mixing time', kind: 'time' },
      { kind: 'time', toward: 'down' },
    ]);
  });

  it('names its source, and holds a strain as one', () => {
    const expands = changed('laminate', { hoopExpansion: thermalExpansion.perK(120e-6) });
    const { text, amounts } = reasonOf(expands, 'allowable hoop strain: default strain is {0}; must be above');
    expect(text).toMatch(/ \(after ISO 24817:2017, 7\.5\.5, as recalled\)$/u);
    const [, , last] = iso24817.defaultStrains.continuous[3].value;
    expect(amounts).toEqual([{ name: 'default strain', kind: 'strain', value: last?.hoop }]);
  });

  it('is all words where its number has a unit of its own, or is none', () => {
    const scattered = reasonOf(byHoles(nine, [60, 1, 1, 40, 1, 1, 1, 1, 1]), 'Pa of scatter');
    expect(scattered.text).toMatch(/tests is [\d.]+ Pa of scatter; must scatter less than [\d.]+ Pa of scatter/u);
    const named = {
      ...partWall,
      assessment: { designFactor: 0.72, method: 'effective area' },
    } as const;
    const refused = reasonOf(named, 'method is effective area; must be inside the limits of the method');
    expect([scattered.amounts, refused.amounts]).toEqual([[], []]);
  });

  it('has a stress as one, whose limit is above it', () => {
    const pulled = changed('loads', { axialForce: force.kN(800) }, onSharing);
    const reason = reasonOf(
      { ...pulled, line: atWork(gauge.MPa(3.9)) },
      'allowable stress is {0}; must be above {1}, which the pipe bears already',
    );
    expect(reason.amounts).toMatchObject([
      { kind: 'stress', value: stress.MPa(138) },
      { kind: 'stress', toward: 'up' },
    ]);
  });

  it('goes by what stands before the limit: what is said behind it of colder steel turns nothing round', () => {
    const stalled = attempt(() =>
      timeAtTemperature({
        mechanism: 'two-part reaction',
        time: time.hour(24),
        referenceTemperature: temperature.degC(23),
        temperature: temperature.degC(5),
        activationEnergy: activationEnergy.kJPerMol(55),
        minimumTemperature: temperature.degC(10),
        testedFrom: temperature.degC(10),
        testedTo: temperature.degC(40),
      }),
    );
    if (stalled.ok) throw new Error('cured below its minimum temperature');
    const { amounts = [] } = refusalLine('cure', stalled.refusal as CalculationError);
    expect(amounts[1]).toEqual({ name: 'limit', kind: 'temperature', value: temperature.degC(10), toward: 'up' });
  });
});
