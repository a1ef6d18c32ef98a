import { existsSync, readFileSync } from 'node:fs';
import type { Difference } from './compare.js';

/** What the last run of all engines found, as it is committed. */
export interface EnginesSummary {
  readonly calls: number;
  readonly formulas: number;
  /** The engine that the others are compared with. */
  readonly against: string;
  readonly engines: readonly (Difference & { readonly engine: string })[];
}

export const enginesSummaryPath = new URL('summary.json', import.meta.url);

export function readEnginesSummary(): EnginesSummary | undefined {
  return existsSync(enginesSummaryPath) ? JSON.parse(readFileSync(enginesSummaryPath, 'utf8')) : undefined;
}
