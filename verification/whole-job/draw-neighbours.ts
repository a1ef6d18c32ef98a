import { type Draw, figure } from './random.js';

type Drawn = Record<string, unknown>;

const millimetres = (text: unknown): number => Number(String(text).replace(' mm', ''));

/** Other losses near the defect: some so near that they act with it, some under the wrap, some beside it, and in rows. */
export function withNeighbours(document: Drawn, { chance, one, between }: Draw): Drawn {
  const { defect, pipe } = document as { defect: Drawn; pipe: Drawn };
  if (chance(0.03)) {
    const { neighbours: _, ...unsaid } = defect;
    return { ...document, defect: unsaid };
  }
  const wall = millimetres(pipe['wallThickness']);
  const girth =
    pipe['outsideDiameter'] === undefined
      ? millimetres(pipe['circumference'])
      : Math.PI * millimetres(pipe['outsideDiameter']);
  const root = Math.sqrt((girth / Math.PI) * wall);
  const left = millimetres(defect['remainingWall']);
  const row = chance(0.3);
  let reached = 0;
  const neighbours = Array.from({ length: one(1, 1, 2, 3, 5) }, () => {
    const along = one(0, between(0, 2) * root, between(2, 8) * root, between(500, 3000), between(500, 3000));
    // In a row each lies a little beyond the one before.
    const gapAlong = row ? reached + between(0.2, 2.5) * root : along;
    const axialLength = between(5, chance(0.3) ? 300 : 80);
    reached = gapAlong + axialLength;
    const gapRound = one(0, 0, between(0, 3) * root, between(0, 0.5) * girth);
    return {
      cause: chance(0.6)
        ? defect['cause']
        : one('internal corrosion', 'external corrosion', 'internal erosion', 'mechanical damage', 'unknown'),
      gapAlong: `${figure(gapAlong, 3)} mm`,
      gapRound: `${figure(gapRound, 3)} mm`,
      axialLength: `${figure(axialLength, 3)} mm`,
      circumferentialWidth: `${figure(Math.min(between(5, 80), 0.2 * girth), 3)} mm`,
      remainingWall: `${figure(left + (wall - left) * between(0, 0.95), 4)} mm`,
    };
  });
  return { ...document, defect: { ...defect, neighbours } };
}
