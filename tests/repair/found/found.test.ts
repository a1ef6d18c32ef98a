import { describe, expect, it } from 'vitest';
import { asksFor, designOf } from '../../faults/answers.js';
import { type CaseFile, emptyLeak, evenLoss, type Paths, quietLoss, withPaths } from '../../faults/cases.js';

/** The pipe as it was found and as it will be, at the borders between one kind of finding and the next. */

const foundOf = (file: CaseFile, changes: Paths = {}) => {
  const { found } = designOf(withPaths(file, changes));
  if (found === undefined) throw new Error('nothing was found');
  return found;
};

/** A leak whose thinned metal is left as it is over the whole life. */
const still = withPaths(emptyLeak, {
  'defect.growth': { depth: '0 mm/year', length: '0 mm/year' },
  'defect.readingError': 'none',
  'defect.remainingWall': '3 mm',
});

describe('a wall that thins', () => {
  it('stays a wall down to the least that counts as one, and is a hole below', () => {
    expect(foundOf(evenLoss, { 'defect.remainingWall': '1 mm' }).throughWall).toBe(false);
    expect(foundOf(evenLoss, { 'defect.remainingWall': '0.99 mm' }).throughWall).toBe(true);
  });

  it('that the reading error takes whole is gone today and at the end of life', () => {
    const gone = { 'defect.remainingWall': '0.5 mm', 'defect.readingError': '0.5 mm' };
    for (const growth of ['none', { depth: '0.1 mm/year', length: '0 mm/year' }]) {
      const cause = { 'defect.cause': 'external corrosion', 'defect.growth': growth };
      const { wallToday, wallAtEndOfLife, throughWall, depthAtEndOfLife } = foundOf(quietLoss, { ...gone, ...cause });
      expect([wallToday, wallAtEndOfLife, throughWall]).toEqual([0, 0, true]);
      expect(depthAtEndOfLife).toBeCloseTo(7.11e-3, 12);
    }
  });

  it('takes its rate from the wall as it was read where the error takes all of it', () => {
    const depth = { previousWall: '0.7 mm', sincePrevious: '2 year', service: '100 year' };
    const gone = { 'defect.remainingWall': '0.5 mm', 'defect.growth': { depth, length: '0 mm/year' } };
    expect(designOf(withPaths(quietLoss, { ...gone, 'defect.readingError': '0.5 mm' })).found?.wallAtEndOfLife).toBe(0);
  });
});

describe('loss that goes on', () => {
  it('is asked for by what is known of its cause', () => {
    const why = (cause: string): string => {
      const { missing } = designOf(withPaths(quietLoss, { 'defect.cause': cause, 'defect.growth': 'none' }));
      return missing.find(({ field }) => field === 'defect.growth')?.why ?? '';
    };
    expect(why('unknown')).toMatch(/^a cause that is not known may be internal/u);
    expect(why('internal corrosion')).toMatch(/^internal corrosion goes on/u);
  });

  it.each(['external corrosion', 'mechanical damage'])(
    'is not asked for where it stops under a repair: %s',
    (cause) => {
      const stops = withPaths(quietLoss, { 'defect.cause': cause, 'defect.growth': 'none' });
      expect(asksFor(stops, 'defect.growth')).toBe(false);
      expect(foundOf(stops).wallAtEndOfLife).toBe(0.002);
      expect(foundOf(stops).lengthAtEndOfLife).toBe(0.18);
    },
  );
});

