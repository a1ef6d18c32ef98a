import { describe, expect, test } from 'vitest';
import { exampleText } from '../json/examples.js';
import { run } from './run.js';

const files = {
  'leak.json': exampleText('cooling-water-leak.json'),
  'loss.json': exampleText('hydrocarbon-line-corrosion.json'),
  'crack.json': exampleText('sour-gas-crack.json'),
};

describe('design --format plan', () => {
  test.each(['leak.json', 'loss.json'])('prints the plan of %s and ends with 0', async (file) => {
    const { code, out, err } = await run(['design', file, '--format', 'plan'], files);
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/^PLAN OF THE WORK\n/);
    expect(out).toMatch(/\n\d+ {2}RETURN TO SERVICE\n/);
  });

  test('sends nobody to work on a crack, and ends with 1', async () => {
    const { code, out } = await run(['design', 'crack.json', '--format', 'plan'], files);
    expect(code).toBe(1);
    expect(out).toContain('NO WORK');
  });

  test('starts at another hour, and moves with real ones', async () => {
    const { out } = await run(
      ['design', 'leak.json', '--format', 'plan', '--start', '09:00', '--actual', 'filler=11:20, wrap=2 07:00'],
      files,
    );
    expect(out).toContain('Start: 09:00.');
    expect(out).toContain('filler began at 11:20');
    expect(out).toContain('began day 2 07:00');
    expect(out).toContain('Back in service: no time.');
  });

  test('gives a time of return where the hold points before a real hour were passed', async () => {
    const { out } = await run(
      ['plan', 'leak.json', '--actual', 'surface=10:30', '--passed', 'permit, survey,seal,putty'],
      files,
    );
    expect(out).not.toContain('no time.');
    expect(out).toMatch(/Back in service: not known, not before/);
  });

  test('looks for the best hour of the forecast', async () => {
    const { out } = await run(['design', 'leak.json', '--format', 'plan', '--start', 'best'], files);
    expect(out.replaceAll(/\s+/gu, ' ')).toMatch(
      /Best start within the forecast: (?:day \d )?\d\d:\d\d, of 72 hours tried/,
    );
  });

  test('is a command of its own, which writes text or a page by the name of the file', async () => {
    const text = (await run(['design', 'leak.json', '--format', 'plan'], files)).out;
    const page = (await run(['design', 'leak.json', '--format', 'plan-html'], files)).out;
    expect((await run(['plan', 'leak.json'], files)).out).toBe(text);
    expect((await run(['plan', 'leak.json', '--format', 'html'], files)).out).toBe(page);
    const { out, written } = await run(['plan', 'leak.json', '--out', 'plan.html'], files);
    expect([out, written.get('plan.html')]).toEqual([text, page]);
    expect((await run(['plan', 'leak.json', '--out', 'plan.txt'], files)).written.get('plan.txt')).toBe(text);
    expect((await run(['plan', 'crack.json'], files)).code).toBe(1);
  });

  test.each([
    [['--out', 'plan.md'], /^--out is "plan\.md"; the name of a file must end with \.html, \.txt/],
    [['--out', 'plan'], /^--out is "plan"; a plan is one file/],
    [['--out', 'old.html'], /^old\.html exists already; --force replaces it/],
    [['--out', 'leak.txt'], /^leak\.txt is the case itself/, 'leak.txt'],
    [['--digits', '3'], /^--digits is for the sheet/],
    [['--force'], /^--force replaces the file that --out names/],
    [['--start', '25:00'], /^start is 25:00; must be a clock time/],
    [['--start', '07:00'], /^start is 07:00; must not be before 07:30.*2 07:00/],
  ])('plan refuses %j with 2 and writes nothing', async (options, says, input = 'leak.json') => {
    const there = { ...files, 'leak.txt': files['leak.json'], 'old.html': 'old' };
    const { code, out, err, written } = await run(['plan', input, ...options], there);
    expect([code, out, written.size]).toEqual([2, '', 0]);
    expect(err).toMatch(says);
  });

  test.each([
    [['--start', '9'], /start is 9/],
    [['--start', '25:00'], /start is 25:00; must be a clock time/],
    [['--start', '12:60'], /start is 12:60/],
    [['--start', '07:29'], /start is 07:29; must not be before 07:30/],
    [['--actual', 'filler=07:00'], /actual\.filler is 07:00; must not be before the start of the job/],
    [['--passed', 'filler'], /passed\.filler is filler; must be a hold point of this plan: permit/],
    [['--actual', 'filler'], /--actual has "filler"/],
    [['--actual', 'lunch=12:00'], /must be a step of this plan/],
  ])('refuses %j with 2', async (options, message) => {
    const { code, err } = await run(['design', 'leak.json', '--format', 'plan', ...options], files);
    expect(code).toBe(2);
    expect(err).toMatch(message);
  });

  test('needs a forecast to look for the best hour', async () => {
    const bare = JSON.parse(exampleText('cooling-water-leak.json'));
    delete bare.site.forecast;
    const { code, err } = await run(['design', 'bare.json', '--format', 'plan', '--start', 'best'], {
      'bare.json': JSON.stringify(bare),
    });
    expect(code).toBe(2);
    expect(err).toMatch(/site\.forecast/);
  });
});
