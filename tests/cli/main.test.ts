import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { buildSync } from 'esbuild';
import { describe, expect, test } from 'vitest';
import { exitCodeOf, inWords } from '../../src/cli/exit-code.js';
import { UsageError } from '../../src/cli/usage-error.js';
import { CalculationError } from '../../src/formula/index.js';
import { CaseError, caseJsonSchema } from '../../src/json/index.js';
import { formulas } from '../../src/registry/index.js';
import { exampleText } from '../json/examples.js';
import { run } from './run.js';

const root = fileURLToPath(new URL('../..', import.meta.url));
const { version } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'));

describe('the program', () => {
  test('tells its version and its help, and each command its own', async () => {
    expect(await run(['--version'])).toMatchObject({ code: 0, out: `${version}\n`, err: '' });
    for (const args of [['--help'], ['-h'], ['help']]) {
      const { code, out } = await run(args);
      expect(code).toBe(0);
      for (const command of ['design', 'evaluate', 'formulas', 'schema'])
        expect(out).toContain(`hoopwright ${command}`);
    }
    for (const command of ['design', 'evaluate', 'formulas', 'schema']) {
      const { code, out } = await run([command, '--help']);
      expect(code).toBe(0);
      expect(out.startsWith(`hoopwright ${command}`)).toBe(true);
      for (const option of ['--format', '--units', '--digits']) expect(out).toContain(option);
    }
  });

  test('refuses what is no command', async () => {
    expect(await run([])).toMatchObject({ code: 2, out: '', err: expect.stringMatching(/^No command is given/) });
    expect(await run(['desing'])).toMatchObject({ code: 2, err: expect.stringMatching(/^"desing" is not a command/) });
    expect(await run(['constructor'])).toMatchObject({ code: 2 });
    for (const name of ['constructor', 'toString', '__proto__'])
      expect(await run(['help', name])).toMatchObject({ code: 0, out: expect.stringMatching(/^hoopwright designs/) });
  });

  test('refuses an option that is given twice, and hints at the one that was meant', async () => {
    const hoop = ['evaluate', 'pipe/hoop-stress', 'P=10 bar', 'D=200 mm', 't=10 mm'];
    expect(await run([...hoop, '--unit', 'psi', '--unit', 'MPa'])).toMatchObject({
      code: 2,
      err: '--unit is given twice; give each option once\n',
    });
    expect(await run([...hoop, '--digit', '4'])).toMatchObject({ code: 2, err: expect.stringContaining('--digits?') });
    expect(await run([...hoop, '__proto__=5'])).toMatchObject({
      code: 2,
      err: expect.stringMatching(/^__proto__ .* is not an input of pipe\/hoop-stress/),
    });
  });

  test('gives each sort of error its exit code, and says which is its own fault', () => {
    const refusal = { parameter: 'pressure', value: 1, unit: 'Pa', constraint: 'must be lower' };
    expect(exitCodeOf(new CaseError([]))).toBe(2);
    expect(exitCodeOf(new UsageError('no'))).toBe(2);
    expect(exitCodeOf(new CalculationError({ code: 'invalid-input', ...refusal }))).toBe(2);
    expect(exitCodeOf(new CalculationError({ code: 'outside-validity', ...refusal }))).toBe(2);
    expect(exitCodeOf(new CalculationError({ code: 'no-solution', ...refusal }))).toBe(1);
    expect(exitCodeOf(new TypeError('x is not a function'))).toBe(3);
    expect(exitCodeOf('thrown text')).toBe(3);
    expect(inWords(new TypeError('x is not a function'))).toMatch(/^This is a fault of hoopwright, not of your input/);
    expect(inWords(new UsageError('no such thing'))).toBe('no such thing\n');
  });
});

