import { describe, expect, it } from 'vitest';
import { type AnyFormula, formula, refuse } from '../../src/formula/index.js';
import type { GaugePressure, Length, Stress, Temperature } from '../../src/quantity/index.js';
import type { CaseRecord, Expectation } from '../case.js';
import { judge } from './judge.js';
import { caseInFull } from './one.js';
import { digitsAgreed, inside, printedInterval, readPrinted } from './printed.js';
import { readCases, readCaseText, repeatedIds, resultText } from './run.js';

/** The rules by which printed values are judged, on formulas made for the purpose. */

const bare = { sources: [], evidence: { form: { tag: 'chosen' } }, limits: [] } as const;

interface Ring {
  readonly pressure: GaugePressure;
  readonly diameter: Length;
  readonly wall: Length;
}

const ring = formula<Ring, Stress>({
  ...bare,
  id: 'test/ring',
  title: 'A ring',
  compute: ({ pressure, diameter, wall }) => {
    if (wall <= 0)
      refuse({ code: 'invalid-input', parameter: 'wall', value: wall, unit: 'm', constraint: 'must be above 0' });
    return ((pressure * diameter) / (2 * wall)) as Stress;
  },
  equation: { expression: 'P * D / (2 * t)' },
  inputs: {
    pressure: { symbol: 'P', kind: 'gauge pressure', name: 'pressure' },
    diameter: { symbol: 'D', kind: 'length', name: 'diameter' },
    wall: { symbol: 't', kind: 'length', name: 'wall' },
  },
  output: { symbol: 'sigma', kind: 'stress', name: 'stress' },
});

interface Readings {
  readonly readings: readonly { readonly at: Length; readonly heat: Temperature }[];
}

interface Summary {
  readonly warmest: Temperature;
  readonly word: 'warm' | 'cold';
  readonly steps: readonly Length[];
  readonly rows: readonly { readonly at: Length }[];
}

const summary = formula<Readings, Summary>({
  ...bare,
  id: 'test/summary',
  title: 'A summary',
  compute: ({ readings }) => ({
    warmest: Math.max(...readings.map(({ heat }) => heat)) as Temperature,
    word: readings.some(({ heat }) => heat > 300) ? 'warm' : 'cold',
    steps: readings.slice(1).map(({ at }, index) => (at - (readings[index]?.at ?? 0)) as Length),
    rows: readings.map(({ at }) => ({ at })),
  }),
  equation: { algorithm: 'the largest of the readings' },
  inputs: { readings: { symbol: 'r', kind: 'list', name: 'readings', columns: { at: 'length', heat: 'temperature' } } },
  output: {
    warmest: { symbol: 'T', kind: 'temperature', name: 'warmest' },
    word: { symbol: 'w', kind: 'choice', name: 'word' },
    steps: { symbol: 's', kind: 'list', name: 'steps', columns: { value: 'length' } },
    rows: { symbol: 'r', kind: 'list', name: 'rows', columns: { at: 'length' } },
  },
});

const jump = formula<{ readonly x: number }, number>({
  ...bare,
  id: 'test/jump',
  title: 'A jump',
  compute: ({ x }) => (x > 1 ? 20 : 10) + x / 1000,
  equation: { expression: 'x' },
  inputs: { x: { symbol: 'x', kind: 'number', name: 'x' } },
  output: { symbol: 'y', kind: 'number', name: 'y' },
});

const all = new Map<string, AnyFormula>([ring, summary, jump].map((one) => [one.id, one as AnyFormula]));

const base: CaseRecord = {
  id: 'T-1',
  formula: 'test/ring',
  class: 'derivation',
  source: null,
  route: 'by hand',
  inputs: { pressure: '800 psi', diameter: '24 in', wall: '0.25 in' },
  expect: { result: { value: '38400 psi' } },
};

const judged = (change: Partial<CaseRecord>) => judge({ ...base, ...change }, 'test.json', (id) => all.get(id));
const verdictOf = (expected: Expectation, change: Partial<CaseRecord> = {}): string => {
  const { verdict, faults } = judged({ ...change, expect: { result: expected } });
  return faults.length > 0 ? `fault: ${faults.join('; ')}` : verdict;
};

