import { describe, expect, it } from 'vitest';
import type { LaminateDesign, RollsDesign, SheetDesign } from '../../src/repair/index.js';
import { designOf, millimetresAsked, verdictOf } from './answers.js';
import { loss, quietLoss, withPaths } from './cases.js';

/** Issue 9, item 12. */

/** Sheet of 150 mm, three bands side by side, laps of 25 mm. */
const inBands = withPaths(loss, { wrap: { form: 'sheet', width: '150 mm', rollLength: '20 m' } });

/**
 * Plies that carry along the pipe: all but the most that end within a window to either side of one place. A place of the plan
 * that does not list its layers one by one ends them all together.
 */
function axialPlies(rolls: RollsDesign, wrap: SheetDesign, window: number): number {
  const isListed = new Set(rolls.passes.map(({ pass }) => pass)).size === wrap.layers;
  const together = isListed ? 1 : (wrap.layers * wrap.bands) / rolls.passes.length;
  // A layer that ends in the taper has no joint there: a joint is where one band of a layer follows another.
  const ends = rolls.passes.flatMap(({ pass, to }) =>
    rolls.passes.some((other) => other.pass === pass && other.to > to + 1e-9) ? [to as number] : [],
  );
  // The worst place lies between two joints, as far from both as the window reaches.
  const places = ends.flatMap((end) => [end, end + window]);
  const counts = places.map((place) => ends.filter((end) => Math.abs(end - place) <= window + 1e-9).length * together);
  return wrap.layers - Math.max(0, ...counts);
}

const neededAlong = ({ thickness }: LaminateDesign): number =>
  thickness.candidates.find(({ criterion }) => criterion.startsWith('axial'))?.value ?? Number.NaN;

describe('a wrap of sheet in bands', () => {
  it('is designed', () => {
    expect(verdictOf(inBands)).toBe('designed');
  });

  it('carries along the pipe at every joint what its axial line asks for', () => {
    const { rolls, wrap, laminate } = designOf(inBands);
    if (rolls === undefined || wrap?.form !== 'sheet' || laminate === undefined) throw new Error('not in bands');
    // max(25 mm, 3 E_a eps_a t_ply/tau)
    const window = Math.max(0.025, (3 * 14e9 * laminate.axialStrain * 0.0008) / 8e6);
    expect(axialPlies(rolls, wrap, window) * 0.0008).toBeGreaterThanOrEqual(neededAlong(laminate) * (1 - 1e-9));
  });
});

describe('a tape that runs steeply', () => {
  /** Half overlapped on 60.3 mm without filler: sin of the lead = (width/2)/(pi D). */
  const onSmall = (width: string) =>
    withPaths(quietLoss, {
      'pipe.outsideDiameter': '60.3 mm',
      'pipe.wallThickness': '3.91 mm',
      'defect.axialLength': '30 mm',
      'defect.circumferentialWidth': '30 mm',
      wrap: { form: 'tape', width, overlap: '50 %', rollLength: '10 m' },
    });

  it('is designed at 6 degrees', () => {
    expect((Math.asin(20 / (Math.PI * 61.1)) * 180) / Math.PI).toBeCloseTo(6, 0);
    expect(verdictOf(onSmall('40 mm'))).toBe('designed');
  });

  it.each([
    ['67 degrees', '355 mm'],
    ['18 degrees', '120 mm'],
  ])('is not covered at %s', (_, width) => {
    expect(verdictOf(onSmall(width))).toBe('not covered');
  });

  it('has the modulus of its angle: at 9 to 10 degrees 24/14/3 GPa lose more than a tenth', () => {
    const of = (width: string): number => {
      const wrap = { form: 'tape', width, overlap: '50 %', rollLength: '20 m' };
      return millimetresAsked(withPaths(quietLoss, { wrap }));
    };
    // On 190 mm, more than the wrap is thick: 1/E = cos^4/E_1 + (1/G - 2 nu/E_1) sin^2 cos^2 + sin^4/E_2
    const sine = 92 / (Math.PI * 190);
    const [s, c] = [sine ** 2, 1 - sine ** 2];
    const modulus = 1 / (c ** 2 / 24 + (1 / 3 - (2 * 0.12) / 24) * s * c + s ** 2 / 14);
    expect(of('184 mm')).toBeLessThan(Number.POSITIVE_INFINITY);
    expect(of('184 mm')).toBeGreaterThanOrEqual((of('20 mm') * 23.8) / modulus);
  });
});
