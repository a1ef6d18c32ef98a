import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Finding, type FindingsInput, findingLimits, judgeFindings } from '../../../src/acceptance/index.js';
import { sourceTags } from '../../../src/formula/index.js';
import { area, type Length, length } from '../../../src/quantity/index.js';
import { evenSpan, run } from '../../properties/spans.js';

const judge = (finding: Finding, change: Partial<FindingsInput> = {}) =>
  judgeFindings({
    findings: [finding],
    laminateThickness: length.mm(8),
    resinRichThickness: length.mm(0.5),
    throughWall: false,
    ...change,
  });

describe('the limits of findings', () => {
  it('stand once for each feature, with what passes, what to do, a clause and a tag no better than recalled', () => {
    expect(new Set(findingLimits.map(({ feature }) => feature)).size).toBe(findingLimits.length);
    for (const { limit, remedy, clause, evidence } of findingLimits) {
      expect(Math.min(limit.text.length, remedy.length, clause.length)).toBeGreaterThan(0);
      expect(sourceTags.indexOf(evidence.tag)).toBeGreaterThanOrEqual(sourceTags.indexOf('recalled'));
    }
  });

  it('are said in words with the numbers that they judge by', () => {
    for (const { greatest, leastRadius, limit } of findingLimits) {
      const said = limit.amounts ?? [];
      const says = (value: unknown, kind: string, toward: string) => {
        if (typeof value === 'number') expect(said).toContainEqual(expect.objectContaining({ value, kind, toward }));
      };
      says(greatest.width, 'length', 'down');
      says(greatest.height, 'length', 'down');
      says(greatest.area, 'area', 'down');
      says(leastRadius, 'length', 'up');
    }
  });
});

