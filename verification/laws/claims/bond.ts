import type { Designed } from '../../../src/repair/index.js';
import { reaches } from './stated.js';

/** The overlap passes into the pipe three times what the laminate pulls at 0.1 per cent, the least of the default strains. */
export function bond({ case: { laminate: system }, laminate, extent }: Designed): string | undefined {
  const pull = laminate.laidThickness * system.axialModulus * 0.001;
  const passes = (extent.overlap.value * (system.lapShearStrength ?? 0)) / 3;
  return reaches(passes, pull) ? undefined : 'the bond does not pass on what the laminate pulls';
}
