import type { Designed, WorkPlan } from '../../../src/repair/index.js';
import { reaches } from './stated.js';

/** What the design warns of stands in the plan where the crew reads it, and no test goes above what the repair resists. */
export function plan(design: Designed, { steps, alerts }: WorkPlan): string | undefined {
  for (const { step, text } of design.warnings) {
    if (step === undefined) continue;
    const at = steps.find(({ id }) => id === step) ?? steps[0];
    if (at?.does.some((line) => line.text.includes(text.slice(0, 40))) !== true)
      return `the plan does not warn at ${step}`;
  }
  const { pressureTest } = design.acceptance;
  const { medium, pressure, resistance } = pressureTest;
  if (medium === 'liquid' || medium === 'gas') {
    if (!reaches(resistance, pressure) && !alerts.some(({ text }) => text.includes('NO PRESSURE TEST')))
      return 'the plan tests above what the repair resists';
    const asked = design.case.acceptance?.pressureTest;
    const rating = asked === undefined || asked === 'none' ? undefined : asked.lowestRating;
    if (rating !== undefined && !reaches(rating, pressure)) return 'the test is above the lowest rating';
    if (
      asked !== undefined &&
      asked !== 'none' &&
      asked.liquid !== 'fresh water' &&
      pressureTest.waterToAdd !== undefined
    )
      return 'a liquid that is no fresh water has its density';
  }
  const { site } = design;
  if (site.decision === 'stop' && !alerts.some(({ text }) => text.includes('STOP')))
    return 'the plan does not say STOP';
  if (design.rolls.fits === false && !alerts.some(({ text }) => text.includes('DOES NOT FIT')))
    return 'the plan does not say that the wrap does not fit';
  return undefined;
}