describe('the hole at the end of life', () => {
  it('is that of today while a wall is left round it, and the whole defect where none is', () => {
    const size = (wall: string) => foundOf(still, { 'defect.remainingWall': wall }).holeAtEndOfLife;
    expect(size('1 mm')).toBe(0.004);
    expect(size('0.99 mm')).toBeCloseTo(Math.hypot(0.06, 0.045), 12);
  });

  it('is the larger one of what an inspector expects and of what grows out of the hole of today', () => {
    const size = (expected: string, rate: string) =>
      foundOf(still, {
        'defect.remainingWall': '0.5 mm',
        'defect.holeAtEndOfLife': expected,
        'defect.growth.length': rate,
      }).holeAtEndOfLife;
    expect(size('10 mm', '0 mm/year')).toBe(0.01);
    expect(size('10 mm', '0.5 mm/year')).toBeCloseTo(0.014, 12);
  });

  it('of a wall loss that nobody expects to open less is the whole of it, else what is expected', () => {
    const usedUp = { 'defect.remainingWall': '0.5 mm', 'defect.axialLength': '60 mm' };
    expect(foundOf(evenLoss, usedUp).holeAtEndOfLife).toBeCloseTo(Math.hypot(0.06, 0.04), 12);
    expect(foundOf(evenLoss, { ...usedUp, 'defect.holeAtEndOfLife': '20 mm' }).holeAtEndOfLife).toBe(0.02);
  });

  it('is round up to five times as long as wide, and a slot beyond', () => {
    const slot = (length: string) =>
      designOf(
        withPaths(evenLoss, {
          'defect.remainingWall': '0.5 mm',
          'defect.axialLength': length,
          'defect.circumferentialWidth': '20 mm',
        }),
      ).reasons.filter(({ text }) => text.includes('long and narrow'));
    expect(slot('100 mm')).toEqual([]);
    expect(slot('100.1 mm')).toEqual([
      expect.objectContaining({ limit: expect.objectContaining({ value: 5 }), found: expect.objectContaining({}) }),
    ]);
    expect(slot('100.1 mm')[0]?.found?.value).toBeCloseTo(5.005, 9);
  });
});

describe('a thinned length that would tear open', () => {
  const long = withPaths(still, { 'defect.axialLength': '500 mm', 'defect.remainingWall': '3 mm', 'repair.class': 3 });
  const tears = (bar: number, left: string, rate = '0 mm/year'): boolean => {
    const changes = {
      'service.designPressure': `${bar} bar`,
      'defect.remainingWall': left,
      'defect.growth.depth': rate,
    };
    return designOf(withPaths(long, changes)).warnings.some(({ text }) => text.includes('would tear open'));
  };
  const pressures = [2, 5, 8, 11, 14, 17, 20, 25, 30, 40];

  it('is judged by the wall at the end of life, and by that of today where none is left then', () => {
    const today = pressures.map((bar) => tears(bar, '3 mm'));
    const thinner = pressures.map((bar) => tears(bar, '1.5 mm'));
    expect(today).not.toEqual(thinner);
    expect(pressures.map((bar) => tears(bar, '3 mm', '0.15 mm/year'))).toEqual(thinner);
    expect(pressures.map((bar) => tears(bar, '3 mm', '0.4 mm/year'))).toEqual(today);
    expect(today).toContain(true);
    expect(today).toContain(false);
  });

  it('is not judged where no wall is left today either', () => {
    const gone = withPaths(long, { 'defect.remainingWall': '0.1 mm', 'defect.readingError': '0.1 mm' });
    expect(designOf(gone).found?.wallToday).toBe(0);
  });
});

describe('the sound pipe beside the defect', () => {
  // 30 bar on 16 times its wall is 240 bar to the last digit.
  const round = withPaths(evenLoss, {
    'pipe.outsideDiameter': '250 mm',
    'pipe.wallThickness': '15.625 mm',
    'pipe.material.yieldStrength': '240 MPa',
    'pipe.material.tensileStrength': '400 MPa',
    'pipe.material.allowableStress': undefined,
    'service.designPressure': '30 MPa',
    'defect.remainingWall': '14 mm',
  });
  const told = (changes: Paths) => {
    const { reasons, warnings } = designOf(withPaths(round, changes));
    const warned = (words: string): boolean => warnings.some(({ text }) => text.includes(words));
    return {
      yields: reasons.filter(({ text }) => text.includes('would yield')),
      aboveAllowable: [
        warned('is above its allowable stress at'),
        warned('loads with the design pressure, is above its'),
      ],
      aboveCode: warned('that the pipeline code allows'),
    };
  };

  it('may reach its yield strength and its allowable stress, and no more', () => {
    for (const axialForce of ['none', '1 kN']) {
      const at = { 'loads.axialForce': axialForce };
      const above = { ...at, 'service.designPressure': '30.01 MPa' };
      expect(told(at).yields).toEqual([]);
      const { yields } = told(above);
      expect(yields).toHaveLength(axialForce === 'none' ? 1 : 2);
      for (const { found, limit } of yields) expect([found?.value, limit?.value]).toEqual([240.08e6, 240e6]);
      const allowed = { 'pipe.material.yieldStrength': '300 MPa', 'pipe.material.allowableStress': '240 MPa' };
      expect(told({ ...at, ...allowed }).aboveAllowable).toEqual([false, false]);
      expect(told({ ...above, ...allowed }).aboveAllowable).toEqual([true, axialForce !== 'none']);
    }
  });

  it('is held to the factor of its code where no allowable stress is stated, and may reach it', () => {
    const above = (pressure: string, more: Paths = {}): boolean => {
      const changes = { ...more, 'service.designPressure': pressure, 'assessment.designFactor': 0.5 };
      return designOf(withPaths(round, changes)).warnings.some(({ text }) =>
        text.includes('design stress of its code'),
      );
    };
    expect([above('15 MPa'), above('15.01 MPa')]).toEqual([false, true]);
    expect(above('15.01 MPa', { 'pipe.material.allowableStress': '200 MPa' })).toBe(false);
  });

  it('is held to the limit of the code along the pipe only where no allowable stress is stated', () => {
    const pulled = { 'loads.axialForce': '2200 kN', 'service.designPressure': '1 MPa' };
    expect(told(pulled).aboveCode).toBe(true);
    expect(told({ ...pulled, 'pipe.material.allowableStress': '235 MPa' }).aboveCode).toBe(false);
    expect(told({ ...pulled, 'loads.axialForce': '500 kN' }).aboveCode).toBe(false);
  });
});

