import { finite, positive, properFraction, refuse } from '../formula/index.js';

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
