import { testPressure } from '../../acceptance/index.js';
import type { GaugePressure } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import type { Designed } from '../design/design.js';

/** A pressure that a test never passes, and what sets it. */
export interface TestLimit {
  readonly name: string;
  readonly value: GaugePressure;
}

/** What the pressure of a test never passes: what the repair, the test itself and the weakest part of the line allow. */
export function limitsOfTest({
  acceptance: { pressureTest: test },
  case: { acceptance },
}: Pick<Designed, 'acceptance' | 'case'>): TestLimit[] {
  const factor = practice.highestTestPressure.value;
  const limits: TestLimit[] = [
    { name: 'what the laminate resists on the day of the test', value: test.resistance },
    { name: 'the test pressure with what it may be over', value: testPressure({ pressure: test.pressure, factor }) },
  ];
  const asked = acceptance?.pressureTest;
  if (asked !== undefined && asked !== 'none' && asked.lowestRating !== undefined)
    limits.push({ name: 'the lowest rating within the length under test', value: asked.lowestRating });
  return limits;
}

/** The least of them. */
export function leastLimitOfTest(design: Pick<Designed, 'acceptance' | 'case'>): TestLimit {
  return limitsOfTest(design).reduce((least, each) => (each.value < least.value ? each : least));
}
