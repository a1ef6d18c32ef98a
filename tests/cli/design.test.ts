import { describe, expect, test } from 'vitest';
import { writeRuleSet } from '../../src/json/index.js';
import { iso24817 } from '../../src/rules/index.js';
import { exampleDocument, exampleText } from '../json/examples.js';
import { run } from './run.js';

const files = {
  'leak.json': exampleText('cooling-water-leak.json'),
  'loss.json': exampleText('hydrocarbon-line-corrosion.json'),
  'crack.json': exampleText('sour-gas-crack.json'),
  'broken.json': exampleText('cooling-water-leak.json').replace('"6 bar"', '"6"').replace('"35 degC"', '"35 bar"'),
};

describe('design', () => {
  test('prints the first page of a leak and ends with 0', async () => {
    const { code, out, err } = await run(['design', 'leak.json'], files);
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('Verdict: DESIGNED');
    expect(out).toContain('WARNINGS (4)');
    expect(out).not.toContain('pipe/hoop-stress');
    expect(out.trimEnd().split('\n').length).toBeLessThanOrEqual(55);
  });

  test('fully prints the calculation sheet, every step of it', async () => {
    const { code, out, err } = await run(['design', 'leak.json', '--full'], files);
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('Verdict: DESIGNED');
    expect(out).toContain('Cooling-water return header, pinhole leak');
    expect(out).toContain('pipe/hoop-stress');
  });

  test('echoes a pressure with the kind that its field gave it', async () => {
    const { out } = await run(['design', 'loss.json', '--full'], files);
    expect(out).toContain('580 psi (gauge pressure)');
    expect(out).toContain('35 ksi (stress)');
    expect(out).not.toContain('6.625 in (length)');
  });

  test('by a rule set of the user names it on the sheet and designs by it', async () => {
    const { minimum, ...overlap } = iso24817.overlap;
    const own = writeRuleSet({
      ...iso24817,
      heading: 'house rules of the plant',
      overlap: { ...overlap, minimum: { ...minimum, value: 0.4 as never } },
    });
    const { code, out, err } = await run(['design', 'leak.json', '--full', '--rules', 'own.json'], {
      ...files,
      'own.json': own,
    });
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('own rule set "house rules of the plant", own.json: 1 value differs from the set after ISO');
    const json = await run(['design', 'leak.json', '--format', 'json', '--rules', 'own.json'], {
      ...files,
      'own.json': own,
    });
    expect(JSON.parse(json.out)).toMatchObject({
      extent: { overlap: { governing: 'minimum' } },
      endOfLife: { inspections: expect.any(Array), wallLasts: { known: expect.any(Boolean) } },
    });
    const torn = await run(['design', 'leak.json', '--rules', 'own.json'], {
      ...files,
      'own.json': own.replace('"clause"', '"claus"'),
    });
    expect([torn.code, torn.out]).toEqual([2, '']);
  });

  test('by a rule set of the user under the name of the library says whose it is and what it eases', async () => {
    const rule = { ...iso24817.leakFactor[1], value: { firstYear: 0.999, decay: 0 } };
    const own = writeRuleSet({ ...iso24817, leakFactor: { ...iso24817.leakFactor, 1: rule } });
    const given = { ...files, 'own.json': own };
    const named = 'own rule set, own.json: 2 values differ from the set after ISO 24817:2017, as recalled';
    const { out } = await run(['design', 'leak.json', '--rules', 'own.json'], given);
    expect(out.replaceAll(/\s+/gu, ' ')).toContain(`Verdict: DESIGNED (${named}`);
    expect(out).toContain('The own rule set has leakFactor.1.firstYear as 0.999');
    expect(out).toContain('The own rule set has leakFactor.1.decay as 0');
    const sheet = await run(['design', 'leak.json', '--full', '--rules', 'own.json'], given);
    expect(sheet.out.replaceAll(/\s+/gu, ' ')).toContain(named);
    const json = JSON.parse((await run(['design', 'leak.json', '--format', 'json', '--rules', 'own.json'], given)).out);
    expect(json).toMatchObject({ ruleSet: named, options: { rulesFrom: 'own.json' } });
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

  test('writes one file in the form that its name asks for, and a page is a sheet', async () => {
    const page = await run(['design', 'leak.json', '--out', 'sheet.html'], files);
    expect(page.out).toContain('Written to ./: sheet.html.');
    expect(page.written.get('sheet.html')).toMatch(/^<!doctype html>.*pipe\/hoop-stress/su);
    const drawn = await run(['design', 'leak.json', '--out', 'a.svg'], files);
    expect(drawn.written.get('a.svg')).toMatch(/^<svg .*<\/svg>\n$/su);
    const undrawn = await run(['design', 'crack.json', '--out', 'a.svg'], files);
    expect([undrawn.code, undrawn.written.size]).toEqual([2, 0]);
    expect(undrawn.err).toMatch(/nothing to draw: the verdict is not covered/);
    const forms = {
      'a.md': ['--format', 'markdown'],
      'a.txt': ['--full'],
      'a.json': ['--format', 'json'],
    };
    for (const [file, options] of Object.entries(forms)) {
      const { out, written } = await run(['design', 'leak.json', '--out', file, ...options], files);
      expect([...written.keys()]).toEqual([file]);
      expect(written.get(file)).toBe(out);
    }
  });

  test('writes every form into a folder, for a refused case too, and says where', async () => {
    for (const [name, code] of [
      ['leak.json', 0],
      ['crack.json', 1],
    ] as const) {
      const done = await run(['design', name, '--out', 'build/it', '--start', '08:00'], files);
      const drawn = code === 0 ? ['drawing.svg'] : [];
      const names = ['sheet.html', 'sheet.md', 'sheet.txt', ...drawn, 'plan.html', 'plan.txt', 'design.json'];
      expect([done.code, done.err]).toEqual([code, '']);
      expect([...done.written.keys()]).toEqual(names.map((each) => `build/it/${each}`));
      expect(done.out.replaceAll(/\s+/gu, ' ')).toContain(`Written to build/it/: ${names.join(', ')}.`);
    }
    const { written } = await run(['design', 'leak.json', '--out', 'build/it', '--start', '08:00'], files);
    expect(written.get('build/it/plan.txt')).toContain('Start: 08:00.');
    expect((await run(['design', 'leak.json', '--out', 'old.d/'], files)).written.has('old.d/plan.txt')).toBe(true);
    const there = { ...files, 'it.d/other': '' };
    expect((await run(['design', 'leak.json', '--out', 'it.d'], there)).written.has('it.d/plan.txt')).toBe(true);
  });

  test('replaces a file only when told to, and the case never', async () => {
    const there = { ...files, 'old.md': 'old', 'build/plan.txt': 'old' };
    const one = await run(['design', 'leak.json', '--out', 'old.md'], there);
    expect([one.code, one.out, one.written.size]).toEqual([2, '', 0]);
    expect(one.err).toBe('old.md exists already; --force replaces it, or name another file\n');
    const folder = await run(['design', 'leak.json', '--out', 'build'], there);
    expect([folder.code, folder.written.size]).toEqual([2, 0]);
    expect(folder.err).toMatch(/^build\/plan\.txt exists already/);
    expect((await run(['design', 'leak.json', '--out', 'old.md', '--force'], there)).written.has('old.md')).toBe(true);
    const itself = await run(['design', 'leak.json', '--out', './leak.json', '--force'], there);
    expect([itself.code, itself.written.size]).toEqual([2, 0]);
    expect(itself.err).toBe('./leak.json is the case itself, and an input is never overwritten; name another file\n');
    const closed = await run(['design', 'leak.json', '--out', '/closed/sheet.md'], files);
    expect([closed.code, closed.out]).toEqual([2, '']);
    expect(closed.err).toBe('/closed/sheet.md cannot be written: permission is denied\n');
  });

  test.each([
    [['--start', '09:00'], /^--start moves the plan, and none is written here/],
    [['--actual', 'filler=09:00', '--out', 'sheet.html'], /^--actual moves the plan/],
    [['--full', '--format', 'json'], /^--full is the whole sheet as text; --format json leaves it no use/],
    [['--force'], /^--force replaces files that --out names/],
    [['--digits', '3', '--format', 'plan'], /^--digits is for the sheet/],
    [['--out', 'sheet.pdf'], /^--out is "sheet\.pdf"; the name of a file must end with \.html, \.md/],
  ])('refuses %j, which has no use', async (options, says) => {
    const { code, out, err, written } = await run(['design', 'leak.json', ...options], files);
    expect([code, out, written.size]).toEqual([2, '', 0]);
    expect(err).toMatch(says);
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
