import type { Hazard } from './hazard.js';
import { contradictions } from './log/contradictions.js';
import { limits } from './log/limits.js';
import { liveLine } from './log/live-line.js';

/** The hazard log: part by part, in the order of the job. */
export const hazardLog: readonly { readonly part: string; readonly hazards: readonly Hazard[] }[] = [
  { part: 'Slips that no field shows by itself', hazards: contradictions },
  { part: 'Limits of the repair', hazards: limits },
  { part: 'People on a live line', hazards: liveLine },
];
