import { describe, expect, it } from 'vitest';
import type { WorkPlan } from '../../src/repair/index.js';
import { designOf, idsOf, linesOf, planOf, stepOf } from './answers.js';
import { type CaseFile, emptied, leak, loss, quietLoss, withPaths } from './cases.js';

/** Hazards that no case can state: the plan asks at the hold point where each matters, with a blank and a stop. */

const BLANK = '____';

/** A line to fill in at a step of a plan, about something. */
const asks = (plan: WorkPlan, id: string, about: RegExp): boolean => {
  const { goes, stops, does } = stepOf(plan, id);
  return [...goes, ...stops, ...does].some(({ text }) => text.includes(BLANK) && about.test(text));
};
const stopsAt = (plan: WorkPlan, id: string, about: RegExp): boolean =>
  stepOf(plan, id).stops.some(({ text }) => about.test(text));

const gasLoss = withPaths(quietLoss, {
  'service.contents': 'fuel gas',
  'service.phase': 'gas',
  'service.hazards': ['flammable'],
});
const bandsLeft = withPaths(leak, { 'seal.bands': 'left' });

describe('a line under pressure', () => {
  const plan = planOf(loss);
  const pressure = designOf(loss).line?.pressure;

  it('is read at the gauge before every step at the pipe, against what the design was made for, and a rise stops it', () => {
    for (const id of ['survey', 'surface', 'gate', 'filler', 'filler-wait', 'surface-again', 'wrap', 'cure']) {
      const { goes } = stepOf(plan, id);
      const gauge = goes.find(({ text }) => text.startsWith('Gauge'));
      expect(gauge?.text, id).toContain(BLANK);
      expect(
        gauge?.amounts?.map(({ value }) => value),
        id,
      ).toContain(pressure);
      expect(stopsAt(plan, id, /^More than/), id).toBe(true);
    }
  });

  it('is emptied under a permit of its own before anybody fills it for a test', () => {
    const { does } = stepOf(plan, 'pressure-test');
    const [first] = does;
    expect(first?.text).toContain(BLANK);
    expect(first?.text).toMatch(/still holds .*empty and flush/);
    expect(stopsAt(plan, 'pressure-test', /still holds its contents/)).toBe(true);
    expect(stepOf(planOf(withPaths(loss, emptied)), 'pressure-test').does.some(({ text }) => /flush/.test(text))).toBe(
      false,
    );
  });

  it('has somebody by name at the gauge, and one who alone may raise it during the cure', () => {
    expect(asks(plan, 'permit', /by name/)).toBe(true);
    expect(asks(plan, 'cure', /raise the line/)).toBe(true);
  });
});

describe('an empty line', () => {
  const plan = planOf(quietLoss);

  it('is vented before it is drained, or a vacuum sucks its thin wall in', () => {
    expect(stepOf(plan, 'permit').does.some(({ text }) => /vent first/.test(text))).toBe(true);
    expect(stepOf(planOf(loss), 'permit').does.some(({ text }) => /vent first/.test(text))).toBe(false);
  });

  it('stays open and locked to the end of the cure: nothing warms up shut in, nobody raises it', () => {
    expect(asks(plan, 'permit', /Locks by/)).toBe(true);
    expect(asks(plan, 'cure', /vent stands open/)).toBe(true);
    expect(asks(plan, 'cure', /only one who may take them off/)).toBe(true);
    expect(stopsAt(plan, 'cure', /no name above/)).toBe(true);
  });

  it('asks no gauge of the crew at the pipe', () => {
    for (const id of idsOf(plan).filter((each) => !['permit', 'cure', 'stock'].includes(each)))
      expect(
        linesOf(stepOf(plan, id)).some(({ text }) => text.startsWith('Gauge')),
        id,
      ).toBe(false);
  });
});

describe('before anything is scraped', () => {
  it('the old coating is sampled for lead and asbestos', () => {
    for (const file of [leak, loss, quietLoss]) expect(asks(planOf(file), 'survey', /lead and asbestos/)).toBe(true);
  });

  it('scale at a hole that hazardous contents left is tested for fire and radiation', () => {
    const toxicLeak = withPaths(leak, {
      'service.hazards': ['toxic'],
      'repair.class': 3,
      ...emptied,
      seal: undefined,
    });
    expect(designOf(toxicLeak).verdict).toBe('designed');
    expect(asks(planOf(toxicLeak), 'survey', /burns in air by itself.*radiation/)).toBe(true);
    expect(asks(planOf(leak), 'survey', /radiation/)).toBe(false);
    expect(asks(planOf(loss), 'survey', /radiation/)).toBe(false);
  });
});

