import { describe, expect, it } from 'vitest';
import { corrosionRate, density, length, temperature, time } from '../../../src/quantity/index.js';
import { designRepair, type NeighbouringLoss, type RepairCase } from '../../../src/repair/index.js';
import { leaking, partWall } from '../example-case.js';

/** A design says each thing once, and nothing that it has to say is lost beside another that is alike. */

const changed = <S extends 'defect' | 'loads' | 'site'>(section: S, fields: Partial<RepairCase[S]>): RepairCase => ({
  ...partWall,
  [section]: { ...partWall[section], ...fields },
});

describe('a warning', () => {
  const neighbour = (gapAlong: number): NeighbouringLoss => ({
    cause: 'external corrosion',
    gapAlong: length.mm(gapAlong),
    gapRound: length.mm(0),
    axialLength: length.mm(40),
    circumferentialWidth: length.mm(30),
    remainingWall: length.mm(6),
  });
  const ofNeighbours = (...gaps: number[]) =>
    designRepair(changed('defect', { neighbours: gaps.map(neighbour) })).warnings.filter(({ text }) =>
      text.startsWith('A neighbouring loss lies {0}'),
    );

  it('is given of each neighbour that the laminate does not reach, with its own distance', () => {
    const gaps = ofNeighbours(600, 900).map(({ amounts = [] }) => amounts.map(({ value }) => value));
    expect(gaps).toEqual([[length.mm(600)], [length.mm(900)]]);
  });

  it('holds its words, its amounts and its step, and no clause where none is behind it', () => {
    const amounts = [{ name: 'gap along the pipe', kind: 'length', value: length.mm(600) }];
    const [{ text, ...rest } = { text: '' }] = ofNeighbours(600);
    expect(text).toContain('needs a case of its own');
    expect(rest).toStrictEqual({ amounts, step: 'return' });
  });

  it.each<[string, RepairCase]>([
    [
      'soil, by each method that is tried',
      changed('loads', {
        soil: { cover: length.m(1), density: density.kgPerM3(1900), waterAbove: 'none', traffic: 'none' },
      }),
    ],
    [
      'a flow stress, today and at the end of the life',
      {
        ...changed('defect', { growth: { depth: corrosionRate.mmPerYear(0.02), length: corrosionRate.mmPerYear(0) } }),
        assessment: { designFactor: 0.72, flowStress: 'SMYS + 69 MPa' },
      },
    ],
  ])('is given once: %s', (_, repairCase) => {
    const said = designRepair(repairCase).warnings.map((each) => JSON.stringify(each));
    expect(said.filter((each, place) => said.indexOf(each) !== place)).toEqual([]);
    expect(said.some((each) => /soil presses|flow stress is/u.test(each))).toBe(true);
  });

  it('stands at both steps where two materials of one name cure outside what their maker tested', () => {
    const { filler, laminate } = partWall;
    if (filler === 'none') throw new Error('no filler');
    const untested = { testedFrom: temperature.degC(22) };
    const design = designRepair({
      ...partWall,
      filler: { ...filler, name: 'epoxy', cure: { ...filler.cure, ...untested } },
      laminate: { ...laminate, name: 'epoxy', cure: { ...laminate.cure, ...untested } },
    });
    const steps = design.warnings.flatMap(({ text, step }) => (text.startsWith('The cure of epoxy') ? [step] : []));
    expect(steps).toEqual(['filler-wait', 'cure']);
  });
});

describe('a missing input', () => {
  it('is asked for once, though both materials wait for it', () => {
    const history = [{ duration: time.hour(1), temperature: temperature.degC(20) }];
    const { missing } = designRepair(changed('site', { history }));
    expect(missing.filter(({ field }) => field === 'site.history')).toHaveLength(1);
  });
});

describe('a value from a table', () => {
  it('is listed as assumed, with its number', () => {
    const amount = { name: 'outside diameter of the size', kind: 'length', value: length.mm(323.9) } as const;
    const said = { tag: 'published', because: 'the size that the case names' } as const;
    const { assumed } = designRepair({ ...partWall, lookedUp: [{ ...amount, ...said }] });
    expect(assumed[0]).toStrictEqual({ amount, ...said });
  });
});

describe('the cautions', () => {
  const leakSeal = (repairCase: RepairCase) =>
    designRepair(repairCase).cautions.some((text) => text.startsWith('A leak seal gives no axial strength'));
  const growing = { depth: corrosionRate.mmPerYear(0.3), length: corrosionRate.mmPerYear(0) };

  it('are those of a leak where the pipe leaks today or by the end of the life, and not on a wall that lasts', () => {
    expect(leakSeal(leaking)).toBe(true);
    expect(leakSeal(changed('defect', { growth: growing, holeAtEndOfLife: length.mm(20) }))).toBe(true);
    expect(leakSeal(partWall)).toBe(false);
  });

  it('are those of a leak also where the pipe is not covered', () => {
    const material = { ...leaking.pipe.material, name: 'cast iron' };
    const notCovered = { ...leaking, pipe: { ...leaking.pipe, material } };
    expect(designRepair(notCovered).verdict).toBe('not covered');
    expect(leakSeal(notCovered)).toBe(true);
  });
});
