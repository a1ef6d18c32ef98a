import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  equivalentPressure,
  forceAtEdge,
  outsidePressureHeld,
  pressureOfEquivalent,
  pressureRingBending,
  ringMomentOfSoil,
  thicknessOutsidePressure,
  thicknessRingBending,
} from '../../src/laminate/index.js';
import {
  bendingStress,
  spanBucklingForce,
  stressUnderSoil,
  trescaStress,
  trescaStressWithShear,
} from '../../src/pipe/index.js';
import { leastOf, momentAtTheBed, pushOfColumn, recalledEquivalent } from './other-loads.js';

const span = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const seeded = { seed: 20261125, numRuns: 50 };
const close = (a: number, b: number, share: number): void =>
  expect(Math.abs(a - b)).toBeLessThanOrEqual(share * Math.abs(b));

describe('loads beside the pressure, by second routes', () => {
  it('bend a ring under soil as its forces do that are integrated from the crown', () => {
    const found = ringMomentOfSoil({ soilPressure: 1 as never, outsideDiameter: 1 as never, growth: 1 });
    close(momentAtTheBed(), found, 1e-7);
  });

  it('ask for the least that the recalled form gives at any pressure, where it would fall', () => {
    fc.assert(
      fc.property(span(0, 1), span(0.05, 1.2), span(1e2, 1e5), span(1e2, 1e5), (share, D, V, T) => {
        const turn = leastOf((P) => recalledEquivalent(P, D, V, T), 1, 1e12);
        const loads = { outsideDiameter: D, shearForce: V, torque: T };
        close(equivalentPressure({ ...loads, pressure: ((share * turn) / 2.001) as never } as never), turn, 1e-9);
        const P = turn * (0.51 + share);
        const beyond = equivalentPressure({ ...loads, pressure: P } as never);
        close(beyond, recalledEquivalent(P, D, V, T), 1e-12);
        close(pressureOfEquivalent({ ...loads, equivalentPressure: beyond } as never), P, 1e-7);
      }),
      seeded,
    );
  });

  it('push a span to the load at which its deflection meets the far hinge', () => {
    const [D, t, L, E] = [0.1683, 0.005, 12, 207e9];
    const inertia = (Math.PI / 64) * (D ** 4 - (D - 2 * t) ** 4);
    const span = { span: L, outsideDiameter: D, wallThickness: t, modulus: E, factor: 1 };
    close(spanBucklingForce(span as never), (pushOfColumn() * E * inertia) / L ** 2, 1e-9);
  });

  it('strain a bent laminate by membrane and bending to its limit, and the inverses give the loads back', () => {
    fc.assert(
      fc.property(span(0, 1e7), span(1, 3e3), span(0.1, 1.2), span(-1e5, 0), (P, m, D, F) => {
        const [E, nu, eps] = [24e9, 0.2, 0.0025];
        const ring = { ringMoment: m, outsideDiameter: D, hoopModulus: E, poissonRatio: nu, allowableStrain: eps };
        const t = thicknessRingBending({ ...ring, pressure: P, axialForce: F } as never);
        const membrane = (P * D) / 2 - (nu * F) / (Math.PI * D);
        close(membrane / (E * t) + (6 * m) / (E * t * t), eps, 1e-9);
        const back = pressureRingBending({ ...ring, laminateThickness: t * (1 + 1e-12), axialForce: F } as never);
        expect(Math.abs(back - P)).toBeLessThanOrEqual(1e-6 * (P + 1e5));
      }),
      seeded,
    );
  });

  it('stress a bent pipe so that the stress through its wall adds up to pull and moment', () => {
    const [P, D, t, m] = [1.2e6, 0.3239, 0.0042, 700];
    const pull = stressUnderSoil({
      pressure: P,
      outsideDiameter: D,
      wallThickness: t,
      ringMoment: 0,
      factor: 1,
    } as never);
    const peak = stressUnderSoil({
      pressure: P,
      outsideDiameter: D,
      wallThickness: t,
      ringMoment: m,
      factor: 1,
    } as never);
    let [force, moment] = [0, 0];
    const strips = 2000;
    for (let i = 0; i < strips; i++) {
      const z = ((i + 0.5) / strips - 0.5) * t;
      const stress = pull + (peak - pull) * ((2 * z) / t);
      force += (stress * t) / strips;
      moment += (stress * z * t) / strips;
    }
    close(force, (P * D) / 2, 1e-9);
    close(moment, m, 1e-6);
  });

  it('from outside are borne by the thickness that was found for them', () => {
    fc.assert(
      fc.property(span(1e3, 1e6), span(0.05, 1.2), span(8e9, 60e9), span(0, 0.4), (p, D, E, nu) => {
        const ring = { outsideDiameter: D, hoopModulus: E, axialModulus: E / 2, poissonRatio: nu };
        const t = thicknessOutsidePressure({ ...ring, outsidePressure: p } as never);
        close(outsidePressureHeld({ ...ring, laminateThickness: t } as never), p, 1e-12);
      }),
      seeded,
    );
  });

  it('bend a thin ring at its edge as a force along it does', () => {
    const [D, t, M] = [0.5, 1e-6, 1e3];
    const force = forceAtEdge({ axialForce: 0, bendingMoment: M, outsideDiameter: D, edge: 'pulled' } as never);
    close(
      force / (Math.PI * D * t),
      bendingStress({ bendingMoment: M, outsideDiameter: D, wallThickness: t } as never),
      1e-4,
    );
  });

  it('with shear come to the Tresca stress of the turned axes', () => {
    fc.assert(
      fc.property(span(0, 4e8), span(-3e8, 4e8), span(0, 2e8), (SH, SL, tau) => {
        const turn = Math.atan2(2 * tau, SH - SL) / 2;
        const [c, s] = [Math.cos(turn), Math.sin(turn)];
        const first = SH * c * c + SL * s * s + 2 * tau * c * s;
        const second = SH * s * s + SL * c * c - 2 * tau * c * s;
        const found = trescaStressWithShear({ hoopStress: SH, longitudinalStress: SL, shearStress: tau } as never);
        expect(Math.abs(found - trescaStress({ first, second, third: 0 } as never))).toBeLessThanOrEqual(1e-3);
      }),
      seeded,
    );
  });
});
