import { finite, positive, properFraction, refuse } from '../formula/index.js';
import type { Length } from '../quantity/index.js';

/** Sine of the lead angle of a helical tape, after the checks that every helix needs. */
export function leadSine(w: number, o: number, D: number): number {
  positive(w, 'tapeWidth', 'm');
  properFraction(o, 'overlap');
  positive(D, 'meanDiameter', 'm');
  finite(Math.PI * D, 'circumference', 'm');
  const s = (w * (1 - o)) / (Math.PI * D);
  if (!(s < 1)) tooWide(w, Math.PI * D);
  return s;
}

/** Advance per turn on a helix whose lead angle has this cosine. @internal */
export function advanceAt(w: number, o: number, cosine: number): Length {
  return ((w * (1 - o)) / cosine) as Length;
}

/** Width of the tape along the pipe. @internal */
export function axialWidthAt(w: number, cosine: number): Length {
  return (w / cosine) as Length;
}

/** Tape in one turn. @internal */
export function turnLengthAt(D: number, cosine: number): Length {
  return ((Math.PI * D) / cosine) as Length;
}

/** Cosine of the lead angle by its sine. @internal */
export function leadCosine(sine: number): number {
  return Math.sqrt(1 - sine * sine);
}

function tooWide(w: number, circumference: number): never {
  refuse({
    code: 'no-solution',
    parameter: 'tapeWidth',
    value: w,
    unit: 'm',
    constraint: 'its uncovered part w(1 - o) must be below the circumference, {limit}',
    limit: circumference,
  });
}
