import { describe, expect, it } from 'vitest';
import { type CorrosionRate, corrosionRate, type Length, length, speed } from '../../../src/quantity/index.js';
import { designRepair } from '../../../src/repair/index.js';
import { designOf, laminateOf } from '../../faults/answers.js';
import { type CaseFile, evenLoss, loss, type Paths, withPaths } from '../../faults/cases.js';
import { designed, present } from '../by-use.js';
import { partWall } from '../example-case.js';
import { waterTape } from '../plan-cases.js';
import { recordedOf } from '../recorded.js';

/** What is said of a wrap, where it was so, and not where it was not. */

const sheet = (width: string, finalLap?: string): Paths => ({
  wrap: { form: 'sheet', width, finalLap, rollLength: '25 m', waste: '10 %' },
});

describe('the record of a wrap', () => {
  it.each<readonly [string, CaseFile, Paths, Paths]>([
    ['lap of a turn by the bond', evenLoss, sheet('2 m', '10 mm'), sheet('2 m', '150 mm')],
    ['one band over the whole length', evenLoss, sheet('2 m'), sheet('300 mm')],
    ['all passes end together', evenLoss, {}, { 'wrap.width': '25 mm' }],
    ['each pass ends a step inside the one below', evenLoss, { 'wrap.width': '25 mm' }, {}],
  ])('says "%s" where it was so, and nowhere else', (text, file, where, nowhere) => {
    expect(recordedOf(withPaths(file, where))).toContain(text);
    expect(recordedOf(withPaths(file, nowhere))).not.toContain(text);
  });
});

describe('the limit of a thin laminate', () => {
  it('is asked for again where the passes lay more than the criteria ask for, and only there', () => {
    const asked = (changes: Paths) =>
      recordedOf(withPaths(evenLoss, changes)).filter((entry) => entry === 'laminate/thin-laminate-limit').length;
    expect([asked(sheet('2 m')), asked({ 'wrap.overlap': '80 %' })]).toEqual([1, 2]);
  });
});

describe('the lap of a turn of sheet', () => {
  it('is the longer of what is stated and what the bond takes for the force of a ply', () => {
    // l = 3 E eps t/tau, round the pipe: 24 GPa, 0.8 mm, 8 MPa.
    const ofBond = (3 * 24e9 * laminateOf(withPaths(evenLoss, sheet('2 m'))).hoopStrain * 0.8e-3) / 8e6;
    const laps = (stated: string) => {
      const { wrap } = designOf(withPaths(evenLoss, sheet('2 m', stated)));
      return wrap?.form === 'sheet' ? wrap.finalLap : Number.NaN;
    };
    expect(laps('10 mm')).toBeCloseTo(ofBond, 12);
    expect(ofBond).toBeGreaterThan(0.01);
    expect(laps('150 mm')).toBeCloseTo(0.15, 12);
  });
});

describe('a neighbouring loss beside the wrap', () => {
  /** How far the wrap reaches beyond a defect that does not grow. */
  const reach = (() => {
    const { rolls, case: repairCase } = designed(partWall);
    return rolls.end - repairCase.defect.axialLength / 2;
  })();
  const near = (beyondWrap: number, perYear: CorrosionRate) => {
    const growth = { depth: corrosionRate.mmPerYear(0), length: perYear };
    const size = { axialLength: length.mm(20), circumferentialWidth: length.mm(20), remainingWall: length.mm(6) };
    const where = { gapAlong: (reach + beyondWrap) as Length, gapRound: length.mm(0) };
    const neighbour = { cause: 'external corrosion', ...size, ...where } as const;
    return designRepair({ ...partWall, defect: { ...partWall.defect, growth, neighbours: [neighbour] } }).verdict;
  };

  it('is judged by the gap that both edges leave as they grow, under the wrap of the grown defect', () => {
    // Each of the three edges moves by 20 mm in 20 years: that of the defect, that of its neighbour, and that of the wrap.
    const rate = corrosionRate.mmPerYear(1);
    expect([0.041, 0.059, 0.061].map((beyond) => near(beyond, rate))).toEqual([
      'not covered',
      'not covered',
      'designed',
    ]);
    expect(near(0.001, corrosionRate.mmPerYear(0))).toBe('designed');
  });
});

describe('a charge that does not lie in time', () => {
  it('has no shorter one named where mixing and soaking leave nothing of its time', () => {
    const slow = designOf(withPaths(loss, { 'crew.soakTime': '20 min', 'crew.layingSpeed': '1 m/min' })).rolls;
    const { charge, fits, allowedTime = 0, remedies } = present(slow);
    expect([charge, fits]).toEqual(['batch', false]);
    // 20 minutes for the soaking are less than it has, with 5 for the mixing they are more.
    expect(allowedTime).toBeGreaterThan(20 * 60);
    expect(allowedTime).toBeLessThan(25 * 60);
    expect(remedies).not.toHaveProperty('longestCharge');
    expect(remedies).toHaveProperty('coolerThan');
  });

  it('names no cooler hour where nothing is forecast', () => {
    const crew = { layingSpeed: speed.mPerMin(0.2), crews: 1, start: '07:30' };
    const { rolls } = designed({ ...waterTape, crew, site: { ...waterTape.site, forecast: undefined } });
    expect(rolls.remedies).toHaveProperty('coolerThan');
    expect(rolls.remedies).not.toHaveProperty('coolerHour');
  });
});

describe('a wrap that begins where the trade begins it', () => {
  const begins = (strength: string) => {
    const { rolls, warnings } = designOf(
      withPaths(evenLoss, {
        ...sheet('2 m'),
        'pipe.outsideDiameter': '60.3 mm',
        'pipe.wallThickness': '3.91 mm',
        'defect.axialLength': '64 mm',
        'defect.circumferentialWidth': '30 mm',
        'defect.remainingWall': '2.5 mm',
        'service.designPressure': '45 bar',
        'laminate.lapShearStrength': strength,
      }),
    );
    return [
      rolls?.beforeDefect ?? Number.NaN,
      warnings.some(({ text }) => text.startsWith('The wrap begins less than')),
    ];
  };

  it('is not warned of as a short one, and any shorter one is', () => {
    expect(begins('4581818.181818183 Pa')).toEqual([0.1, false]);
    expect(begins('4.6 MPa')).toEqual([expect.closeTo(0.1, 3), true]);
  });
});
