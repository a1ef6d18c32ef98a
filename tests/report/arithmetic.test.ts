import { all, create } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { type AnyFormula, formula, isCalculationError } from '../../src/formula/index.js';
import { hoopStress, hoopStressFormula } from '../../src/pipe/index.js';
import { type GaugePressure, gauge, type Length, length, type Ratio, units } from '../../src/quantity/index.js';
import { formulas } from '../../src/registry/index.js';
import { type Arithmetic, arithmetic } from '../../src/report/arithmetic.js';
import { problemOf } from '../../src/report/problem.js';
import { type UnitSystem, unitText } from '../../src/report/units.js';
import { drawInput } from '../../verification/oracles/draw.js';
import { seeded } from '../../verification/oracles/random.js';

const mathjs = create(all ?? {}, { predictable: true });

/** Unit words as they stand on the sheet, the longest first, so that none is cut short. */
const unitWords = [...new Set(Object.values(units).flatMap((table) => Object.keys(table).map(unitText)))]
  .filter((word) => word !== '')
  .map((word) => word.replaceAll(' ', '\u00a0'))
  .sort((a, b) => b.length - a.length);

/** A substituted line as a student types it into a calculator: the numbers without their units. */
function typedIn(line: string): string {
  const bare = unitWords.reduce((text, word) => text.replaceAll(`\u00a0${word}`, ''), line);
  expect(bare, 'a unit is left in the line').not.toContain('\u00a0');
  return bare;
}

/** The interval of numbers that are printed as `text` with so many digits. */
function interval(text: string, digits: number): [number, number] {
  const value = Number(text);
  const [, exponent = '0'] = value.toExponential().split('e');
  const half = value === 0 ? 0 : 0.5 * 10 ** (Number(exponent) - digits + 1);
  const slack = half * 1e-6 + Math.abs(value) * 1e-13;
  return [value - half - slack, value + half + slack];
}

function calls(of: AnyFormula, wanted: number): { input: Readonly<Record<string, unknown>>; result: unknown }[] {
  const random = seeded(`${of.id} on paper`);
  const accepted: { input: Readonly<Record<string, unknown>>; result: unknown }[] = [];
  for (let draw = 0; draw < 400 && accepted.length < wanted; draw++) {
    const { input } = drawInput(of, random);
    try {
      accepted.push({ input, result: of.compute(input) });
    } catch (error) {
      if (!isCalculationError(error)) throw error;
    }
  }
  return accepted;
}

function written(
  of: AnyFormula,
  call: { input: Readonly<Record<string, unknown>>; result: unknown },
  system: UnitSystem,
  digits: number,
): Arithmetic | undefined {
  const problem = problemOf(of, call, { system });
  return problem && arithmetic(problem, digits, of.inhomogeneous !== undefined);
}

const closed = formulas.filter(({ equation }) => !('algorithm' in equation));

describe('the arithmetic of a step can be followed on paper', () => {
  it.for(closed.map((each) => ({ id: each.id, each })))('$id', ({ each }) => {
    const drawn = calls(each, 6);
    expect(drawn.length).toBeGreaterThan(0);
    for (const call of drawn) {
      for (const [system, digits] of [
        ['si', 4],
        ['us', 4],
        ['si', 3],
        ['us', 6],
      ] as const) {
        const sheet = written(each, call, system, digits);
        if (sheet === undefined) continue;
        const shown = `${sheet.main.numbers} = ${sheet.main.result.text}`;
        expect(sheet.closes, shown).toBe(true);
        if (sheet.sort === 'residual') continue;
        const lines = [...sheet.definitions.map((line) => ({ line, main: false })), { line: sheet.main, main: true }];
        for (const { line, main } of lines) {
          const value: unknown = mathjs.evaluate(typedIn(line.numbers));
          const [low, high] = interval(line.result.text, main ? digits : sheet.carried);
          expect(value, `${line.symbol} = ${typedIn(line.numbers)}`).toBeGreaterThanOrEqual(low);
          expect(value, `${line.symbol} = ${typedIn(line.numbers)}`).toBeLessThanOrEqual(high);
        }
        for (const { numbers, holds } of sheet.conditions)
          if (!numbers.includes('"')) expect(mathjs.evaluate(typedIn(numbers)), numbers).toBe(holds);
      }
    }
  });

  it('prints the result of the function, not that of the sheet', () => {
    const wrong = { ...hoopStressFormula, compute: hoopStress } as AnyFormula;
    const input = { pressure: gauge.psi(150), outsideDiameter: length.inch(12.75), wallThickness: length.inch(0.33) };
    const sheet = written(wrong, { input, result: 1.2 * hoopStress(input) }, 'us', 4);
    expect(sheet?.main.result).toEqual({ text: '3477', unit: 'psi' });
    expect(sheet?.closes).toBe(false);
  });

  it('keeps a ratio in the units wanted and converts where numbers would not multiply', () => {
    const input = { pressure: gauge.MPa(1), outsideDiameter: length.inch(12), wallThickness: length.inch(0.5) };
    const sheet = written(hoopStressFormula as AnyFormula, { input, result: hoopStress(input) }, 'us', 4);
    expect(sheet?.units).toEqual({ 'gauge pressure': 'psi', length: 'in', stress: 'psi' });
    const si = written(hoopStressFormula as AnyFormula, { input, result: hoopStress(input) }, 'si', 4);
    expect(si?.units).toEqual({ 'gauge pressure': 'MPa', length: 'mm', stress: 'MPa' });
  });
});

interface Vessel {
  readonly depth: Length;
  readonly head: GaugePressure;
}

/** A root by iteration, for a form that no formula of the registry has to have. */
const floating = formula<Vessel, Ratio>({
  id: 'test/floating',
  title: 'A root of no meaning',
  compute: ({ head }) => {
    let x = 1;
    for (let turn = 0; turn < 100; turn++) x = Math.cos(x) * (head / (head + 1e5));
    return x as Ratio;
  },
  equation: { residual: 'x - cos(x) * (p / (p + p_0))' },
  inputs: {
    depth: { symbol: 'd', kind: 'length', name: 'depth', sample: [0, 1] },
    head: { symbol: 'p', kind: 'gauge pressure', name: 'head', sample: [1e4, 1e6] },
    ...({ datum: { symbol: 'p_0', kind: 'gauge pressure', name: 'datum', default: 1e5 } } as object),
  } as AnyFormula['inputs'] as never,
  output: { symbol: 'x', kind: 'ratio', name: 'root' },
  sources: [],
  evidence: { form: { tag: 'chosen' } },
  limits: [],
});

describe('an equation solved by iteration', () => {
  it('shows that its left side changes sign within the printed digits of the result', () => {
    const input = { depth: 0, head: 2e5 };
    const sheet = written(floating as AnyFormula, { input, result: floating.compute(input as never) }, 'si', 4);
    expect(sheet?.sort).toBe('residual');
    expect(sheet?.closes).toBe(true);
    const [low, high] = sheet?.signChange ?? [];
    expect(Number(low?.leftSide)).toBeLessThan(0);
    expect(Number(high?.leftSide)).toBeGreaterThan(0);
    expect(Number(high?.at) - Number(low?.at)).toBeCloseTo(1e-4, 10);
  });
});
