import { describe, expect } from 'vitest';
import { length, type Ratio, ratio } from '../../src/quantity/index.js';
import {
  bendLineRadius,
  finishedDiameter,
  layerDiameter,
  leastOverlap,
  lengthOnBend,
  overlapForNextLayer,
  overlapOnBend,
  sideLap,
} from '../../src/wrap/index.js';
import { meets, rootOf, secondRoute } from './second-route.js';

/** Turns of tape laid one by one, on straight pipe and round a bend. */

/** Fewest turns over any place, for tape of width 1 that moves on by a pitch each turn: counted between all edges. */
function fewestTurns(pitch: number): number {
  const turns = Array.from({ length: 80 }, (_, turn) => turn * pitch);
  const edges = turns.flatMap((start) => [start, start + 1]).sort((a, b) => a - b);
  let fewest = Number.POSITIVE_INFINITY;
  for (const [i, edge] of edges.entries()) {
    const next = edges[i + 1] ?? edge;
    const middle = (edge + next) / 2;
    // Not at the ends of the wrap, and not between edges that are one and the same.
    if (next - edge < 1e-12 || middle < 1 || middle > 79 * pitch) continue;
    fewest = Math.min(fewest, turns.filter((start) => start <= middle && middle < start + 1).length);
  }
  return fewest;
}

/** Least overlap at which no place has fewer turns. */
const overlapFor = (layers: number): number => rootOf((o) => fewestTurns(1 - o) - layers + 0.5, 0, 0.95);

describe('tape on straight pipe', () => {
  secondRoute('wrap/least-overlap', 'counting', 'the overlap from which on no place has fewer turns', () => {
    expect(leastOverlap({ layers: 1 })).toBe(0);
    for (const layers of [2, 3, 4, 7]) meets(leastOverlap({ layers }), overlapFor(layers));
  });

  secondRoute(
    'wrap/overlap-for-next-layer',
    'counting',
    'one turn more than the fewest over any place, and the overlap that lays it',
    () => {
      for (const overlap of [0, 0.1, 0.5, 0.55, 0.7, 0.8]) {
        const layers = fewestTurns(1 - overlap) + 1;
        const found = overlapForNextLayer({ overlap: overlap as Ratio });
        expect(found.layers).toBe(layers);
        meets(found.overlap, overlapFor(layers));
      }
    },
  );

  secondRoute('wrap/side-lap', 'arithmetic', 'cells of a turn that the next one covers too', () => {
    for (const [width, overlap] of [
      [100, 0.55],
      [50, 0.1],
    ] as const) {
      const [cell, next] = [0.01, width * (1 - overlap)];
      let twice = 0;
      for (let i = 0; i < width / cell; i++) if ((i + 0.5) * cell > next) twice++;
      meets(length.inMm(sideLap({ overlap: ratio.fraction(overlap), tapeWidth: length.mm(width) })), twice * cell);
    }
  });

  secondRoute(
    'wrap/finished-diameter',
    'counting',
    'the mean of the turns over every place of each pass, laid on the one below',
    () => {
      for (const [passes, overlap, thickness] of [
        [4, 0.55, 0.8],
        [3, 0, 0.5],
        [2, 0.7, 1.1],
      ] as const) {
        const [width, steps, turns] = [100, 20_000, 200];
        let surface = 168.3;
        for (let pass = 0; pass < passes; pass++) {
          let layers = 0;
          // Over a whole number of pitches in the middle of the wrap.
          const pitch = width * (1 - overlap);
          for (let i = 0; i < steps; i++) {
            const x = pitch * (turns / 2 + (i + 0.5) / steps);
            for (let turn = 0; turn < turns; turn++) if (turn * pitch <= x && x < turn * pitch + width) layers++;
          }
          surface += (2 * thickness * layers) / steps;
        }
        const found = finishedDiameter({
          outsideDiameter: length.mm(168.3),
          layers: passes,
          layerThickness: length.mm(thickness),
          overlap: overlap as Ratio,
        });
        meets(length.inMm(found), surface, 2e-6);
      }
    },
  );

  secondRoute('wrap/layer-diameter', 'arithmetic', 'layers put one on another, each with its own middle', () => {
    let surface = 168.3;
    for (let layer = 1; layer <= 12; layer++) {
      const outer = surface + 0.85 + 0.85;
      const found = layerDiameter({ outsideDiameter: length.mm(168.3), layerThickness: length.mm(0.85), layer });
      meets(length.inMm(found), (surface + outer) / 2);
      surface = outer;
    }
  });
});

describe('tape round a bend', () => {
  const bend = { bendRadius: length.mm(228.6), outsideDiameter: length.mm(168.3) };
  /** Length of an arc, by its chords. */
  const arc = (radius: number, angle: number, chords = 100_000): number =>
    chords * Math.hypot(radius * (Math.cos(angle / chords) - 1), radius * Math.sin(angle / chords));

  secondRoute(
    'wrap/bend-line-radius',
    'mathematics',
    'the nearest and the farthest of the points of a torus from its axis',
    () => {
      const away = Array.from({ length: 3600 }, (_, i) => 228.6 + (168.3 / 2) * Math.cos((2 * Math.PI * i) / 3600));
      meets(length.inMm(bendLineRadius({ ...bend, line: 'inside' })), Math.min(...away));
      meets(length.inMm(bendLineRadius({ ...bend, line: 'outside' })), Math.max(...away));
    },
  );

  secondRoute('wrap/length-on-bend', 'mathematics', 'chords of the same angle along another line', () => {
    for (const [along, measured, line] of [
      [300, 144.45, 312.75],
      [500, 228.6, 144.45],
    ] as const) {
      const angle = rootOf((a) => arc(measured, a, 10_000) - along, 0, 2 * Math.PI);
      const found = lengthOnBend({
        lengthAlong: length.mm(along),
        measuredRadius: length.mm(measured),
        lineRadius: length.mm(line),
      });
      meets(length.inMm(found), arc(line, angle, 10_000), 1e-7);
    }
  });

  secondRoute(
    'wrap/overlap-on-bend',
    'mathematics',
    'turns that fan out, each as far from the last as the tape leaves bare outside',
    () => {
      for (const [overlap, line] of [
        [0.5, 144.45],
        [0.1, 228.6],
        [0, 144.45],
      ] as const) {
        const [width, outside] = [75, 228.6 + 168.3 / 2];
        const fan = rootOf((angle) => arc(outside, angle, 10_000) - width * (1 - overlap), 0, Math.PI);
        const covered = width - arc(line, fan, 10_000);
        const found = overlapOnBend({ ...bend, overlap: overlap as Ratio, lineRadius: length.mm(line) });
        meets(found, covered / width, 1e-6);
      }
    },
  );
});
