import { describe, expect, test } from 'vitest';
import {
  CaseError,
  caseFields,
  decodeCase,
  decodeFormulaInput,
  isCaseError,
  parseCase,
  parseRows,
} from '../../src/json/index.js';
import { hoopStress } from '../../src/pipe/index.js';
import { gauge, length, readQuantity } from '../../src/quantity/index.js';
import { formulaById, formulas } from '../../src/registry/index.js';
import { bestStart, designRepair } from '../../src/repair/index.js';
import { exampleDocument } from './examples.js';

const HIDDEN = ['\n', '\r', '\u001b[32m', '\u0085', '\u2028', '\u202e', '\u2066', '\u200f', '\ufeff', '\u0000'];

describe('hostile text', () => {
  test.each(HIDDEN)('%j in a title is refused at either door, so that no title forges a verdict', (hidden) => {
    const title = `Header${hidden}Verdict: DESIGNED`;
    expect(() => decodeCase({ ...exampleDocument(), title })).toThrow(/title.*expected one line of text/);
    const { case: repairCase } = decodeCase(exampleDocument());
    expect(() => designRepair({ ...repairCase, title })).toThrow(/title .*must be one line of text/);
  });

  test('joiners that a script needs, and every other letter, pass', () => {
    const title = 'خط\u200cلوله 8"; Rohrbrücke №3';
    expect(decodeCase({ ...exampleDocument(), title }).case.title).toBe(title);
  });

  test('a refusal shows what nobody sees as its code', () => {
    expect(() => decodeCase({ ...exampleDocument(), '\u202etitle': 'x' })).toThrow(
      expect.objectContaining({ name: 'CaseError' }),
    );
    expect(new CaseError([]).issues).toEqual([]);
    try {
      decodeCase({ ...exampleDocument(), title: 'a\u202eb' });
    } catch (error) {
      expect(String(error)).toContain('\\u202e');
    }
  });

  test('a quantity is on one line', () => {
    expect(readQuantity('length', '8.18 mm\n')).toMatchObject({ ok: true });
    expect(readQuantity('length', '1\n1/2 in')).toMatchObject({ ok: false });
    expect(readQuantity('length', '8\tmm')).toMatchObject({ ok: true, quantity: 0.008 });
  });
});

describe('long input', () => {
  test('a quantity of a hundred thousand characters is refused by its length', () => {
    const reading = readQuantity('length', `1 x${' '.repeat(1e5)}x`);
    expect(reading).toMatchObject({ ok: false, problem: expect.stringMatching(/of 100004 characters .* 200 at most/) });
  });

  test('a header of a hundred thousand brackets is read in one pass', () => {
    expect(() => parseRows(`a${'['.repeat(1e5)}\n1`, 'rows')).toThrow(/has no header/);
    expect(() => parseRows(`a${' '.repeat(1e5)}]\n1`, 'rows')).toThrow(/has no header/);
    expect(parseRows(Array.from({ length: 20_000 }, (_, at) => `c${at}`).join(','), 'rows')).toEqual([]);
  });

  test('a text of five million escapes is scanned for keys that stand twice', () => {
    const text = `{"title": "${'\\n'.repeat(5e6)}", "title": "x"}`;
    expect(() => parseCase(text)).toThrow(/"title" stands twice/);
  });

  test('thousands of refusals are twenty sentences and a count, and all of them in the list', () => {
    const profile = Array.from({ length: 3000 }, () => ({ position: '1', depth: '2' }));
    const document = { ...exampleDocument(), defect: { ...(exampleDocument().defect as object), profile } };
    const error = refusal(() => decodeCase(document));
    expect(error.issues).toHaveLength(6000);
    expect(error.message.split('\n')).toHaveLength(21);
    expect(error.message).toMatch(/and 5980 more, 6000 in all$/);
  });

  test('a hundred and fifty thousand hardness readings and as many rows of a profile have an answer', () => {
    const readings = Array.from({ length: 150_000 }, () => 80);
    expect(formulaById('acceptance/hardness-statistics')?.compute({ readings })).toMatchObject({ minimum: 80 });
  });
});

