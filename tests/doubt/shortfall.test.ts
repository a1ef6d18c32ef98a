import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { valueAt } from '../../src/doubt/distribution.js';
import { firstOrder } from '../../src/doubt/first-order.js';
import { type Distribution, numericInputs, type Spread, shortfall } from '../../src/doubt/index.js';
import { simulate } from '../../src/doubt/simulate.js';
import { normalBelow } from '../../src/numeric/index.js';
import type { RepairCase } from '../../src/repair/index.js';
import { shortfallSheet } from '../../src/report/index.js';
import { partWall } from '../repair/example-case.js';
import { spreads, turning } from './spreads.js';

const stating = (inputs: Spread['inputs']): Spread => ({ dependence: 'none', inputs });
const pressure: Distribution = { shape: 'normal', mean: 3.8e6, standardDeviation: 2e5 };

describe('a linear limit state', () => {
  it('by simulation holds its closed form in the interval, and by the first-order method is it', () => {
    const slopes = [3, -4, 1];
    const size = Math.hypot(...slopes);
    for (const index of [0.5, 1.3, 2]) {
      const g = (u: readonly number[]) =>
        index * size + slopes.reduce((sum, slope, at) => sum + slope * (u[at] ?? 0), 0);
      const closed = normalBelow(-index);
      const { interval } = simulate((u) => ({ short: g(u) < 0 }), 3, { samples: 20_000, seed: 11, level: 0.99 });
      expect(interval.least).toBeLessThan(closed);
      expect(interval.most).toBeGreaterThan(closed);
      const found = firstOrder(g, 3);
      if (typeof found === 'string') throw new Error(found);
      expect(found.index).toBeCloseTo(index, 6);
      expect(found.shares.map((share) => share * size * size)).toEqual(
        [9, 16, 1].map((each) => expect.closeTo(each, 4)),
      );
    }
  });

  it('below which the middle lies has an index below nought', () => {
    const found = firstOrder((u) => -1 + (u[0] ?? 0), 1);
    expect(found).toMatchObject({ index: expect.closeTo(-1, 6), probability: expect.closeTo(normalBelow(1), 6) });
  });
});

describe('the first-order method', () => {
  it('finds the nearest point of a curve', () => {
    // A parabola whose vertex is its nearest point.
    const found = firstOrder((u) => 2 + 0.1 * (u[1] ?? 0) ** 2 - (u[0] ?? 0), 2);
    expect(found).toMatchObject({ index: expect.closeTo(2, 5) });
  });

  it('says in words where it finds none', () => {
    expect(firstOrder(() => undefined, 1)).toContain('not known');
    expect(firstOrder(() => 1, 1)).toContain('no stated input');
  });
});

describe('a distribution', () => {
  const all: readonly Distribution[] = [
    { shape: 'normal', mean: 5, standardDeviation: 2 },
    { shape: 'lognormal', mean: 5, standardDeviation: 2 },
    { shape: 'uniform', least: 2, most: 9 },
    { shape: 'Weibull minimum', location: 1, scale: 4, exponent: 2 },
  ];

  it.each(all.map((each) => [each.shape, each] as const))('%s rises with its place', (_, distribution) => {
    const at = valueAt('x', distribution);
    fc.assert(
      fc.property(fc.double({ min: -6, max: 6, noNaN: true }), (u) => {
        expect(at(u + 0.01)).toBeGreaterThan(at(u));
      }),
      { seed: 20261125, numRuns: 100 },
    );
  });

  it('has the mean and the deviation that it states, by sums over its places', () => {
    const moments = (distribution: Distribution) => {
      const at = valueAt('x', distribution);
      const [count, width] = [20_000, 16];
      let [mass, mean, square] = [0, 0, 0];
      for (let i = 0; i < count; i += 1) {
        const u = ((i + 0.5) / count - 0.5) * width;
        const weight = Math.exp((-u * u) / 2);
        mass += weight;
        mean += weight * at(u);
        square += weight * at(u) ** 2;
      }
      return [mean / mass, Math.sqrt(square / mass - (mean / mass) ** 2)];
    };
    const close = (...values: number[]) => values.map((value) => expect.closeTo(value, 5));
    expect(moments(all[0] as Distribution)).toEqual(close(5, 2));
    expect(moments(all[1] as Distribution)).toEqual(close(5, 2));
    expect(moments(all[2] as Distribution)).toEqual(close(5.5, 7 / Math.sqrt(12)));
    // Mean and variance of the Weibull distribution with exponent 2: Gamma(3/2) and 1 - pi/4 of the square of the scale.
    expect(moments(all[3] as Distribution)).toEqual(close(1 + 2 * Math.sqrt(Math.PI), 4 * Math.sqrt(1 - Math.PI / 4)));
  });

  it.each<[what: string, distribution: object]>([
    ['a deviation of nought', { shape: 'normal', mean: 1, standardDeviation: 0 }],
    ['a lognormal mean below nought', { shape: 'lognormal', mean: -1, standardDeviation: 1 }],
    ['ends out of order', { shape: 'uniform', least: 2, most: 2 }],
    ['an exponent of nought', { shape: 'Weibull minimum', location: 0, scale: 1, exponent: 0 }],
    ['a mean that is none', { shape: 'normal', mean: Number.NaN, standardDeviation: 1 }],
    ['a shape that nobody knows', { shape: 'triangle', least: 0, most: 1 }],
  ])('is refused for %s', (_, distribution) => {
    expect(() => shortfall(partWall, stating({ 'service.designPressure': distribution as never }))).toThrow(
      'service.designPressure',
    );
  });
});

