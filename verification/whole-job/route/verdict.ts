import { missing } from './missing.js';
import { notCovered } from './not-covered.js';
import { notRepairable } from './not-repairable.js';
import type { Parts } from './parts.js';
import type { Job } from './read-job.js';

/** The gravest first, with everything that was found. */
export function verdictOf(job: Job, parts: Parts): { readonly verdict: string; readonly because: readonly string[] } {
  const graver: readonly [string, string[]][] = [
    ['not covered', notCovered(job, parts)],
    ['not repairable', notRepairable(job, parts)],
    ['needs input', missing(job, parts)],
  ];
  const because = graver.flatMap(([verdict, list]) => list.map((each) => `${verdict}: ${each}`));
  return { verdict: graver.find(([, list]) => list.length > 0)?.[0] ?? 'designed', because };
}
