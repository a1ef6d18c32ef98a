import { describe, expect, test } from 'vitest';
import { decodeFormulaInput, echo, encodeResults, isCaseError, parseRows } from '../../src/json/index.js';
import { length, units } from '../../src/quantity/index.js';
import { formulaById, formulas } from '../../src/registry/index.js';

function formula(id: string) {
  const found = formulaById(id);
  if (found === undefined) throw new Error(`there is no ${id}`);
  return found;
}

function complaints(id: string, given: Record<string, unknown>): string[] {
  try {
    decodeFormulaInput(formula(id), given);
  } catch (error) {
    if (isCaseError(error)) return error.issues.map((issue) => issue.message);
    throw error;
  }
  return [];
}

const PIPE = { pressure: '150 psi', outsideDiameter: '12.75 in', wallThickness: '0.33 in' };

describe('the argument of a formula as text', () => {
  test('is read by name and by symbol, each unit by the kind of its input', () => {
    const hoop = formula('pipe/hoop-stress');
    const byName = decodeFormulaInput(hoop, PIPE);
    const bySymbol = decodeFormulaInput(hoop, { P: '150 psi', D: '12.75 in', t: '0.33 in' });
    expect(bySymbol).toEqual(byName);
    expect(byName.input['outsideDiameter']).toBe(length.inch(12.75));
    expect(byName.typed['pressure']).toEqual({ text: '150 psi', unit: 'psi', kind: 'gauge pressure' });
    expect(byName.typed['pressure'] && echo(byName.typed['pressure'])).toBe('150 psi (gauge pressure)');
    expect(byName.typed['wallThickness'] && echo(byName.typed['wallThickness'])).toBe('0.33 in');
  });

  test('what is missing, unknown, doubled or without a unit is told at once', () => {
    expect(complaints('pipe/hoop-stress', { presure: '1 bar', D: '12', t: '1 GPa' })).toEqual([
      'presure ("1 bar") is not an input of pipe/hoop-stress; did you mean pressure?',
      expect.stringMatching(/^pressure is missing \(internal pressure\); expected a gauge pressure with its unit/),
      expect.stringMatching(/^outsideDiameter: "12" has no unit/),
      expect.stringMatching(/^wallThickness: "1 GPa": GPa is a unit of stress, modulus, not of length/),
    ]);
    expect(complaints('pipe/hoop-stress', { ...PIPE, t: '1 mm' })).toEqual([
      'wallThickness is given twice; give each input once',
    ]);
  });

  test('plain numbers, counts, words and flags are read bare, and nothing else passes for them', () => {
    const bare = formulas.flatMap(({ id, inputs }) =>
      Object.entries(inputs as Record<string, { kind: string; choices?: readonly string[] }>).map(
        ([name, { kind, choices }]) => ({ id, name, kind, choices }),
      ),
    );
    const wrong: Record<string, string[]> = {
      number: ['', 'NaN', 'Infinity', '0x10', '1e999', '3 mm', 'one'],
      count: ['', '-1', '1.5', '1e3', '3 mm', 'Infinity'],
      choice: ['', 'none of these'],
      flag: ['', '1', 'perhaps'],
    };
    const right: Record<string, string> = { number: '0.3', count: '7', flag: 'yes' };
    const seen = new Set<string>();
    for (const { id, name, kind, choices } of bare) {
      const texts = wrong[kind];
      if (texts === undefined || seen.has(kind)) continue;
      seen.add(kind);
      for (const text of texts) {
        expect(
          complaints(id, { [name]: text }).some((message) => message.startsWith(`${name} is ${JSON.stringify(text)}`)),
        ).toBe(true);
      }
      const good = right[kind] ?? choices?.[0] ?? '';
      expect(complaints(id, { [name]: good }).filter((message) => message.startsWith(`${name} is "`))).toEqual([]);
    }
    expect([...seen].sort()).toEqual(['choice', 'count', 'flag', 'number']);
  });

  test('every formula can be called with its samples written as text', () => {
    const skipped: string[] = [];
    for (const each of formulas) {
      const inputs = Object.entries(
        each.inputs as Record<
          string,
          { kind: string; sample?: readonly [number, number]; choices?: readonly string[]; default?: unknown }
        >,
      );
      const texts = inputs.flatMap(([name, { kind, sample, choices, default: fallback }]) => {
        if (fallback !== undefined) return [];
        if (choices?.[0] !== undefined) return [[name, choices[0]]];
        if (kind === 'flag') return [[name, 'no']];
        if (sample === undefined) return [[name, undefined]];
        const middle = (sample[0] + sample[1]) / 2;
        if (kind === 'count') return [[name, `${Math.round(middle)}`]];
        const unit = Object.keys((units as Record<string, object>)[kind] ?? {})[0] ?? '';
        return [[name, `${middle} ${unit === '1' ? '' : unit}`.trim()]];
      });
      if (texts.some(([, text]) => text === undefined)) skipped.push(each.id);
      else expect(complaints(each.id, Object.fromEntries(texts)), each.id).toEqual([]);
    }
    expect(skipped.length).toBeLessThan(formulas.length / 3);
  });
});

