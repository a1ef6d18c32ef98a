import type { Moment } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';

/** What shows so small a torque at all: a wrench whose scale begins above it is read at nothing and turned too far. */
export const torqueTool = (torque: Moment): string =>
  torque < practice.leastOnWrench.value ? 'torque screwdriver' : 'torque wrench';
