import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { speed, type Time, time } from '../../../src/quantity/index.js';
import { askBeforeSigning } from '../../../src/repair/asked/ask.js';
import { assessPipe } from '../../../src/repair/found/as-found.js';
import { checkCoverage } from '../../../src/repair/found/coverage.js';
import {
  bestStart,
  caseStartingAt,
  designRepair,
  type ForecastStep,
  type RepairCase,
} from '../../../src/repair/index.js';
import { openWorkbook } from '../../../src/repair/job/open-workbook.js';
import { leastOf } from '../../../src/repair/timeline/duration.js';
import { planned, plannedLeak, waterTape } from '../plan-cases.js';

/** The best start shares among its hours what no weather changes: each hour has to come out as when it is designed alone. */

const { crew: _, ...nobody } = planned;
/** So slow that in warm weather a roll gels before it lies. */
const slow: RepairCase = { ...waterTape, crew: { layingSpeed: speed.mPerMin(10 / 40), crews: 1, start: '07:30' } };
const jobs: readonly RepairCase[] = [planned, plannedLeak, waterTape, slow, nobody, { ...planned, filler: 'none' }];

/** Weather of every sort: frost, damp, heat beyond what a resin was tested at, hours and parts of hours. */
const stretch: fc.Arbitrary<ForecastStep> = fc
  .record({
    duration: fc.oneof(fc.integer({ min: 1, max: 12 }), fc.double({ min: 0.01, max: 12, noNaN: true })),
    pipe: fc.double({ min: -10, max: 45, noNaN: true }),
    warmer: fc.double({ min: -8, max: 8, noNaN: true }),
    humidity: fc.double({ min: 0.2, max: 1, noNaN: true }),
  })
  .map(({ duration, pipe, warmer, humidity }) => {
    return {
      duration: time.hour(duration),
      pipeTemperature: 273.15 + pipe,
      airTemperature: 273.15 + pipe + warmer,
      relativeHumidity: humidity,
    } as ForecastStep;
  });
/** Hours on end at which work can start, so that not every one is refused. */
const mild = fc.integer({ min: 1, max: 40 }).map((hours) => ({
  ...(planned.site.forecast?.[2] as ForecastStep),
  duration: time.hour(hours),
}));
const forecasts = fc.array(fc.oneof(stretch, mild), { minLength: 1, maxLength: 8 });

describe('each hour that the best start tries', () => {
  it('comes out as it does when it is designed alone', () => {
    const seen = new Set<string>();
    const compare = (job: RepairCase, forecast: ForecastStep[]): void => {
      const repairCase = { ...job, site: { ...job.site, forecast } };
      for (const { start, verdict, weather, fits, notBackBefore } of bestStart(repairCase).tried) {
        const alone = designRepair(caseStartingAt(repairCase, start));
        expect(verdict).toBe(alone.verdict);
        expect(weather).toBe(alone.site?.weather ?? 'wait');
        expect(fits).toBe(alone.rolls?.fits ?? true);
        expect(notBackBefore).toBe(
          alone.timeline === undefined ? undefined : start + leastOf(alone.timeline.earliestReturn),
        );
        seen
          .add(verdict)
          .add(weather)
          .add(`fits ${fits}`)
          .add(`known ${notBackBefore !== undefined}`);
      }
    };
    fc.assert(fc.property(fc.constantFrom(...jobs), forecasts, compare), { numRuns: 50, seed: 20261125 });
    const sorts = ['designed', 'needs input', 'not repairable', 'go', 'wait', 'stop', 'fits true', 'fits false'];
    expect([...seen]).toEqual(expect.arrayContaining([...sorts, 'known true', 'known false']));
  });

  it('begins with what looks at neither the site nor the crew', () => {
    const shut = new Proxy({}, { get: (_target, key) => expect.unreachable(`${String(key)} was read`) });
    for (const job of jobs) {
      const work = openWorkbook({ ...job, site: shut, crew: shut } as RepairCase, {});
      askBeforeSigning(work);
      expect(checkCoverage(work)).toBe('covered');
      expect(assessPipe(work)).toEqual(designRepair(job).found);
    }
  });

  it('keeps what was noted before it to itself', () => {
    const twice = [bestStart(planned), bestStart(planned)];
    expect(twice[0]).toEqual(twice[1]);
    const alone = designRepair(caseStartingAt(planned, 0 as Time));
    expect(twice[0]?.tried[0]?.verdict).toBe(alone.verdict);
  });
});
