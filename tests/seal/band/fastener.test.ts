import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Force,
  force,
  type Length,
  length,
  type Moment,
  type Ratio,
  ratio,
  type Stress,
  stress,
} from '../../../src/quantity/index.js';
import {
  assuredTension,
  fastenerTorque,
  strapCapacity,
  strapStress,
  tensionFromTorque,
} from '../../../src/seal/index.js';
import { off, run, span } from '../../properties/spans.js';

describe('torque and tension of the fastener', () => {
  it('undo each other', () => {
    run(
      fc.property(span(1, 1e5), span(0.08, 0.6), span(0.003, 0.03), (T, nutFactor, d) => {
        const thread = { nutFactor, threadDiameter: d as Length };
        const torque = fastenerTorque({ tension: T as Force, ...thread });
        expect(off(tensionFromTorque({ torque, ...thread, scatter: ratio.fraction(0.25) }).tension, T)).toBeLessThan(
          1e-14,
        );
      }),
    );
  });

  it('scatter round the nominal tension, which lies in the middle', () => {
    run(
      fc.property(span(0.1, 500), span(0, 0.99), (M, s) => {
        const { tension, low, high } = tensionFromTorque({
          torque: M as Moment,
          nutFactor: 0.2,
          threadDiameter: length.mm(8),
          scatter: s as Ratio,
        });
        expect(low).toBeLessThanOrEqual(tension);
        expect(high).toBeGreaterThanOrEqual(tension);
        expect(off((low + high) / 2, tension)).toBeLessThan(1e-14);
        expect(Math.abs((high - low) / (2 * tension) - s)).toBeLessThan(1e-14);
      }),
    );
  });

  it('give less tension for a rustier thread', () => {
    const at = (nutFactor: number) =>
      tensionFromTorque({ torque: 20 as Moment, nutFactor, threadDiameter: length.mm(8), scatter: ratio.percent(25) })
        .low;
    expect(at(0.3)).toBeLessThan(at(0.2));
    expect(at(0.2)).toBeLessThan(at(0.15));
  });
});

describe('the tension surely reached', () => {
  it('is the low end of the scatter whose high end is the limit', () => {
    run(
      fc.property(span(10, 1e5), span(0, 0.9), (limit, s) => {
        const thread = { nutFactor: 0.2, threadDiameter: length.mm(10), scatter: s as Ratio };
        const torque = fastenerTorque({ ...thread, tension: (limit / (1 + s)) as Force });
        const { low, high } = tensionFromTorque({ ...thread, torque });
        expect(off(high, limit)).toBeLessThan(1e-14);
        expect(off(assuredTension({ tensionLimit: limit as Force, scatter: s as Ratio }), low)).toBeLessThan(1e-13);
      }),
    );
  });

  it('of a tension that does not scatter is the limit', () => {
    expect(assuredTension({ tensionLimit: force.N(5000), scatter: ratio.fraction(0) })).toBe(5000);
  });
});

describe('the strap', () => {
  it('at the tension that it may bear has its strength over the factor', () => {
    run(
      fc.property(span(1e8, 1e9), span(0.005, 0.1), span(0.0003, 0.003), span(1, 5), (S, w, t, factor) => {
        const strap = { bandWidth: w as Length, bandThickness: t as Length };
        const tension = strapCapacity({ ...strap, strength: S as Stress, factor });
        expect(off(strapStress({ ...strap, tension }), S / factor)).toBeLessThan(1e-14);
      }),
    );
  });

  it('refuses a factor that would raise its strength', () => {
    const strap = { strength: stress.MPa(205), bandWidth: length.mm(20), bandThickness: length.mm(0.8) };
    expect(() => strapCapacity({ ...strap, factor: 0.9 })).toThrow(/factor/);
  });
});