describe('a printed number', () => {
  it('has the place of its last digit, whichever way it is written', () => {
    expect(readPrinted('38400 psi')).toEqual({ value: 38400, place: 1, digits: 5, unit: 'psi' });
    expect(readPrinted('0.0060 in')).toEqual({ value: 0.006, place: 1e-4, digits: 2, unit: 'in' });
    expect(readPrinted('-12.06638792 MPa')).toMatchObject({ value: -12.06638792, place: 1e-8, digits: 10 });
    expect(readPrinted('1.739e+09 Pa')).toMatchObject({ value: 1.739e9, place: 1e6, digits: 4 });
    expect(readPrinted('.5')).toMatchObject({ value: 0.5, place: 0.1, digits: 1, unit: '' });
  });

  it('has fewer digits than its text where the record says so', () => {
    expect(readPrinted('33430 N m', 4)).toEqual({ value: 33430, place: 10, digits: 4, unit: 'N m' });
    expect(readPrinted('0.0999', 2)).toMatchObject({ place: 1e-3, digits: 2 });
  });

  it('is exact when it is a fraction', () => {
    expect(readPrinted('1 1/2 in')).toEqual({ value: 1.5, place: 0, digits: 17, unit: 'in' });
    expect(readPrinted('-1/4')).toMatchObject({ value: -0.25, place: 0 });
  });

  it('that is zero counts its digits after the point', () => {
    expect(readPrinted('0.00 mm')).toEqual({ value: 0, place: 0.01, digits: 2, unit: 'mm' });
    expect(readPrinted('0')).toMatchObject({ place: 1, digits: 0 });
  });

  it('is nothing else', () => {
    for (const text of ['unlimited', '', 'psi 3', '1.2.3', '3/0', '1e999']) expect(readPrinted(text)).toBeUndefined();
  });

  it('stands for all that rounds to it, or is cut to it', () => {
    const five = { value: 5, place: 1, digits: 1, unit: '' };
    expect(printedInterval(five)).toEqual({ low: 4.5, high: 5.5 });
    expect(printedInterval(five, true)).toEqual({ low: 5, high: 6 });
    expect(printedInterval({ ...five, value: -5 }, true)).toEqual({ low: -6, high: -5 });
    expect(inside(5.5, printedInterval(five))).toBe(true);
    expect(inside(5.5000000001, printedInterval(five))).toBe(false);
  });

  it('agrees in as many digits as its relative error leaves, and in no more than are printed', () => {
    const pi = { value: 3.14, place: 0.01, digits: 3, unit: '' };
    expect(digitsAgreed(3.14, pi)).toBe(3);
    expect(digitsAgreed(3.1400000001, pi)).toBe(3);
    expect(digitsAgreed(3.14 * 1.01, pi)).toBeCloseTo(2, 9);
    expect(digitsAgreed(-3.14, pi)).toBe(0);
    const zero = { value: 0, place: 0.001, digits: 3, unit: '' };
    expect(digitsAgreed(0.01, zero)).toBeCloseTo(2, 9);
    expect(digitsAgreed(1e-9, zero)).toBe(3);
  });
});

