import { describe, expect, it } from 'vitest';
import { type AnyFormula, formula, refuse } from '../../src/formula/index.js';
import type { Angle, Length, Ratio, Stress, Temperature } from '../../src/quantity/index.js';
import { equationProblem } from '../../verification/oracles/agreement.js';
import { drawCalls } from '../../verification/oracles/draw.js';
import { symbolsOf, unitProblems } from '../../verification/oracles/equation.js';
import { exactDecimal } from '../../verification/oracles/exact-decimal.js';
import { seeded } from '../../verification/oracles/random.js';
import { nextDown, nextUp, ulp } from '../../verification/oracles/ulp.js';

/** The gate that every formula passes, tried on formulas that are known to be right or wrong. */

interface Plate {
  readonly load: Stress;
  readonly width: Length;
  readonly thickness: Length;
  readonly ends: 'free' | 'fixed';
  readonly share: Ratio;
}

const plate = formula<Plate, Stress>({
  id: 'test/plate',
  title: 'A plate that no source knows',
  compute: ({ load, width, thickness, ends, share }) => {
    if (thickness > width)
      refuse({
        code: 'invalid-input',
        parameter: 'thickness',
        value: thickness,
        unit: 'm',
        constraint: 'must be below the width',
      });
    const slenderness = width / thickness;
    if (slenderness > 20) return (0.3 * load * Math.sqrt(slenderness)) as Stress;
    return (
      ends === 'fixed' ? load * Math.cbrt(slenderness) * Math.max(0, 1 - share) : load * Math.exp(-share) * Math.PI
    ) as Stress;
  },
  equation: {
    where: [{ symbol: 's', kind: 'number', expression: 'w / t' }],
    branches: [
      { when: 's > 20', expression: '0.3 * q * sqrt(s)' },
      { when: 'ends == "fixed"', expression: 'q * cbrt(s) * max(0, 1 - f)' },
      { expression: 'q * exp(-f) * pi' },
    ],
  },
  inputs: {
    load: { symbol: 'q', kind: 'stress', name: 'load', sample: [1e5, 1e8] },
    width: { symbol: 'w', kind: 'length', name: 'width', sample: [0.1, 1] },
    thickness: { symbol: 't', kind: 'length', name: 'thickness', sample: [0.01, 0.2] },
    ends: { symbol: 'ends', kind: 'choice', name: 'ends', choices: ['free', 'fixed'] },
    share: { symbol: 'f', kind: 'ratio', name: 'share', sample: [0, 1.2] },
  },
  output: { symbol: 'sigma', kind: 'stress', name: 'stress' },
  sources: [],
  evidence: { form: { tag: 'chosen' } },
  limits: [],
});

interface Sag {
  readonly ratio: Ratio;
}

const sag = formula<Sag, Angle>({
  id: 'test/sag',
  title: 'The angle whose cosine is a share of it',
  compute: ({ ratio }) => {
    let x = 0.7;
    for (let step = 0; step < 60; step++) x -= (Math.cos(x) - ratio * x) / (-Math.sin(x) - ratio);
    return x as Angle;
  },
  equation: { residual: 'cos(x) - r * x' },
  inputs: { ratio: { symbol: 'r', kind: 'ratio', name: 'ratio', sample: [0.5, 2] } },
  output: { symbol: 'x', kind: 'angle', name: 'angle' },
  sources: [],
  evidence: { form: { tag: 'chosen' } },
  limits: [],
});

const variant = (of: AnyFormula, change: Partial<AnyFormula>): AnyFormula => ({ ...of, ...change }) as AnyFormula;
const units = (of: AnyFormula): string[] => {
  const [draw] = drawCalls(of, seeded(of.id), { wanted: 1 });
  return unitProblems(of, draw?.bySymbol ?? {}, draw?.result);
};

