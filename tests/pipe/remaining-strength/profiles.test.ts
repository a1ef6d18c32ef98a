import { describe, expect, it } from 'vitest';
import { CalculationError } from '../../../src/formula/index.js';
import * as room from '../../../src/pipe/index.js';

describe('profiles', () => {
  const pipe = { outsideDiameter: 0.5, wallThickness: 0.01, flowStress: 4e8 };
  const shell = { insideDiameter: 0.48, correctedWall: 0.01, workingPressure: 5e6 };
  const byDepth = (profile: unknown): unknown => room.effectiveArea({ ...pipe, profile } as never);
  const byWall = (profile: unknown): unknown => room.localMetalLossProfile({ ...shell, profile } as never);
  const cases = [
    ['no point', [], /at least 2 points/u],
    ['one point', [[0, 0.002]], /at least 2 points/u],
    [
      'points out of order',
      [
        [0, 0.002],
        [0.02, 0.002],
        [0.01, 0.002],
      ],
      /profile\[2\]\.position is 0\.01 m/u,
    ],
    [
      'two points at one place',
      [
        [0, 0.002],
        [0, 0.002],
      ],
      /profile\[1\]\.position is 0 m/u,
    ],
    [
      'a position that is no number',
      [
        [0, 0.002],
        [Number.NaN, 0.002],
      ],
      /profile\[1\]\.position is NaN/u,
    ],
  ] as const;

  it.each(cases)('are refused with %s', (_, points, message) => {
    expect(() => byDepth(points.map(([position, depth]) => ({ position, depth })))).toThrow(message);
    expect(() => byWall(points.map(([position, wall]) => ({ position, wall })))).toThrow(message);
  });

  it('are refused where the loss is deeper than the method allows, with the point named', () => {
    const points = [0, 0.002, 0.0081].map((depth, k) => ({ position: 0.02 * k, depth }));
    expect(() => byDepth(points)).toThrow(/profile\[2\]\.depth is 0\.0081 m; must be at most 0\.8/u);
    const walls = points.map(({ position, depth }) => ({ position, wall: 0.01 - depth }));
    expect(() => byWall(walls)).toThrow(/profile\[2\]\.wall .* at least 0\.2 of the corrected wall/u);
  });

  it('are refused with a negative or endless depth', () => {
    for (const depth of [-1e-9, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() =>
        byDepth([
          { position: 0, depth: 0.001 },
          { position: 1, depth },
        ]),
      ).toThrow(CalculationError);
    }
  });
});