describe('the thinned pipe by itself', () => {
  it('is fit as it is up to its safe pressure', () => {
    const asItIs = (pressure: string) => {
      const { found } = designOf(withPaths(evenLoss, { 'service.designPressure': pressure }));
      return [found?.strength?.safePressure, found?.strength?.fitAsItIs];
    };
    const [safe] = asItIs('40 bar');
    expect(asItIs(`${safe} Pa`)).toEqual([safe, true]);
    expect(asItIs(`${Number(safe) * (1 + 1e-9)} Pa`)).toEqual([safe, false]);
  });

  it('has no strength where the case gives no factor to judge it by', () => {
    const { verdict, found } = designOf(withPaths(evenLoss, { assessment: undefined }));
    expect(verdict).toBe('designed');
    expect(found).not.toHaveProperty('strength');
  });

  it('has no strength that any method computes, which is said once and stops no design that does not count on it', () => {
    const deep = { 'defect.remainingWall': '1.2 mm', 'assessment.method': 'original B31G' };
    expect(designOf(withPaths(evenLoss, deep))).toMatchObject({ verdict: 'not covered' });
    const { reasons } = designOf(withPaths(evenLoss, deep));
    expect(reasons).toHaveLength(1);
  });
});

describe('gas that has crept under a wrap', () => {
  const gas = withPaths(emptyLeak, {
    'service.phase': 'gas',
    'service.hazards': [],
    'repair.class': 3,
    'defect.growth': { depth: '0 mm/year', length: '0 mm/year' },
  });
  const borne = (changes: Paths): readonly (number | undefined)[] =>
    designOf(withPaths(gas, changes)).warnings.flatMap(({ text, amounts = [] }) =>
      text.includes('Let the gas down slowly') ? amounts.map(({ value }) => value) : [],
    );
  const told = (changes: Paths): boolean => borne(changes).length > 0;

  it('is let down slowly where the thin wall does not bear the line from outside, and no wall asks for nothing', () => {
    expect(told({ 'defect.remainingWall': '1.1 mm', 'service.designPressure': '30 bar' })).toBe(true);
    expect(told({ 'defect.remainingWall': '7 mm', 'service.designPressure': '1 bar' })).toBe(false);
    expect(
      told({ 'defect.remainingWall': '1.1 mm', 'service.designPressure': '30 bar', 'service.phase': 'liquid' }),
    ).toBe(false);
    expect(told({ 'defect.remainingWall': '0.1 mm', 'defect.readingError': '0.1 mm' })).toBe(false);
  });

  it('may be let down from what the thin wall bears itself', () => {
    const [bears] = borne({ 'defect.remainingWall': '1.1 mm', 'service.designPressure': '30 bar' });
    const from = (pascals: number): boolean =>
      told({ 'defect.remainingWall': '1.1 mm', 'service.designPressure': `${pascals} Pa` });
    expect([from(bears ?? 0), from((bears ?? 0) * (1 + 1e-9))]).toEqual([false, true]);
  });
});
