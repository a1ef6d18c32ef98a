import type { RepairDesign } from '../../repair/design/design.js';

/** A stretch along the pipe, from the centre of the defect. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** What of a repair lies where along the pipe, in metres from the centre of the defect: what every drawing is made from. */
export interface AlongPipe {
  /** From the start of the wrap to its end: the length of surface to prepare. */
  readonly wrap: Stretch;
  readonly laminate: Stretch;
  /** Between the tapers. */
  readonly fullThickness: Stretch;
  /** Between the overlaps: the defect at the end of life, or the seal where that is longer. */
  readonly between: Stretch;
  readonly defect: Stretch;
  readonly hole?: Stretch;
  readonly pad?: Stretch;
  /** On a bend: by how much more the outside of the bend measures than its inside, on which the overlaps are sized. */
  readonly stretch: number;
}

const around = (length: number): Stretch => ({ from: -length / 2, to: length / 2 });

/** Positions along the pipe; nothing where the design did not get as far as the laminate and its wrap. */
export function alongPipe({ found, extent, wrap, rolls, seal }: RepairDesign): AlongPipe | undefined {
  if (found === undefined || extent === undefined || wrap === undefined) return undefined;
  const { totalLength, insideLength, taper, defectLength } = extent;
  const stretch = insideLength === undefined ? 1 : totalLength / insideLength;
  const half = totalLength / 2;
  const full = half - taper * stretch;
  const hole = found.designHole ?? found.designSlot?.axialLength;
  return {
    wrap: rolls === undefined ? around(totalLength) : { from: rolls.start, to: rolls.end },
    laminate: { from: -half, to: half },
    fullThickness: { from: -full, to: full },
    between: around(defectLength * stretch),
    defect: around(found.lengthAtEndOfLife),
    ...(hole === undefined ? {} : { hole: around(hole) }),
    ...(seal === undefined || seal === 'none' ? {} : { pad: around(seal.padDiameter) }),
    stretch,
  };
}
