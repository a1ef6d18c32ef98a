import { countDown } from '../../numeric/index.js';

/** How the joints of the layers are shared out over one pitch of the bands, and what is lost at the worst place. */
export interface JointOffsets {
  /** Places over one pitch; layer k has its joints at place `order[(k - 1) mod places]`. */
  readonly places: number;
  /** The most layers with a joint in any window of the reach to either side. */
  readonly lost: number;
}

/**
 * Layer after layer goes on by about 0.38 of the places, by a number that shares no divisor with them: all places are used in
 * turn, and layers that lie on each other have their joints far apart.
 */
export function placeOfLayer(layer: number, places: number): number {
  let step = Math.round(0.382 * places);
  while (commonDivisor(step, places) !== 1) step++;
  return ((layer - 1) * step) % places;
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b);
}

/** The most layers with a joint in a window of twice the reach, its ends included, over a pattern that goes on along the pipe. */
function layersLost(plies: number, places: number, pitch: number, reach: number): number {
  // A window as long as the pitch meets every layer.
  const inWindow = Math.min(places, countDown((2 * reach * places) / pitch) + 1);
  const layers: number[] = [];
  for (let layer = 1; layer <= plies; layer++) {
    const place = placeOfLayer(layer, places);
    layers[place] = (layers[place] ?? 0) + 1;
  }
  let most = 0;
  for (let first = 0; first < places; first++) {
    let sum = 0;
    for (let next = 0; next < inWindow; next++) sum += layers[(first + next) % places] ?? 0;
    most = Math.max(most, sum);
  }
  return most;
}

/** A crew that marks out more rows than this loses count. */
const MOST_PLACES = 12;

/** The fewest places that lose the fewest layers. */
export function bestOffsets(plies: number, pitch: number, reach: number): JointOffsets {
  let best: JointOffsets = { places: 1, lost: plies };
  for (let places = 2; places <= Math.min(plies, MOST_PLACES); places++) {
    const lost = layersLost(plies, places, pitch, reach);
    if (lost < best.lost) best = { places, lost };
  }
  return best;
}
