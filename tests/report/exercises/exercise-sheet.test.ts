import { describe, expect, it } from 'vitest';
import { type AnyFormula, isCalculationError } from '../../../src/formula/index.js';
import { mainOutput } from '../../../src/formula/outputs.js';
import { checkHandCalculation, formulaById, formulas } from '../../../src/formulas.js';
import { drawExercises } from '../../../src/report/exercises/draw-exercises.js';
import { shownValue } from '../../../src/report/shown-value.js';
import { exerciseSheet } from '../../../src/report.js';
import { run } from '../../cli/run.js';

const hoop = formulaById('pipe/hoop-stress') as AnyFormula;
const kinds = ({ inputs }: AnyFormula): string[] => Object.values(inputs as object).map(({ kind }) => kind);
/** What has no exercise: it takes a table, or its first result is a word. */
const noNumber = (formula: AnyFormula): boolean =>
  kinds(formula).includes('list') || ['choice', 'flag', 'list'].includes(mainOutput(formula).declared.kind as string);

const options = { format: 'text', units: { system: 'si' }, digits: 4 } as const;

describe('exercises', () => {
  const drawn = formulas.filter((formula) => !noNumber(formula));

  it('are there of nearly every formula', () => {
    expect(drawn.length).toBeGreaterThan(250);
  });

  it.each(drawn.map((formula) => [formula.id, formula] as const))(
    '%s: the answer is that of the numbers as they are printed',
    (id, formula) => {
      const exercises = drawExercises(formula, { count: 2, seed: 11, units: { system: 'si' } });
      const { member = 'result', declared } = mainOutput(formula);
      for (const { typed, step } of exercises) {
        const texts = Object.fromEntries(Object.entries(typed).map(([name, { text }]) => [name, text]));
        const value = member === 'result' ? step.result : Object(step.result)[member];
        const printed = shownValue(declared.kind as string, member, value, options, true, declared.name);
        expect(checkHandCalculation(id, texts, printed)).toMatchObject({ agrees: true });
      }
    },
  );

  it('have inputs of three digits at most, beside what is counted or chosen', () => {
    for (const formula of drawn.slice(0, 80))
      for (const { typed } of drawExercises(formula, { count: 2, seed: 3, units: { system: 'us' } }))
        for (const { text } of Object.values(typed)) {
          const digits = /^-?[\d.]+(?:e-?\d+)?/u.exec(text)?.[0].replace(/e.*$/u, '').replaceAll(/[-.]/gu, '');
          const significant = digits?.replace(/^0+/u, '').replace(/0+$/u, '') ?? '';
          expect(significant.length, `${formula.id} ${text}`).toBeLessThanOrEqual(3);
        }
  });

  it('never hold inputs that the formula refuses: of a thin slice only that is drawn', () => {
    // The depth has to stay within the wall, which the spans of the two do not say.
    const b31g = formulaById('pipe/modified-b31g') as AnyFormula;
    for (const { step } of drawExercises(b31g, { count: 50, seed: 5, units: { system: 'si' } })) {
      expect(() => b31g.compute(step.input as never)).not.toThrow();
      expect(b31g.limits.some(({ beyond }) => beyond?.(step.input as never) === true)).toBe(false);
    }
    const never: AnyFormula = { ...hoop, compute: () => hoop.compute({ pressure: -1 } as never) };
    let refusal: unknown;
    try {
      hoop.compute({ pressure: -1 } as never);
    } catch (error) {
      refusal = error;
    }
    expect(isCalculationError(refusal)).toBe(true);
    expect(() => drawExercises(never, { count: 1, seed: 1, units: { system: 'si' } })).toThrow(
      /gave 0 of 1 exercises/u,
    );
  });
});

describe('a sheet of exercises', () => {
  it('is the same for the same seed, and another for another', () => {
    expect(exerciseSheet(hoop, { seed: 7 })).toBe(exerciseSheet(hoop, { seed: 7 }));
    expect(exerciseSheet(hoop, { seed: 7 })).not.toBe(exerciseSheet(hoop, { seed: 8 }));
  });

  it('asks without the answer, and answers with every line of the arithmetic', () => {
    const asked = exerciseSheet(hoop, { count: 3, part: 'exercises' });
    expect(asked.match(/^Exercise \d$/gmu)).toHaveLength(3);
    expect(asked.match(/sigma_h {2}= \? MPa/gu)).toHaveLength(3);
    expect(asked).not.toContain('ANSWERS');
    const answers = exerciseSheet(hoop, { count: 3, part: 'answers' });
    expect(answers).not.toContain('= ?');
    expect(answers.match(/\(hoop stress\)/gu)).toHaveLength(3);
  });

  it('is text, Markdown or one page, on which the answers begin a new sheet of paper', () => {
    expect(exerciseSheet(hoop, { format: 'markdown' })).toContain('## ANSWERS');
    const page = exerciseSheet(hoop, { format: 'html' });
    expect(page).toContain('<section class="exercises">');
    expect(page).toContain('.exercises~.answers{break-before:page}');
    expect(page).not.toMatch(/<script|https?:\/\/(?!www\.w3\.org)/u);
  });

  it('is refused for tables, for words and for options out of their range', () => {
    const table = formulas.find((formula) => kinds(formula).includes('list')) as AnyFormula;
    expect(() => exerciseSheet(table)).toThrow(/takes a table for/u);
    expect(() => exerciseSheet(hoop, { count: 0 })).toThrow('count is 0; must be a whole number from 1 to 50');
    expect(() => exerciseSheet(hoop, { seed: 0.5 })).toThrow(/seed is 0\.5/u);
  });
});

describe('hoopwright exercises', () => {
  it('prints the sheet', async () => {
    const { code, out, err } = await run(['exercises', 'pipe/hoop-stress', '--count', '2', '--seed', '9']);
    expect([code, err]).toEqual([0, '']);
    expect(out).toBe(exerciseSheet(hoop, { count: 2, seed: 9 }));
  });

  it.each([
    [[], /needs the id of one formula/u],
    [['pipe/hoop-stres'], /did you mean pipe\/hoop-stress/u],
    [['pipe/hoop-stress', '--count', '0'], /count is 0/u],
    [['pipe/hoop-stress', '--part', 'all'], /--part is "all"/u],
    [['pipe/effective-area'], /takes a table/u],
  ])('refuses %j in a sentence', async (args, says) => {
    const { code, err } = await run(['exercises', ...args]);
    expect(code).toBe(2);
    expect(err).toMatch(says);
  });
});
