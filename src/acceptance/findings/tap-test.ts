import type { Evidence } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

/** How the tap test is made, and where it is no evidence of its own. */
export const tapTest = {
  how: 'light hammer of at most 57 g on a dry, clean surface, beside a sound place; dull means detached. It leaves no record.',
  /** Laminate up to which the tap test may stand alone. */
  thickestAlone: 0.002032 as Length,
  clause: 'FAA AC 43.13-1B, 5-105',
  evidence: { tag: 'published' } satisfies Evidence,
} as const;
