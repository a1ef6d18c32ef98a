import { describe, expect, it } from 'vitest';
import { type AnyFormula, isCalculationError } from '../../src/formula/index.js';
import { givenOutputs } from '../../src/formula/outputs.js';
import type { RecordedStep } from '../../src/formula/recorder.js';
import { arrheniusShift } from '../../src/mechanics/index.js';
import { b31gOriginal, hoopStress } from '../../src/pipe/index.js';
import { activationEnergy, gauge, length, ratio, stress, temperature } from '../../src/quantity/index.js';
import { formulaOf, formulas } from '../../src/registry/index.js';
import { givenInputs } from '../../src/report/problem.js';
import { tagOf } from '../../src/report/step.js';
import { formulaSheet, renderStep } from '../../src/report.js';
import { dewPoint } from '../../src/site/index.js';
import { drawInput } from '../../verification/oracles/draw.js';
import { seeded } from '../../verification/oracles/random.js';
import { drawList } from '../formula/samplers.js';

/** One call of a formula by its function, as a recorder keeps it. */
function recorded(compute: AnyFormula['compute'], input: object, purpose?: string): RecordedStep {
  const formula = formulaOf(compute);
  if (formula === undefined) throw new Error(`${compute.name} is not a formula`);
  const step = { sort: 'step', formula: formula.id, input: input as RecordedStep['input'] } as const;
  return { ...step, result: compute(input), ...(purpose === undefined ? {} : { purpose }) };
}

const pipe = { pressure: gauge.psi(150), outsideDiameter: length.inch(12.75), wallThickness: length.inch(0.33) };

/** One accepted call of a formula, or nothing where the lists of the tests do not suit it. */
function anyCall(each: AnyFormula): RecordedStep | undefined {
  const random = seeded(`${each.id} step`);
  for (let draw = 0; draw < 200; draw++) {
    try {
      const { input } = drawInput(each, random, drawList);
      return { sort: 'step', formula: each.id, input, result: each.compute(input) };
    } catch (error) {
      if (isCalculationError(error)) continue;
      // A list that the sampler cannot draw: another test says so.
      if (error instanceof Error && error.message.includes('span')) return undefined;
      throw error;
    }
  }
  return undefined;
}

const widest = (text: string): number => Math.max(...text.split('\n').map((line) => line.length));

