import type { Mass } from '../../quantity/index.js';
import { scaleStep } from '../../resin/index.js';
import { practice } from '../../rules/index.js';
import type { MixDesign } from '../design/design-work.js';

/** The coarsest step of the one scale of a job: it weighs the smallest portion, and so every other, within the tolerance of the mixing ratio. */
export function scaleFor(mix: MixDesign, other: MixDesign | undefined): Mass {
  const portions = [mix.base, mix.hardener, ...(other === undefined ? [] : [other.base, other.hardener])];
  return scaleStep({ mass: Math.min(...portions) as Mass, tolerance: practice.ratioTolerance.value });
}
