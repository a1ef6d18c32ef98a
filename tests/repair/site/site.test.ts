import { describe, expect, it } from 'vitest';
import { ratio, temperature } from '../../../src/quantity/index.js';
import { compareAsBuilt, designRepair, type RepairCase } from '../../../src/repair/index.js';
import { madeOf } from '../../faults/answers.js';
import { quietLoss, withPaths } from '../../faults/cases.js';
import { goodRecord } from '../../faults/records.js';
import { planned } from '../plan-cases.js';

/** What the gate of the site says, and what it leaves out where there is nothing to say. */

const siteOf = (repairCase: RepairCase) => {
  const { site } = designRepair(repairCase);
  if (site === undefined) throw new Error('no site was judged');
  return site;
};

describe('the site of a design', () => {
  it('has readings that cannot be judged read again', () => {
    const { reasons } = siteOf({ ...planned, site: { ...planned.site, relativeHumidity: ratio.percent(0) } });
    expect(reasons.find(({ check }) => check === 'climate')).toMatchObject({
      decision: 'wait',
      change: { text: 'read air and steel again' },
    });
  });

  it('names no hour to start where no hour of the forecast will do', () => {
    const damp = planned.site.forecast?.map((hours) => ({ ...hours, relativeHumidity: ratio.percent(97) }));
    const never = siteOf({
      ...planned,
      site: { ...planned.site, relativeHumidity: ratio.percent(97), forecast: damp },
    });
    expect(never.weather).not.toBe('go');
    expect(never).not.toHaveProperty('earliestStart');
    expect(siteOf(planned)).toHaveProperty('earliestStart');
  });

  it('gives a check by number both its numbers, and a check by eye none', () => {
    const { reasons } = siteOf(planned);
    const by = (name: string) => reasons.find(({ check }) => check === name);
    expect(by('profile')).toMatchObject({
      found: { value: planned.site.surface?.profile, kind: 'length' },
      limit: { kind: 'length' },
    });
    expect(by('preparation grade')).toBeDefined();
    expect(Object.keys(by('preparation grade') ?? {})).not.toContain('found');
    expect(Object.keys(by('preparation grade') ?? {})).not.toContain('limit');
  });
});

describe('the steel of a tape that moisture cures', () => {
  it('is no hotter than the hottest row of its maker', () => {
    const rows = [10, 30].map((degrees, index) => ({
      ...{ temperature: `${degrees} degC`, humidity: `${[20, 95][index]} %`, cureTime: '6 h', workingTime: '20 min' },
    }));
    const moist = madeOf(
      withPaths(quietLoss, {
        'laminate.cure': { mechanism: 'moisture', rows },
        resin: 'none',
      }),
    );
    const at = (degrees: number) => {
      const steelTemperature = temperature.degC(degrees);
      const climate = [{ steelTemperature, airTemperature: temperature.degC(25), relativeHumidity: ratio.percent(50) }];
      const { points } = compareAsBuilt(moist, { ...goodRecord(moist), climate });
      return points.find(({ point }) => point === 'climate')?.text;
    };
    expect(at(30.1)).toContain('hotter than the maker tested');
    expect(at(30)).not.toContain('hotter than the maker tested');
  });
});
