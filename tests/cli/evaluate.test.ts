import { describe, expect, test } from 'vitest';
import { formulaById } from '../../src/registry/index.js';
import { run } from './run.js';

const HOOP = ['evaluate', 'pipe/hoop-stress', 'pressure=150 psi', 'outsideDiameter=12.75 in', 'wallThickness=0.33 in'];

describe('evaluate', () => {
  test('shows the numbers as typed, then the conversion, then the result in the unit asked for', async () => {
    const { code, out, err } = await run([...HOOP, '--unit', 'psi']);
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('150 psi * 12.75 in / (2 * 0.33 in)');
    expect(out).toContain('323.85 mm');
    // 150 * 12.75 / (2 * 0.33) = 2897.727...
    expect(out).toContain('2898 psi');
    expect(out).toContain('Read as: pressure 150 psi (gauge pressure)');
  });

  test('takes symbols for names, and the system and the digits', async () => {
    const { out } = await run([
      ...['evaluate', 'pipe/hoop-stress', 'P=1.5 bar', 'D=100 mm', 't=2 mm'],
      ...['--units', 'us', '--digits', '7', '--format', 'json'],
    ]);
    // 1.5e5 * 0.1 / 0.004 = 3.75 MPa, and 6894.757 Pa are 1 psi
    expect(JSON.parse(out).result).toEqual({ value: 0.5438915, unit: 'ksi', kind: 'stress' });
  });

  test('as JSON gives formula, inputs, result, results, warnings and step', async () => {
    const { code, out } = await run([...HOOP, '--format', 'json', '--unit', 'Pa']);
    expect(code).toBe(0);
    const json = JSON.parse(out);
    expect(Object.keys(json)).toEqual(['formula', 'inputs', 'result', 'results', 'warnings', 'step']);
    expect(json.formula).toBe('pipe/hoop-stress');
    expect(json.inputs.pressure).toEqual({ value: 150, unit: 'psi', kind: 'gauge pressure', text: '150 psi' });
    expect(json.result.unit).toBe('Pa');
    expect(json.result.value).toBeCloseTo(2897.7272727 * 6894.757293168, 1);
    expect(json.results).toEqual({ result: json.result });
    expect(json.warnings).toEqual([]);
    expect(json.step).toContain('150 psi * 12.75 in');
  });

  test('of a formula with several results gives them all, the main one first', async () => {
    const { code, out, err } = await run([
      ...['evaluate', 'wrap/tape-plan', '--format', 'json', 'requiredLayers=4', 'outsideDiameter=219.1 mm'],
      ...['tapeWidth=100 mm', 'overlap=50 %', 'layerThickness=0.8 mm', 'fullCountLength=300 mm'],
    ]);
    expect([code, err]).toEqual([0, '']);
    const json = JSON.parse(out);
    const names = Object.keys(formulaById('wrap/tape-plan')?.output ?? {});
    expect(Object.keys(json.results)).toEqual(names);
    expect(json.result).toEqual(json.results[names[0] ?? '']);
    // An overlap of one half leaves two layers, so four take two passes.
    expect(json.result).toEqual({ value: 2, unit: '', kind: 'count' });
    expect(json.inputs.requiredLayers).toEqual({ value: 4, unit: '', kind: 'count' });
    expect(json.results.rows.value).toHaveLength(2);
    expect(json.results.rows.value[0].meanDiameter.kind).toBe('length');
  });

  test('reads a profile from a CSV table and from JSON alike', async () => {
    const csv = 'position [mm],depth [mm]\n0,0\n20,2.5\n40,4\n60,1\n80,0\n';
    const rows = csv
      .trim()
      .split('\n')
      .slice(1)
      .map((line) => line.split(','));
    const json = JSON.stringify(rows.map(([x, d]) => ({ position: `${x} mm`, depth: `${d} mm` })));
    const args = ['evaluate', 'pipe/effective-area', 'D=219.1 mm', 't=8.18 mm', 'S_flow=314 MPa', '--format', 'json'];
    const files = { 'depth.csv': csv, 'depth.json': json };
    const fromCsv = await run([...args, 'profile=@depth.csv'], files);
    const fromJson = await run([...args, 'profile=@depth.json'], files);
    const inline = await run([...args, `profile=${json}`]);
    expect([fromCsv.code, fromCsv.err]).toEqual([0, '']);
    expect(fromJson.out).toBe(fromCsv.out);
    expect(inline.out).toBe(fromCsv.out);
    expect(JSON.parse(fromCsv.out).inputs.profile.value[2].depth).toEqual({ value: 4, unit: 'mm', kind: 'length' });
    const missing = await run([...args, 'profile=@nowhere.csv'], files);
    expect([missing.code, missing.err]).toEqual([2, 'nowhere.csv cannot be read: there is no such file\n']);
  });

  test('takes words as they are, and fills in defaults that it shows', async () => {
    const ends = [
      'evaluate',
      'pipe/thick-wall-axial-stress',
      'P=10 MPa',
      'D=219.1 mm',
      't=8.18 mm',
      '--format',
      'json',
    ];
    const closed = await run([...ends, 'ends=closed']);
    expect([closed.code, closed.err]).toEqual([0, '']);
    const json = JSON.parse(closed.out);
    expect(json.inputs.ends).toEqual({ value: 'closed', unit: '', kind: 'choice' });
    expect(Object.values(json.inputs).some((input) => (input as { default?: true }).default === true)).toBe(true);
    const wrong = await run([...ends, 'ends=closd']);
    expect(wrong.code).toBe(2);
    expect(wrong.err).toMatch(/^ends is "closd"; expected one of .*did you mean closed\?/);
  });

  test('warns where a formula is left beyond its limit', async () => {
    const mean = ['evaluate', 'pipe/mean-diameter-hoop-stress', 'P=10 bar', 'D=100 mm', '--format', 'json'];
    expect(JSON.parse((await run([...mean, 't=2 mm'])).out).warnings).toEqual([]);
    expect(JSON.parse((await run([...mean, 't=20 mm'])).out).warnings).toEqual([expect.stringMatching(/D\/t < 11/)]);
  });

  test('warns of an input that is tested nowhere, as typed, and names the slips in that unit only', async () => {
    const hoop = ['evaluate', 'pipe/hoop-stress', 'P=38.5 bar', 'D=8.625 mm', 't=0.322 in'];
    const [text, json, strict] = await Promise.all([
      run([...hoop.slice(0, 3), 'D=21.91 m', 't=8.18 mm']),
      run([...hoop.slice(0, 3), 'D=21.91 m', 't=8.18 mm', '--format', 'json']),
      run([...hoop.slice(0, 3), 'D=21.91 m', 't=8.18 mm', '--strict']),
    ]);
    const warning =
      'outsideDiameter is 21.91 m, outside the 0.02 m to 1.5 m over which this library is tested; perhaps m for mm (then 0.02191 m)';
    expect([text.code, json.code, strict.code]).toEqual([0, 0, 2]);
    expect(text.out).toContain(`\nWarning: ${warning}\n`);
    expect(JSON.parse(json.out).warnings).toEqual([warning]);
    expect([strict.out, strict.err]).toEqual(['', `${warning}\n`]);
  });

  test('strictly answers as ever where nothing is strange', async () => {
    expect(await run([...HOOP, '--strict'])).toEqual(await run(HOOP));
  });

  test("holds a result of one's own to its digits, after the step", async () => {
    // 150 * 12.75 / (2 * 0.33) = 2897.727...
    const right = await run([...HOOP, '--compare', '2898 psi']);
    expect([right.code, right.err]).toEqual([0, '']);
    expect(right.out).toMatch(
      /= 19\.98 MPa[\s\S]*\nCompared: 2898 psi agrees to the 4 digits given; computed: 2897\.73 psi\.\n$/u,
    );
    const wrong = await run([...HOOP, '--compare', '1449 psi']);
    expect(wrong.code).toBe(1);
    expect(wrong.out).toContain('Compared: 1449 psi does not agree');
    expect(wrong.out).toContain('the radius was taken for outside diameter');
    const json = await run([...HOOP, '--compare', '1449 psi', '--format', 'json']);
    expect(JSON.parse(json.out).compared).toMatchObject({ agrees: false, digits: 4 });
    const other = await run([...HOOP, '--compare', '12 mm']);
    expect([other.code, other.out]).toEqual([2, '']);
  });

  test.each([
    [['evaluate'], /needs the id of a formula/],
    [['evaluate', 'pipe/hoop-stres'], /There is no formula "pipe\/hoop-stres"; did you mean pipe\/hoop-stress\?/],
    [['evaluate', 'hoop-stress'], /did you mean pipe\/hoop-stress\?/],
    [[...HOOP, 'nonsense'], /"nonsense" is not an input; inputs are written name="value unit"/],
    [[...HOOP, 'pressure=1 bar'], /pressure is given twice/],
    [[...HOOP, '--unit', 'mm'], /--unit is "mm"; the result of pipe\/hoop-stress is a stress, which is written in Pa/],
    [[...HOOP, '--units', 'imperial'], /--units is "imperial"; it must be one of si, us/],
    [[...HOOP, '--digits', '99'], /--digits is "99"; it must be a whole number from 2 to 15/],
    [[...HOOP, '--format', 'xml'], /--format is "xml"; it must be one of text, json/],
    [[...HOOP, '--colour', 'red'], /Unknown option '--colour'; the options are --format/],
    [[...HOOP.slice(0, 4), 'wallThickness=9 in'], /^wallThickness is 0\.2286 m; must be below .*typed as "9 in"/],
    [[...HOOP.slice(0, 4), 'wallThickness=NaN in'], /"NaN in" is not a number with a unit/],
    [[...HOOP.slice(0, 4), 'wallThickness=inf in'], /"inf in" is not a number with a unit/],
    [[...HOOP.slice(0, 4), 'wallThickness=0.33'], /"0\.33" has no unit/],
  ])('refuses %j with exit code 2 and one sentence', async (args, says) => {
    const { code, out, err } = await run(args);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toMatch(says);
    expect(err.trim().split('\n')).toHaveLength(1);
  });

  test('ends with exit code 1 where the demand has no solution', async () => {
    const hole = ['evaluate', 'laminate/thickness-hole', 'd=25 mm', 'E_c=49 GPa', 'E_a=23.4 GPa', 'nu_ca=0.196'];
    const bond = ['G=3 GPa', 'gamma=250 J/m2', 'f=0.333'];
    // Benchmark C13 of the design notes: no thickness holds more than 10.96 MPa over this hole.
    expect((await run([...hole, ...bond, 'P=10.9 MPa'])).code).toBe(0);
    const { code, out, err } = await run([...hole, ...bond, 'P=11 MPa']);
    expect([code, out]).toEqual([1, '']);
    expect(err).toMatch(/^pressure is .*typed as "11 MPa"/);
  });
});
