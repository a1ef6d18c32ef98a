import { describe, expect, it } from 'vitest';
import { corrosionRate, gauge, type Length, length } from '../../../src/quantity/index.js';
import { designRepair, type RepairCase } from '../../../src/repair/index.js';
import { designed, present } from '../by-use.js';
import { partWall } from '../example-case.js';
import { planned } from '../plan-cases.js';

/** How the wrap lies on the pipe, at the borders between what can be laid and what cannot. */

describe('tape on a bend', () => {
  /** So little pressure that the tightest bend is not refused for its thickness. */
  const on = (bendRadius: Length): RepairCase => ({
    ...partWall,
    service: { ...partWall.service, designPressure: gauge.bar(0.5) },
    fitting: { kind: 'bend', bendRadius },
  });
  const radius = (designed(on(length.m(1))).laminate.wrappedDiameter / 2) as Length;

  it('is laid where at most 19 of 20 widths lie over each other along the inside, and on no tighter bend', () => {
    // Half a width of lap outside: a tenth of the turns' distance is left inside where (R - r) / (R + r) = 1 / 10.
    const tightest = (radius * 11) / 9;
    expect(designRepair(on((tightest * 1.000001) as Length)).verdict).toBe('designed');
    const tighter = designRepair(on((tightest * 0.999999) as Length));
    expect(tighter.verdict).toBe('not repairable');
    expect(tighter.reasons).toMatchObject([{ found: { kind: 'ratio' }, limit: { value: 0.95 } }]);
  });

  it('is laid where they lie over each other by exactly 19 of 20 widths', () => {
    const insideOn = (bendRadius: number) => present(designRepair(on(bendRadius as Length)).wrap);
    let [tight, laid] = [(radius * 11) / 9.001, (radius * 11) / 8.999];
    for (let halved = 0; halved < 60; halved++) {
      const middle = (tight + laid) / 2;
      if (designRepair(on(middle as Length)).verdict === 'designed') laid = middle;
      else tight = middle;
    }
    expect(insideOn(laid)).toMatchObject({ insideOverlap: 0.95 });
  });

  it('is laid on no bend as tight as what lies under the tape', () => {
    const asTight = designRepair(on(radius));
    expect(asTight.verdict).toBe('not repairable');
    expect(asTight.reasons).toMatchObject([{ found: { value: radius }, limit: { value: radius } }]);
    expect(present(asTight.wrap)).not.toHaveProperty('insideOverlap');
  });
});

describe('the room beside a defect', () => {
  const having = (availableOverlap: Length) =>
    designRepair({ ...partWall, repair: { ...partWall.repair, availableOverlap } });

  it('that is short is named beside what passes', () => {
    const short = having(length.mm(10));
    expect(short.verdict).toBe('not repairable');
    const [reason] = short.reasons;
    expect(reason?.found).toMatchObject({ kind: 'length', value: length.mm(10) });
    const needed = (reason?.limit?.value ?? Number.NaN) as Length;
    // Half of what is laid beyond the defect lies on either side of it.
    const { wrap, extent } = designed(partWall);
    const laid = wrap.form === 'tape' ? wrap.overallLength : extent.totalLength;
    expect(needed).toBeCloseTo((laid - extent.defectLength) / 2, 12);
    expect(having(needed).verdict).toBe('designed');
    expect(having((needed * (1 - 1e-9)) as Length).verdict).toBe('not repairable');
  });
});

