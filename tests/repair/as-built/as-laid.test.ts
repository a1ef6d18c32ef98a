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

  it('is not designed where these are beyond the equations of a thin laminate, nor does more meet', () => {
    // Six or seven plies of 0.8 mm are asked for, and two passes lay eight, 6.4 mm; a twelfth of the diameter is 5.03 mm.
    const at = (outsideDiameter: string, designPressure: string) =>
      withPaths(quietLoss, {
        'wrap.overlap': '75 %',
        'pipe.outsideDiameter': outsideDiameter,
        'service.designPressure': designPressure,
      });
    expect(designRepair(caseOf(at('60.3 mm', '68 bar'))).reasons).toMatchObject([
      {
        text: expect.stringContaining('the wrap lies thicker than the criteria ask for'),
        limit: { value: 60.3e-3 / 12 },
      },
    ]);
    // And 6.67 mm here, for as much load.
    const design = madeOf(at('80 mm', '51 bar'));
    expect(design.laminate.plies).toBeLessThan(8);
    expect(design.wrap.layers).toBe(8);
    const thick = (thickness: number) =>
      compared(design, { layers: 8, thickness }).points.find(({ point }) => point === 'thickness');
    expect(thick(6.6e-3)?.verdict).toBe('meets');
    expect(thick(6.7e-3)).toMatchObject({ verdict: 'does not meet', text: expect.stringContaining('too thick') });
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
