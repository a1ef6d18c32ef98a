import { positive } from '../../formula/index.js';
import { type Length, length } from '../../quantity/index.js';
import type { PipeStandard } from './pipe-diameters.data.js';
import { rowsOf, sourceOf } from './pipe-size.js';

/** A standard size beside a measured diameter. */
export interface SizeCandidate {
  /** Standard of the size. */
  readonly standard: PipeStandard;
  /** Nominal size in inches. */
  readonly nps: string;
  /** Nominal diameter in millimetres. */
  readonly dn: number;
  /** Outside diameter of the standard size. */
  readonly outsideDiameter: Length;
  /** Measured less standard: positive where the pipe is larger. */
  readonly difference: Length;
  /** The difference over the standard outside diameter. */
  readonly relativeDifference: number;
}

export interface NearestPipeSize extends SizeCandidate {
  /** The second nearest size: where it is nearly as near, measure again. */
  readonly next: SizeCandidate;
  /** Where the table stands. */
  readonly source: ReturnType<typeof sourceOf>;
}

/**
 * The standard size whose outside diameter is nearest to a measured one, with the difference.
 *
 * The measured value is never replaced: calculate with it, or take the standard one knowingly.
 *
 * @param outsideDiameter measured D [m], > 0
 * @param standard        whose sizes to look among; B36.10M when left out (NPS 10 and 12 differ by 0.1 mm in B36.19M)
 * @throws CalculationError `invalid-input`
 */
export function nearestPipeSize(outsideDiameter: Length, standard: PipeStandard = 'ASME B36.10M'): NearestPipeSize {
  positive(outsideDiameter, 'outsideDiameter', 'm');
  const candidates = rowsOf(standard).map(([nps, dn, outsideMm]): SizeCandidate => {
    const size = length.mm(outsideMm);
    const difference = (outsideDiameter - size) as Length;
    return { standard, nps, dn, outsideDiameter: size, difference, relativeDifference: difference / size };
  });
  candidates.sort((a, b) => Math.abs(a.difference) - Math.abs(b.difference));
  const [best, next] = candidates as [SizeCandidate, SizeCandidate];
  return { ...best, next, source: sourceOf(standard) };
}
