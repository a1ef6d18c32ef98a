import type { Evidence } from '../../formula/index.js';
import type { Amount, Length, Line } from '../../quantity/index.js';

/** Two ounces. */
const hammer: Amount = { name: 'hammer', kind: 'mass', value: 0.057, toward: 'down' };

/** How the tap test is made, and where it is no evidence of its own. */
export const tapTest = {
  how: {
    text: 'light hammer of at most {0} on a dry, clean surface, beside a sound place; dull means detached. It leaves no record.',
    amounts: [hammer],
  } satisfies Line,
  hammer,
  /** Laminate up to which the tap test may stand alone. */
  thickestAlone: 0.002032 as Length,
  clause: 'FAA AC 43.13-1B, 5-105',
  evidence: { tag: 'published' } satisfies Evidence,
} as const;
