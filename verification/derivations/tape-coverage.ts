/**
 * Layers under an overlapped helical tape, counted turn by turn on the unrolled pipe. Imports nothing that it checks.
 * The trailing edge of the tape belongs to it and the leading edge does not, so that tapes edge to edge count once.
 */
export interface Winding {
  readonly width: number;
  readonly overlap: number;
  readonly diameter: number;
  readonly overallLength: number;
  readonly closingTurns: boolean;
}

/** The tape's pitch and its width along the pipe, from the triangle that one turn unrolls to, by bisection on its angle. */
export function unrolled({ width, overlap, diameter }: Omit<Winding, 'overallLength' | 'closingTurns'>) {
  const around = Math.PI * diameter;
  let [low, high] = [0, Math.PI / 2];
  for (let round = 0; round < 200; round++) {
    const middle = (low + high) / 2;
    // Across the tape, one turn moves on by around * sin(angle); that must be the uncovered width.
    if (around * Math.sin(middle) < width * (1 - overlap)) low = middle;
    else high = middle;
  }
  const angle = (low + high) / 2;
  return {
    angle,
    pitch: around * Math.tan(angle),
    axialWidth: width / Math.cos(angle),
    turn: around / Math.cos(angle),
  };
}

/** Layers over the point at `x` along the pipe and `part` of a turn round it. */
export function layersAt(winding: Winding, x: number, part: number): number {
  const { pitch, axialWidth } = unrolled(winding);
  const { width, overallLength, closingTurns } = winding;
  const turns = (overallLength - axialWidth) / pitch;
  let layers = 0;
  for (let turn = part; turn <= turns; turn++) {
    if (turn * pitch <= x && x < turn * pitch + axialWidth) layers++;
  }
  if (closingTurns && x < width) layers++;
  if (closingTurns && x >= overallLength - width) layers++;
  return layers;
}

/** Least and greatest layer count between `from` and `to` along the pipe, all round it. */
export function layersBetween(winding: Winding, from: number, to: number, steps = 400) {
  let [least, greatest] = [Number.POSITIVE_INFINITY, 0];
  for (let i = 0; i < steps; i++) {
    for (let j = 0; j < 16; j++) {
      const layers = layersAt(winding, from + ((to - from) * (i + 0.41)) / steps, (j + 0.37) / 16);
      least = Math.min(least, layers);
      greatest = Math.max(greatest, layers);
    }
  }
  return { least, greatest };
}
