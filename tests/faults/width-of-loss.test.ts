import { describe, expect, it } from 'vitest';
import { remainingStrength } from '../../src/pipe/index.js';
import { designOf, verdictOf } from './answers.js';
import { type CaseFile, quietLoss, withPaths } from './cases.js';

/** Issue 9, item 5. Stresses and pressures in MPa, lengths in mm. */

/**
 * Axial stress at which the pipe fails over the width of a loss: flow stress times the least, up to the width, of
 * eta (pi - b (1 - eta))/(eta pi + 2 (1 - eta) sin b), with eta the share of the wall that is left and b the half angle c/D.
 */
function axialFailure(flow: number, left: number, width: number, D: number): number {
  const [most, eta] = [Math.min(width / D, Math.PI), left];
  let least = 1;
  for (let part = 1; part <= 10_000; part++) {
    const b = (most * part) / 10_000;
    least = Math.min(least, (eta * (Math.PI - b * (1 - eta))) / (eta * Math.PI + 2 * (1 - eta) * Math.sin(b)));
  }
  return flow * least;
}

const FLOW = 1.1 * 241;
/** P_ax = (sigma_c/SF - F/(pi D t)) 4 t/D on 168.3 x 7.11 mm at the factor 1/0.72. */
const axialPressure = (left: number, width: number, force = 0): number =>
  (0.72 * axialFailure(FLOW, left / 7.11, width, 168.3) - force / (Math.PI * 168.3 * 7.11)) * ((4 * 7.11) / 168.3);

const safe = (file: CaseFile): number => (designOf(file).found?.strength?.safePressure ?? Number.NaN) / 1e6;

/** A groove 10 mm long round 520 of the 529 mm of a 6 in pipe, 1.5 mm left, 131 bar. */
const groove = withPaths(quietLoss, {
  'pipe.material.allowableStress': '160 MPa',
  'defect.axialLength': '10 mm',
  'defect.circumferentialWidth': '520 mm',
  'defect.remainingWall': '1.5 mm',
  'service.designPressure': '131 bar',
});
/** 160 mm long and 320 mm wide, 0.8 deep: just twice as wide as long. */
const wide = withPaths(quietLoss, {
  'defect.axialLength': '160 mm',
  'defect.circumferentialWidth': '320 mm',
  'defect.remainingWall': '1.43 mm',
  'assessment.method': 'modified B31G',
});

describe('a loss round the pipe', () => {
  it('is judged in both cases, and by hand the pipe bears 49 bar along itself', () => {
    expect(safe(groove)).toBeGreaterThan(0);
    expect(verdictOf(wide)).toBe('designed');
    expect([axialPressure(1.5, 520), axialPressure(1.43, 320)].map((P) => P.toFixed(1))).toEqual(['4.9', '4.9']);
  });

  it('does not leave the pipe fit at 131 bar, where the axial stress is 333 MPa or more', () => {
    expect(designOf(groove).found?.strength?.fitAsItIs).toBe(false);
  });

  it('limits the safe pressure by the axial stress over its width', () => {
    expect(safe(groove)).toBeLessThanOrEqual(axialPressure(1.5, 520) * (1 + 1e-3));
  });

  it('does so though it is no wider than twice its length, and under a method that the case names', () => {
    // By modified B31G the hoop pressure is 1.3 times that.
    expect(safe(wide)).toBeLessThanOrEqual(axialPressure(1.43, 320) * (1 + 1e-3));
  });

  it('limits it more where a force pulls along the pipe', () => {
    const pulled = withPaths(wide, { 'loads.axialForce': '50 kN', 'assessment.method': undefined });
    expect(safe(pulled)).toBeLessThanOrEqual(axialPressure(1.43, 320, 50_000) * (1 + 1e-3));
  });

  it('grows in width over the life', () => {
    // 2 mm a year at each side for 20 years: 320 mm from 240.
    const growing = withPaths(wide, {
      'defect.circumferentialWidth': '240 mm',
      'defect.growth': { depth: '0 mm/year', length: '2 mm/year' },
      'assessment.method': 'modified B31G',
    });
    expect(safe(growing)).toBeLessThanOrEqual(axialPressure(1.43, 320) * (1 + 1e-3));
  });

  it('enters the remaining strength as an input', () => {
    const loss: object = {
      ...{ outsideDiameter: 0.1683, wallThickness: 0.00711, defectDepth: 0.00561, defectLength: 0.01 },
      ...{ yieldStrength: 241e6, maximumPressure: 20e6, designFactor: 0.72, defectWidth: 0.52 },
    };
    const { safePressure } = remainingStrength(loss as Parameters<typeof remainingStrength>[0]);
    expect(safePressure / 1e6).toBeLessThanOrEqual(axialPressure(1.5, 520) * (1 + 1e-3));
  });
});
