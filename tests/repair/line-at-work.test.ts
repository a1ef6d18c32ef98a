import { describe, expect, it } from 'vitest';
import { isCalculationError } from '../../src/formula/index.js';
import { decodeCase, isCaseError } from '../../src/json/index.js';
import { gauge, length } from '../../src/quantity/index.js';
import { designRepair, type RepairCase, type RepairDesign } from '../../src/repair/index.js';
import { calculationSheet } from '../../src/report/index.js';
import { exampleDocument } from '../json/examples.js';
import { present } from './by-use.js';
import { atWork, partWall, sealed } from './example-case.js';

/** Whether people may work on the line as it stands; every limit is worked out here a second time, in MPa and mm. */

const PIPE = { D: 323.9, t: 8.38, yieldStrength: 241, designFactor: 0.72 };

const refusalOf = ({ reasons }: RepairDesign) => reasons.find(({ text }) => text.includes('may not be worked on'));
/** By the metal: the line is as strong as it has to be for that, and no seal holds less. */
const limitOf = ({ seal: _, ...bare }: RepairCase) => {
  const service = { ...bare.service, designPressure: gauge.MPa(100) };
  const { limit } = present(refusalOf(designRepair({ ...bare, service, line: atWork(gauge.MPa(99)) })));
  return { limit: present(limit).value / 1e6, limitedBy: present(limit).name.replace('by the ', '') };
};
const missingOf = (repairCase: RepairCase) => designRepair(repairCase).missing.map(({ field }) => field);

/** The three-term bulging factor of a length on a wall, by its two branches. */
function bulging(L: number, wall: number): number {
  const z = L ** 2 / (PIPE.D * wall);
  return z > 50 ? 0.032 * z + 3.3 : Math.sqrt(1 + 0.6275 * z - 0.003375 * z ** 2);
}

