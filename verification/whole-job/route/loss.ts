/** From an edge of the defect on, along the pipe or round it. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** A loss beside the defect, or several that act as one: where it lies, and the least wall left in it. */
export interface Loss {
  readonly along: Span;
  readonly round: Span;
  readonly remainingWall: number;
  readonly causes: readonly string[];
}