describe('the verdict', () => {
  it('agrees when the computed value rounds to the printed one', () => {
    expect(verdictOf({ value: '38400 psi' })).toBe('agrees');
    expect(verdictOf({ value: '264.759 MPa' })).toBe('agrees');
    expect(verdictOf({ value: '264.758 MPa' }, { exact: ['pressure', 'diameter', 'wall'] })).toBe('fails');
  });

  it('agrees with a print that is cut only if the record says that it is', () => {
    const exact = ['pressure', 'diameter', 'wall'];
    expect(verdictOf({ value: '264.75 MPa', truncated: true }, { exact })).toBe('agrees');
    expect(verdictOf({ value: '264.75 MPa' }, { exact })).toBe('fails');
    expect(verdictOf({ value: '264.76 MPa', truncated: true }, { exact })).toBe('fails');
  });

  it('moves inputs within their own rounding, and says how far', () => {
    const inputs = { pressure: '800.0 psi', diameter: '24.00 in', wall: '0.25 in' };
    const { verdict, outcomes } = judged({ inputs, expect: { result: { value: '39000 psi' } } });
    expect(verdict).toBe('agrees within the rounding of its inputs');
    const moved = outcomes[0]?.moved;
    expect(moved?.part).toBeGreaterThan(0.7);
    expect(moved?.part).toBeLessThan(0.8);
    const wall = Number.parseFloat(moved?.inputs['wall'] ?? '');
    const [pressure, diameter] = [moved?.inputs['pressure'], moved?.inputs['diameter']].map((text) =>
      Number.parseFloat(text ?? ''),
    );
    expect(((pressure ?? 0) * (diameter ?? 0)) / (2 * wall)).toBeCloseTo(38999.5, 1);
    expect(verdictOf({ value: '40000 psi' }, { inputs })).toBe('fails');
    expect(verdictOf({ value: '39000 psi' }, { inputs, exact: ['wall'] })).toBe('fails');
  });

  it('does not take a value that the result jumps over', () => {
    const change: Partial<CaseRecord> = { formula: 'test/jump', inputs: { x: '1.0' } };
    expect(verdictOf({ value: '15' }, change)).toBe('fails');
    expect(verdictOf({ value: '20.0' }, change)).toBe('agrees within the rounding of its inputs');
  });

  it('takes a printed zero as all below half a unit of its last place', () => {
    const inputs = { pressure: '0 psi', diameter: '24 in', wall: '0.25 in' };
    expect(verdictOf({ value: '0.0 psi' }, { inputs })).toBe('agrees');
    expect(verdictOf({ value: '0.0 psi' }, { inputs: { ...inputs, pressure: '0.01 psi' }, exact: ['pressure'] })).toBe(
      'fails',
    );
  });

  it('uses a tolerance only where it is needed, in the unit of the value', () => {
    const tolerance = { value: '1 MPa', reason: 'read from a chart' };
    expect(verdictOf({ value: '264.0 MPa', tolerance }, { exact: ['pressure', 'diameter', 'wall'] })).toBe(
      'within stated tolerance',
    );
    expect(verdictOf({ value: '263.0 MPa', tolerance }, { exact: ['pressure', 'diameter', 'wall'] })).toBe('fails');
    expect(verdictOf({ value: '38400 psi', tolerance })).toContain('agrees without its tolerance');
    expect(
      verdictOf(
        { value: '264.0 MPa', tolerance: { value: '1 mm', reason: 'none' } },
        { exact: ['pressure', 'diameter', 'wall'] },
      ),
    ).toContain('mm is a unit of length');
  });

  it('measures the tolerance of a temperature as a difference', () => {
    const inputs = { readings: [{ at: '0 m', heat: '20.0 degC' }] };
    const change: Partial<CaseRecord> = { formula: 'test/summary', inputs, exact: ['readings'] };
    const tolerance = { value: '1 deltaF', reason: 'coarse' };
    const warmest = (value: string) => judged({ ...change, expect: { warmest: { value, tolerance } } }).verdict;
    expect(warmest('20.5 degC')).toBe('within stated tolerance');
    expect(warmest('68.9 degF')).toBe('within stated tolerance');
    expect(warmest('20.6 degC')).toBe('fails');
  });

  it('explains only differences that exist', () => {
    const exact = ['pressure', 'diameter', 'wall'];
    expect(verdictOf({ value: '38500 psi', explained: 'mean diameter' }, { exact })).toBe('explained difference');
    expect(verdictOf({ value: '38500 psi' }, { exact, explained: 'mean diameter' })).toBe('explained difference');
    expect(verdictOf({ value: '38400 psi', explained: 'mean diameter' })).toContain('a difference that is not there');
    expect(verdictOf({ value: '38400 psi' }, { explained: 'mean diameter' })).toContain(
      'a difference that is not there',
    );
  });

  it('does not call a right answer an erratum', () => {
    const erratum = { printed: '38400 psi', explanation: 'none' };
    expect(verdictOf({ value: '38400 psi' }, { erratum })).toContain('there is no erratum');
    expect(verdictOf({ value: '38400 psi' }, { erratum: { ...erratum, printed: '38300 psi' } })).toBe('agrees');
    expect(verdictOf({ value: '38400 psi' }, { erratum: { ...erratum, printed: 'the product' } })).toBe('agrees');
  });

  it('holds a bound', () => {
    expect(verdictOf({ atLeast: '38000 psi' })).toBe('agrees');
    expect(verdictOf({ atLeast: '38401 psi' })).toBe('fails');
    expect(verdictOf({ atMost: '38401 psi' })).toBe('agrees');
    expect(verdictOf({ atMost: '38 ksi' })).toBe('fails');
  });

  it('knows a refusal by its code', () => {
    const inputs = { pressure: '800 psi', diameter: '24 in', wall: '0 in' };
    expect(judged({ inputs, expect: { refused: 'invalid-input' } }).verdict).toBe('agrees');
    expect(judged({ inputs, expect: { refused: 'no-solution' } }).verdict).toBe('fails');
    expect(judged({ expect: { refused: 'invalid-input' } }).verdict).toBe('fails');
    expect(judged({ inputs, expect: { result: { atLeast: '1 psi' } } }).verdict).toBe('fails');
  });

  it('goes item by item through inputs that vary', () => {
    const inputs = { pressure: '800 psi', diameter: '24 in' };
    const vary = { wall: ['0.25 in', '0.5 in'] };
    expect(judged({ inputs, vary, expect: { result: { list: ['38400 psi', '19200 psi'] } } }).verdict).toBe('agrees');
    expect(
      judged({ inputs, vary, expect: { result: { list: ['38400 psi', '25200 psi'] } } }).outcomes.map(
        ({ verdict }) => verdict,
      ),
    ).toEqual(['agrees', 'fails']);
    expect(judged({ inputs, vary, expect: { result: { list: ['38400 psi'] } } }).faults.join()).toContain(
      '1 values for 2 variations',
    );
  });

  it('feeds a formula with the output of another', () => {
    const from = {
      formula: 'test/summary',
      inputs: {
        readings: [
          { at: '0 in', heat: '300 K' },
          { at: '1/4 in', heat: '300 K' },
        ],
      },
      output: 'steps[0]',
    };
    const { verdict } = judged({ inputs: { pressure: '800 psi', diameter: '24 in', wall: { from } } });
    expect(verdict).toBe('agrees');
  });

  it('reads lists, words and rows of a record', () => {
    const inputs = {
      readings: [
        { at: '0 mm', heat: '20 degC' },
        { at: '12 mm', heat: '31.5 degC' },
        { at: '20 mm', heat: '25 degC' },
      ],
    };
    const change: Partial<CaseRecord> = { formula: 'test/summary', inputs };
    const expected = {
      warmest: { value: '31.5 degC' },
      word: { word: 'warm' },
      steps: { list: ['12 mm', '8 mm'] },
      'rows.at': { list: ['0 mm', '12 mm', '20 mm'] },
      'rows[1].at': { value: '12 mm' },
    };
    expect(judged({ ...change, expect: expected }).verdict).toBe('agrees');
    expect(judged({ ...change, expect: { word: { word: 'cold' } } }).verdict).toBe('fails');
    expect(judged({ ...change, expect: { steps: { list: ['12 mm', '9 mm'] } }, exact: ['readings'] }).verdict).toBe(
      'fails',
    );
  });

  it('faults a record that cannot be judged', () => {
    const fault = (change: Partial<CaseRecord>): string => judged(change).faults.join();
    expect(fault({ formula: 'test/none' })).toBe('there is no formula test/none');
    expect(fault({ inputs: { ...base.inputs, wal: '1 in' } })).toContain('has no input wal');
    expect(fault({ inputs: { ...base.inputs, wall: '1 psi' } })).toContain('psi is a unit of');
    expect(fault({ inputs: { ...base.inputs, wall: '1' } })).toContain('has no unit');
    expect(fault({ expect: { stress: { value: '1 psi' } } })).toContain('has no output stress, only result');
    expect(fault({ expect: { result: { value: '1 mm' } } })).toContain('mm is a unit of length');
    expect(fault({ expect: {} })).toBe('expects nothing');
    expect(fault({ exact: ['thickness'] })).toContain('exact names thickness');
  });
});

