import { readFileSync } from 'node:fs';
import { filesIn } from '../in-process/files.js';

/** The formulas that the job names in its steps, found in its source text: `step(recorder, 'room/name', …)`. */
export function calledByTheJob(): ReadonlySet<string> {
  const root = new URL('../../', import.meta.url);
  const texts = filesIn('src/repair', '.ts').map((file) => readFileSync(new URL(file, root), 'utf8'));
  return new Set(
    texts.flatMap((text) => [...text.matchAll(/'(?<id>[a-z]+\/[a-z0-9-]+)'/gu)].map(([, id]) => id ?? '')),
  );
}
