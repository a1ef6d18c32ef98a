import { describe, expect, it } from 'vitest';
import { energyReleaseRate, gauge, length, speed, temperature } from '../../src/quantity/index.js';
import { designRepair, type LineUnderPressure, planWork, type RepairCase, type Seal } from '../../src/repair/index.js';
import { present } from './by-use.js';
import { atWork, leaking, sealed } from './example-case.js';

const seal = sealed.seal as Seal;
const line = sealed.line as LineUnderPressure;
const withSeal = (change: Partial<Seal>): RepairCase => ({ ...sealed, seal: { ...seal, ...change } });

describe('the leak seal', () => {
  const design = designRepair(sealed);
  const part = present(design.seal);

  it('is part of the design of a leak', () => {
    expect(design.verdict).toBe('designed');
    expect(part.padDiameter).toBeCloseTo(0.055, 12); // 5 mm and 25 mm on every side
    expect(part.padGovernedBy).toBe('margin');
  });

  it('counts the pressure on the whole wetted pad', () => {
    const hand = 0.5e5 * (Math.PI / 4) * 0.055 ** 2;
    expect(part.forceOnPad).toBeCloseTo(hand, 9);
    expect(part.forceOnHole).toBeCloseTo(0.5e5 * (Math.PI / 4) * 0.005 ** 2, 9);
  });

  it('may never be attempted above the limit of the site', () => {
    expect(part.highestPressure).toBeLessThanOrEqual(seal.siteLimit);
    const lower = designRepair(withSeal({ siteLimit: gauge.bar(0.3) }));
    expect(lower.verdict).toBe('not repairable');
    expect(lower.reasons[0]?.text).toContain('site');
    expect(lower.reasons[0]?.limit?.value).toBe(gauge.bar(0.3));
  });

  it('is limited by the weakest of strap, fastener, sheet and pipe', () => {
    const weak = designRepair(withSeal({ band: { ...seal.band, thickness: length.mm(0.05) } }));
    expect(present(weak.seal).limitedBy).toBe('strap');
  });

  it('is never made by hand on hazardous contents, and names the written procedure that is missing besides', () => {
    const toxic: RepairCase = { ...sealed, service: { ...sealed.service, hazards: ['toxic'] } };
    expect(designRepair(toxic).verdict).toBe('not covered');
    expect(designRepair(toxic).reasons.some(({ text }) => text.includes('written procedure'))).toBe(true);
    const written = designRepair({ ...toxic, line: { ...line, writtenProcedure: 'WP-17' } });
    expect(written.verdict).toBe('not covered');
    expect(written.reasons.map(({ text }) => text)).toEqual([expect.stringContaining('device of the site')]);
  });

  it('says that it carries no end load', () => {
    const { outsideDiameter } = sealed.pipe;
    const hand = 1e6 * (Math.PI / 4) * (outsideDiameter as number) ** 2;
    expect(part.endLoadNotCarried).toBeCloseTo(hand, 6);
    expect(design.cautions.some((text) => text.includes('no axial strength'))).toBe(true);
  });

  it('is asked for where the leak is live: nothing is designed that does not say how it is held', () => {
    const { seal: _, ...unheld } = sealed;
    const asking = designRepair(unheld);
    expect(asking.verdict).toBe('needs input');
    expect(asking.missing).toMatchObject([{ field: 'seal', why: expect.stringContaining('how the leak is held') }]);
    expect(designRepair(leaking)).toMatchObject({ verdict: 'designed', seal: 'none' });
  });

  it('needs no torque in a line without pressure', () => {
    const empty = designRepair({ ...sealed, line: atWork(gauge.bar(0)) });
    expect(empty.verdict).toBe('designed');
    expect(present(empty.seal)).not.toHaveProperty('torque');
  });

  it('is planned at the pressure that its torque is for, also where the parts could carry more', () => {
    expect(part.highestPressure).toBeGreaterThan(line.pressure);
    const planned = { ...sealed, crew: { layingSpeed: speed.mPerMin(1), crews: 1, start: '07:30' } };
    const work = planWork(designRepair(planned)).steps.find(({ id }) => id === 'seal');
    const pressures = JSON.stringify(work).match(/"gauge pressure","value":([\d.e]+)/g);
    expect(pressures?.length).toBeGreaterThan(0);
    for (const text of pressures ?? []) expect(Number(text.split(':').at(-1))).toBe(line.pressure);
  });
});

