import { expect, it } from 'vitest';
import { designOf } from '../../../tests/faults/answers.js';
import { type CaseFile, type Paths, withPaths } from '../../../tests/faults/cases.js';

/** A case that is sound, a change that is not, and what the design has to come to. */
export interface Shown {
  readonly from: CaseFile;
  readonly with: Paths;
  readonly verdict: 'designed' | 'needs input' | 'not repairable' | 'not covered';
  /** Field that is asked for. */
  readonly asks?: string;
  /** Limit of a reason, in SI units; the case passes at it or, where it says so, misses it. */
  readonly limit?: number;
  /** Words of a reason or of a warning that the sound case does not have. */
  readonly says?: RegExp;
  /** Step of the plan that says the warning first. */
  readonly step?: string;
}

const LIKE = 1e-9;

function judged(file: CaseFile) {
  const { verdict, missing, reasons, warnings } = designOf(file);
  return { verdict, missing: missing.map(({ field }) => field), reasons, warnings };
}

/** Runs a row: the sound case does not have it, the changed one does. */
export function show(what: string, { from, with: changes, verdict, asks, limit, says, step }: Shown): void {
  it(what, () => {
    const [sound, changed] = [judged(from), judged(withPaths(from, changes))];
    expect(changed.verdict).toBe(verdict);
    if (asks !== undefined) {
      expect(sound.missing).not.toContain(asks);
      expect(changed.missing).toContain(asks);
    }
    if (limit !== undefined) {
      const limits = changed.reasons.map((reason) => reason.limit?.value ?? Number.NaN);
      expect(limits.some((value) => Math.abs(value - limit) <= LIKE * Math.abs(limit))).toBe(true);
    }
    if (says !== undefined) {
      const told = ({ reasons, warnings }: ReturnType<typeof judged>) =>
        [...reasons, ...warnings].filter(({ text }) => says.test(text));
      expect(told(sound)).toEqual([]);
      const [first] = told(changed);
      expect(first).toBeDefined();
      if (step !== undefined) expect(first).toMatchObject({ step });
    }
  });
}
