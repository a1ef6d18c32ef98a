import { describe, expect, test } from 'vitest';
import { decodeCase, encodeDesign } from '../../src/json/index.js';
import { length, units } from '../../src/quantity/index.js';
import { designRepair } from '../../src/repair/index.js';
import { present, timeOf } from '../repair/by-use.js';
import { exampleDocument, exampleNames } from './examples.js';

const decoded = decodeCase(exampleDocument());
const design = designRepair(decoded.case, { record: true });
// biome-ignore lint/suspicious/noExplicitAny: the JSON is read here as a foreign program would.
const plain = encodeDesign(design, decoded) as any;

describe('a design as JSON', () => {
  test('is plain JSON: it survives being written and read', () => {
    expect(JSON.parse(JSON.stringify(plain))).toEqual(plain);
  });

  test.each(exampleNames)('of %s gives every number that has a unit its unit and its kind', (name) => {
    const { case: repairCase, typed, lookUps } = decodeCase(exampleDocument(name));
    const {
      case: _,
      libraryVersion: __,
      ...json
    } = encodeDesign(designRepair(repairCase, { record: true }), { typed, lookUps });
    const bare: string[] = [];
    const walk = (value: unknown, path: string): void => {
      if (typeof value === 'number') bare.push(path);
      else if (Array.isArray(value)) value.forEach((row, index) => void walk(row, `${path}[${index}]`));
      else if (typeof value === 'object' && value !== null) {
        if ('unit' in value && 'kind' in value && 'value' in value) {
          const kind = String(value.kind);
          if (kind in units) expect(Object.keys((units as Record<string, object>)[kind] ?? {})).toContain(value.unit);
          else if (Array.isArray(value.value)) walk(value.value, path);
          return;
        }
        for (const [key, member] of Object.entries(value)) walk(member, path === '' ? key : `${path}.${key}`);
      }
    };
    walk(json, '');
    const counts = bare.map((path) => path.replaceAll(/\[\d+\]/gu, ''));
    const counted = [
      'plies',
      'leastPlies',
      'layersPerPass',
      'passes',
      'layers',
      'bands',
      'rolls',
      'batches',
      'kits',
      'safetyFactor',
      'fittingFactor',
    ];
    const hardness = ['qualified', 'leastMean', 'leastSingle', 'readings'];
    const known = [...counted, ...hardness, 'pass', 'roll', 'endsInPass', 'crews'];
    expect(counts.filter((path) => !known.includes(path.split('.').at(-1) ?? ''))).toEqual([]);
  });

  test('holds the numbers of the design, in SI where no unit is asked for', () => {
    expect(plain.verdict).toBe(design.verdict);
    expect(plain.laminate.laidThickness).toEqual({ value: design.laminate?.laidThickness, unit: 'm', kind: 'length' });
    expect(plain.laminate.thickness.governing).toBe(design.laminate?.thickness.governing);
    for (const use of ['filler', 'laminate'] as const) {
      const cure = design.cures?.[use];
      if (cure === undefined || cure === 'none') throw new Error(`expected a cure of the ${use}`);
      expect(plain.cures[use].workingTime).toEqual({ value: cure.workingTime, unit: 's', kind: 'time' });
    }
    design.timeline?.steps.forEach(({ endsAt }, index) => {
      expect(plain.timeline.steps[index].endsAt).toEqual({ value: endsAt, unit: 's', kind: 'time' });
    });
    const cured = plain.timeline.steps.find(({ id }: { id: string }) => id === 'cure');
    expect(cured.duration.time).toEqual({ value: timeOf(present(design.timeline), 'cure'), unit: 's', kind: 'time' });
  });

  test('takes the units and the digits that are asked for', () => {
    // biome-ignore lint/suspicious/noExplicitAny: see above.
    const us = encodeDesign(design, { ...decoded, units: 'us', digits: 4 }) as any;
    const inches = length.inMm(design.laminate?.laidThickness ?? (0 as never)) / 25.4;
    const above = Math.ceil(inches * 1000 - 1e-6) / 1000;
    expect(us.laminate.laidThickness).toEqual({ value: above, unit: 'in', kind: 'length' });
    expect(us.laminate.resistance.value.unit).toBe('psi');
    const units = { system: 'us', kinds: { 'gauge pressure': 'bar' } } as const;
    // biome-ignore lint/suspicious/noExplicitAny: see above.
    const mixed = encodeDesign(design, { ...decoded, units }) as any;
    expect(mixed.laminate.resistance.value.unit).toBe('bar');
    expect(mixed.laminate.laidThickness.unit).toBe('in');
  });

  test.each([2, 3, 4])('rounds to %i digits what is needed up and what is resisted down, in either unit', (digits) => {
    for (const name of exampleNames) {
      const { case: repairCase } = decodeCase(exampleDocument(name));
      const made = designRepair(repairCase);
      for (const units of ['si', 'us'] as const) {
        // biome-ignore lint/suspicious/noExplicitAny: see above.
        const [full, short] = [undefined, digits].map((each) => encodeDesign(made, { units, digits: each }) as any);
        const parts = [short, full].map(({ laminate, extent, mixes, timeline, endOfLife, line }) => ({
          up: [
            laminate?.laidThickness,
            laminate?.thickness.value,
            extent?.overlap.value,
            extent?.totalLength,
            extent?.taper,
          ]
            .concat([mixes?.filler?.mass, mixes?.laminateResin?.mass, timeline?.earliestReturn?.time])
            .concat(timeline?.steps.map((step: { duration: { time?: unknown } }) => step.duration.time) ?? []),
          down: [
            laminate?.resistance.value,
            line?.highestPressure,
            endOfLife?.inspectWithin,
            endOfLife?.wallLasts?.time,
          ],
        }));
        const [rounded, exact] = parts;
        for (const [index, value] of (rounded?.up ?? []).entries())
          if (value !== undefined) expect(value.value).toBeGreaterThanOrEqual(exact?.up[index].value * (1 - 1e-6));
        for (const [index, value] of (rounded?.down ?? []).entries())
          if (value !== undefined) expect(value.value).toBeLessThanOrEqual(exact?.down[index].value * (1 + 1e-6));
      }
    }
  });

  test('carries the document of its case, which designs the same again', () => {
    expect(plain.case.pipe.size).toEqual({ nps: '8', schedule: '40' });
    expect(plain.case.service.designPressure).toBe('6 bar');
    const again = decodeCase(plain.case);
    expect(again.case).toEqual(decoded.case);
  });

  test('carries each recorded step with its formula, its inputs and its results', () => {
    // biome-ignore lint/suspicious/noExplicitAny: see above.
    const steps = plain.record.filter((entry: any) => entry.sort === 'step');
    expect(steps.length).toBe(design.record?.filter((entry) => entry.sort === 'step').length);
    // biome-ignore lint/suspicious/noExplicitAny: see above.
    const hoop = steps.find((entry: any) => entry.formula === 'pipe/hoop-stress');
    expect(hoop.inputs.pressure).toEqual({ value: 600000, unit: 'Pa', kind: 'gauge pressure' });
    expect(hoop.results.result.kind).toBe('stress');
  });
});