describe('a leak under pressure', () => {
  const leak = (givenLength: number, wall: number, error: number, MPa = 0.05): RepairCase => ({
    ...sealed,
    line: atWork(gauge.MPa(MPa)),
    defect: {
      ...sealed.defect,
      axialLength: length.mm(givenLength),
      remainingWall: length.mm(wall),
      readingError: length.mm(error),
    },
  });
  const slot = (givenLength: number, wall: number, factor: number): number =>
    (2 * 1.1 * PIPE.yieldStrength * wall) / (PIPE.D * bulging(givenLength, wall) * factor);

  it.each([
    [120, 5, 0.5],
    [60, 3.1, 0],
    [400, 5, 0.3],
  ])(
    'may be worked on while %s mm of metal round the hole, read as %s mm with an error of %s, would only leak',
    (givenLength, wall, error) => {
      const { limit, limitedBy } = limitOf(leak(givenLength, wall, error));
      expect(limit / slot(givenLength, wall - error, 1 / PIPE.designFactor)).toBeCloseTo(1, 12);
      expect(limitedBy).toBe('metal round the hole');
    },
  );

  it('is judged with the largest of 1.25, the stated factor and the inverse of the design factor', () => {
    const by = (assessment: NonNullable<RepairCase['assessment']>): number =>
      limitOf({ ...leak(120, 5, 0.5), assessment }).limit / slot(120, 4.5, 1);
    expect(by({ safetyFactor: 1 })).toBeCloseTo(1 / 1.25, 12);
    expect(by({ designFactor: 1 })).toBeCloseTo(1 / 1.25, 12);
    expect(by({ safetyFactor: 2, designFactor: 0.72 })).toBeCloseTo(1 / 2, 12);
    expect(by({ safetyFactor: 2, designFactor: 0.4 })).toBeCloseTo(0.4, 12);
  });

  it('is refused above that pressure, with both numbers, and not at it', () => {
    const limit = slot(400, 3, 1 / PIPE.designFactor);
    // Below what a hand may hold, which is another refusal.
    expect(limit).toBeLessThan(0.7);
    const above = designRepair(leak(400, 3.3, 0.3, limit * 1.000001));
    expect(above.verdict).toBe('not repairable');
    expect((refusalOf(above)?.found?.value ?? 0) / (limit * 1e6)).toBeCloseTo(1.000001, 9);
    expect((refusalOf(above)?.limit?.value ?? 0) / (limit * 1e6)).toBeCloseTo(1, 12);
    expect(refusalOf(designRepair(leak(400, 3.3, 0.3, limit * 0.999999)))).toBeUndefined();
  });

  it('is refused at any pressure where the error of the reading takes the whole wall', () => {
    const design = designRepair(leak(60, 0.4, 0.5, 1e-6));
    expect(design.verdict).toBe('not repairable');
    expect(refusalOf(design)?.limit?.value).toBe(0);
  });

  it('stays at the pressure that its seal is tightened for, whatever pipe and seal would bear', () => {
    const design = designRepair(leak(120, 5, 0.5, 0.01));
    expect(refusalOf(design)).toBeUndefined();
    expect(design.line?.highestPressure).toBe(gauge.MPa(0.01));
    expect(design.line?.limitedBy).toBe('pressure that the leak seal is tightened for');
  });

  it('above the limit of its seal is told that limit, where the pipe bears more', () => {
    const { line, seal, verdict } = designRepair(leak(120, 5, 0.5, 0.6));
    expect(verdict).toBe('not repairable');
    if (seal === undefined || seal === 'none') throw new Error('no seal');
    expect(seal.highestPressure).toBeLessThan(gauge.MPa(0.6));
    expect(line).toMatchObject({ highestPressure: seal.highestPressure, limitedBy: 'leak seal' });
  });

  it('without a seal is never designed, whatever it carries: it asks how the leak is held', () => {
    const { seal: _, ...live } = leak(60, 3.1, 0.1);
    expect(designRepair(live).verdict).toBe('needs input');
    expect(missingOf(live)).toEqual(['seal']);
    // What the metal bears is no pressure at which people may stand before an open hole.
    const design = designRepair(live);
    expect(design.line).toEqual({
      state: 'under pressure',
      pressure: live.line.state === 'under pressure' ? live.line.pressure : 0,
    });
    expect(calculationSheet(design)).toMatch(
      /how much it\s+may\s+carry\s+is\s+not\s+known:\s+its\s+leak\s+seal\s+is\s+not\s+worked\s+out/u,
    );
    const hostile = { ...live, line: { ...live.line, writtenProcedure: 'none' } as RepairCase['line'] };
    const gas = { ...hostile, service: { ...live.service, phase: 'gas', hazards: ['flammable', 'toxic'] } } as const;
    expect(designRepair(gas).verdict).toBe('not repairable');
    expect(missingOf(gas)).toEqual(['seal']);
  });

  it('asks for a factor where none is stated', () => {
    const { assessment: _, ...bare } = leak(120, 5, 0.1);
    // By a static head: bands that come off under more are another reason.
    const left: RepairCase = {
      ...bare,
      line: { state: 'static head', pressure: gauge.bar(0.2), writtenProcedure: 'WP-1' },
    };
    expect(designRepair(left).verdict).toBe('needs input');
    expect(missingOf(left)).toContain('assessment.designFactor');
  });
});

