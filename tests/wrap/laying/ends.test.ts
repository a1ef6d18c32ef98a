import { describe, expect, it } from 'vitest';
import { isCalculationError } from '../../../src/formula/index.js';
import { type Length, length, ratio } from '../../../src/quantity/index.js';
import {
  axialTapeWidth,
  chargeLength,
  freeTaper,
  fullCountLength,
  layerDiameter,
  minimumLayers,
  overlapForNextLayer,
  rollsAlongTape,
  stagger,
  staggeredPasses,
  tapePlan,
  wrapEnds,
} from '../../../src/wrap/index.js';

const codeOf = (call: () => unknown): string | undefined => {
  try {
    call();
    return undefined;
  } catch (error) {
    if (!isCalculationError(error)) throw error;
    return error.code;
  }
};

describe('the ends of a wrap', () => {
  it('lie as far from the centre of the defect on both sides', () => {
    const ends = wrapEnds({ laidLength: length.mm(700), defectLength: length.mm(200) });
    expect(length.inMm(ends.beyondDefect)).toBeCloseTo(250, 9);
    expect(length.inMm(ends.start)).toBeCloseTo(-350, 9);
    expect(length.inMm(ends.end)).toBeCloseTo(350, 9);
    expect(codeOf(() => wrapEnds({ laidLength: length.mm(100), defectLength: length.mm(200) }))).toBe('invalid-input');
  });

  it('carry every layer between the end bands, or between the tapers where these are shorter', () => {
    const wrap = { totalLength: length.mm(600), axialTapeWidth: length.mm(101) };
    expect(length.inMm(fullCountLength({ ...wrap, taper: length.mm(40) }))).toBeCloseTo(520, 9);
    expect(length.inMm(fullCountLength({ ...wrap, taper: length.mm(150) }))).toBeCloseTo(398, 9);
    expect(codeOf(() => fullCountLength({ ...wrap, totalLength: length.mm(80), taper: length.mm(40) }))).toBe(
      'invalid-input',
    );
  });

  it('leave the steps what the end bands leave of the taper', () => {
    const wrap = { totalLength: length.mm(600), fullCountLength: length.mm(398) };
    expect(length.inMm(freeTaper({ ...wrap, taper: length.mm(150) }))).toBeCloseTo(49, 9);
    expect(freeTaper({ ...wrap, taper: length.mm(101) })).toBe(0);
    expect(freeTaper({ ...wrap, taper: length.mm(0) })).toBe(0);
    expect(length.inMm(stagger({ taper: length.mm(49), layers: 8 }))).toBeCloseTo(7, 9);
    expect(stagger({ taper: length.mm(49), layers: 1 })).toBe(0);
  });
});

