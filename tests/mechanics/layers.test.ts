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

describe('a wrap of the metal of its pipe', () => {
  it('is one thick cylinder with it, to the last digits', () => {
    const metal = { hoopModulus: 2e11, axialModulus: 2e11, radialModulus: 2e11 };
    const ratios = { hoopToAxial: 0.3, hoopToRadial: 0.3, axialToRadial: 0.3 };
    const found = of(cylinder, { ...wrapped, ...metal, ...ratios }) as { boreHoop: number; interfacePressure: number };
    // P (ro^2 + ri^2)/(ro^2 - ri^2) at the bore, P ri^2 (ro^2/rm^2 - 1)/(ro^2 - ri^2) between the two.
    const [ri, rm, ro] = [0.08 ** 2, 0.085 ** 2, 0.1 ** 2];
    expect(found.boreHoop / ((1e6 * (ro + ri)) / (ro - ri))).toBeCloseTo(1, 11);
    expect(found.interfacePressure / ((1e6 * ri * (ro / rm - 1)) / (ro - ri))).toBeCloseTo(1, 11);
  });
});

describe('a pressure whose stress is beyond any number', () => {
  it.each([
    ['the bore', { hoopModulus: 2e10 }],
    ['a wrap far stiffer than the pipe', { hoopModulus: 4e12, hoopToAxial: 0, hoopToRadial: 0 }],
  ])('is refused for %s', (_, change) => {
    const pressure = 5e307;
    const within = of(cylinder, { ...wrapped, ...change }) as { boreHoop: number; wrapHoop: number };
    const [more, less] = [within.boreHoop, within.wrapHoop].toSorted((a, b) => b - a) as [number, number];
    // Over 1 MPa: one of the two leaves what a number holds at this pressure, the other does not.
    expect([more > 3.6e6, less < 3.5e6]).toEqual([true, true]);
    expect(() => of(cylinder, { ...wrapped, ...change, pressure })).toThrow(
      expect.objectContaining({ code: 'invalid-input', parameter: 'stress' }),
    );
  });
});
