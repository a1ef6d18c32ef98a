import { existsSync, readFileSync } from 'node:fs';
import type { HandCheckCount } from './measure.js';

/** What the last run found, as it is committed. */
export const handCheckSummaryPath = new URL('summary.json', import.meta.url);

export function readHandCheckSummary(): readonly HandCheckCount[] {
  return existsSync(handCheckSummaryPath) ? JSON.parse(readFileSync(handCheckSummaryPath, 'utf8')) : [];
}
