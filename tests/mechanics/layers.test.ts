import { describe, expect, it } from 'vitest';
import { formulaById } from '../../src/registry/index.js';

const two = {
  pressure: 1e6,
  innerRadius: 0.08,
  interfaceRadius: 0.085,
  outerRadius: 0.1,
  innerModulus: 2e11,
  outerModulus: 2e10,
  innerPoissonRatio: 0.3,
  outerPoissonRatio: 0.3,
};
const wrapped = {
  pressure: 1e6,
  innerRadius: 0.08,
  interfaceRadius: 0.085,
  outerRadius: 0.1,
  pipeModulus: 2e11,
  pipePoisson: 0.3,
  hoopModulus: 2e10,
  axialModulus: 1e10,
  radialModulus: 1e10,
  hoopToAxial: 0.2,
  hoopToRadial: 0.2,
  axialToRadial: 0.2,
  ends: 'closed ends',
};
const [twoLayers, cylinder] = ['mechanics/two-layer-interface-pressure', 'mechanics/wrapped-cylinder'];
const of = (id: string, given: object) => formulaById(id)?.compute(given as never);

describe('radii of two layers that do not lie inside one another', () => {
  it.each([
    [twoLayers, two, 'interfaceRadius - innerRadius', { interfaceRadius: 0.08 }],
    [twoLayers, two, 'interfaceRadius - innerRadius', { interfaceRadius: 0.07 }],
    [twoLayers, two, 'outerRadius - interfaceRadius', { outerRadius: 0.085 }],
    [twoLayers, two, 'outerRadius - interfaceRadius', { outerRadius: 0.082 }],
    [cylinder, wrapped, 'interfaceRadius - innerRadius', { interfaceRadius: 0.08 }],
    [cylinder, wrapped, 'interfaceRadius - innerRadius', { interfaceRadius: 0.07 }],
    [cylinder, wrapped, 'outerRadius - interfaceRadius', { outerRadius: 0.085 }],
    [cylinder, wrapped, 'outerRadius - interfaceRadius', { outerRadius: 0.082 }],
  ])('are refused by %s: %s', (id, given, parameter, change) => {
    expect(() => of(id, { ...given, ...change })).toThrow(
      expect.objectContaining({ code: 'invalid-input', parameter }),
    );
    expect(() => of(id, given)).not.toThrow();
  });
});

describe('a wrap that would give energy when it is strained', () => {
  const stiffThrough = { ...wrapped, hoopModulus: 1e10, radialModulus: 4e10 };
  const ratios = (hoopToAxial: number, hoopToRadial: number, axialToRadial: number) => ({
    hoopToAxial,
    hoopToRadial,
    axialToRadial,
  });

  it.each([
    // 1 - 4 x^2, 1 - 4 x^2 and 1 - 9 x^2 - 8 x^3 of what a pair alone and all three leave.
    ['a pair', stiffThrough, ratios(0, 0, 0.49), ratios(0, 0, 0.51)],
    ['another pair', stiffThrough, ratios(0, 0.49, 0), ratios(0, 0.51, 0)],
    ['all three', stiffThrough, ratios(0.29, 0.29, 0.29), ratios(0.3, 0.3, 0.3)],
    [
      'none, but for keeping its volume',
      { ...wrapped, hoopModulus: 1e10 },
      ratios(0.49, 0.49, 0.49),
      ratios(0.5, 0.5, 0.5),
    ],
  ])('is refused: by %s', (_, given, passing, refused) => {
    expect(() => of(cylinder, { ...given, ...passing })).not.toThrow();
    expect(() => of(cylinder, { ...given, ...refused })).toThrow(expect.objectContaining({ parameter: 'hoopToAxial' }));
  });
});

describe('a wrap as stiff round as through that is held unlike along itself', () => {
  it('bears what its neighbours on both sides bear', () => {
    // Without contraction of the hoop the two are alike where ar^2/Ea = 1/Er - 1/Ec.
    const wrap = {
      ...wrapped,
      hoopModulus: 2e10,
      axialModulus: 1e10,
      radialModulus: 1.8e10,
      hoopToAxial: 0,
      hoopToRadial: 0,
    };
    const alike = Math.sqrt(1e10 * (1 / 1.8e10 - 1 / 2e10));
    const at = (axialToRadial: number) =>
      of(cylinder, { ...wrap, axialToRadial }) as { boreHoop: number; wrapHoop: number };
    const [below, here, above] = [at(alike * 0.999), at(alike), at(alike * 1.001)];
    expect((2 * here.boreHoop) / (below.boreHoop + above.boreHoop)).toBeCloseTo(1, 5);
    expect((2 * here.wrapHoop) / (below.wrapHoop + above.wrapHoop)).toBeCloseTo(1, 5);
  });
});
