import { describe, expect, test } from 'vitest';
import { exampleDocument, exampleText } from '../json/examples.js';
import { run } from './run.js';

const files = {
  'leak.json': exampleText('cooling-water-leak.json'),
  'loss.json': exampleText('hydrocarbon-line-corrosion.json'),
  'crack.json': exampleText('sour-gas-crack.json'),
  'broken.json': exampleText('cooling-water-leak.json').replace('"6 bar"', '"6"').replace('"35 degC"', '"35 bar"'),
};

describe('design', () => {
  test('prints the calculation sheet of a leak and ends with 0', async () => {
    const { code, out, err } = await run(['design', 'leak.json'], files);
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('Verdict: DESIGNED');
    expect(out).toContain('Cooling-water return header, pinhole leak');
    expect(out).toContain('pipe/hoop-stress');
  });

  test('echoes a pressure with the kind that its field gave it', async () => {
    const { out } = await run(['design', 'loss.json'], files);
    expect(out).toContain('580 psi (gauge pressure)');
    expect(out).toContain('35 ksi (stress)');
    expect(out).not.toContain('6.625 in (length)');
  });

  test('prints the reasons of a refused case and ends with 1', async () => {
    const { code, out, err } = await run(['design', 'crack.json'], files);
    expect([code, err]).toEqual([1, '']);
    expect(out).toContain('Verdict: NOT COVERED');
    expect(out).toMatch(/crack/);
    expect(out).toMatch(/weld/);
  });

  test('strictly refuses every slip at once, in sentences that quote what was typed, and nothing else', async () => {
    const document = exampleDocument('hydrocarbon-line-corrosion.json');
    document.laminate.cure.activationEnergy = '55 J/mol';
    document.pipe.outsideDiameter = '84.1 mm';
    document.defect.circumferentialWidth = '40 mm';
    delete document.pipe.size;
    const slips = { 'slips.json': JSON.stringify(document), ...files };
    const { code, out, err } = await run(['design', 'slips.json', '--strict'], slips);
    expect([code, out]).toEqual([2, '']);
    expect(err.trim().split('\n')).toEqual([
      expect.stringMatching(/^laminate\.cure\.activationEnergy is 55 J\/mol, outside .*perhaps J\/mol for kJ\/mol/u),
      expect.stringMatching(/^pipe\.outsideDiameter is 84\.1 mm, not near .*perhaps the radius for the diameter/u),
    ]);
    const warned = await run(['design', 'slips.json'], slips);
    expect(warned.code).toBe(0);
    expect(warned.out.replaceAll(/\s+/gu, ' ')).toContain(
      'laminate.cure.activationEnergy is 55 J/mol, outside the usual',
    );
    for (const name of ['leak.json', 'loss.json', 'crack.json'])
      expect(await run(['design', name, '--strict'], files)).toEqual(await run(['design', name], files));
  });

  test('quotes a circumference as typed, and the diameter that it gives', async () => {
    const document = exampleDocument('cooling-water-leak.json');
    delete document.pipe.outsideDiameter;
    delete document.pipe.size;
    document.pipe.circumference = '581 mm';
    document.pipe.wallThickness = '8.18 mm';
    const { code, err } = await run(['design', '-', '--strict'], {}, JSON.stringify(document));
    expect(code).toBe(2);
    expect(err).toMatch(/^pipe\.circumference is 581 mm, a diameter of 184\.9 mm, not near a size of ASME B36\.10M/u);
  });

  test('reads standard input', async () => {
    const fromFile = await run(['design', 'leak.json'], files);
    const fromInput = await run(['design', '-'], {}, files['leak.json']);
    expect(fromInput).toEqual(fromFile);
  });

  test('as JSON gives the design, which designs the same from its own case', async () => {
    const first = JSON.parse((await run(['design', 'leak.json', '--format', 'json'], files)).out);
    expect(first.verdict).toBe('designed');
    expect(first.laminate.laidThickness.unit).toBe('mm');
    expect(first.case.service.designPressure).toBe('6 bar');
    const again = await run(['design', '-', '--format', 'json'], {}, JSON.stringify(first.case));
    expect(JSON.parse(again.out)).toEqual(first);
  });

  test('writes US units and the digits that are asked for', async () => {
    const us = ['--format', 'json', '--units', 'us', '--digits', '3'];
    const { laminate } = JSON.parse((await run(['design', 'leak.json', ...us], files)).out);
    const si = JSON.parse((await run(['design', 'leak.json', '--format', 'json'], files)).out).laminate;
    expect(laminate.laidThickness).toEqual({
      value: Number((si.laidThickness.value / 25.4).toPrecision(3)),
      unit: 'in',
      kind: 'length',
    });
    expect((await run(['design', 'leak.json', '--units', 'us'], files)).out).toMatch(/ in\b/);
  });

  test('writes the sheet to a file too, in the form that its name asks for', async () => {
    const plain = await run(['design', 'leak.json'], files);
    const markdown = await run(['design', 'leak.json', '--format', 'markdown'], files);
    const both = await run(['design', 'leak.json', '--out', 'build/sheet.md'], files);
    expect(both.out).toBe(plain.out);
    expect(both.written.get('build/sheet.md')).toBe(markdown.out);
    const json = await run(['design', 'leak.json', '--out', 'sheet.json'], files);
    expect(JSON.parse(json.written.get('sheet.json') ?? '').verdict).toBe('designed');
    const other = await run(['design', 'crack.json', '--format', 'markdown', '--out', 'sheet'], files);
    expect(other.code).toBe(1);
    expect(other.written.get('sheet')).toBe(other.out);
    const closed = await run(['design', 'leak.json', '--out', '/closed/sheet.md'], files);
    expect([closed.code, closed.out]).toEqual([2, '']);
    expect(closed.err).toBe('/closed/sheet.md cannot be written: permission is denied\n');
  });

  test('tells every error of a case at once on standard error, and prints nothing else', async () => {
    const { code, out, err, written } = await run(['design', 'broken.json', '--out', 'sheet.md'], files);
    expect([code, out, written.size]).toEqual([2, '', 0]);
    expect(err.trim().split('\n')).toEqual([
      expect.stringMatching(/^service\.designPressure: "6" has no unit/),
      expect.stringMatching(/^service\.designTemperature: "35 bar": bar is a unit of .*, not of temperature/),
    ]);
  });

  test.each([
    [['design'], /^design needs one case file/],
    [['design', 'a.json', 'b.json'], /^design needs one case file/],
    [['design', 'nowhere.json'], /^nowhere\.json cannot be read: there is no such file/],
    [['design', 'leak.json', '--frmat', 'json'], /^Unknown option '--frmat'/],
    [['design', 'leak.json', '--format', 'pdf'], /^--format is "pdf"; it must be one of text, markdown, json/],
  ])('refuses %j with exit code 2', async (args, says) => {
    const { code, out, err } = await run(args, files);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(says);
  });

  test('needs input where the hole of a leak was not measured, and says who has it', async () => {
    const document = exampleDocument();
    delete document.defect.holeDiameter;
    const { code, out } = await run(['design', '-', '--format', 'json'], {}, JSON.stringify(document));
    const { verdict, missing } = JSON.parse(out);
    expect([code, verdict]).toEqual([1, 'needs input']);
    expect(missing.map(({ field }: { field: string }) => field)).toContain('defect.holeDiameter');
  });
});