describe('a thinned wall under pressure', () => {
  const LENGTH = 300;
  const wall = (change: Partial<RepairCase>, MPa = 1): RepairCase => ({
    ...partWall,
    service: { ...partWall.service, designPressure: gauge.MPa(8) },
    line: atWork(gauge.MPa(MPa)),
    defect: {
      ...partWall.defect,
      axialLength: length.mm(LENGTH),
      remainingWall: length.mm(5),
      readingError: length.mm(0.5),
    },
    assessment: { designFactor: PIPE.designFactor, method: 'modified B31G' },
    ...change,
  });
  const recently = (MPa: number): Partial<RepairCase> => ({
    date: '2026-11-25',
    service: {
      ...partWall.service,
      designPressure: gauge.MPa(8),
      recentPressure: { pressure: gauge.MPa(MPa), date: '2026-10-12' },
    },
  });

  /** Modified B31G of the wall as it is today, read at its worst. */
  const failure = (): number => {
    const x = (PIPE.t - (5 - 0.5)) / PIPE.t;
    const sound = (2 * PIPE.t * 1.1 * PIPE.yieldStrength) / PIPE.D;
    return (sound * (1 - 0.85 * x)) / (1 - (0.85 * x) / bulging(LENGTH, PIPE.t));
  };
  const safe = failure() * PIPE.designFactor;

  it('may be worked on up to its safe pressure today, with the error of the reading taken off', () => {
    const { limit, limitedBy } = limitOf(wall({}));
    expect(limit / safe).toBeCloseTo(1, 12);
    expect(limitedBy).toBe('safe pressure of the thinned wall');
    const exact = wall({ defect: { ...wall({}).defect, readingError: 'none' } });
    expect(limitOf(exact).limit).toBeGreaterThan(limit);
  });

  it('may be worked on up to 80 per cent of what it carried lately, or its failure pressure over 1.25, where that is more', () => {
    expect(limitOf(wall(recently(9))).limit).toBeCloseTo(7.2, 9);
    expect(limitOf(wall(recently(9))).limitedBy).toBe('recent pressure');
    expect(failure() / 1.25).toBeLessThan(0.8 * 10);
    expect(limitOf(wall(recently(10))).limit / (failure() / 1.25)).toBeCloseTo(1, 12);
    expect(limitOf(wall(recently(5))).limit / safe).toBeCloseTo(1, 12);
    expect(limitOf(wall(recently(5))).limitedBy).toBe('safe pressure of the thinned wall');
  });

  it('with no method named is judged by the lowest of those inside their limits', () => {
    const by = (method?: 'original B31G' | 'modified B31G' | 'DNV-RP-F101' | 'API 579-1 Level 1'): number =>
      limitOf(wall({ assessment: method === undefined ? { designFactor: 0.72 } : { designFactor: 0.72, method } }))
        .limit;
    const each = (['original B31G', 'modified B31G', 'DNV-RP-F101', 'API 579-1 Level 1'] as const).map(by);
    expect(by()).toBe(Math.min(...each));
    expect(new Set(each).size).toBe(4);
  });

  it('is refused above that pressure, with both numbers, and not below it', () => {
    const above = designRepair(wall({}, safe * 1.000001));
    expect(above.verdict).toBe('not repairable');
    expect((refusalOf(above)?.found?.value ?? 0) / (safe * 1e6)).toBeCloseTo(1.000001, 9);
    expect((refusalOf(above)?.limit?.value ?? 0) / (safe * 1e6)).toBeCloseTo(1, 12);
    expect(refusalOf(designRepair(wall({}, safe * 0.999999)))).toBeUndefined();
  });

  it('that no method judges is held to its least wall all round: 1.31 mm left of 9.5 over 400 mm, at 20 bar', () => {
    const thin: RepairCase = {
      ...partWall,
      pipe: { ...partWall.pipe, outsideDiameter: length.mm(610), wallThickness: length.mm(9.5) },
      line: atWork(gauge.bar(20)),
      defect: { ...partWall.defect, axialLength: length.mm(400), remainingWall: length.mm(1.31) },
      filler: partWall.filler === 'none' ? 'none' : { ...partWall.filler, thicknessOverDefect: length.mm(9) },
    };
    // Its hoop stress is above its tensile strength.
    expect((2 * 610) / (2 * 1.31)).toBeGreaterThan(414);
    const refused = designRepair(thin);
    expect(refused.verdict).toBe('not repairable');
    expect(refused.line).toMatchObject({ limitedBy: 'safe pressure of the thinned wall' });
    expect(limitOf(thin).limit).toBeLessThanOrEqual((2 * 241 * 1.31) / (610 * 1.25));
    const empty = designRepair({ ...thin, line: { state: 'empty, dry, isolated, vented' } });
    expect(empty.line).toEqual({ state: 'empty, dry, isolated, vented', pressure: 0 });
    expect(empty.missing).toEqual([]);
  });

  it('that the error of its reading takes whole is refused at any pressure, by a verdict', () => {
    const least = {
      ...partWall.defect,
      remainingWall: length.mm(0.4),
      readingError: length.mm(0.5),
      holeAtEndOfLife: length.mm(20),
    } as const;
    for (const defect of [least, { ...least, remainingWall: length.mm(0), readingError: 'none' } as const]) {
      const design = designRepair({ ...partWall, line: atWork(gauge.bar(0.01)), defect });
      expect(design.verdict).toBe('not repairable');
      expect(refusalOf(design)?.limit?.value).toBe(0);
    }
  });

  it('asks for a factor where none is stated, and says who has it', () => {
    const { assessment: _, ...bare } = partWall;
    const design = designRepair({ ...bare, line: atWork(gauge.MPa(1)) });
    expect(design.verdict).toBe('needs input');
    expect(design.missing).toMatchObject([{ field: 'assessment.designFactor', askWhom: 'the code of the line' }]);
    expect(designRepair(bare).verdict).toBe('designed');
  });
});

