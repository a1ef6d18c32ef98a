import { type Length, length, type Ratio } from '../../quantity/index.js';
import { exactly, type Line } from '../../quantity/line.js';
import { isSame, type Slip, withSlips } from '../../quantity/slips.js';
import { readNps } from './nominal-size.js';
import { type PipeDiameterRow, plainPipeDiameters } from './pipe-diameters.data.js';

/** How wide a pipe is, as it was given: by its diameter, or by its circumference. */
export interface GivenDiameter {
  readonly outsideDiameter?: Length | undefined;
  readonly circumference?: Length | undefined;
  readonly wallThickness: Length;
  /** How far a pipe may be from its standard size, as a share of that. */
  readonly tolerance: Ratio;
}

/** A diameter that no standard pipe has, and the nearest that one has. */
export interface StrangeDiameter {
  readonly outsideDiameter: Length;
  readonly nps: string;
  readonly nearest: Length;
  /** What would make the diameter that of a standard size. */
  readonly slips: readonly Slip[];
}

/**
 * Whether a diameter is near no size of ASME B36.10M, and by which slip that may be. Above its largest size the table says
 * nothing: larger pipe is made.
 */
export function strangeDiameter(given: GivenDiameter): StrangeDiameter | undefined {
  const { circumference, wallThickness: t, tolerance } = given;
  const D = given.outsideDiameter ?? (circumference ?? Number.NaN) / Math.PI;
  const isNear = (diameter: number): boolean => {
    const size = outsides[nearest(diameter)] as Length;
    return Math.abs(diameter - size) <= tolerance * size;
  };
  if (isNear(D) || !(D <= (outsides.at(-1) as Length))) return undefined;
  const slips: Slip[] = [];
  const propose = (value: number, way: string): void => {
    if (isNear(value)) slips.push({ value, ways: [way] });
  };
  if (given.outsideDiameter === undefined && circumference !== undefined)
    propose(circumference, 'the diameter for the circumference');
  else {
    for (const [index, [nps, dn]] of plainPipeDiameters.entries()) {
      if (isSame(D, length.mm(dn)) || isSame(D, length.inch(readNps(nps))))
        propose(outsides[index] as Length, 'the nominal size for the outside diameter');
    }
    propose(2 * D, 'the radius for the diameter');
    propose(D / Math.PI, 'the circumference for the diameter');
    propose(D + 2 * t, 'the inside diameter for the outside diameter');
  }
  const row = nearest(D);
  const [nps] = plainPipeDiameters[row] as PipeDiameterRow;
  return { outsideDiameter: D as Length, nps, nearest: outsides[row] as Length, slips };
}

/** The sentence on a diameter that no standard pipe has, as it was given. */
export function notNearSize(name: string, given: GivenDiameter, strange: StrangeDiameter): Line {
  const size = `not near a size of ASME B36.10M, of which NPS ${strange.nps} is the nearest with`;
  const diameter = exactly(name, 'length', strange.outsideDiameter);
  const nearest = exactly(name, 'length', strange.nearest);
  if (given.outsideDiameter !== undefined || given.circumference === undefined)
    return withSlips(`${name} is {0}, ${size} {1}`, [diameter, nearest], strange.slips);
  const around = exactly(name, 'length', given.circumference);
  return withSlips(`${name} is {0}, a diameter of {1}, ${size} {2}`, [around, diameter, nearest], strange.slips);
}

/** The outside diameter of each row: every row of a survey is compared with all of them. */
const outsides: readonly Length[] = /* @__PURE__ */ plainPipeDiameters.map(([, , outsideMm]) => length.mm(outsideMm));

/** The row whose diameter is nearest; of two as near, the smaller. */
function nearest(diameter: number): number {
  let [best, least] = [0, Number.POSITIVE_INFINITY];
  for (let row = 0; row < outsides.length; row++) {
    const gap = Math.abs(diameter - (outsides[row] as Length));
    if (gap < least) [best, least] = [row, gap];
  }
  return best;
}
