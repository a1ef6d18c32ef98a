import { historyDuration, type MakersTimeInput, makersTime, type TemperatureStep } from '../../cure/index.js';
import { isCalculationError } from '../../formula/index.js';
import type { Time } from '../../quantity/index.js';
import type { MoistureCureSheet } from '../case/case.js';
import { hoursCountFrom } from '../case/hours-count-from.js';
import type { Designed } from '../design/design.js';
import { driestAir } from '../mix-and-cure/humidity-met.js';
import { stepAt } from '../timeline/timeline.js';
import { notShown, reaching } from './points.js';
import type { AsBuiltPoint } from './record.js';

/**
 * Hours of a moisture cure, held to the wait of the plan and to the maker's row for the coldest of them. No row is moved to
 * another temperature: outside them nothing tells what the hours were worth.
 */
export function moistureCurePoint(
  { case: repairCase, timeline }: Designed,
  { rows: stated }: MoistureCureSheet,
  steps: readonly TemperatureStep[],
): AsBuiltPoint {
  if (steps.some(({ temperature }) => temperature < hoursCountFrom(temperature, repairCase.laminate)))
    return notShown(
      'cure',
      'the steel was colder than the sample of the transition was cured: nothing tells how early it softens',
    );
  const rows = stated.map(({ temperature, humidity, cureTime: time }) => ({ temperature, humidity, time }));
  const humidity = driestAir(repairCase.site);
  const planned = stepAt(timeline, 'cure')?.duration;
  if (planned?.known !== true) throw new Error('rows of a maker give one wait for every hour: a fault of this library');
  let wait: number = planned.time;
  for (const { temperature } of steps) {
    const asked = waitBy({ temperature, humidity, rows, purpose: 'wait' });
    if (asked === undefined)
      return notShown(
        'cure',
        'the steel was colder or hotter than the rows of the maker: nothing tells what its hours were worth',
      );
    wait = Math.max(wait, asked);
  }
  const value = historyDuration({ steps });
  return reaching('cure', { name: 'time of cure', kind: 'time', value }, wait);
}

function waitBy(input: MakersTimeInput): Time | undefined {
  try {
    return makersTime(input).time;
  } catch (error) {
    if (!isCalculationError(error)) throw error;
    return undefined;
  }
}
