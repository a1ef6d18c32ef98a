import { warmestBehindReading, workingTime } from '../../cure/index.js';
import type { Temperature, Time } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { timeToLay } from '../../wrap/index.js';
import type { Designed } from '../design/design.js';
import { thermometerErrorOf } from '../mix-and-cure/steel-temperatures.js';
import type { AsBuiltRecord, BatchRecord } from './record.js';

/**
 * What the plan lets a crew use of the working time, on the steel and in the air as they were read and never more than in
 * the design: resin that was laid on a hot noon gels sooner than in the forecast.
 */
export function workingTimeThen(
  { case: { filler, laminate, site }, cures }: Designed,
  use: BatchRecord['use'],
  { climate = [] }: AsBuiltRecord,
): Time | undefined {
  const planned = use === 'filler' ? cures.filler : cures.laminate;
  const cure = use === 'filler' && filler !== 'none' ? filler.cure : laminate.cure;
  if (planned === 'none') return undefined;
  if (cure.mechanism === 'moisture') return shareOf(planned.workingTime);
  const { referenceTemperature, activationEnergy, testedFrom, testedTo, mechanism } = cure;
  let shortest: number = planned.workingTime;
  for (const { steelTemperature, airTemperature } of climate) {
    const reading = Math.max(steelTemperature, airTemperature) as Temperature;
    const temperature = warmestBehindReading({ reading, error: thermometerErrorOf(site) });
    const sheet = { referenceTemperature, activationEnergy, testedFrom, testedTo, mechanism };
    shortest = Math.min(shortest, workingTime({ time: cure.workingTime, temperature, ...sheet }).workingTime);
  }
  return shareOf(shortest as Time);
}

function shareOf(workingTime: Time): Time {
  return timeToLay({ workingTime, share: practice.shareOfWorkingTime.value });
}