describe('formulas', () => {
  test('lists every formula, or those that hold a word', async () => {
    const all = (await run(['formulas'])).out.trim().split('\n');
    expect(all.map((line) => line.split(' ')[0])).toEqual(formulas.map(({ id }) => id));
    const folias = (await run(['formulas', 'FOLIAS'])).out;
    expect(folias).toContain('pipe/folias-b31g');
    expect(folias).not.toContain('pipe/hoop-stress ');
    const none = await run(['formulas', 'zzqy']);
    expect(none).toMatchObject({ code: 2, out: '', err: expect.stringMatching(/^No formula holds "zzqy"/) });
  });

  test('shows the card of one, and declarations as JSON', async () => {
    const { out } = await run(['formulas', 'pipe/hoop-stress']);
    expect(out).toContain('sigma_h = P * D / (2 * t)');
    expect(out).toContain('49 CFR');
    const [declaration] = JSON.parse((await run(['formulas', 'pipe/hoop-stress', '--format', 'json'])).out);
    expect(declaration.equation).toEqual({ expression: 'P * D / (2 * t)' });
    expect(declaration.inputs.pressure.kind).toBe('gauge pressure');
    const every = JSON.parse((await run(['formulas', '--format', 'json'])).out);
    expect(every).toHaveLength(formulas.length);
  });
});

describe('schema', () => {
  test('prints the JSON Schema, or the fields in words', async () => {
    expect(JSON.parse((await run(['schema'])).out)).toEqual(caseJsonSchema());
    const { out } = await run(['schema', '--format', 'text']);
    expect(out).toContain('pipe.wallThickness (may be left out): a length above 0 as text with a unit\n');
    expect(out).toContain('defect.profile[].depth: a length of at least 0 as text with a unit\n');
    expect(await run(['schema', 'case'])).toMatchObject({ code: 2, out: '' });
  });
});

describe('the process', () => {
  /** The program as people start it: one file, bundled here and now from the source. */
  const program = 'build/tests/cli.js';
  buildSync({
    entryPoints: ['src/cli.ts'],
    outfile: program,
    absWorkingDir: root,
    bundle: true,
    platform: 'node',
    format: 'esm',
    packages: 'external',
  });

  function start(args: readonly string[], input = '') {
    const { status, stdout, stderr } = spawnSync(process.execPath, [program, ...args], {
      cwd: root,
      input,
      encoding: 'utf8',
    });
    return { code: status, out: stdout, err: stderr };
  }

  test('is an executable script', () => {
    expect(readFileSync(new URL('../../src/cli.ts', import.meta.url), 'utf8').startsWith('#!/usr/bin/env node\n')).toBe(
      true,
    );
  });

  /** Runs the program behind a shell, which can close or fill its streams. */
  function shell(line: string) {
    const command = line.replaceAll('hoopwright', `"${process.execPath}" ${program}`);
    const { status, stderr } = spawnSync('bash', ['-c', `set -o pipefail; ${command}`], {
      cwd: root,
      encoding: 'utf8',
    });
    return { code: status, err: stderr };
  }

  test('says in words that a disk is full, and ends in peace where nobody reads on', () => {
    expect(shell('hoopwright schema > /dev/full')).toEqual({
      code: 2,
      err: 'The answer cannot be written: no space is left on the device\n',
    });
    expect(shell('hoopwright schema | true').err).toBe('');
    expect(shell('hoopwright schema 1>&-').err).not.toContain('    at ');
    expect(shell('hoopwright nothing 2>/dev/full')).toEqual({ code: 2, err: '' });
    expect(shell('hoopwright nothing 2>&-')).toEqual({ code: 2, err: '' });
  });

  test('returns 0, 1 and 2, with errors on standard error', () => {
    const designed = start(['design', 'docs/examples/cooling-water-leak.json']);
    expect([designed.code, designed.err]).toEqual([0, '']);
    expect(designed.out).toContain('Verdict: DESIGNED');
    const refused = start(['design', '-'], exampleText('sour-gas-crack.json'));
    expect([refused.code, refused.err]).toEqual([1, '']);
    const bad = start(['design', '-'], '{"title": ');
    expect([bad.code, bad.out]).toEqual([2, '']);
    expect(bad.err).toMatch(/^the case is not a JSON document/);
  });

  test('evaluates a formula in either system', () => {
    const { code, out } = start(['evaluate', 'pipe/hoop-stress', 'P=10 bar', 'D=200 mm', 't=10 mm', '--unit', 'MPa']);
    expect(code).toBe(0);
    expect(out).toContain('10.00 MPa');
  });
});
