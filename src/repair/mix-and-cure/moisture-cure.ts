import { makersTime } from '../../cure/index.js';
import { decide, step } from '../../formula/index.js';
import type { MoistureCureSheet } from '../case/case.js';
import type { CureDesign } from '../design/design-work.js';
import { attempt, type Workbook } from '../job/workbook.js';
import { dampestAir, driestAir } from './humidity-met.js';
import { coldestSteel, warmestReading } from './steel-temperatures.js';

/** Cured by moisture: the maker's own rows in the climate of the site, and nothing else. */
export function moistureCure(work: Workbook, material: string, cure: MoistureCureSheet): CureDesign | undefined {
  const { recorder, case: repairCase } = work;
  const { site } = repairCase;
  decide(
    recorder,
    `times of ${material} from the maker's own rows`,
    'a moisture-cured system is never shifted by temperature',
  );
  return attempt(work, `cure of ${material}`, () => {
    const wait = step(recorder, 'cure/makers-time', makersTime, {
      temperature: coldestSteel(site),
      humidity: driestAir(site),
      rows: cure.rows.map((row) => ({ temperature: row.temperature, humidity: row.humidity, time: row.cureTime })),
      purpose: 'wait',
    });
    const working = step(recorder, 'cure/makers-time', makersTime, {
      temperature: warmestReading(site),
      humidity: dampestAir(site),
      rows: cure.rows.map((row) => ({ temperature: row.temperature, humidity: row.humidity, time: row.workingTime })),
      purpose: 'working time',
    });
    return { material, workingTime: working.time, law: { sort: 'same at every hour', wait: wait.time } };
  });
}