describe('a step as text', () => {
  it('reads like a calculation: title, purpose, symbols, equation, numbers, result, evidence, source', () => {
    expect(renderStep(recorded(hoopStress, pipe, 'the stress in the sound pipe'), { number: '1.1', units: 'us' })).toBe(
      `1.1  Hoop stress on the outside diameter ............................................... [published]

    The stress in the sound pipe.

    P  = 150 psi   internal pressure
    D  = 12.75 in  outside diameter
    t  = 0.33 in   wall thickness

    sigma_h = P * D / (2 * t)
            = 150 psi * 12.75 in / (2 * 0.33 in)
            = 2898 psi
            = 2.898 ksi    (hoop stress)

    Evidence  form published, reproduced by force balance over a cut along the pipe
    Source    49 CFR Part 192 (2025), 192.105(a)
              49 CFR Part 195 (2025), 195.106(a)
              McAllister, Pipeline Rules of Thumb Handbook (2002), p. 106
    Formula   pipe/hoop-stress
`,
    );
  });

  it('shows the numbers and units as typed, then the conversion', () => {
    const typed = {
      pressure: { text: '150 psig' },
      outsideDiameter: { text: '12 3/4 in' },
      wallThickness: { text: '0.33 in' },
    };
    const text = renderStep(recorded(hoopStress, pipe), { typed });
    expect(text).toContain('P  = 150 psig = 1.034 MPa   internal pressure');
    expect(text).toContain('= 150 psig * (12 3/4) in / (2 * 0.33 in)    (as typed)');
    expect(text).toContain('= 1.034 MPa * 323.85 mm / (2 * 8.382 mm)    (units MPa, mm)');
    expect(text).toContain('= 19.98 MPa    (hoop stress)');
  });

  it('shows no arithmetic with degrees as typed, whose zero is another', () => {
    const text = renderStep(
      recorded(dewPoint, { temperature: temperature.degC(1 / 23), humidity: ratio.fraction(0.5) }),
      {
        typed: { temperature: { text: '1/23 degC' } },
      },
    );
    expect(text).toContain('T    = 1/23 degC = 273.19348 K');
    expect(text).not.toContain('as typed');
  });

  it('has one substituted line when nothing that was typed needs converting', () => {
    const typed = {
      pressure: { text: '150 psi' },
      outsideDiameter: { text: '12.75 in' },
      wallThickness: { text: '0.33 in' },
    };
    expect(renderStep(recorded(hoopStress, pipe), { typed, units: 'us' })).not.toContain('as typed');
  });

  it('turns degrees Celsius into kelvin before they are divided by, and says which value is a default', () => {
    const text = renderStep(
      recorded(arrheniusShift, {
        activationEnergy: activationEnergy.kJPerMol(55),
        referenceTemperature: temperature.degC(23),
        temperature: temperature.degC(12),
      }),
    );
    expect(text).toContain('T_ref  = 23 degC = 296.15 K');
    expect(text).toMatch(/R {6}= 8\.314\d* J\/\(mol K\) {2,}molar gas constant \(default\)/u);
    expect(text).toContain('1 / 296.15 K');
  });

  it('takes units by kind and by name, and refuses a unit of another kind', () => {
    const step = recorded(hoopStress, pipe);
    const units = { system: 'si', kinds: { 'gauge pressure': 'bar' }, names: { wallThickness: 'in' } } as const;
    expect(renderStep(step, { units })).toContain('P  = 10.34 bar = 1.034 MPa');
    expect(() => renderStep(step, { units: { system: 'si', kinds: { length: 'bar' } } })).toThrow(
      'a length is not written in bar',
    );
    expect(() => renderStep(step, { digits: 1 })).toThrow(RangeError);
  });

  it('says which note of its formula the input lies beyond', () => {
    const shallow = {
      outsideDiameter: length.inch(12.75),
      wallThickness: length.inch(0.375),
      defectDepth: length.inch(0.02),
      defectLength: length.inch(3),
      flowStress: stress.ksi(45),
    };
    expect(renderStep(recorded(b31gOriginal, shallow))).toContain('Beyond    Depth below 0.1 of the wall');
    expect(renderStep(recorded(b31gOriginal, { ...shallow, defectDepth: length.inch(0.1) }))).not.toContain('Beyond');
  });

  it('says which branch of a piecewise equation was taken, and why', () => {
    const long = {
      outsideDiameter: length.inch(12.75),
      wallThickness: length.inch(0.375),
      defectDepth: length.inch(0.1),
      defectLength: length.inch(30),
      flowStress: stress.ksi(45),
    };
    const text = renderStep(recorded(b31gOriginal, long));
    expect(text).toMatch(/- z <= 20 does not hold: 188\.\d+ <= 20\n {4}- so the last form of the equation is taken/u);
    expect(text).toContain('P_f = S_flow * 2 * t / D * (1 - x)');
  });

  it('works out both sides of a condition that has something to work out', () => {
    const each = formulas.find(({ id }) => id === 'laminate/thickness-ignored-hoop');
    if (each === undefined)
      throw new Error('laminate/thickness-ignored-hoop is gone; take another with such a condition');
    expect(renderStep(anyCall(each) as RecordedStep).replaceAll(/\s+/gu, ' ')).toMatch(
      /(?:holds|does not hold): .*, that is [-\d.e]+ against [-\d.e]+/u,
    );
  });

  it('is an error, not silence, for a formula that is not in the registry', () => {
    expect(() => renderStep({ sort: 'step', formula: 'pipe/home-made', input: {}, result: 1 })).toThrow(
      'the recorded formula pipe/home-made is not in the registry',
    );
  });

  it.for(formulas.map((each) => ({ id: each.id, each })))(
    'of $id says everything that its declaration says',
    ({ each }) => {
      const step = anyCall(each);
      if (step === undefined) {
        expect(Object.values<{ kind: string }>(each.inputs).map(({ kind }) => kind)).toContain('list');
        return;
      }
      for (const units of ['si', 'us'] as const) {
        const text = renderStep(step, { units });
        const flat = text.replaceAll(/\s+/gu, ' ');
        expect(widest(text)).toBeLessThanOrEqual(100);
        expect(text).not.toMatch(/undefined|NaN|Infinity|\[object/u);
        expect(text).toContain(`[${tagOf(each)}]`);
        expect(text).toContain(each.id);
        for (const { declaration } of [...givenInputs(each, step.input), ...givenOutputs(each, step.result)]) {
          expect(flat).toContain(declaration.name);
          expect(flat).toContain(`${declaration.symbol} =`);
        }
        expect(text.match(/^ {4}Source|^ {14}\S/gmu)?.length ?? 0).toBeGreaterThanOrEqual(each.sources.length);
      }
    },
  );

  it('of a list prints a short one whole and of a long one the beginning and the end', () => {
    const profile = formulas.find(({ id }) => id === 'pipe/effective-area');
    if (profile === undefined) throw new Error('pipe/effective-area is gone; take another formula with a list');
    const rows = Array.from({ length: 40 }, (_, at) => ({ position: at * 0.01, depth: 0.001 + 0.0001 * (at % 7) }));
    const step = anyCall(profile);
    const input = { ...step?.input, wallThickness: 0.01, outsideDiameter: 0.3239, profile: rows };
    const text = renderStep(recorded(profile.compute, input));
    expect(text).toContain('= 40 rows');
    expect(text).toMatch(/^ +\.\. +\.\. +\.\.$/mu);
    expect(text).toMatch(/^ +40 +390 +1\.4$/mu);
    expect(text.match(/^ +\d+ +[\d.]+ +[\d.]+$/gmu)?.length).toBe(12);
  });
});

describe('a step as Markdown', () => {
  it('has a heading, tables of one width and the equation as code', () => {
    const text = renderStep(recorded(hoopStress, pipe), { format: 'markdown' });
    expect(text).toContain('#### Hoop stress on the outside diameter `[published]`');
    expect(text).toContain('| `P` | `1.034 MPa` | internal pressure |');
    expect(text).toContain('```\nsigma_h = P * D / (2 * t)\n        = 1.034 MPa * 323.85 mm / (2 * 8.382 mm)\n');
  });
});

describe('the card of a formula', () => {
  it.for(formulas.map((each) => ({ id: each.id, each })))(
    '$id has each symbol with its unit, the evidence, the sources',
    ({ each }) => {
      for (const format of ['text', 'markdown'] as const) {
        const card = formulaSheet(each, { format });
        const flat = card.replaceAll(/\s+/gu, ' ').replaceAll('\\', '');
        if (format === 'text') expect(widest(card)).toBeLessThanOrEqual(100);
        expect(card).not.toMatch(/undefined|NaN|\[object/u);
        for (const { declaration } of [...givenInputs(each, {}), ...givenOutputs(each, {})])
          expect(flat).toContain(declaration.name);
        for (const { text } of each.limits) expect(flat).toContain(text.replaceAll(/\s+/gu, ' '));
        expect(flat).toContain(each.id);
      }
    },
  );

  it('gives units in which the equation holds as it stands', () => {
    const shift = formulas.find(({ id }) => id === 'mechanics/arrhenius-shift');
    if (shift === undefined) throw new Error('mechanics/arrhenius-shift is gone');
    expect(formulaSheet(shift)).toMatch(/T_ref {2}K {10}reference temperature/u);
  });
});
