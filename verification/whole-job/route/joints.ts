import { SIDE_LAP } from './rules.js';

/** Sheet in bands side by side: where the layers have their joints, and what that costs along the pipe. */
export interface Joints {
  readonly reach: number;
  readonly places: number;
  readonly carryingPlies: number;
  readonly lostPlies: number;
}

const LEAST_REACH = 0.025;
const MOST_PLACES = 12;

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b);
}

/** Steps from the place of one layer to that of the next: near the golden section, and through all places. */
function strideOf(places: number): number {
  let stride = Math.max(1, Math.round(places * ((Math.sqrt(5) - 1) / 2)));
  while (stride > 1 && commonDivisor(stride, places) !== 1) stride -= 1;
  return stride;
}

/** Most joints within the reach of any point, for layers spread over places one pitch apart in all. */
function lostOn(places: number, plies: number, pitch: number, reach: number): number {
  const counts = new Array<number>(places).fill(Math.floor(plies / places));
  const stride = strideOf(places);
  for (let layer = 0; layer < plies % places; layer++) {
    const place = (layer * stride) % places;
    counts[place] = (counts[place] as number) + 1;
  }
  const spacing = pitch / places;
  const within = Math.min(places, Math.floor((2 * reach) / spacing + 1e-9) + 1);
  let most = 0;
  for (let from = 0; from < places; from++) {
    let sum = 0;
    for (let step = 0; step < within; step++) sum += counts[(from + step) % places] as number;
    most = Math.max(most, sum);
  }
  return most;
}

/** The fewest plies lost, on as few places as do it. */
export function jointsOf(plies: number, width: number, bondOfPly: number): Joints {
  const reach = Math.max(LEAST_REACH, bondOfPly);
  const pitch = width - SIDE_LAP;
  let best = { places: 1, lost: plies };
  for (let places = 2; places <= Math.min(plies, MOST_PLACES); places++) {
    const lost = lostOn(places, plies, pitch, reach);
    if (lost < best.lost) best = { places, lost };
  }
  return { reach, places: best.places, carryingPlies: plies - best.lost, lostPlies: best.lost };
}

/** A band of a layer, from the start of the wrap. */
export interface Band {
  readonly layer: number;
  readonly begins: number;
  readonly ends: number;
}

/** The bands of every layer: each layer drawn in by the taper, its joints on its own place. */
export function bandsOf(layers: number, width: number, length: number, taper: number, joints: Joints): Band[] {
  const pitch = width - SIDE_LAP;
  const stride = strideOf(joints.places);
  const inset = layers > 1 ? taper / (layers - 1) : 0;
  const bands: Band[] = [];
  for (let index = 0; index < layers; index++) {
    const from = index * inset;
    const to = length - index * inset;
    const place = (index * stride) % joints.places;
    let begins = (place / joints.places) * pitch;
    while (begins > from + 1e-12) begins -= pitch;
    while (begins + pitch <= from + 1e-12) begins += pitch;
    for (; begins <= from + 1e-12 || begins + SIDE_LAP < to - 1e-12; begins += pitch) {
      bands.push({ layer: index + 1, begins: Math.max(from, begins), ends: Math.min(to, begins + width) });
    }
  }
  return bands;
}
