import type { Hazard } from './hazard.js';
import { acceptance } from './log/acceptance.js';
import { asBuilt } from './log/as-built.js';
import { asBuiltRecord } from './log/as-built-record.js';
import { contradictions } from './log/contradictions.js';
import { dayOfWork } from './log/day-of-work.js';
import { hours } from './log/hours.js';
import { laminate } from './log/laminate.js';
import { limits } from './log/limits.js';
import { liveLine } from './log/live-line.js';
import { otherLoads } from './log/loads.js';
import { questions } from './log/questions.js';
import { leakSeal } from './log/seal.js';
import { fieldSlips } from './log/slips.js';
import { strengthLeft } from './log/strength.js';

/** The hazard log: part by part, in the order of the job. */
export const hazardLog: readonly { readonly part: string; readonly hazards: readonly Hazard[] }[] = [
  { part: 'Slips that a field shows', hazards: fieldSlips },
  { part: 'Slips that no field shows by itself', hazards: contradictions },
  { part: 'Questions before anybody signs', hazards: questions },
  { part: 'Strength that is left', hazards: strengthLeft },
  { part: 'Limits of the repair', hazards: limits },
  { part: 'Loads beside the pressure', hazards: otherLoads },
  { part: 'Laminate and wrap', hazards: laminate },
  { part: 'Hours of the work', hazards: hours },
  { part: 'Day of the work', hazards: dayOfWork },
  { part: 'Laying and acceptance', hazards: acceptance },
  { part: 'Repair as it was made', hazards: [...asBuilt, ...asBuiltRecord] },
  { part: 'People on a live line', hazards: liveLine },
  { part: 'A live leak', hazards: leakSeal },
];