describe('a file of cases', () => {
  const record = {
    ...base,
    formula: 'pipe/hoop-stress',
    source: { key: 'rules-of-thumb', locator: 'p. 106' },
    class: 'handbook',
  };
  const problemOf = (change: object): string =>
    readCaseText('x.json', JSON.stringify([{ ...record, ...change }])).problem ?? '';

  it('is read when it has the form', () => {
    expect(problemOf({})).toBe('');
  });

  it('names the record and the place of what is wrong', () => {
    expect(readCaseText('x.json', '[').problem).toContain('not JSON');
    expect(problemOf({ colour: 'red' })).toMatch(/^T-1: .*colour/u);
    expect(problemOf({ source: { key: 'nobody', locator: 'p. 1' } })).toBe(
      'T-1 at source: src/formula/sources.ts has no source nobody',
    );
    expect(problemOf({ source: null })).toBe('T-1 at source: a case of class handbook names its source');
    expect(problemOf({ class: 'practice' })).toBe('T-1 at source: common practice has no source');
    expect(problemOf({ class: 'derivation', route: undefined })).toBe(
      'T-1 at route: a derivation says its second route',
    );
    expect(problemOf({ class: 'standard' })).toBe('');
    expect(problemOf({ class: 'standard', source: { key: 'iso-24817', locator: '7' } })).toContain(
      'cannot be standard',
    );
    expect(problemOf({ expect: { result: { value: '1 psi', word: 'x' } } })).toBe(
      'T-1 at expect.result: an expectation has exactly one of value, list, atLeast, atMost, word',
    );
    expect(problemOf({ expect: { result: { value: '1 psi', tolerance: { value: '1 psi' } } } })).toContain(
      'T-1 at expect.result.tolerance.reason',
    );
    expect(problemOf({ inputs: { pressure: 800 } })).toContain('T-1 at inputs.pressure');
    expect(problemOf({ vary: { pressure: ['1 psi'] } })).toContain('stand in inputs too');
    expect(problemOf({ vary: { a: ['1 psi'], b: ['1 psi', '2 psi'] } })).toContain('lists of one length');
  });

  it('may not repeat an id', () => {
    const reading = readCaseText('x.json', JSON.stringify([record, record]));
    expect(repeatedIds([reading])).toEqual(['T-1']);
  });

  it('is summed up in words', () => {
    const text = resultText(
      judged({
        expect: { result: { value: '38500 psi', explained: 'the mean diameter' } },
        exact: ['pressure', 'diameter', 'wall'],
      }),
    );
    expect(text).toBe(
      'T-1 (test/ring): explained difference\n  result: printed 38500 psi, computed 38400 psi: explained difference (2.6 of 5 digits); the mean diameter',
    );
  });
});

describe('a case in full', () => {
  const all = readCases().flatMap(({ file, records }) => records.map((record) => ({ file, record })));

  it('shows who printed it, what goes in, the substituted equation and the verdict', () => {
    const hoop = all.find(({ record }) => record.id === 'WE-01');
    if (hoop === undefined) throw new Error('there is no case WE-01');
    const text = caseInFull(hoop.record, hoop.file);
    for (const words of [
      'Rules of Thumb',
      'P  = 800 psi',
      '800 psi * 24 in / (2 * 0.25 in)',
      'printed 38400 psi',
      'agrees',
    ])
      expect(text).toContain(words);
  });

  it('can be written for every record', () => {
    for (const { file, record } of all) expect(caseInFull(record, file), record.id).toContain(`${record.id} (`);
  });
});
