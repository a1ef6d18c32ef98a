import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  combinedTrescaStress,
  combinedTrescaStressBeyondPlane,
  combinedVonMisesStress,
  trescaStress,
  vonMisesStress,
} from '../../../src/pipe/index.js';
import { type Stress, stress } from '../../../src/quantity/index.js';
import { span as real } from '../../properties/spans.js';
import { runs } from '../pipes.js';

const stresses = fc.tuple(real(-500e6, 500e6), real(-500e6, 500e6), real(-500e6, 500e6)) as fc.Arbitrary<
  [Stress, Stress, Stress]
>;

/** The principal stresses of a plane state, from the circle of Mohr. */
function principal(SH: number, SL: number, St: number): [Stress, Stress] {
  const radius = Math.hypot((SH - SL) / 2, St);
  return [((SH + SL) / 2 + radius) as Stress, ((SH + SL) / 2 - radius) as Stress];
}

describe('combined stress', () => {
  it('by Tresca is never below von Mises, and von Mises never below 0.866 Tresca', () => {
    fc.assert(
      fc.property(stresses, ([first, second, third]) => {
        const tresca = trescaStress({ first, second, third });
        const vonMises = vonMisesStress({ first, second, third });
        expect(tresca).toBeGreaterThanOrEqual(vonMises * (1 - 1e-12) - 1e-3);
        expect(vonMises).toBeGreaterThanOrEqual((Math.sqrt(3) / 2) * tresca * (1 - 1e-12) - 1e-3);
      }),
      runs,
    );
  });

  it('does not depend on the order of the principal stresses, nor on a pressure all round', () => {
    fc.assert(
      fc.property(stresses, real(-100e6, 100e6), ([a, b, c], p) => {
        const scale = 1e9;
        const turned = { first: c, second: a, third: b };
        const pressed = { first: (a + p) as Stress, second: (b + p) as Stress, third: (c + p) as Stress };
        for (const combine of [vonMisesStress, trescaStress]) {
          const plain = combine({ first: a, second: b, third: c });
          expect(Math.abs(combine(turned) - plain) / scale).toBeLessThan(1e-12);
          expect(Math.abs(combine(pressed) - plain) / scale).toBeLessThan(1e-12);
        }
      }),
      runs,
    );
  });

  it('of a thin closed pipe is 0.866 of the hoop stress by von Mises and the hoop stress by Tresca', () => {
    const state = { first: stress.MPa(200), second: stress.MPa(100), third: stress.MPa(0) };
    expect(vonMisesStress(state) / 200e6).toBeCloseTo(Math.sqrt(3) / 2, 12);
    expect(trescaStress(state)).toBe(200e6);
  });

  it('in the plane forms is that of the principal stresses on the circle of Mohr', () => {
    fc.assert(
      fc.property(stresses, ([SH, SL, St]) => {
        const state = { hoopStress: SH, longitudinalStress: SL, torsionStress: St };
        const [first, second] = principal(SH, SL, St);
        const vonMises = vonMisesStress({ first, second, third: stress.Pa(0) });
        expect(Math.abs(combinedVonMisesStress(state) - vonMises) / 1e9).toBeLessThan(1e-12);
        expect(Math.abs(combinedTrescaStress(state) - (first - second)) / 1e9).toBeLessThan(1e-12);
      }),
      runs,
    );
  });

  it('in the plane Tresca form is too low exactly where its note is raised', () => {
    fc.assert(
      fc.property(stresses, ([SH, SL, St]) => {
        const state = { hoopStress: SH, longitudinalStress: SL, torsionStress: St };
        const [first, second] = principal(SH, SL, St);
        const full = trescaStress({ first, second, third: stress.Pa(0) });
        const short = full - combinedTrescaStress(state);
        if (combinedTrescaStressBeyondPlane(state)) expect(short).toBeGreaterThan(-1);
        else expect(Math.abs(short)).toBeLessThan(1);
      }),
      runs,
    );
    const bothPositive = { hoopStress: stress.MPa(200), longitudinalStress: stress.MPa(150) };
    expect(combinedTrescaStress(bothPositive)).toBe(50e6);
    expect(combinedTrescaStressBeyondPlane(bothPositive)).toBe(true);
    expect(combinedTrescaStressBeyondPlane({ ...bothPositive, longitudinalStress: stress.MPa(-150) })).toBe(false);
  });
});
