import { describe, expect, it } from 'vitest';
import { isCalculationError } from '../../src/formula/index.js';
import { remainingStrength } from '../../src/pipe/index.js';
import { designOf } from './answers.js';
import { quietLoss, withPaths } from './cases.js';

/** Issue 9, items 6 and 19. */

/** 323.9 x 9.53 mm, a loss of 400 mm, 25 bar; 0.2 of the wall is 1.906 mm. */
const deep = (remainingWall: string, changes = {}) =>
  withPaths(quietLoss, {
    'pipe.outsideDiameter': '323.9 mm',
    'pipe.wallThickness': '9.53 mm',
    'defect.axialLength': '400 mm',
    'defect.remainingWall': remainingWall,
    'service.designPressure': '25 bar',
    ...changes,
  });
const strengthOf = (file: ReturnType<typeof deep>) => designOf(file).found?.strength;
const bar = (remainingWall: string): number => (strengthOf(deep(remainingWall))?.safePressure ?? Number.NaN) / 1e5;

describe('the safe pressure of a deep loss', () => {
  it('is known at 1.92 mm, and not enough there', () => {
    expect(bar('1.92 mm')).toBeLessThan(25);
  });

  it('is never higher where less wall is left', () => {
    const walls = ['3', '2.5', '2', '1.95', '1.92', '1.91', '1.9', '1.85', '1.7', '1.5', '1.4', '1.31', '1.2', '1.1'];
    const pressures = walls.map((wall) => bar(`${wall} mm`));
    expect(pressures).toEqual(pressures.toSorted((a, b) => b - a));
  });

  it('does not carry the design pressure at 1.90 mm where it does not at 1.92', () => {
    expect(strengthOf(deep('1.9 mm'))?.fitAsItIs).toBe(false);
  });

  it('beyond 0.80 of the wall is that of the least wall all round: 2 F SMYS t/D', () => {
    expect(bar('1.6 mm')).toBeLessThanOrEqual(((2 * 0.72 * 241 * 1.6) / 323.9) * 10 * (1 + 1e-9));
  });

  it('is zero below 1.3 mm, and the pipe is not fit', () => {
    const strength = strengthOf(deep('1.2 mm'));
    expect([strength?.safePressure, strength?.fitAsItIs]).toEqual([0, false]);
  });

  describe('by DNV where the case names it, to 0.85 of the wall', () => {
    const named = (remainingWall: string) => deep(remainingWall, { 'assessment.method': 'DNV-RP-F101' });
    // P_f = 2 t s_u/(D - t) (1 - x)/(1 - x/Q), Q = sqrt(1 + 0.31 L^2/(D t)); F = 0.72 and the modelling factor 0.9
    const x = (9.53 - 1.6) / 9.53;
    const Q = Math.sqrt(1 + (0.31 * 400 ** 2) / (323.9 * 9.53));
    const failure = (((2 * 9.53 * 414) / (323.9 - 9.53)) * (1 - x)) / (1 - x / Q);

    it('answers', () => {
      expect(x).toBeGreaterThan(0.8);
      expect(strengthOf(named('1.6 mm'))?.method).toBe('DNV-RP-F101');
    });

    it('has the modelling factor 0.9 in it', () => {
      const pressure = (strengthOf(named('1.6 mm'))?.safePressure ?? Number.NaN) / 1e6;
      expect(pressure).toBeLessThanOrEqual(0.9 * 0.72 * failure * (1 + 1e-9));
    });
  });
});

describe('a profile that misses the defect', () => {
  /** 7.5 of 9.5 mm deep and 200 mm long. */
  const defect = {
    ...{ outsideDiameter: 0.1683, wallThickness: 0.0095, defectDepth: 0.0075, defectLength: 0.2 },
    ...{ yieldStrength: 241e6, tensileStrength: 414e6, maximumPressure: 20e6, designFactor: 0.72 },
    method: 'effective area',
  };
  const outcome = (profile: object): string => {
    try {
      const given: object = { ...defect, profile };
      return `${remainingStrength(given as Parameters<typeof remainingStrength>[0]).safePressure / 1e6} MPa`;
    } catch (error) {
      return isCalculationError(error) ? error.code : String(error);
    }
  };
  const over = (from: number, to: number, depth: number) => [
    { position: from, depth: 0 },
    { position: (from + to) / 2, depth },
    { position: to, depth: 0 },
  ];

  it('is believed where it reaches over the defect and down to its depth', () => {
    expect(outcome(over(0, 0.2, 0.0075))).toContain('MPa');
  });

  it('is refused where it is 1 mm deep', () => {
    expect(outcome(over(0, 0.2, 0.001))).toBe('invalid-input');
  });

  it('is refused where it is 2 mm long', () => {
    expect(outcome(over(0.099, 0.101, 0.0075))).toBe('invalid-input');
  });
});
