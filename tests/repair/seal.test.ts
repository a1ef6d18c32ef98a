import { describe, expect, it } from 'vitest';
import { gauge, length, speed } from '../../src/quantity/index.js';
import { designRepair, planWork, type RepairCase, type Seal } from '../../src/repair/index.js';
import { leaking, sealed } from './example-case.js';

const seal = sealed.seal as Seal;
const withSeal = (change: Partial<Seal>): RepairCase => ({ ...sealed, seal: { ...seal, ...change } });

describe('the leak seal', () => {
  const design = designRepair(sealed);

  it('is part of the design of a leak', () => {
    expect(design.verdict).toBe('designed');
    expect(design.seal?.padDiameter).toBeCloseTo(0.055, 12); // 5 mm and 25 mm on every side
    expect(design.seal?.padGovernedBy).toBe('margin');
  });

  it('counts the pressure on the whole wetted pad', () => {
    const hand = 0.5e5 * (Math.PI / 4) * 0.055 ** 2;
    expect(design.seal?.forceOnPad).toBeCloseTo(hand, 9);
    expect(design.seal?.forceOnHole).toBeCloseTo(0.5e5 * (Math.PI / 4) * 0.005 ** 2, 9);
  });

  it('may never be attempted above the limit of the site', () => {
    expect(design.seal?.highestPressure).toBeLessThanOrEqual(seal.siteLimit);
    const lower = designRepair(withSeal({ siteLimit: gauge.bar(0.3) }));
    expect(lower.verdict).toBe('not repairable');
    expect(lower.reasons[0]?.text).toContain('site');
    expect(lower.reasons[0]?.limit?.value).toBe(gauge.bar(0.3));
  });

  it('is limited by the weakest of strap, fastener, sheet and pipe', () => {
    const weak = designRepair(withSeal({ band: { ...seal.band, thickness: length.mm(0.05) } }));
    expect(weak.seal?.limitedBy ?? weak.reasons[0]?.text).toContain('strap');
  });

  it('refuses gas and hazardous contents without a written procedure', () => {
    const toxic: RepairCase = { ...sealed, service: { ...sealed.service, hazards: ['toxic'] } };
    expect(designRepair(toxic).verdict).toBe('not repairable');
    expect(designRepair(toxic).reasons[0]?.text).toContain('written procedure');
    const written = { ...toxic, seal: { ...seal, writtenProcedure: 'WP-17' } };
    expect(designRepair(written).verdict).toBe('designed');
  });

  it('says that it carries no end load', () => {
    const { outsideDiameter } = sealed.pipe;
    const hand = 1e6 * (Math.PI / 4) * (outsideDiameter as number) ** 2;
    expect(design.seal?.endLoadNotCarried).toBeCloseTo(hand, 6);
    expect(design.cautions.some((text) => text.includes('no axial strength'))).toBe(true);
  });

  it('warns when the case does not say how the leak is held', () => {
    expect(designRepair(leaking).warnings.some(({ text }) => text.includes('how the leak is held'))).toBe(true);
  });

  it('needs no torque in a line without pressure', () => {
    const empty = designRepair(withSeal({ linePressure: gauge.bar(0) }));
    expect(empty.verdict).toBe('designed');
    expect(empty.seal?.torque).toBeUndefined();
  });

  it('is planned at the pressure that its torque is for, also where the parts could carry more', () => {
    expect(design.seal?.highestPressure).toBeGreaterThan(seal.linePressure);
    const planned = { ...sealed, crew: { layingSpeed: speed.mPerMin(1), crews: 1, start: '07:30' } };
    const work = planWork(designRepair(planned)).steps.find(({ id }) => id === 'seal');
    const pressures = JSON.stringify(work).match(/"gauge pressure","value":([\d.e]+)/g);
    expect(pressures?.length).toBeGreaterThan(0);
    for (const text of pressures ?? []) expect(Number(text.split(':').at(-1))).toBe(seal.linePressure);
  });
});
