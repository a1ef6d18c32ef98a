import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type AbsolutePressure,
  type Area,
  type Density,
  density,
  type GaugePressure,
  length,
  molarMass,
  temperature,
} from '../../../src/quantity/index.js';
import {
  circleArea,
  criticalPressureRatio,
  gasLeakRate,
  jetReaction,
  jetSpeed,
  leakForce,
  liquidLeakRate,
} from '../../../src/seal/index.js';
import { off, run, span } from '../../properties/spans.js';

const holeArea = circleArea({ diameter: length.mm(10) });

describe('a liquid jet', () => {
  it('out of a smooth opening pushes back with twice the force on a plug', () => {
    run(
      fc.property(span(1, 1e8), span(1e-7, 1e-2), (dp, A) => {
        const pressure = dp as GaugePressure;
        const plug = leakForce({ pressure, holeArea: A as Area, padArea: A as Area }).onHole;
        expect(off(jetReaction({ pressureDifference: pressure, holeArea: A as Area }), 2 * plug)).toBeLessThan(1e-14);
      }),
    );
  });

  it('is taken at its most when no coefficient is given', () => {
    run(
      fc.property(span(1, 1e8), span(0.3, 1), span(0.8, 1), (dp, Cd, Cv) => {
        const jet = { pressureDifference: dp as GaugePressure, holeArea };
        const coefficients = { dischargeCoefficient: Cd, velocityCoefficient: Cv };
        expect(jetReaction({ ...jet, ...coefficients })).toBeLessThanOrEqual(jetReaction(jet));
        const leak = { ...jet, density: density.kgPerM3(1000) };
        expect(liquidLeakRate({ ...leak, dischargeCoefficient: Cd })).toBeLessThanOrEqual(liquidLeakRate(leak));
      }),
    );
  });

  it('is faster and larger the higher the pressure, and its flow is speed times area', () => {
    run(
      fc.property(span(1, 1e8), span(0, 1e7), span(500, 1500), (dp, rise, rho) => {
        const of = (pressure: number) => ({
          pressureDifference: pressure as GaugePressure,
          density: rho as Density,
          holeArea,
        });
        expect(jetSpeed(of(dp + rise))).toBeGreaterThanOrEqual(jetSpeed(of(dp)));
        expect(liquidLeakRate(of(dp + rise))).toBeGreaterThanOrEqual(liquidLeakRate(of(dp)));
        expect(jetReaction(of(dp + rise))).toBeGreaterThanOrEqual(jetReaction(of(dp)));
        expect(off(liquidLeakRate(of(dp)), jetSpeed(of(dp)) * holeArea)).toBeLessThan(1e-14);
      }),
    );
  });
});

describe('a gas leak', () => {
  const gas = { temperature: temperature.kelvin(288), molarMass: molarMass.gPerMol(28.96), holeArea };
  const leak = (p1: number, p2: number, heatCapacityRatio: number) =>
    gasLeakRate({
      ...gas,
      insidePressure: p1 as AbsolutePressure,
      outsidePressure: p2 as AbsolutePressure,
      heatCapacityRatio,
    });
  const k = span(1.01, 1.67);

  it('chokes at the critical ratio, where both forms meet', () => {
    run(
      fc.property(span(1e5, 1e7), k, (p1, ratio) => {
        const critical = criticalPressureRatio({ heatCapacityRatio: ratio }) * p1;
        const [choked, unchoked] = [leak(p1, critical * (1 - 1e-9), ratio), leak(p1, critical * (1 + 1e-9), ratio)];
        expect(choked.regime).toBe('choked');
        expect(unchoked.regime).toBe('unchoked');
        expect(off(choked.massFlow, unchoked.massFlow)).toBeLessThan(1e-11);
      }),
    );
  });

  it('does not feel the pressure outside once choked', () => {
    run(
      fc.property(span(1e5, 1e7), span(0.001, 0.47), k, (p1, share, ratio) => {
        expect(leak(p1, p1 * share, ratio).massFlow).toBe(leak(p1, p1 * share * 0.5, ratio).massFlow);
      }),
    );
  });

  it('never falls with pressure inside, nor rises with pressure outside', () => {
    run(
      fc.property(span(9e4, 2e5), span(1, 20), span(1, 1.5), k, (p2, above, rise, ratio) => {
        const p1 = p2 * above;
        const slack = 1 + 1e-13;
        expect(leak(p1 * rise, p2, ratio).massFlow * slack).toBeGreaterThanOrEqual(leak(p1, p2, ratio).massFlow);
        expect(leak(p1, p2 / rise, ratio).massFlow * slack).toBeGreaterThanOrEqual(leak(p1, p2, ratio).massFlow);
      }),
    );
  });

  it('stops when the pressures are equal, and starts as a liquid of its density would', () => {
    expect(leak(1e5, 1e5, 1.4).massFlow).toBe(0);
    expect(Object.is(leak(1e5, 1e5, 1.4).massFlow, -0)).toBe(false);
    const airDensity = ((1e5 * 0.02896) / (8.31446261815324 * 288)) as Density;
    for (const dp of [1, 0.1]) {
      const liquid =
        airDensity * liquidLeakRate({ pressureDifference: dp as GaugePressure, density: airDensity, holeArea });
      // The gas differs from a liquid by about its relative pressure drop.
      expect(off(leak(1e5, 1e5 - dp, 1.4).massFlow, liquid)).toBeLessThan(dp / 1e5);
    }
  });
});
