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
  });

  test('looks for the best hour of the forecast', async () => {
    const { out } = await run(['design', 'leak.json', '--format', 'plan', '--start', 'best'], files);
    expect(out.replaceAll(/\s+/gu, ' ')).toMatch(
      /Best start within the forecast: (?:day \d )?\d\d:\d\d, of 72 hours tried/,
    );
  });

  test('writes the page where the file asks for it, and prints the sheet', async () => {
    const { out, written } = await run(['design', 'leak.json', '--out', 'plan.html'], files);
    expect(written.get('plan.html')).toMatch(/^<!doctype html>/);
    expect(out).toContain('ANSWER');
  });

  test.each([
    [['--start', '9'], /start is 9/],
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
