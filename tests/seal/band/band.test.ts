import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CalculationError } from '../../../src/formula/index.js';
import {
  type Angle,
  type Area,
  angle,
  type Force,
  force,
  type GaugePressure,
  type Length,
  length,
} from '../../../src/quantity/index.js';
import {
  bandLength,
  bandTension,
  capstanTurns,
  clampingForce,
  contactPressure,
  fastenerTension,
  frictionFromTensions,
  linePressureOfTension,
  meanBandTension,
  tensionAlongBand,
  tensionFromContactPressure,
} from '../../../src/seal/index.js';
import { off, run, span } from '../../properties/spans.js';

const drawnForce = span(1, 1e6);
const halfAngle = span(0.01, Math.PI / 2);
const friction = span(0, 0.8);

describe('band tension', () => {
  it('and the force on the pad undo each other, with the factor between them', () => {
    run(
      fc.property(drawnForce, halfAngle, span(1, 5), fc.integer({ min: 1, max: 6 }), (F, phi, factor, bands) => {
        const tension = bandTension({ force: F as Force, halfAngle: phi as Angle, factor, bands });
        expect(off(clampingForce({ tension, halfAngle: phi as Angle, bands }), factor * F)).toBeLessThan(1e-12);
      }),
    );
  });

  it('never falls with more force or a larger factor, nor rises with a wider pad or more bands', () => {
    run(
      fc.property(drawnForce, span(0.01, 1.4), span(1, 5), span(0, 0.1), (F, phi, factor, more) => {
        const of = (f: number, arc: number, k: number, bands: number) =>
          bandTension({ force: f as Force, halfAngle: arc as Angle, factor: k, bands });
        const tension = of(F, phi, factor, 1);
        expect(of(F * (1 + more), phi, factor, 1)).toBeGreaterThanOrEqual(tension);
        expect(of(F, phi, factor + more, 1)).toBeGreaterThanOrEqual(tension);
        expect(of(F, phi + more, factor, 1)).toBeLessThanOrEqual(tension);
        expect(of(F, phi, factor, 2)).toBeLessThan(tension);
      }),
    );
  });

  it('refuses a factor below 1, a pad beyond half round and part of a band', () => {
    const input = { force: force.N(100), halfAngle: angle.deg(20), factor: 1.5 };
    for (const bad of [{ factor: 0.99 }, { halfAngle: angle.deg(90.1) }, { bands: 0 }]) {
      expect(() => bandTension({ ...input, ...bad })).toThrow(CalculationError);
    }
  });
});

describe('friction round the pipe', () => {
  it('of zero leaves the same tension everywhere', () => {
    run(
      fc.property(drawnForce, span(0, 7), (T, beta) => {
        const tension = { fastenerTension: T as Force, friction: 0 };
        expect(tensionAlongBand({ ...tension, angle: beta as Angle })).toBe(T);
        expect(meanBandTension(tension)).toBe(T);
        expect(fastenerTension({ padTension: T as Force, friction: 0, angle: beta as Angle })).toBe(T);
      }),
    );
  });

  it('lowers the tension with every degree, and the mean lies between both ends', () => {
    run(
      fc.property(drawnForce, span(1e-6, 0.8), span(0.1, 6), (T, mu, beta) => {
        const of = (arc: number) =>
          tensionAlongBand({ fastenerTension: T as Force, friction: mu, angle: arc as Angle });
        expect(of(beta)).toBeLessThan(T);
        expect(of(beta + 0.1)).toBeLessThan(of(beta));
        const mean = meanBandTension({ fastenerTension: T as Force, friction: mu });
        expect(mean).toBeLessThanOrEqual(T);
        expect(mean).toBeGreaterThanOrEqual(of(Math.PI));
      }),
    );
  });

  it('of next to nothing takes half of mu pi from the mean, without losing digits', () => {
    for (const mu of [1e-3, 1e-6, 1e-9, 1e-12]) {
      const x = mu * Math.PI;
      const series = 1 - x / 2 + (x * x) / 6 - (x * x * x) / 24;
      expect(off(meanBandTension({ fastenerTension: force.N(5000), friction: mu }), 5000 * series)).toBeLessThan(1e-11);
    }
  });

  it('leaves the far side least, which is what is taken when no angle is given', () => {
    const band = { fastenerTension: force.N(5000), friction: 0.2 };
    expect(tensionAlongBand(band)).toBe(tensionAlongBand({ ...band, angle: angle.deg(180) }));
    expect(tensionAlongBand(band) / 5000).toBeCloseTo(Math.exp(-0.2 * Math.PI), 14);
  });

  it('at the pad and at the fastener undo each other', () => {
    run(
      fc.property(drawnForce, friction, span(0, 7), (T, mu, beta) => {
        const there = fastenerTension({ padTension: T as Force, friction: mu, angle: beta as Angle });
        expect(off(tensionAlongBand({ fastenerTension: there, friction: mu, angle: beta as Angle }), T)).toBeLessThan(
          1e-12,
        );
      }),
    );
  });

  it('is found again from the tensions it makes, and so are the turns', () => {
    run(
      fc.property(drawnForce, span(0.01, 0.8), span(0.5, 12), (T, mu, beta) => {
        const looseTension = tensionAlongBand({ fastenerTension: T as Force, friction: mu, angle: beta as Angle });
        const pair = { looseTension, tightTension: T as Force };
        expect(off(frictionFromTensions({ ...pair, angle: beta as Angle }), mu)).toBeLessThan(1e-10);
        expect(off(capstanTurns({ ...pair, friction: mu }), beta / (2 * Math.PI))).toBeLessThan(1e-10);
      }),
    );
  });
});