describe('the steel', () => {
  it('is measured under the band before the band presses on it, and a thin ring takes none', () => {
    expect(asks(planOf(leak), 'seal', /^Before the band/)).toBe(true);
    expect(stopsAt(planOf(leak), 'seal', /no band/)).toBe(true);
  });

  it('is measured again after its preparation, and less than the design has stops the resin', () => {
    for (const file of [leak, loss]) {
      expect(asks(planOf(file), 'surface', /^Wall measured again/)).toBe(true);
      expect(stopsAt(planOf(file), 'surface', /No resin/)).toBe(true);
    }
  });

  it('lies without a gap, a flat or an oval under the wrap to come', () => {
    expect(asks(planOf(loss), 'surface-again', /straight edge/)).toBe(true);
    expect(stopsAt(planOf(loss), 'surface-again', /oval/)).toBe(true);
  });
});

describe('a seal on an empty line', () => {
  const said = (file: CaseFile) =>
    ['rough-cleaning', 'seal', 'putty', 'surface'].flatMap((id) => [
      stepOf(planOf(file), id).call,
      ...linesOf(stepOf(planOf(file), id)).map(({ text }) => text),
    ]);
  const ofPressure = /lower the pressure|in the line|gauge|hold the pressure|leak that grows|leak lets/;

  it('gets no words of a line that leaks under pressure', () => {
    const file = withPaths(leak, emptied);
    expect(designOf(file).verdict).toBe('designed');
    expect(said(file).filter((text) => ofPressure.test(text))).toEqual([]);
    expect(stopsAt(planOf(file), 'seal', /not empty/)).toBe(true);
  });

  it('has them where it is under pressure', () => {
    expect(designOf(leak).line?.pressure).toBeGreaterThan(0);
    expect(said(leak).filter((text) => ofPressure.test(text)).length).toBeGreaterThan(4);
  });
});

describe('bands that stay', () => {
  it('have fasteners that are measured against the collar over them', () => {
    expect(asks(planOf(bandsLeft), 'filler', /^Fasteners/)).toBe(true);
    expect(stopsAt(planOf(bandsLeft), 'filler', /stands out of the collar/)).toBe(true);
    expect(asks(planOf(leak), 'filler', /^Fasteners/)).toBe(false);
  });
});

describe('a kit that was mixed off ratio', () => {
  it('shows in the witness of its batch, and its plies come off', () => {
    expect(asks(planOf(loss), 'cure', /witness plate of each batch/)).toBe(true);
    expect(stopsAt(planOf(loss), 'cure', /off ratio/)).toBe(true);
  });
});

describe('whoever comes later', () => {
  const atReturn = (file: CaseFile, about: RegExp) => asks(planOf(file), 'return', about);

  it('reads at the wrap how near no flame may come', () => {
    for (const file of [leak, loss]) expect(atReturn(file, /welding, cutting or flame/)).toBe(true);
  });

  it('measures the wall at bands that stay, where it corrodes in the crevice', () => {
    expect([atReturn(bandsLeft, /crevice/), atReturn(leak, /crevice/)]).toEqual([true, false]);
  });

  it('lets gas down slowly', () => {
    expect([atReturn(gasLoss, /gas down slowly/), atReturn(loss, /gas down slowly/)]).toEqual([true, false]);
  });
});

describe('gas under the wrap', () => {
  const warned = (file: CaseFile) => {
    const { warnings, verdict } = designOf(file);
    expect(verdict).toBe('designed');
    return warnings.find(({ text, step }) => step === 'return' && text.startsWith('Let the gas down'));
  };

  it('is warned of where the thin wall bears less from outside than it is under, with the pressure that it bears', () => {
    const thin = withPaths(gasLoss, { 'defect.remainingWall': '2 mm' });
    const found = warned(thin);
    // 2E/(1 - nu^2) (t/D)^3 with 2 S t/D, both over 1.25
    const [t, D] = [2, 168.3];
    const buckling = ((2 * 207e9) / (1 - 0.3 ** 2)) * (t / D) ** 3;
    const yielding = (2 * 241e6 * t) / D;
    const bears = 1 / (1.25 * (1 / buckling + 1 / yielding));
    expect(found?.amounts?.[0]?.value).toBeCloseTo(bears, -1);
    expect(bears).toBeLessThan(4e6);
  });

  it('is not where the wall bears it, nor under liquid', () => {
    expect(warned(withPaths(gasLoss, { 'defect.remainingWall': '6 mm' }))).toBeUndefined();
    expect(warned(withPaths(quietLoss, { 'defect.remainingWall': '2 mm' }))).toBeUndefined();
  });
});