describe('the passes and the rolls', () => {
  const tape = {
    outsideDiameter: length.mm(168.3),
    tapeWidth: length.mm(100),
    overlap: ratio.fraction(0.5),
    layerThickness: length.mm(0.8),
  };
  const winding = { ...tape, passes: 4, overallLength: length.mm(800), stagger: length.mm(0) };

  it('are those of the plan where nothing is stepped', () => {
    const plan = tapePlan({ ...tape, requiredLayers: 8, fullCountLength: length.mm(600) });
    const { rows, tapeLength } = staggeredPasses({ ...winding, overallLength: plan.overallLength });
    expect(tapeLength / plan.tapeLength).toBeCloseTo(1, 12);
    expect(rows.map(({ meanDiameter }) => meanDiameter)).toEqual(
      plan.rows.map(({ meanDiameter }) => expect.closeTo(meanDiameter, 12)),
    );
  });

  it('run to and fro', () => {
    const { rows } = staggeredPasses({ ...winding, stagger: length.mm(10) });
    expect(rows.map(({ direction }) => direction)).toEqual(['forward', 'back', 'forward', 'back']);
    expect(rows.map(({ from }) => Math.round(length.inMm(from)))).toEqual([-400, 390, -380, 370]);
    expect(rows.map(({ to }) => Math.round(length.inMm(to)))).toEqual([400, -390, 380, -370]);
  });

  it('are refused where a step leaves the last pass no room for its tape', () => {
    expect(codeOf(() => staggeredPasses({ ...winding, stagger: length.mm(116) }))).toBeUndefined();
    expect(codeOf(() => staggeredPasses({ ...winding, stagger: length.mm(117) }))).toBe('invalid-input');
  });

  it('need room for the width of their tape, which then closes on itself without a helix', () => {
    const meanDiameter = layerDiameter({
      outsideDiameter: tape.outsideDiameter,
      layerThickness: length.mm(1.6),
      layer: 1,
    });
    const overallLength = axialTapeWidth({ ...tape, meanDiameter });
    const one = { ...winding, passes: 1, overallLength };
    const { tapeLength } = staggeredPasses(one);
    expect(tapeLength / (2 * Math.PI * meanDiameter)).toBeCloseTo(1, 12);
    for (const share of [1, 2]) {
      for (const { endsAt } of rollsAlongTape({ ...one, rollLength: (tapeLength / share) as typeof tapeLength }).rows) {
        expect(endsAt).toBeCloseTo(overallLength / 2, 12);
      }
    }
    const tooLong = () => staggeredPasses({ ...winding, stagger: length.mm(117) });
    // 800 mm less three steps at either end.
    expect(tooLong).toThrow(expect.objectContaining({ parameter: 'overallLength', value: expect.closeTo(0.098, 12) }));
  });

  it('end with a roll that holds just one of them', () => {
    const [first] = staggeredPasses(winding).rows;
    const [roll] = rollsAlongTape({ ...winding, rollLength: first?.tapeLength as Length }).rows;
    expect(roll).toMatchObject({ endsInPass: 1, endsAt: expect.closeTo(0.4, 12) });
  });

  it('have every roll whole but the last', () => {
    for (const metres of [0.7, 1.1, 3.3]) {
      const { rows } = rollsAlongTape({ ...winding, rollLength: length.m(metres) });
      expect(rows.length).toBeGreaterThan(4);
      for (const { length: laid } of rows.slice(0, -1)) expect(laid).toBe(metres);
    }
  });

  it('open no roll more than the tape fills', () => {
    const whole = staggeredPasses(winding).tapeLength;
    const { rolls, rows } = rollsAlongTape({ ...winding, rollLength: whole });
    expect(rolls).toBe(1);
    expect(rows[0]).toMatchObject({ roll: 1, length: whole, endsInPass: 4, endsAt: expect.closeTo(-0.4, 12) });
    expect(codeOf(() => rollsAlongTape({ ...winding, rollLength: length.mm(1) }))).toBe('invalid-input');
  });
});

describe('what a tape lays', () => {
  it('is one layer more at the overlap for the next layer, and none at the least bit below', () => {
    for (const overlap of [0, 0.3, 0.5, 0.55, 2 / 3, 0.74]) {
      const next = overlapForNextLayer({ overlap: ratio.fraction(overlap) });
      expect(next.layers).toBe(minimumLayers({ overlap: ratio.fraction(overlap) }) + 1);
      expect(minimumLayers({ overlap: next.overlap })).toBe(next.layers);
      expect(minimumLayers({ overlap: ratio.fraction(next.overlap - 1e-6) })).toBe(next.layers - 1);
    }
  });

  it('lies at the middle of its layer', () => {
    const layer = { outsideDiameter: length.mm(168.3), layerThickness: length.mm(0.8) };
    expect(length.inMm(layerDiameter({ ...layer, layer: 1 }))).toBeCloseTo(169.1, 9);
    expect(length.inMm(layerDiameter({ ...layer, layer: 3 }))).toBeCloseTo(172.3, 9);
  });

  it('is shared out evenly among the batches', () => {
    expect(length.inM(chargeLength({ length: length.m(42), charges: 7 }))).toBeCloseTo(6, 12);
  });
});