describe('what the laminate is bonded to nothing on', () => {
  const footprintOf = (repairCase: RepairCase) => designRepair(repairCase).laminate?.footprint;
  const across = (size: number) => ({ sheet: { ...seal.sheet, across: length.mm(size) } });

  it('is the largest of hole, pad, sheet and collar', () => {
    expect(footprintOf(leaking)).toMatchObject({ under: 'hole', bonded: 'beside it' });
    expect(footprintOf(withSeal(across(20)))?.diameter).toBeCloseTo(0.055, 12);
    expect(footprintOf(withSeal(across(70)))?.diameter).toBe(length.mm(70));
    expect(footprintOf(withSeal({ ...across(70), collar: length.mm(90) }))?.diameter).toBe(length.mm(90));
  });

  it('reaches along the pipe as far as the bands that are left', () => {
    const band = { ...seal.band, width: length.mm(80), count: 2 };
    const left = footprintOf(withSeal({ band, bands: 'left' }));
    expect(left?.bonded).toBe('nowhere round the pipe');
    expect(left?.length).toBeCloseTo(0.16, 12);
    expect(footprintOf(withSeal({ band }))?.length).toBeCloseTo(0.055, 12);
  });

  it('asks for a collar that nobody mentions', () => {
    const { collar: _, ...silent } = seal;
    expect(designRepair({ ...sealed, seal: silent }).missing.map(({ field }) => field)).toEqual(['seal.collar']);
  });

  it('takes the lower energy where the one over a seal was found over a smaller one', () => {
    const found = (JPerM2: number): RepairCase => ({
      ...withSeal(across(80)),
      laminate: {
        ...sealed.laminate,
        energyReleaseRateOverSeal: {
          energyReleaseRate: energyReleaseRate.JPerM2(JPerM2),
          footprint: length.mm(60),
        },
      },
    });
    const thickness = (repairCase: RepairCase): number => {
      const candidates = designRepair(repairCase).laminate?.thickness.candidates ?? [];
      return candidates.find(({ criterion }) => criterion === 'leak through the hole')?.value ?? Number.NaN;
    };
    expect(thickness(found(400))).toBe(thickness(withSeal(across(80))));
    expect(thickness(found(100))).toBeGreaterThan(thickness(found(400)));
  });

  it('is measured by the crew, who take the bands off or leave them as designed', () => {
    const said = (repairCase: RepairCase): string => {
      const planned = { ...repairCase, crew: { layingSpeed: speed.mPerMin(1), crews: 1, start: '08:00' } };
      return JSON.stringify(planWork(designRepair(planned)).steps.find(({ id }) => id === 'putty'));
    };
    expect(said(sealed)).toContain('take the bands off');
    expect(said(sealed)).toContain('Measure what still covers the steel');
    // At 10 bar a ring that bonds nowhere takes more than a thin laminate.
    const low = { ...withSeal({ bands: 'left' }), service: { ...sealed.service, designPressure: gauge.bar(2) } };
    expect(said(low)).toContain('The bands stay');
  });

  it('warns where the putty alone would hold pressure', () => {
    const warned = (repairCase: RepairCase): boolean =>
      designRepair(repairCase).warnings.some(({ text }) => text.includes('putty alone'));
    expect(warned(sealed)).toBe(true);
    expect(warned(withSeal({ bands: 'left' }))).toBe(false);
    expect(warned({ ...sealed, line: { state: 'empty, dry, isolated, vented' } })).toBe(false);
  });
});

describe('the word about the contents', () => {
  const resisting = (change: object): RepairCase => ({
    ...sealed,
    laminate: {
      ...sealed.laminate,
      resists: { contents: 'Produced  water', temperature: temperature.degC(50), statedBy: 'a letter', ...change },
    },
  });
  const asked = (repairCase: RepairCase): string[] => designRepair(repairCase).missing.map(({ field }) => field);

  it('counts up to its temperature, for the contents by name, whatever their capitals and spaces', () => {
    expect(asked(resisting({}))).toEqual([]);
    expect(asked(resisting({ temperature: temperature.degC(49.9) }))).toEqual(['laminate.resists']);
    expect(asked(resisting({ contents: 'produced water with 5 % toluene' }))).toEqual(['laminate.resists']);
  });
});
