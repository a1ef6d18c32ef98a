import { describe, expect, it } from 'vitest';
import { type AcceptanceRecord, acceptRepair } from '../../src/acceptance/index.js';
import { CalculationError } from '../../src/formula/index.js';
import { area, gauge, type Length, length, time } from '../../src/quantity/index.js';

const good = {
  laminateThickness: length.mm(8),
  throughWall: true,
  hardness: { scale: 'Shore D', readings: [80, 81, 80, 79, 80], qualifiedHardness: 82, hasStopped: false },
  inspection: { findings: [], bondMethods: ['tap test', 'ultrasonic'] },
  dimensions: { requiredThickness: length.mm(7.6), leastOverlap: length.mm(80), requiredOverlap: length.mm(75) },
  pressureTest: {
    requiredPressure: gauge.bar(11),
    lowestPressure: gauge.bar(11.2),
    requiredHold: time.hour(1),
    hold: time.hour(1),
    leak: 'none',
    fall: 'only cooling',
  },
} as const satisfies AcceptanceRecord;

const judge = (change: Partial<AcceptanceRecord>) => acceptRepair({ ...good, ...change });
const at = (holdPoint: string, change: Partial<AcceptanceRecord>) =>
  judge(change).holdPoints.find((point) => point.holdPoint === holdPoint)?.verdict;
const hardness = (change: object) => ({ hardness: { ...good.hardness, ...change } });
const test = (change: object) => ({ pressureTest: { ...good.pressureTest, ...change } });

describe('the decision on a repair', () => {
  it('is to accept when every hold point was measured and passed, with no reason against it', () => {
    const { verdict, reasons, holdPoints } = judge({});
    expect(verdict).toBe('accept');
    expect(reasons).toEqual([]);
    expect(holdPoints.map(({ verdict: each }) => each)).toEqual(['accept', 'accept', 'accept', 'accept', 'accept']);
  });

  it.each(['hardness', 'inspection', 'dimensions', 'pressureTest'] as const)('is to hold without %s', (left) => {
    const { [left]: _, ...rest } = good;
    expect(acceptRepair(rest)).toMatchObject({ verdict: 'hold' });
  });

  it('is to hold everything of an empty record', () => {
    const { holdPoints } = acceptRepair({ laminateThickness: length.mm(8), throughWall: false });
    expect(holdPoints.map(({ verdict }) => verdict)).toEqual(['hold', 'hold', 'hold', 'hold', 'hold']);
  });

  it('takes no pressure test only where it is said that none is required', () => {
    expect(judge({ pressureTest: 'not required' }).verdict).toBe('accept');
  });

  it('accepts no hardness without the qualified value, however hard', () => {
    expect(at('hardness', hardness({ qualifiedHardness: undefined, readings: [99, 99, 99, 99, 99] }))).toBe('hold');
  });

  it('waits for a soft laminate that still hardens and rejects one that no longer does', () => {
    const soft = { readings: [70, 70, 70, 70, 70] };
    expect(at('hardness', hardness(soft))).toBe('hold');
    expect(at('hardness', hardness({ ...soft, hasStopped: true }))).toBe('reject');
  });

  it('has a place that stays soft laid anew', () => {
    const spot = { readings: [82, 82, 82, 82, 82, 82, 60] };
    expect(at('hardness', hardness(spot))).toBe('hold');
    expect(at('hardness', hardness({ ...spot, hasStopped: true }))).toBe('repair the repair');
  });

  it('asks for more readings', () => {
    expect(judge(hardness({ readings: [82, 82] })).reasons).toMatchObject([
      { holdPoint: 'hardness', verdict: 'hold', found: { value: 2 }, limit: { value: 5 } },
    ]);
  });

  it('wants a second method for the bond of a laminate above 2 mm, and some method for any', () => {
    const tapped = { findings: [], bondMethods: ['tap test'] } as const;
    expect(at('bond', { inspection: tapped })).toBe('hold');
    const thin = {
      laminateThickness: length.mm(2),
      dimensions: { ...good.dimensions, requiredThickness: length.mm(2) },
    };
    expect(at('bond', { ...thin, inspection: tapped })).toBe('accept');
    const by = (...bondMethods: ('tap test' | 'ultrasonic' | 'thermography' | 'other')[]) =>
      at('bond', { inspection: { findings: [], bondMethods } });
    expect([by('tap test', 'tap test'), by('other'), by('other', 'other')]).toEqual(['hold', 'hold', 'hold']);
    expect([by('tap test', 'other'), by('ultrasonic'), by('thermography')]).toEqual(['accept', 'accept', 'accept']);
    expect(at('bond', { inspection: { findings: [], bondMethods: [] } })).toBe('hold');
  });

  it('rejects a detached end and puts it under the bond', () => {
    const findings = [{ feature: 'delamination', area: area.mm2(100), atEnd: true }] as const;
    const change = { inspection: { ...good.inspection, findings } };
    expect(judge(change).verdict).toBe('reject');
    expect(at('bond', change)).toBe('reject');
    expect(at('surface', change)).toBe('accept');
  });

  it('repairs a repair that is too thin or too short, with the numbers of both', () => {
    const { verdict, reasons } = judge({
      dimensions: { requiredThickness: length.mm(9), leastOverlap: length.mm(70), requiredOverlap: length.mm(75) },
    });
    expect(verdict).toBe('repair the repair');
    expect(reasons.map(({ found, limit }) => [found?.value, limit?.value])).toEqual([
      [length.mm(8), length.mm(9)],
      [length.mm(70), length.mm(75)],
    ]);
  });

  it.each([
    ['reject', { leak: 'at the repair', fall: 'leak' }],
    ['hold', { leak: 'elsewhere', fall: 'leak' }],
    ['hold', { leak: 'none', fall: 'leak' }],
    ['hold', { fall: 'undecided' }],
    ['accept', { fall: 'none' }],
    ['hold', { lowestPressure: gauge.bar(10.9) }],
    ['hold', { hold: time.minute(59) }],
  ] as const)('is to %s after a test with %o', (verdict, change) => {
    expect(at('pressure test', test(change))).toBe(verdict);
  });

  it('goes by the worst hold point and keeps the reasons of all', () => {
    const { verdict, reasons } = judge({
      hardness: undefined,
      ...test({ leak: 'at the repair' }),
      dimensions: undefined,
    });
    expect(verdict).toBe('reject');
    expect(reasons.map(({ holdPoint }) => holdPoint)).toEqual(['hardness', 'dimensions', 'pressure test']);
  });

  it('refuses numbers and words that can never be right', () => {
    expect(() => judge({ laminateThickness: Number.NaN as Length })).toThrow(CalculationError);
    expect(() => judge(test({ lowestPressure: -1 }))).toThrow(CalculationError);
    expect(() => judge(test({ leak: 'perhaps' }))).toThrow(CalculationError);
    expect(() => judge({ inspection: { findings: [], bondMethods: ['eye' as 'other'] } })).toThrow(CalculationError);
    expect(() => judge({ dimensions: { ...good.dimensions, leastOverlap: Number.NaN as Length } })).toThrow(
      CalculationError,
    );
  });
});
