import { describe, expect, it } from 'vitest';
import { attempt } from '../../src/formula/index.js';
import { evaluate, findFormulas, formulas, typesetEquation } from '../../src/formulas.js';
import { gauge, length } from '../../src/quantity/index.js';

const PIPE = { pressure: '150 psig', outsideDiameter: '12.75 in', wallThickness: '0.33 in' };

describe('evaluate', () => {
  it('gives value, unit and step of a formula by its name, from text', () => {
    const answer = evaluate('pipe/hoop-stress', PIPE, { units: 'us', digits: 4 });
    // 150 * 12.75 / (2 * 0.33) = 2897.7 psi
    expect(answer).toMatchObject({ value: 2.898, unit: 'ksi', kind: 'stress', formula: 'pipe/hoop-stress' });
    expect(answer.results['result']).toEqual({ value: 2.898, unit: 'ksi', kind: 'stress' });
    expect(answer.step.text).toContain('150 psig');
    expect(answer.step.mathml).toMatch(/^<math .*<mfrac>.*<\/math>$/su);
    expect(answer.step.latex).toContain('\\frac{P \\, D}{2 \\, t}');
    expect(answer.step.latex).toContain('\\,\\mathrm{ksi}');
    expect(answer.step.data).toMatchObject({ sort: 'step', formula: 'pipe/hoop-stress' });
    expect(JSON.parse(JSON.stringify(answer))).toEqual(answer);
  });

  it('takes typed values beside text, an input by its symbol, and bare numbers in SI only', () => {
    const mixed = evaluate('pipe/hoop-stress', { P: gauge.psi(150), D: length.inch(12.75), t: '0.33 in' });
    expect(mixed.value).toBeCloseTo(19.98, 2);
    expect(mixed.unit).toBe('MPa');
    expect(evaluate('pipe/hoop-stress', { P: 1e6, D: 0.2, t: 0.01 }).value).toBeCloseTo(10, 12);
  });

  it.each([
    [
      'a name that is none',
      'pipe/hoop-stres',
      PIPE,
      {},
      /There is no formula "pipe\/hoop-stres"; did you mean pipe\/hoop-stress\?/,
    ],
    ['a misspelt input', 'pipe/hoop-stress', { ...PIPE, presure: '1 bar' }, {}, /presure .* did you mean pressure\?/],
    ['an input that is missing', 'pipe/hoop-stress', { P: '1 bar', D: '1 m' }, {}, /wallThickness is missing/],
    ['a wrong unit', 'pipe/hoop-stress', { ...PIPE, pressure: '150 mm' }, {}, /mm is a unit of length/],
    ['null', 'pipe/hoop-stress', { ...PIPE, pressure: null }, {}, /pressure is null/],
    ['a number that is none', 'pipe/hoop-stress', { ...PIPE, pressure: Number.NaN }, {}, /pressure is/],
    [
      'a unit system that is none',
      'pipe/hoop-stress',
      PIPE,
      { units: 'metric' },
      /units is "metric"; it must be "si" or "us"/,
    ],
    [
      'a unit of another kind',
      'pipe/hoop-stress',
      PIPE,
      { units: { system: 'si', kinds: { stress: 'mm' } } },
      /units\.kinds\.stress is "mm"/,
    ],
    [
      'digits beyond a float',
      'pipe/hoop-stress',
      PIPE,
      { digits: 99 },
      /digits is 99; it must be a whole number from 2 to 15/,
    ],
    ['an option that is none', 'pipe/hoop-stress', PIPE, { unit: 'psi' }, /unit is "psi"; it must be left out/],
  ])('refuses %s in words', (_, id, given, options, says) => {
    const outcome = attempt(() => evaluate(id, given, options as never));
    expect(outcome.ok).toBe(false);
    if (!outcome.ok) expect(outcome.refusal.message).toMatch(says);
  });

  it('tells a refusal of the formula what was typed', () => {
    const outcome = attempt(() => evaluate('pipe/hoop-stress', { ...PIPE, pressure: '-1 bar' }));
    expect(outcome).toMatchObject({ ok: false, refusal: { name: 'CalculationError' } });
    if (!outcome.ok) expect(outcome.refusal.message).toMatch(/typed as "-1 bar"/);
  });
});

describe('attempt', () => {
  it('gives a value or a refusal, and throws a fault on', () => {
    expect(attempt(() => 5)).toEqual({ ok: true, value: 5 });
    expect(() => attempt(() => (undefined as unknown as { a: number }).a)).toThrow(TypeError);
  });
});

describe('the search for a formula', () => {
  it.each([
    ['barlow', 'pipe/hoop-stress'],
    ['BARLOW hoop', 'pipe/hoop-stress'],
    ['metal loss', 'pipe/modified-b31g'],
    ['condensation', 'site/dew-point'],
    ['maximum allowable working pressure', 'pipe/mawp'],
  ])('%s finds %s', (words, id) => {
    expect(findFormulas(words).map((each) => each.id)).toContain(id);
  });

  it('finds all of them by no word, none by a strange one, and each term says what its formula does not', () => {
    expect(findFormulas(' ')).toHaveLength(formulas.length);
    expect(findFormulas('zzz')).toEqual([]);
    for (const { id, title, search = [] } of formulas)
      for (const term of search) expect(`${id} ${title}`.toLowerCase(), id).not.toContain(term);
  });
});

describe('the typeset equation', () => {
  it.each(formulas.map((formula) => [formula.id, formula] as const))(
    'of %s is text, MathML and LaTeX',
    (_, formula) => {
      const { text, mathml, latex } = typesetEquation(formula);
      expect(text.length).toBeGreaterThan(3);
      expect(mathml.match(/<m\w+/gu)?.length).toBe(mathml.match(/<\/m\w+>|<mspace[^>]*\/>/gu)?.length);
      let depth = 0;
      for (const brace of latex.replaceAll(/\\[{}]/gu, ''))
        if (brace === '{') depth++;
        else if (brace === '}') depth--;
      expect(depth).toBe(0);
    },
  );
});