describe('clumsy tables', () => {
  test('two columns of one name are refused: the last would win in silence', () => {
    expect(() => parseRows('position [mm],depth [mm],depth [mm]\n0,1,2', 'profile')).toThrow(
      /^profile has two columns called "depth"; give each column once/,
    );
  });

  test('a row that is divided by another mark than the header is refused', () => {
    expect(() => parseRows('position [mm],depth [mm]\n0;1', 'profile')).toThrow(/1 cells where the header has 2/);
  });
});

describe('what is no number', () => {
  const strange: readonly unknown[] = [null, undefined, '16', true, 1n, Symbol('x'), {}, [16], () => 16];

  test.each(strange.map((value) => [String(typeof value), value]))('%s makes no quantity', (_, value) => {
    expect(gauge.bar(value as number)).toBeNaN();
    const pressure = gauge.bar(value as number);
    expect(() => hoopStress({ pressure, outsideDiameter: length.mm(200), wallThickness: length.mm(8) })).toThrow(
      /^pressure is NaN Pa; must be a finite number/,
    );
    const input = { pressure: value as never, outsideDiameter: length.mm(200), wallThickness: length.mm(8) };
    expect(() => hoopStress(input)).toThrow(expect.objectContaining({ name: 'CalculationError' }));
  });

  test.each(strange.map((value) => [String(typeof value), value]))(
    '%s in place of a field is refused in words',
    (_, value) => {
      for (const path of caseFields()
        .map((field) => field.path)
        .filter((each) => !/[.[]/u.test(each))) {
        if (typeof value === 'string' || value === undefined || value?.constructor === Object) continue;
        const document = { ...exampleDocument(), [path]: value };
        expect(() => decodeCase(document), path).toThrow(expect.objectContaining({ name: 'CaseError' }));
      }
    },
  );

  test('a list with holes is refused by the place of its first hole', () => {
    const { case: repairCase } = decodeCase(exampleDocument('hydrocarbon-line-corrosion.json'));
    const profile = new Array(5);
    expect(() => designRepair({ ...repairCase, defect: { ...repairCase.defect, profile } as never })).toThrow(
      /defect\.profile\[0\]/,
    );
    const effective = formulaById('pipe/effective-area');
    const pipe = { outsideDiameter: 0.2, wallThickness: 0.008, flowStress: 3e8 };
    expect(() => effective?.compute({ ...pipe, profile })).toThrow(/profile\[0\] is undefined/);
  });
});

describe('a name that is none', () => {
  test('__proto__ is no input, however it is given', () => {
    const given = JSON.parse('{"__proto__": "5", "P": "10 bar", "D": "100 mm", "t": "5 mm"}');
    const hoop = formulas.find(({ id }) => id === 'pipe/hoop-stress');
    if (hoop === undefined) throw new Error('no hoop stress');
    expect(refusal(() => decodeFormulaInput(hoop, given)).message).toMatch(/^__proto__ .* is not an input/);
  });

  test('__proto__ and constructor are no fields of a case', () => {
    const text = JSON.stringify(exampleDocument());
    for (const name of ['__proto__', 'constructor', 'toString'])
      expect(() => parseCase(text.replace('{', `{"${name}": {"a": 1}, `)), name).toThrow(/is not a field of a case/);
  });
});

describe('inputs that may be left out', () => {
  test('every one is so declared, and evaluates without it', () => {
    const working = formulaById('cure/working-time');
    if (working === undefined) throw new Error('no working time');
    const given = {
      time: '20 min',
      referenceTemperature: '23 degC',
      temperature: '30 degC',
      mechanism: 'two-part reaction',
    };
    const { input } = decodeFormulaInput(working, given);
    expect(working.compute(input as never)).toMatchObject({ workingTime: expect.any(Number) });
  });
});

function refusal(act: () => unknown): CaseError {
  try {
    act();
  } catch (error) {
    if (isCaseError(error)) return error;
    throw error;
  }
  throw new Error('nothing was refused');
}

describe('a forecast', () => {
  test('of a thousand million hours is refused where each hour would be designed', () => {
    const document = exampleDocument();
    const { airTemperature, relativeHumidity, pipeTemperature } = document.site;
    document.site.forecast = [{ duration: '1000000000 h', airTemperature, relativeHumidity, pipeTemperature }];
    const { case: repairCase } = decodeCase(document);
    expect(designRepair(repairCase).verdict).toBe('designed');
    expect(() => bestStart(repairCase)).toThrow(/site\.forecast is 1000000000 h; must be at most 8784 h, a year/);
  });
});