describe('the expression gate', () => {
  it('passes a piecewise equation with words, a root, an exponential and decimals', () => {
    expect(equationProblem(plate)).toBeUndefined();
    expect(units(plate)).toEqual([]);
  });

  it('passes a root that stands in its residual', () => {
    expect(equationProblem(sag)).toBeUndefined();
    expect(units(sag)).toEqual([]);
  });

  it('catches a coefficient that is wrong in its fourteenth digit', () => {
    const wrong = variant(plate, { compute: (input: Plate) => plate.compute(input) * (1 + 2e-14) });
    expect(equationProblem(wrong)).toMatch(
      /test\/plate differs .*\n {2}inputs {5}q = .*\n {2}function .*\n {2}64 digits .*\n {2}off by/u,
    );
  });

  it('catches a wrong branch', () => {
    const wrong = variant(plate, {
      compute: (input: Plate) => plate.compute({ ...input, ends: input.ends === 'free' ? 'fixed' : 'free' }),
    });
    expect(equationProblem(wrong)).toContain('branch');
  });

  it('catches a root that is off in its fourteenth digit', () => {
    const wrong = variant(sag, { compute: (input: Sag) => sag.compute(input) * (1 + 2e-14) });
    expect(equationProblem(wrong)).toContain('residual');
  });

  it('catches NaN', () => {
    expect(equationProblem(variant(plate, { compute: () => Number.NaN }))).toContain('not a finite number');
  });

  it('catches sample spans that the function refuses', () => {
    const picky = variant(plate, {
      compute: () =>
        refuse({ code: 'invalid-input', parameter: 'load', value: 1, unit: 'Pa', constraint: 'must be 2 Pa' }),
    });
    expect(() => equationProblem(picky)).toThrow('accepted only 0 of 400 draws');
  });

  it('catches an expression whose unit is not that of its output', () => {
    const wrong = variant(plate, { equation: { expression: 'q * w' } });
    expect(units(wrong).join()).toContain('sigma (expression) is in kg m^-1 s^-2, but its expression is in');
    expect(units(variant(plate, { equation: { expression: 'w / t' } })).join()).toContain('is a plain number');
  });

  it('catches a sum of unlike units and a function of a unit', () => {
    expect(units(variant(plate, { equation: { expression: 'q + w' } }))).toHaveLength(1);
    expect(units(variant(plate, { equation: { expression: 'q * exp(w)' } }))).toHaveLength(1);
    expect(
      units(variant(plate, { equation: { branches: [{ when: 'q > w', expression: 'q' }, { expression: 'q' }] } })),
    ).toHaveLength(1);
  });

  it('catches a definition whose unit is not that of its kind', () => {
    const wrong = variant(plate, {
      equation: { where: [{ symbol: 'a', kind: 'area', expression: 'w * t * t' }], expression: 'q * a / (w * t * t)' },
    });
    expect(units(wrong).join()).toContain('a is in m^2, but its expression is in');
  });

  it('lets a bare zero meet any unit', () => {
    expect(
      units(
        variant(plate, { equation: { branches: [{ when: 'q > 0', expression: 'max(0, q)' }, { expression: 'q' }] } }),
      ),
    ).toEqual([]);
  });

  it('catches a symbol that nobody declared, though mathjs knows it as a unit', () => {
    expect(equationProblem(variant(plate, { equation: { expression: 'q * w / m' } }))).toContain('not declared: m');
  });

  it('lists the symbols that an expression reads', () => {
    expect([...symbolsOf('P * D / (2 * t) + pi * sqrt(x_1) * max(a, 2)')].sort()).toEqual(['D', 'P', 'a', 't', 'x_1']);
  });

  it('reads a temperature in kelvin', () => {
    const warm = formula<{ readonly temperature: Temperature; readonly reference?: Temperature }, Ratio>({
      id: 'test/warm',
      title: 'A ratio of temperatures',
      compute: ({ temperature, reference = 293.15 as Temperature }) => ((temperature - reference) / reference) as Ratio,
      equation: { expression: '(T - T_0) / T_0' },
      inputs: {
        temperature: { symbol: 'T', kind: 'temperature', name: 'temperature', sample: [250, 400] },
        reference: { symbol: 'T_0', kind: 'temperature', name: 'reference', sample: [250, 400], default: 293.15 },
      },
      output: { symbol: 'r', kind: 'ratio', name: 'ratio' },
      sources: [],
      evidence: { form: { tag: 'chosen' } },
      limits: [],
    });
    expect(equationProblem(warm)).toBeUndefined();
    expect(units(warm)).toEqual([]);
  });
});

describe('doubles', () => {
  it('are written in all their digits, not in their shortest text', () => {
    expect(exactDecimal(0.1)).toMatch(/^0\.1000000000000000055511151231257827021181583404541015625/u);
  });

  it('have neighbours one unit in the last place away', () => {
    expect(nextUp(1)).toBe(1 + Number.EPSILON);
    expect(nextDown(1)).toBe(1 - Number.EPSILON / 2);
    expect(nextUp(-1)).toBe(-1 + Number.EPSILON / 2);
    expect(nextUp(0)).toBe(Number.MIN_VALUE);
    expect(nextDown(0)).toBe(-Number.MIN_VALUE);
    expect(ulp(-1000)).toBe(2 ** -43);
  });

  it('are drawn evenly and the same for the same name', () => {
    const [a, b] = [seeded('name'), seeded('name')];
    const drawn = Array.from({ length: 4000 }, a);
    expect(drawn.slice(0, 5)).toEqual(Array.from({ length: 5 }, b));
    expect(drawn.reduce((sum, value) => sum + value, 0) / drawn.length).toBeCloseTo(0.5, 1);
    expect(Math.min(...drawn)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...drawn)).toBeLessThan(1);
    expect(seeded('other')()).not.toBe(drawn[0]);
  });
});
