import { describe, expect, it } from 'vitest';
import { tinyLoad } from '../../../src/pipe/tables/tiny-load.js';
import { length, stress } from '../../../src/quantity/index.js';

/** 323.9 x 8.38 mm at 241 MPa: its section yields at 2.0 MN and, by the outermost fibre, at 154 kN m. */
const pipe = { outsideDiameter: length.mm(323.9), wallThickness: length.mm(8.38), yieldStrength: stress.MPa(241) };
const inertia = (Math.PI / 64) * (0.3239 ** 4 - 0.30714 ** 4);
const yieldMoment = (241e6 * inertia) / (0.3239 / 2);
const yieldForce = 241e6 * (Math.PI / 4) * (0.3239 ** 2 - 0.30714 ** 2);

describe('a load that is tiny beside the pipe', () => {
  it('is one below a thousandth of the moment or force at which the section yields', () => {
    const [least, most] = tinyLoad({ ...pipe, kind: 'moment', value: 18 }) ?? [];
    expect((least ?? 0) / (yieldMoment / 1000)).toBeCloseTo(1, 9);
    expect((most ?? 0) / yieldMoment).toBeCloseTo(1, 9);
    expect(tinyLoad({ ...pipe, kind: 'moment', value: (yieldMoment / 1000) * 1.000001 })).toBeUndefined();
    expect((tinyLoad({ ...pipe, kind: 'force', value: 1 })?.[1] ?? 0) / yieldForce).toBeCloseTo(1, 9);
  });

  it('is seen through a circumference too, and on the pushed side', () => {
    const { outsideDiameter: _, ...bare } = pipe;
    const girth = { ...bare, circumference: length.mm(323.9 * Math.PI) };
    const [least, most] = tinyLoad({ ...girth, kind: 'force', value: -40 }) ?? [];
    expect((least ?? 0) / -yieldForce).toBeCloseTo(1, 9);
    expect((most ?? 0) / (-yieldForce / 1000)).toBeCloseTo(1, 9);
  });

  it('is none where no load is stated', () => {
    expect(tinyLoad({ ...pipe, kind: 'moment', value: 0 })).toBeUndefined();
  });
});
