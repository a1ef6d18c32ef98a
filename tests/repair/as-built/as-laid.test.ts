import { describe, expect, it } from 'vitest';
import { type Length, length } from '../../../src/quantity/index.js';
import { compareAsBuilt, type Designed, designRepair } from '../../../src/repair/index.js';
import { asmePcc2, type RuleSet } from '../../../src/rules/index.js';
import { caseOf, madeOf } from '../../faults/answers.js';
import { type Paths, quietLoss, withPaths } from '../../faults/cases.js';
import { compared, goodRecord } from '../../faults/records.js';

/** What a laminate needs as it was laid, where it is not as planned. */

/** Four layers in a pass of tape: more than the criteria ask for. */
const passes = (changes: Paths) => madeOf(withPaths(quietLoss, { 'wrap.overlap': '75 %', ...changes }));

describe('a tape whose passes give more layers than the criteria ask for', () => {
  it('needs no more length and resin for the layers of the plan, and more for more', () => {
    const design = passes({ 'service.designPressure': '44 bar' });
    expect(design.wrap.layers).toBeGreaterThan(design.laminate.plies);
    const laid = (layers: number) =>
      compared(design, { layers, thickness: layers * 0.8e-3 })
        .points.filter(({ verdict }) => verdict !== 'meets')
        .map(({ point }) => point);
    expect(laid(design.wrap.layers)).toEqual([]);
    expect(laid(design.wrap.layers + 3)).toContain('length');
  });

  it('is as thick as the plan lays it, and beyond the equations of a thin laminate where it is thicker', () => {
    const design = passes({ 'pipe.outsideDiameter': '60.3 mm', 'service.designPressure': '68 bar' });
    const planned = design.wrap.layers * 0.8e-3;
    // A twelfth of the diameter.
    const limit = 60.3e-3 / 12;
    expect(design.laminate.laidThickness).toBeLessThan(limit);
    expect(planned).toBeGreaterThan(limit);
    const at = (thickness: number) =>
      compared(design, { layers: design.wrap.layers, thickness }).points.find(({ point }) => point === 'thickness');
    expect(at(design.case.laminate.plyThickness * design.wrap.layers)?.verdict).toBe('meets');
    expect(at(planned * 1.01)).toMatchObject({ verdict: 'does not meet', text: expect.stringContaining('too thick') });
  });
});

describe('a design by rules of its own', () => {
  it('is compared and rated by them', () => {
    const { overlap } = asmePcc2;
    const rules: RuleSet = {
      ...asmePcc2,
      overlap: {
        ...overlap,
        minimum: { ...overlap.minimum, value: length.mm(300) },
        leastAvailable: { ...overlap.leastAvailable, value: length.mm(250) },
      },
    };
    const design = designRepair(caseOf(quietLoss), { rules }) as Designed;
    const points = (changes: object) => compareAsBuilt(design, { ...goodRecord(design), ...changes });
    const layers = Math.max(design.laminate.plies, design.wrap.layers) + 1;
    const more = points({ layers, leastOverlap: length.mm(299) }).points.find(({ point }) => point === 'overlap');
    expect([more?.verdict, more?.limit?.value]).toEqual(['does not meet', 0.3]);
    const rated = (leastOverlap: Length) => points({ leastOverlap, length: undefined }).goodFor;
    expect(rated(length.mm(251))?.pressure).toBeGreaterThan(0);
    expect(rated(length.mm(249))?.because.text).toMatch(/shorter than the least/u);
  });
});