describe('findings on a repair', () => {
  it('are accepted when there are none', () => {
    const none = judgeFindings({ findings: [], laminateThickness: length.mm(8), throughWall: true });
    expect(none).toEqual({ verdict: 'accept', reasons: [] });
  });

  it.each(['blister', 'foreign matter on the surface'] as const)('of a %s pass up to 10 mm by 2.5 mm', (feature) => {
    expect(judge({ feature, width: length.mm(10), height: length.mm(2.5) }).verdict).toBe('accept');
    expect(judge({ feature, width: length.mm(10.1), height: length.mm(2.5) }).verdict).toBe('repair the repair');
    expect(judge({ feature, width: length.mm(10), height: length.mm(2.6) }).verdict).toBe('repair the repair');
    expect(judge({ feature, width: length.mm(11), height: length.mm(3) }).reasons).toHaveLength(2);
  });

  it('of a pit pass up to 10 mm by 2.5 mm, and within the resin-rich layer, which then has to be known', () => {
    const at = (depth: Length, layer: Length | undefined) =>
      judge({ feature: 'pit', width: length.mm(10), height: depth }, { resinRichThickness: layer }).verdict;
    expect(at(length.mm(0.5), length.mm(0.5))).toBe('accept');
    expect(at(length.mm(0.6), length.mm(0.5))).toBe('repair the repair');
    expect(at(length.mm(2.5), length.mm(4))).toBe('accept');
    expect(at(length.mm(2.6), length.mm(4))).toBe('repair the repair');
    expect(() => at(length.mm(0.5), undefined)).toThrow(/resinRichThickness/u);
  });

  it('of a wrinkle pass up to a fifth of a thin laminate and 2.5 mm of a thick one', () => {
    const at = (height: Length, laminateThickness: Length) =>
      judge({ feature: 'wrinkle', height }, { laminateThickness }).verdict;
    expect(at(length.mm(1.6), length.mm(8))).toBe('accept');
    expect(at(length.mm(1.7), length.mm(8))).toBe('repair the repair');
    expect(at(length.mm(2.5), length.mm(30))).toBe('accept');
    expect(at(length.mm(2.6), length.mm(30))).toBe('repair the repair');
  });

  it('of cracks and pinholes pass within the resin-rich layer, which then has to be known', () => {
    expect(judge({ feature: 'crack', height: length.mm(0.5) }).verdict).toBe('accept');
    expect(judge({ feature: 'crack', height: length.mm(0.6) }).verdict).toBe('reject');
    expect(judge({ feature: 'pinhole', height: length.mm(0.6) }).verdict).toBe('repair the repair');
    expect(() => judge({ feature: 'crack', height: length.mm(0.5) }, { resinRichThickness: undefined })).toThrow(
      /resinRichThickness/u,
    );
  });

  it('of a dull sound pass only where it is small, away from the ends, and not over a leak', () => {
    const dull = { feature: 'delamination', area: area.mm2(2500), atEnd: false } as const;
    expect(judge(dull).verdict).toBe('accept');
    expect(judge({ ...dull, area: area.mm2(2600) }).verdict).toBe('reject');
    expect(judge({ ...dull, area: area.mm2(1), atEnd: true }).verdict).toBe('reject');
    expect(judge({ ...dull, area: area.mm2(1) }, { throughWall: true }).verdict).toBe('reject');
    expect(judge({ ...dull, area: area.mm2(1), atEnd: true }).reasons[0]?.holdPoint).toBe('bond');
    expect(() => judge({ feature: 'delamination', area: area.mm2(1) })).toThrow(/atEnd/u);
  });

  it.each(['dry fibre', 'fibre direction', 'foreign matter in the laminate'] as const)(
    'of %s reject the repair',
    (feature) => {
      expect(judge({ feature }).verdict).toBe('reject');
    },
  );

  it.each(['uneven colour', 'dry spot', 'exposed cut edge', 'beyond the prepared area'] as const)(
    'of %s are mended',
    (feature) => {
      expect(judge({ feature }).verdict).toBe('repair the repair');
    },
  );

  it('of a sharp corner hold the wrap', () => {
    expect(judge({ feature: 'sharp corner', radius: length.mm(5) }).verdict).toBe('accept');
    expect(judge({ feature: 'sharp corner', radius: length.mm(4.9) }).verdict).toBe('hold');
  });

  it('tell the limit rounded to its safe side, and the hold point that they are of', () => {
    const told = (finding: Finding) => judge(finding).reasons[0];
    expect(told({ feature: 'sharp corner', radius: length.mm(4) })?.limit).toMatchObject({
      name: 'least radius',
      toward: 'up',
    });
    expect(told({ feature: 'blister', width: length.mm(11), height: length.mm(1) })).toMatchObject({
      holdPoint: 'surface',
      limit: { name: 'greatest width', toward: 'down' },
    });
    const negative = { feature: 'delamination', area: -1 as never, atEnd: false } as const;
    expect(() => judge(negative)).toThrow(expect.objectContaining({ parameter: 'findings[0].area', unit: 'm2' }));
    expect(() => judge({ feature: 'wrinkle', height: -1 as Length })).toThrow(expect.objectContaining({ unit: 'm' }));
  });

  it('without their measure, or of no known feature, are refused', () => {
    expect(() => judge({ feature: 'blister', width: length.mm(5) })).toThrow(/height/u);
    expect(() => judge({ feature: 'wrinkle' })).toThrow(/height/u);
    expect(() => judge({ feature: 'wrinkle', height: Number.NaN as Length })).toThrow(/height/u);
    expect(() => judge({ feature: 'no such feature' as 'wrinkle' })).toThrow(/one of/u);
  });

  it('give a reason each, with what was found and the limit, and the worst decides', () => {
    const { verdict, reasons } = judgeFindings({
      findings: [{ feature: 'dry spot' }, { feature: 'wrinkle', height: length.mm(3) }, { feature: 'dry fibre' }],
      laminateThickness: length.mm(20),
      throughWall: false,
    });
    expect(verdict).toBe('reject');
    expect(reasons).toHaveLength(3);
    expect(reasons[1]).toMatchObject({
      found: { kind: 'length', value: length.mm(3) },
      limit: { value: length.mm(2.5) },
    });
  });

  it('never get better by being larger, or by one more', () => {
    const order = ['accept', 'hold', 'repair the repair', 'reject'];
    run(
      fc.property(evenSpan(0, 0.02), evenSpan(0, 0.005), evenSpan(1, 3), (width, height, times) => {
        const blister = (scale: number): Finding => ({
          feature: 'blister',
          width: (width * scale) as Length,
          height: (height * scale) as Length,
        });
        const small = judge(blister(1)).verdict;
        expect(order.indexOf(judge(blister(times)).verdict)).toBeGreaterThanOrEqual(order.indexOf(small));
        const both = judge(blister(1), { findings: [blister(1), { feature: 'dry fibre' }] }).verdict;
        expect(order.indexOf(both)).toBeGreaterThanOrEqual(order.indexOf(small));
      }),
    );
  });
});