describe('contact pressure', () => {
  it('and tension undo each other', () => {
    run(
      fc.property(drawnForce, span(0.05, 2), span(0.005, 0.2), (T, D, w) => {
        const band = { diameter: D as Length, bandWidth: w as Length };
        const pressure = contactPressure({ tension: T as Force, ...band });
        expect(off(tensionFromContactPressure({ pressure, ...band }), T)).toBeLessThan(1e-14);
      }),
    );
  });

  it('times radius and width is the tension', () => {
    expect(
      off(
        contactPressure({ tension: force.N(700), diameter: length.mm(200), bandWidth: length.mm(35) }),
        700 / (0.1 * 0.035),
      ),
    ).toBeLessThan(1e-14);
  });
});

describe('the line pressure that a tension holds', () => {
  it('asks for just this tension when it is worked back', () => {
    run(
      fc.property(
        span(10, 1e5),
        halfAngle,
        span(1e-4, 0.1),
        span(1, 4),
        friction,
        span(0, 4),
        (T, phi, A, factor, mu, beta) => {
          const common = { halfAngle: phi as Angle, factor, bands: 2 };
          const p = linePressureOfTension({
            ...common,
            fastenerTension: T as Force,
            padArea: A as Area,
            friction: mu,
            angle: beta as Angle,
          });
          const padTension = bandTension({ ...common, force: (p * A) as Force });
          expect(off(fastenerTension({ padTension, friction: mu, angle: beta as Angle }), T)).toBeLessThan(1e-12);
        },
      ),
    );
  });

  it('never rises with friction, the factor or the wetted area', () => {
    const of = (change: object): GaugePressure =>
      linePressureOfTension({
        fastenerTension: force.N(4000),
        halfAngle: angle.deg(20),
        padArea: 0.003 as Area,
        factor: 1.5,
        friction: 0.15,
        ...change,
      });
    run(
      fc.property(span(0, 1), (more) => {
        expect(of({ friction: 0.15 + more })).toBeLessThanOrEqual(of({}));
        expect(of({ factor: 1.5 + more })).toBeLessThanOrEqual(of({}));
        expect(of({ padArea: 0.003 + more })).toBeLessThanOrEqual(of({}));
        expect(of({ fastenerTension: 4000 * (1 + more) })).toBeGreaterThanOrEqual(of({}));
      }),
    );
  });

  it('is least with the leak opposite the fastener, which is what is taken when no angle is given', () => {
    const band = {
      fastenerTension: force.N(4000),
      halfAngle: angle.deg(20),
      padArea: 0.003 as Area,
      factor: 1.5,
      friction: 0.2,
    };
    expect(linePressureOfTension(band)).toBe(linePressureOfTension({ ...band, angle: angle.deg(180) }));
    expect(linePressureOfTension(band)).toBeLessThan(linePressureOfTension({ ...band, angle: angle.deg(179) }));
  });
});

describe('the length of the band', () => {
  it('of one turn on the bare pipe is the circumference of its middle, and the overlap', () => {
    const loopLength = bandLength({
      circumference: (Math.PI * 0.1683) as Length,
      buildUp: length.mm(0),
      bandThickness: length.mm(1),
      overlap: length.mm(50),
    });
    expect(off(loopLength, Math.PI * 0.1693 + 0.05)).toBeLessThan(1e-14);
  });

  it('grows by 2 pi for every length of build-up under each turn', () => {
    run(
      fc.property(span(0, 0.05), span(0, 0.05), fc.integer({ min: 1, max: 4 }), (b, more, turns) => {
        const of = (buildUp: number) =>
          bandLength({
            circumference: length.mm(530),
            buildUp: buildUp as Length,
            bandThickness: length.mm(0.8),
            overlap: length.mm(60),
            turns,
          });
        expect(Math.abs(of(b + more) - of(b) - 2 * Math.PI * more * turns)).toBeLessThan(1e-13);
      }),
    );
  });
});