describe('what stands on the pipe beside the defect', () => {
  /** What the wrap lies on beyond either edge of the defect, which does not grow. */
  const beyond = (() => {
    const { rolls, case: repairCase } = designed(partWall);
    return (rolls.end - repairCase.defect.axialLength / 2) as Length;
  })();
  const further = (share: number) => (beyond * (1 + share)) as Length;
  const attached = (nearestAttachment: Length) =>
    designRepair({ ...partWall, defect: { ...partWall.defect, nearestAttachment } });
  const sheet = { form: 'sheet', width: length.m(5), rollLength: length.m(20) } as const;

  it('may begin where the wrap ends, and no nearer', () => {
    expect(attached(further(1e-9)).verdict).toBe('designed');
    const near = attached(further(-1e-9));
    expect(near.verdict).toBe('not covered');
    const [reason] = near.reasons;
    expect(reason?.limit?.value).toBeCloseTo(beyond, 12);
    expect(attached((reason?.limit?.value ?? 0) as Length).verdict).toBe('designed');
  });

  it('may be a loss that begins where the wrap ends, and is warned of; none that begins under it', () => {
    const gap = (gapAlong: Length) => {
      const neighbour = {
        cause: 'external corrosion',
        axialLength: length.mm(20),
        remainingWall: length.mm(6),
      } as const;
      const where = { circumferentialWidth: length.mm(20), gapAlong, gapRound: length.mm(0) };
      const growth = { depth: corrosionRate.mmPerYear(0), length: corrosionRate.mmPerYear(0) };
      return designRepair({
        ...partWall,
        defect: { ...partWall.defect, growth, neighbours: [{ ...neighbour, ...where }] },
      });
    };
    const near = gap(further(-1e-9));
    expect(near.verdict).toBe('not covered');
    const asNear = gap((near.reasons[0]?.limit?.value ?? 0) as Length);
    expect(asNear.verdict).toBe('designed');
    expect(asNear.warnings.filter(({ text }) => text.startsWith('A neighbouring loss lies'))).toHaveLength(1);
  });

  it('has no joints in sheet that is as wide as the laminate is long', () => {
    const { extent, laminate } = designed({ ...partWall, wrap: sheet });
    expect(laminate).not.toHaveProperty('joints');
    const wide = (width: number) => designed({ ...partWall, wrap: { ...sheet, width: width as Length } });
    expect(wide(extent.totalLength).laminate).not.toHaveProperty('joints');
    expect(wide(extent.totalLength * (1 - 1e-9)).laminate).toHaveProperty('joints');
  });
});

describe('the time of the rolls', () => {
  it('stands on the record once for all whole rolls and once for the last, each by what it is', () => {
    const design = designRepair(planned, { record: true });
    const shown = (design.record ?? []).flatMap((entry) =>
      entry.sort === 'step' && entry.formula === 'wrap/laying-time' ? [[entry.purpose, entry.result]] : [],
    );
    const [first, last] = [0, -1].map((at) => design.rolls?.rolls.at(at));
    expect(last?.length).toBeLessThan(first?.length ?? 0);
    expect(shown.slice(0, 2)).toEqual([
      ['one roll or band', first?.time],
      ['the last roll', last?.time],
    ]);
  });
});

describe('the list of the rolls', () => {
  it('holds as many as a crew follows, five hundred, and none where there are more', () => {
    const { wrap, rolls } = designed(planned);
    if (wrap.form !== 'tape' || planned.wrap.form !== 'tape') throw new Error('the case needs a tape');
    const tape = rolls.passes.reduce((sum, { tapeLength }) => sum + tapeLength, 0);
    const listed = (share: number) => {
      const stock = { ...planned.wrap, rollLength: (tape / share) as Length };
      return designed({ ...planned, wrap: stock }).rolls.rolls.length;
    };
    expect([499.5, 500.5].map(listed)).toEqual([500, 0]);
  });

  it('of bands of sheet is as long, and a sheet that asks for more bands is not covered', () => {
    const bands = (defectLength: number) => {
      const defect = { ...planned.defect, axialLength: length.mm(defectLength) };
      const wrap = { form: 'sheet', width: length.m(0.2), rollLength: length.m(20) } as const;
      const { verdict, rolls } = designRepair({ ...planned, defect, wrap });
      return [verdict, present(rolls).rolls.length];
    };
    expect(bands(2725)).toEqual(['designed', 500]);
    expect(bands(2730)).toEqual(['not covered', expect.any(Number)]);
  });
});
