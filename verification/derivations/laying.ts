/**
 * A wrap laid by hand: tape followed bit by bit along the unrolled pipe, bands of sheet put down one after another. Imports
 * nothing that it checks.
 */
import { unrolled } from './tape-coverage.js';

export interface LaidTape {
  readonly width: number;
  readonly overlap: number;
  /** Diameter of the surface under the first pass. */
  readonly surface: number;
  readonly layer: number;
  readonly passes: number;
  readonly overallLength: number;
  readonly step: number;
}

export interface PassByHand {
  readonly from: number;
  readonly to: number;
  readonly tape: number;
  readonly diameter: number;
}

/** Each pass by area: what its helix covers in the mean 1/(1 - o) times, and two hoop turns, over the width of the tape. */
export function passesByHand({ width, overlap, surface, layer, passes, overallLength, step }: LaidTape): PassByHand[] {
  const laid: PassByHand[] = [];
  let [under, start, end, forward] = [surface, -overallLength / 2, overallLength / 2, true];
  for (let pass = 0; pass < passes; pass++) {
    const built = (2 * layer) / (1 - overlap);
    const diameter = under + built / 2;
    const { axialWidth } = unrolled({ width, overlap, diameter });
    const area = (Math.PI * diameter * (end - start - axialWidth)) / (1 - overlap) + 2 * Math.PI * diameter * width;
    laid.push({ from: forward ? start : end, to: forward ? end : start, tape: area / width, diameter });
    under += built;
    start += step;
    end -= step;
    forward = !forward;
  }
  return laid;
}

export interface RollByHand {
  readonly pass: number;
  readonly edge: number;
}

/**
 * Where each roll ends, by unrolling the tape in small pieces: a turn on the spot, then each piece moves its edge on by its
 * share of the pitch, then a turn on the spot. A roll that is used up is followed by the next; the last ends with the tape.
 */
export function rollEndsByHand(tape: LaidTape, rollLength: number, pieces = 400): RollByHand[] {
  const ends: RollByHand[] = [];
  let onRoll = rollLength;
  let last: RollByHand = { pass: 0, edge: 0 };
  for (const [index, { from, to, diameter }] of passesByHand(tape).entries()) {
    const { pitch, axialWidth, turn } = unrolled({ width: tape.width, overlap: tape.overlap, diameter });
    const way = Math.sign(to - from);
    const turns = (Math.abs(to - from) - axialWidth) / pitch;
    const around = Math.PI * diameter;
    const parts = [
      { tape: around, moves: 0 },
      { tape: turns * turn, moves: turns * pitch },
      { tape: around, moves: 0 },
    ];
    let edge = from + way * axialWidth;
    for (const part of parts) {
      for (let piece = 0; piece < pieces; piece++) {
        let left = part.tape / pieces;
        const speed = (way * part.moves) / part.tape;
        while (onRoll <= left) {
          edge += speed * onRoll;
          left -= onRoll;
          ends.push({ pass: index + 1, edge });
          onRoll = rollLength;
        }
        edge += speed * left;
        onRoll -= left;
      }
    }
    last = { pass: index + 1, edge };
  }
  return [...ends, last];
}

/** Bands put down side by side, each one lap back from the end of the last, until the length is covered. */
export function bandsByHand(length: number, width: number, lap: number): { from: number; to: number }[] {
  const bands: { from: number; to: number }[] = [];
  let reached = 0;
  while (reached < length - 1e-9 * length) {
    const end = bands.length === 0 ? width : reached - lap + width;
    const to = Math.min(end, length);
    bands.push({ from: Math.max(0, to - width) - length / 2, to: to - length / 2 });
    reached = to;
  }
  return bands;
}

/** The clock over a job: every roll soaked, every batch stirred, then the crews lay, second by second. */
export function clockOf(job: {
  readonly length: number;
  readonly speed: number;
  readonly crews: number;
  readonly soaks: readonly number[];
  readonly stirs: readonly number[];
}): number {
  let clock = 0;
  for (const wait of [...job.soaks, ...job.stirs]) clock += wait;
  let left = job.length;
  const metresASecond = Array.from({ length: job.crews }, () => job.speed).reduce((sum, each) => sum + each, 0);
  while (left > metresASecond) {
    left -= metresASecond;
    clock += 1;
  }
  return clock + left / metresASecond;
}
