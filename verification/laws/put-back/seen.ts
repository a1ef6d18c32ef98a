import { existsSync, readFileSync } from 'node:fs';

/** In which draw each fault turns its law red, as the long run found it. */
export const seenPath = new URL('seen.json', import.meta.url);

export function readSeen(): Readonly<Record<string, number>> {
  return existsSync(seenPath) ? JSON.parse(readFileSync(seenPath, 'utf8')) : {};
}
