import type { CureUse } from './duration.js';
import type { StepId } from './timeline.js';

/** The steps at which a material is laid, and at which it is waited for. */
export const stepsOf: Readonly<Record<CureUse, { readonly laid: StepId; readonly wait: StepId }>> = {
  putty: { laid: 'seal', wait: 'putty' },
  filler: { laid: 'filler', wait: 'filler-wait' },
  laminate: { laid: 'wrap', wait: 'cure' },
};
