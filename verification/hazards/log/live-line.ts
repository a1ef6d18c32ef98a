import type { Hazard } from '../hazard.js';

/** People on a line that is under pressure. */
export const liveLine: readonly Hazard[] = [];
