import type { Designed } from '../../../src/repair/index.js';
import { hoursInJson } from './in-json.js';
import { hoursInPlan } from './in-plan.js';
import { hoursOnSheet } from './on-sheet.js';

/** Every hour that an output tells is that of the timeline; nothing where all agree. */
export function outputsApart(design: Designed): string | undefined {
  return hoursInJson(design) ?? hoursOnSheet(design) ?? hoursInPlan(design);
}
