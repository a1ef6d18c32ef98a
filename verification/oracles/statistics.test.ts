import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { binomialInterval, normalQuantile, studentQuantile } from '../../src/numeric/index.js';

/** Against SciPy, by its output in student-scipy.json. */

interface Tables {
  readonly student: readonly { readonly chance: number; readonly degrees: number; readonly t: number }[];
  readonly normal: readonly { readonly probability: number; readonly x: number }[];
  readonly binomial: readonly {
    readonly hits: number;
    readonly trials: number;
    readonly level: number;
    readonly least: number;
    readonly most: number;
  }[];
}

const tables = JSON.parse(readFileSync(new URL('student-scipy.json', import.meta.url), 'utf8')) as Tables;

/** A relative difference, absolute where the other value is 0. */
const apart = (ours: number, theirs: number): number => Math.abs(ours - theirs) / (theirs === 0 ? 1 : Math.abs(theirs));

it('has the quantiles of Student of another program within 1e-9', () => {
  expect(tables.student).toHaveLength(72);
  for (const { chance, degrees, t } of tables.student) {
    const ours = studentQuantile(chance, degrees) ?? Number.NaN;
    expect(apart(ours, t), `${chance} of ${degrees} degrees: ${ours} against ${t}`).toBeLessThan(1e-9);
  }
});

it('has the quantiles of the normal distribution of another program within 1e-13', () => {
  expect(tables.normal).toHaveLength(13);
  for (const { probability, x } of tables.normal) {
    const ours = normalQuantile(probability);
    expect(apart(ours, x), `${probability}: ${ours} against ${x}`).toBeLessThan(1e-13);
  }
});

it('has the intervals of Clopper and Pearson of another program within 1e-9', () => {
  expect(tables.binomial).toHaveLength(27);
  for (const { hits, trials, level, least, most } of tables.binomial) {
    const ours = binomialInterval(hits, trials, level);
    const where = `${hits} of ${trials} at ${level}: ${ours.least} to ${ours.most} against ${least} to ${most}`;
    expect(apart(ours.least, least), where).toBeLessThan(1e-9);
    expect(apart(ours.most, most), where).toBeLessThan(1e-9);
  }
});
