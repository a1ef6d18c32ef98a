import type { ExtentDesign } from './design.js';

/** Which line of a bend a length is measured along, as words that follow it; nothing on straight pipe. */
export interface SidesOfBend {
  /** Of the overlaps, the tapers and the defect between them, as long as they have to be where they are shortest. */
  readonly inside: string;
  /** Of the whole laminate, its wrap and the surface to prepare. */
  readonly outside: string;
}

export function sidesOfBend({ insideLength }: Pick<ExtentDesign, 'insideLength'>): SidesOfBend {
  return insideLength === undefined
    ? { inside: '', outside: '' }
    : { inside: ' along the inside', outside: ' along the outside' };
}