describe('the chance to fall short', () => {
  it.each(spreads)('is the same by both methods for %s', (_, repairCase, inputs) => {
    const { simulation, firstOrder: byTangent } = shortfall(repairCase, stating(inputs), { samples: 2000 });
    expect(simulation.refused).toBe(0);
    expect(simulation.short).toBeGreaterThan(5);
    expect(byTangent.agrees).toBe(true);
  });

  it('is the same by both methods where another criterion governs than in the case as stated', () => {
    const [repairCase, inputs] = turning;
    const found = shortfall(repairCase, stating(inputs), { samples: 4000 });
    expect(found.stated.governing).toBe('hoop strain, substrate ignored');
    expect(found.firstOrder.governing).toBe('leak through the hole');
    expect(Object.keys(found.simulation.shortBy)).toEqual(['leak through the hole']);
    expect(found.firstOrder.agrees).toBe(true);
    expect(shortfallSheet(found).replaceAll(/\s+/gu, ' ')).toContain('Another criterion governs there');
  });

  it('is the closed form where the pressure alone is spread', () => {
    const { stated, firstOrder: found } = shortfall(partWall, stating({ 'service.designPressure': pressure }), {
      samples: 100,
    });
    const index = (stated.resistance - 3.8e6) / 2e5;
    expect(found.index).toBeCloseTo(index, 4);
  });

  it('says where the two do not agree: a step of the strains that the tangent does not see', () => {
    // Above 26 GPa the axial modulus is less than half of that, and the column of the strains another.
    const inputs = { 'laminate.hoopModulus': { shape: 'normal', mean: 24.5e9, standardDeviation: 1e9 } } as const;
    const found = shortfall(partWall, stating(inputs), { samples: 1000 });
    expect(found.simulation.shortBy['axial strain, substrate ignored']).toBeGreaterThan(20);
    expect(found.firstOrder.agrees).toBe(false);
    expect(shortfallSheet(found)).toMatch(/does\s+not\s+lie\s+in\s+the\s+interval/u);
  });

  it('counts as short what nobody can tell, and says why', () => {
    const inputs = { 'defect.remainingWall': { shape: 'normal', mean: 0.008, standardDeviation: 0.001 } } as const;
    const { simulation } = shortfall(partWall, stating(inputs), { samples: 300 });
    expect(simulation.refused).toBeGreaterThan(50);
    expect(simulation.short).toBe(simulation.refused);
    expect(simulation.because).toContain('defect.remainingWall');
  });

  it('gives the same answer for the same seed', () => {
    const ask = (seed: number) =>
      shortfall(partWall, stating({ 'service.designPressure': pressure }), { samples: 300, seed }).simulation.short;
    expect(ask(5)).toBe(ask(5));
    expect(new Set([ask(5), ask(6), ask(7), ask(8)]).size).toBeGreaterThan(1);
  });

  it('writes none beside every input that has no distribution', () => {
    const found = shortfall(partWall, stating({ 'service.designPressure': pressure, 'laminate.hoopModulus': 'none' }), {
      samples: 20,
    });
    expect(found.inputs.map(({ path }) => path)).toEqual(numericInputs(partWall).map(({ path }) => path));
    const stated = found.inputs.filter(({ distribution }) => distribution !== 'none').map(({ path }) => path);
    expect(stated).toEqual(['service.designPressure']);
    expect(shortfallSheet(found).replaceAll(/\s+/gu, ' ')).toContain(
      'Distribution none, so as stated: pipe.outsideDiameter',
    );
  });

  it.each<[what: string, says: string, ask: () => unknown]>([
    ['a dependence that is not stated', 'dependence', () => shortfall(partWall, { inputs: {} } as never)],
    [
      'no distribution at all',
      'at least one input',
      () => shortfall(partWall, stating({ 'laminate.hoopModulus': 'none' })),
    ],
    ['a path without a number', 'pipe.wall', () => shortfall(partWall, stating({ 'pipe.wall': pressure }))],
    ['no draws', 'samples', () => shortfall(partWall, stating({ 'service.designPressure': pressure }), { samples: 0 })],
    [
      'a case that is not designed',
      'must be designed',
      () => {
        const slot = {
          ...partWall,
          fitting: { kind: 'tee' },
          defect: { ...partWall.defect, kind: 'crack' },
        } as RepairCase;
        return shortfall(slot, stating({ 'service.designPressure': pressure }));
      },
    ],
  ])('is refused for %s', (_, says, ask) => {
    expect(ask).toThrow(says);
  });
});
