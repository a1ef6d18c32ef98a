import { describe, expect, test } from 'vitest';
import { run } from './run.js';

const SHARED = ['yieldStrength=359 MPa', 'designPressure=100 bar', 'depthRate=0.2 mm/year', 'lengthRate=0 mm/year'];
const ASKED = ['--factor', '1.39', '--life', '10 year'];
const HEADER = 'id,outsideDiameter [mm],wallThickness [mm],defectDepth [mm],defectLength [mm]';
const FILE = `${HEADER}
A1,323.9,9.53,3.1,60
A2,323.9,9.53,5.9,200
A3,323.9,9.53,abc,60
A4,323.9,9.53,2.0
"8"" A5",323.9,9.53,4.5,300
=A6,323.9,9.53,0,60
`;

const survey = (text: string, ...more: string[]) =>
  run(['survey', 'a.csv', ...SHARED, ...ASKED, ...more], { 'a.csv': text });

describe('hoopwright survey', () => {
  test('answers every row in the order of the file, and lists what it cannot read with its line', async () => {
    const { code, out, err } = await survey(FILE);
    const lines = out.trim().split('\n');
    expect(lines[0]).toMatch(/^line,id,status,safePressure \[MPa\],/);
    expect(lines.slice(1).map((line) => line.split(',').slice(0, 3).join(' '))).toEqual([
      '2 A1 sound',
      '3 A2 too deep',
      '4 A3 refused',
      '5 A4 refused',
      '6 "8"" A5" repair',
      "7 '=A6 sound",
    ]);
    expect(lines[3]).toContain('defectDepth is ""abc""; expected a bare number');
    expect(lines[4]).toContain('4 cells where the header has 5');
    expect(err).toContain('6 rows: 2 sound, 0 to check, 1 to repair, 1 too deep for the methods, 2 refused');
    expect(code).toBe(2);
    expect((await survey(`${HEADER}\nA1,323.9,9.53,3.1,60\n`)).code).toBe(0);
  });

  test('ends at a row without an end, since all that stands behind it would be lost', async () => {
    const row = (id: number) => `A${id},323.9,9.53,3.1,60`;
    const rows = Array.from({ length: 6000 }, (_, index) => row(index));
    const { out, err, code } = await survey([HEADER, row(0), `"B${row(1)}`, ...rows, ''].join('\n'));
    expect(out).not.toContain('A5999');
    expect(err).toMatch(/^line \d+ of the file is in a row of more than 100000 characters: a quote is not closed/mu);
    expect(err).not.toMatch(/\d rows: /u);
    expect(code).toBe(2);
  });

  test('ranks the worst first with --top, and drops no row that it cannot read', async () => {
    const { out } = await survey(FILE, '--top', '2', '--format', 'json');
    const rows = out
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(rows.map(({ id, status }) => `${id} ${status}`)).toEqual([
      'A3 refused',
      'A4 refused',
      'A2 too deep',
      '8" A5 repair',
    ]);
    expect(rows[3].safePressure).toEqual({ value: 8.823, unit: 'MPa' });
  });

  test('writes pressures and times rounded down, growth rounded up, in the units asked for', async () => {
    const { out } = await survey(
      `${HEADER}\nA1,323.9,9.53,4.5,300\n`,
      '--units',
      'us',
      '--digits',
      '3',
      '--format',
      'json',
    );
    const row = JSON.parse(out);
    expect(row.safePressure).toEqual({ value: 1270, unit: 'psi' });
    // 6.5 mm are 0.25591 in.
    expect(row.depthAtEndOfLife).toEqual({ value: 0.256, unit: 'in' });
  });

  test('takes no row for part of another: a quote that is not closed is refused, not swallowed', async () => {
    const { out, code } = await survey(
      `${HEADER}\nA1,323.9,9.53,3.1,60\n"A2,323.9,9.53,3.1,60\nA3",323.9,9.53,3.1,60\n`,
    );
    expect(out).toMatch(/refused.*a cell runs over several lines/);
    expect(code).toBe(2);
    expect(await survey(`${HEADER}\n"A1,323.9,9.53,3.1,60\n`)).toMatchObject({ code: 2 });
  });

  test('reads a file whose cells bring their units, or that is divided by semicolons', async () => {
    const semicolons = FILE.replaceAll(',', ';');
    expect((await survey(semicolons)).out).toBe((await survey(FILE)).out.replaceAll('has 5', 'has 5'));
    const units = `${HEADER.replaceAll(' [mm]', '')}\nA1,12.75 in,9.53 mm,3.1 mm,60 mm\n`;
    expect((await survey(units)).out).toMatch(/^2,A1,sound,/m);
  });

  test('is not sound by a slip: says so in the row and at the end, and refuses it where it is held strictly', async () => {
    const slip = `${HEADER}\nA1,323.9,95.3,3.1,60\nA2,323.9,9.53,3.1,60\n`;
    const { out, err, code } = await survey(slip);
    expect(out).toMatch(/^2,A1,to check,.*"wallThickness is 95\.30 mm, outside the usual .*cm for mm/mu);
    expect(err).toMatch(/1 sound, 1 to check.*\nWarning: 1 row holds a value outside its usual span/u);
    expect(code).toBe(0);
    const strict = await survey(slip, '--strict', '--format', 'json');
    expect(strict.out).toMatch(/"status":"refused","because":"a value outside its usual span is refused.*95\.30 mm/u);
    expect(strict.code).toBe(2);
  });

  test('warns of a factor below the one that a thinned pipe is given unasked', async () => {
    const at = (factor: string) =>
      run(['survey', 'a.csv', ...SHARED, '--life', '10 year', '--factor', factor], { 'a.csv': FILE });
    expect((await at('1')).err).toContain('Warning: The safety factor is 1, below the 1.25');
    expect((await at('1.25')).err).not.toContain('Warning');
  });

  test.each([
    [
      'a column that is missing',
      `id,defectDepth [mm]\nA,1\n`,
      [],
      /outsideDiameter \(outside diameter\) stands in no column/,
    ],
    [
      'a column that is misspelt',
      FILE.replace('defectDepth', 'defectDept'),
      [],
      /defectDepth .*the column "defectDept" may be meant/,
    ],
    [
      'two columns of one name',
      FILE.replace('defectLength', 'defectDepth'),
      [],
      /defectDepth stands twice in the header/,
    ],
    [
      'a unit of another kind',
      FILE.replace('defectDepth [mm]', 'defectDepth [bar]'),
      [],
      /defectDepth is in no unit of length/,
    ],
    ['an input given twice', FILE, ['defectDepth=1 mm'], /is given for all rows and stands in the header too/],
    ['an empty file', '', [], /is empty/],
    ['a count that is none', FILE, ['--top', '0'], /--top is "0"/],
    ['a method that is none', FILE, ['--method', 'guess'], /--method is "guess"/],
  ])('refuses %s in words', async (_, text, more, says) => {
    const { code, err, out } = await survey(text, ...more);
    expect(err).toMatch(says);
    expect([code, out]).toEqual([2, '']);
  });

  test('refuses to run without a factor and a life, or on a file that is not there', async () => {
    expect(await run(['survey', 'a.csv', ...SHARED, '--life', '1 year'], { 'a.csv': FILE })).toMatchObject({
      code: 2,
      err: expect.stringContaining('--factor is missing'),
    });
    expect(await run(['survey', 'a.csv', ...SHARED, '--factor', '1.4'], { 'a.csv': FILE })).toMatchObject({
      code: 2,
      err: expect.stringContaining('--life is missing'),
    });
    expect(await run(['survey', 'b.csv', ...SHARED, ...ASKED])).toMatchObject({
      code: 2,
      err: 'b.csv cannot be read: there is no such file\n',
    });
  });

  test('draws the survey into a folder: every row counted, those that rank first listed', async () => {
    const plain = await survey(FILE);
    const { out, code, written } = await survey(FILE, '--out', 'pictures/');
    expect([out, code]).toEqual([plain.out, plain.code]);
    expect([...written.keys()]).toEqual(['pictures/survey.html', 'pictures/bands.svg', 'pictures/limit.svg']);
    const page = written.get('pictures/survey.html') ?? '';
    // Rows, sound, to check, repair, too deep, refused.
    expect([...page.matchAll(/<td class="number">(\d+)<\/td>/gu)].slice(0, 6).map(([, count]) => count)).toEqual([
      '6',
      '2',
      '0',
      '1',
      '1',
      '2',
    ]);
    expect(page).toContain('The 4 that rank first');
    expect(page.match(/<svg/gu)).toHaveLength(2);
    expect(page).not.toMatch(/<script|https?:\/\/(?!www\.w3\.org)/u);
  });

  test('overwrites neither the survey nor, without --force, what stands there', async () => {
    const files = { 'a.csv': FILE, 'd/bands.svg': 'old' };
    const into = (...more: string[]) => run(['survey', 'a.csv', ...SHARED, ...ASKED, '--out', 'd', ...more], files);
    const refused = await into();
    expect([refused.code, refused.out, refused.written.size]).toEqual([2, '', 0]);
    expect(refused.err).toContain('d/bands.svg exists already');
    expect((await into('--force')).written.size).toBe(3);
    expect((await survey(FILE, '--force')).err).toContain('--force replaces files that --out names');
  });
});
