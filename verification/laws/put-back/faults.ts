import { ofAsBuilt } from './as-built.js';
import type { Fault } from './fault.js';
import { ofHoursAndPlan } from './hours-and-plan.js';
import { ofLaminate } from './laminate.js';
import { ofLeak } from './leak.js';
import { ofLineAndPipe } from './line-and-pipe.js';

/** Every fault that was found in the library by others than its tests, and that a law of whole designs can express. */
export const faults: readonly Fault[] = [...ofLineAndPipe, ...ofLeak, ...ofLaminate, ...ofHoursAndPlan, ...ofAsBuilt];
