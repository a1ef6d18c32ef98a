import { describe, expect, it } from 'vitest';
import { decodeFormulaInput } from '../../src/json/index.js';
import { formulaById } from '../../src/registry/index.js';
import { designOf } from './answers.js';
import { loss, proposed, withPaths } from './cases.js';

/** Issue 9, item 17: whether a fall of the test pressure is cooling or a leak. */

/** Density of water by Kell (1975), T in degC. */
const kell = (T: number): number =>
  (999.83952 +
    16.945176 * T -
    7.9870401e-3 * T ** 2 -
    46.170461e-6 * T ** 3 +
    105.56302e-9 * T ** 4 -
    280.54253e-12 * T ** 5) /
  (1 + 16.87985e-3 * T);
/** The same by the formula of the CIPM (Tanaka, 2001). */
const tanaka = (T: number): number =>
  999.97495 * (1 - ((T - 3.983035) ** 2 * (T + 301.797)) / (522_528.9 * (T + 69.34881)));
const celsius = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;
/** Volume of water over that at 60 degF. */
const swelling = (density: (T: number) => number, fahrenheit: number): number =>
  density(celsius(60)) / density(celsius(fahrenheit));

const PSI = 6894.757293168;
/** 6.625 in pipe of 0.28 in wall. */
const [D, t] = [0.168275, 0.007112];

/**
 * Pressure of the blocked line after cooling, at which the same water fills it: compression of 4.5e-5 for 14.73 psi, stretch of
 * 0.91 P D/(t E) with 3.6e-6 for each degF, warming of 18.2e-6 for each degF (the handbook's line), and Kell's water.
 */
function tightPressure(startPressure: number, start: number, end: number): number {
  const content = (P: number, fahrenheit: number): number =>
    ((1 + (0.91 * P * D) / (t * 30e6 * PSI) + 3.6e-6 * (fahrenheit - 60)) * (1 + 18.2e-6 * (fahrenheit - 60))) /
    (1 - (4.5e-5 * P) / (14.73 * PSI)) /
    swelling(kell, fahrenheit);
  const held = content(startPressure, start);
  let [low, high] = [0, startPressure];
  for (let halving = 0; halving < 80; halving++) {
    const middle = (low + high) / 2;
    if (content(middle, end) < held) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** The verdict on a fall, readings taken as exact, 5 psi allowed beyond cooling. */
function verdictOn(start: number, end: number, endPressure: number): unknown {
  const formula = formulaById('acceptance/pressure-fall');
  if (formula === undefined) throw new Error('no such formula');
  const given = {
    ...{ startPressure: '1500 psi', endPressure: `${endPressure} Pa`, pressureError: '0 psi', allowedFall: '5 psi' },
    ...{ startTemperature: `${start} degF`, endTemperature: `${end} degF`, temperatureError: '0 K' },
    ...{ volume: '1 m3', outsideDiameter: `${D} m`, wallThickness: `${t} m` },
  };
  return (formula.compute(decodeFormulaInput(formula, given).input as never) as { verdict: unknown }).verdict;
}

describe('the water of the pressure test', () => {
  it('swells by Kell as by the formula of the CIPM, within 3e-6 from 35 to 100 degF', () => {
    for (let fahrenheit = 35; fahrenheit <= 100; fahrenheit++) {
      expect(Math.abs(swelling(kell, fahrenheit) - swelling(tanaka, fahrenheit))).toBeLessThan(3e-6);
    }
  });

  it('in a line that leaks 100 psi is a leak', () => {
    expect(verdictOn(100, 85, tightPressure(1500 * PSI, 100, 85) - 100 * PSI)).toBe('leak');
  });

  it.each([
    [85, 80],
    [85, 77],
  ])('in a tight line is no leak: cooled from %d to %d degF', (start, end) => {
    expect(verdictOn(start, end, tightPressure(1500 * PSI, start, end))).not.toBe('leak');
  });

  it('that was lost is not only cooling: 6.8 psi beyond it where 5 are allowed', () => {
    expect(verdictOn(100, 85, tightPressure(1500 * PSI, 100, 85) - 6.8 * PSI)).not.toBe('only cooling');
  });

  it('has its density in a formula', () => {
    const formula = formulaById('acceptance/water-density');
    const density = formula?.compute({ temperature: 298.15 } as never);
    expect(Math.abs(Number(density) / tanaka(25) - 1)).toBeLessThan(4e-6);
  });

  it('is fresh: no other liquid gets its numbers', () => {
    const at = (liquid: string) => {
      const { acceptance } = designOf(withPaths(loss, { [proposed.testLiquid]: liquid }));
      return [acceptance?.pressureTest.waterToAdd, acceptance?.pressureTest.pressurePerKelvin];
    };
    expect(at('fresh water')).toEqual([expect.any(Number), expect.any(Number)]);
    expect(at('other')).toEqual([undefined, undefined]);
  });
});