describe('gas or hazardous contents under pressure', () => {
  const under = (service: Partial<RepairCase['service']>, writtenProcedure: string): RepairDesign =>
    designRepair({
      ...partWall,
      service: { ...partWall.service, ...service },
      line: { state: 'under pressure', pressure: gauge.MPa(1), writtenProcedure },
    });

  it.each([
    ['gas', { phase: 'gas' }],
    ['toxic liquid', { hazards: ['toxic'] }],
    ['hot liquid', { hazards: ['hot'] }],
  ] as const)('of %s need a written procedure for wall loss too', (_, service) => {
    const refused = under(service, 'none');
    expect(refused.verdict).toBe('not repairable');
    expect(refused.reasons.map(({ text }) => text).join()).toMatch(/no written procedure/u);
    expect(under(service, 'WP-1').verdict).toBe('designed');
  });

  it('are free of it where the line is empty, and so is plain water under pressure', () => {
    const gas = { ...partWall, service: { ...partWall.service, phase: 'gas', hazards: ['flammable'] } } as const;
    expect(designRepair(gas).verdict).toBe('designed');
    expect(under({}, 'none').verdict).toBe('designed');
  });
});

describe('what the line at work rests on', () => {
  it.each([
    ['line.writtenProcedure', { line: { state: 'under pressure', pressure: gauge.MPa(1) } }],
    ['line.writtenProcedure', { line: { state: 'under pressure', pressure: gauge.MPa(1), writtenProcedure: ' ' } }],
    ['defect.readingError', { defect: { ...partWall.defect, readingError: undefined } }],
    ['defect.readingError', { defect: { ...partWall.defect, readingError: length.mm(-0.1) } }],
    ['service.recentPressure.pressure', { service: { ...partWall.service, recentPressure: { pressure: Number.NaN } } }],
  ])('has to be stated, and is refused by its path: %s', (path, change) => {
    const stated = { ...partWall, service: { ...partWall.service, phase: 'gas' }, ...change } as unknown as RepairCase;
    expect(() => designRepair(stated)).toThrow(new RegExp(`^${path.replaceAll('.', '\\.')} `, 'u'));
  });
});

describe('an empty line', () => {
  it('takes no pressure, not even 0', () => {
    for (const bar of [0, 1]) {
      const line = { state: 'empty, dry, isolated, vented', pressure: gauge.bar(bar) } as const;
      try {
        designRepair({ ...partWall, line });
        expect.fail('not refused');
      } catch (error) {
        if (!isCalculationError(error)) throw error;
        expect([error.code, error.parameter]).toEqual(['invalid-input', 'line.pressure']);
      }
      const document = exampleDocument();
      document.line = { state: 'empty, dry, isolated, vented', pressure: `${bar} bar` };
      expect(pathsOf(document)).toEqual(['line.pressure']);
    }
  });

  it('is no line under a pressure of 0, and there is no fourth state', () => {
    const line = { state: 'static head', pressure: gauge.bar(0), writtenProcedure: 'WP-1' } as const;
    expect(() => designRepair({ ...partWall, line })).toThrow(/^line\.pressure /u);
    const drained = { state: 'drained' } as never;
    expect(() => designRepair({ ...partWall, line: drained })).toThrow(/^line\.state /u);
  });
});

function pathsOf(document: unknown): readonly string[] {
  try {
    decodeCase(document);
  } catch (error) {
    if (isCaseError(error)) return error.issues.map(({ path }) => path);
    throw error;
  }
  return [];
}
