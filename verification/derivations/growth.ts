/** Second route to a metal loss that grows: small steps of time, each from the state before it. Nothing of src/ is imported. */

export interface Track {
  readonly at: number;
  readonly loss: number;
}

/** What grows how fast; `deepest` is where the growth of a depth ends. */
export interface Rates {
  readonly deepening: number;
  readonly lengthening: number;
  readonly deepest: number;
}

/** The track after `time`, in `steps` equal steps. Sound metal at either end never loses anything. */
export function grownInSteps(track: readonly Track[], rates: Rates, time: number, steps: number): Track[] {
  const isSound = (index: number): boolean => (index === 0 || index === track.length - 1) && track[index]?.loss === 0;
  let now = [...track];
  for (let step = 0; step < steps; step++) {
    now = now.map(({ at, loss }, index) => {
      const way = index === 0 ? -1 : index === track.length - 1 ? 1 : 0;
      const more = isSound(index) || loss >= rates.deepest ? 0 : (rates.deepening * time) / steps;
      const grown = Math.min(loss + more, Math.max(loss, rates.deepest));
      return { at: at + (way * rates.lengthening * time) / steps, loss: grown };
    });
  }
  return now;
}