describe('rows from a file', () => {
  const HISTORY = [
    { duration: '6 h', temperature: '18 degC' },
    { duration: '12 h', temperature: '12 degC' },
  ];

  test('a CSV table with units in its header and a JSON array say the same', () => {
    const csv = 'duration [h],temperature [degC]\n6,18\n12,12\n';
    expect(parseRows(csv, 'steps')).toEqual(HISTORY);
    expect(parseRows(csv.replaceAll(',', ';').replaceAll('\n', '\r\n'), 'steps')).toEqual(HISTORY);
    expect(parseRows(JSON.stringify(HISTORY), 'steps')).toEqual(HISTORY);
    expect(parseRows('duration,temperature\n6 h,18 degC\n12 h,12 degC', 'steps')).toEqual(HISTORY);
  });

  test('a header without columns, a short line and a file that holds no rows are refused', () => {
    expect(() => parseRows('', 'steps')).toThrow(/^steps has no header/);
    expect(() => parseRows('a [mm],b [mm]\n1\n', 'steps')).toThrow(
      /^steps\[0\] is "1", 1 cells where the header has 2/,
    );
    expect(() => parseRows('{"a": 1}', 'steps')).toThrow(/expected a JSON array of rows/);
  });

  test('rows become values, and a wrong cell is named by its place', () => {
    const given = (rows: unknown) => ({ steps: rows });
    const read = (rows: unknown) =>
      complaints('cure/equivalent-time', given(rows)).filter((each) => each.startsWith('steps'));
    expect(read(HISTORY)).toEqual([]);
    expect(read([])).toEqual([
      expect.stringMatching(/^steps is empty; expected a list of rows with duration, temperature/),
    ]);
    expect(read('6 h')).toEqual([expect.stringMatching(/^steps is "6 h"; expected a list/)]);
    expect(read([{ duration: '6 h', temperature: '18' }])).toEqual([
      expect.stringMatching(/^steps\[0\]\.temperature: "18" has no unit/),
    ]);
    expect(read([HISTORY[0], { duration: '6 h', temprature: '18 degC' }])).toEqual([
      expect.stringMatching(/^steps\[1\] has no column "temprature"; did you mean temperature\?/),
      expect.stringMatching(/^steps\[1\]\.temperature is missing/),
    ]);
    expect(read([7])).toEqual([expect.stringMatching(/^steps\[0\] is 7; expected/)]);
  });
});

describe('the results of a formula as JSON', () => {
  test('carry value, unit and kind, in the unit and to the digits asked for', () => {
    const hoop = formula('pipe/hoop-stress');
    const sigma: unknown = hoop.compute(decodeFormulaInput(hoop, PIPE).input as never);
    expect(encodeResults(hoop, sigma)).toEqual({ result: { value: sigma, unit: 'Pa', kind: 'stress' } });
    const value = encodeResults(hoop, sigma, { units: 'us', digits: 4 })['result']?.value;
    // 150 * 12.75 / (2 * 0.33) = 2897.7 psi
    expect(value).toBe(2.898);
  });
});
