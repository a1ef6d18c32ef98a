import { describe, expect } from 'vitest';
import { length, ratio } from '../../src/quantity/index.js';
import {
  carryingThickness,
  chargeLength,
  finalLap,
  freeTaper,
  fullCountLength,
  jointReach,
  rolls,
  stagger,
  wrapEnds,
} from '../../src/wrap/index.js';
import { meets, secondRoute } from './second-route.js';

/** A wrap laid out in cells along the pipe, in plies one on another and from rolls one after another. */

const CELL = 0.25;
/** How much of the length from 0 to `to` has a property, by the middles of its cells. */
function lengthOf(to: number, holds: (x: number) => boolean): number {
  let cells = 0;
  for (let i = 0; i < to / CELL; i++) if (holds((i + 0.5) * CELL)) cells++;
  return cells * CELL;
}

describe('a wrap along the pipe', () => {
  const wraps = [
    { total: 600, taper: 40, band: 101.5, full: 480 },
    { total: 500, taper: 75, band: 50.25, full: 420.5 },
  ] as const;

  secondRoute(
    'wrap/full-count-length',
    'arithmetic',
    'cells that lie outside the taper or outside the end bands',
    () => {
      for (const { total, taper, band } of wraps) {
        const half = lengthOf(total / 2, (x) => x < total / 2 - taper || x < total / 2 - band);
        const found = fullCountLength({
          totalLength: length.mm(total),
          taper: length.mm(taper),
          axialTapeWidth: length.mm(band),
        });
        meets(length.inMm(found), 2 * half);
      }
    },
  );

  secondRoute('wrap/free-taper', 'arithmetic', 'cells of the taper on which every layer would lie', () => {
    for (const { total, taper, full } of wraps) {
      const free = lengthOf(total / 2, (x) => x > total / 2 - taper && x < full / 2);
      const found = freeTaper({
        totalLength: length.mm(total),
        taper: length.mm(taper),
        fullCountLength: length.mm(full),
      });
      if (free === 0) expect(found).toBe(0);
      else meets(length.inMm(found), free);
    }
    meets(
      length.inMm(freeTaper({ totalLength: length.mm(600), taper: length.mm(50), fullCountLength: length.mm(540) })),
      20,
    );
  });

  secondRoute(
    'wrap/wrap-ends',
    'arithmetic',
    'cells beyond the defect on one side, and from the middle to the end',
    () => {
      for (const [laid, defect] of [
        [600, 120],
        [333, 200.5],
      ] as const) {
        const found = wrapEnds({ laidLength: length.mm(laid), defectLength: length.mm(defect) });
        meets(
          length.inMm(found.beyondDefect),
          lengthOf(laid, (x) => x > (laid + defect) / 2),
        );
        meets(
          length.inMm(found.end),
          lengthOf(laid, (x) => x > laid / 2),
        );
        meets(length.inMm(found.start), -lengthOf(laid, (x) => x < laid / 2));
      }
    },
  );

  secondRoute('wrap/joint-reach', 'arithmetic', 'cells beside a joint that either reach covers', () => {
    for (const [transfer, least] of [
      [12.5, 25],
      [61, 25],
    ] as const) {
      const found = jointReach({ transferLength: length.mm(transfer), leastReach: length.mm(least) });
      meets(
        length.inMm(found),
        lengthOf(200, (x) => x < transfer || x < least),
      );
    }
  });

  secondRoute('wrap/final-lap', 'arithmetic', 'cells that either of two laps covers', () => {
    for (const ply of [0.85, 18]) {
      const found = finalLap({ plyThickness: length.mm(ply) });
      meets(
        length.inMm(found),
        lengthOf(500, (x) => x < 150 || x < 10 * ply),
      );
    }
  });

  secondRoute('wrap/stagger', 'arithmetic', 'the ends of the passes as beads on springs that are all alike', () => {
    for (const [taper, passes] of [
      [40, 2],
      [40, 5],
      [75, 9],
    ] as const) {
      const ends = Array.from({ length: passes }, (_, pass): number => (pass === passes - 1 ? taper : 0));
      for (let sweep = 0; sweep < 5000; sweep++)
        for (let pass = 1; pass < passes - 1; pass++) ends[pass] = ((ends[pass - 1] ?? 0) + (ends[pass + 1] ?? 0)) / 2;
      const found = length.inMm(stagger({ taper: length.mm(taper), layers: passes }));
      for (let pass = 1; pass < passes; pass++) meets(found, (ends[pass] ?? 0) - (ends[pass - 1] ?? 0));
    }
    expect(stagger({ taper: length.mm(40), layers: 1 })).toBe(0);
  });
});

describe('what a wrap takes and carries', () => {
  secondRoute('wrap/carrying-thickness', 'arithmetic', 'plies that go through where some end', () => {
    for (const [plies, lost] of [
      [8, 3],
      [11, 1],
      [5, 0],
    ] as const) {
      const through = Array.from({ length: plies }, (_, ply) => ply >= lost).filter((whole) => whole).length;
      const found = carryingThickness({
        laidThickness: length.mm(plies * 0.85),
        lostPlies: lost,
        plyThickness: length.mm(0.85),
      });
      meets(length.inMm(found), through * 0.85);
    }
  });

  secondRoute('wrap/charge-length', 'arithmetic', 'pieces of tape dealt out to the batches one by one', () => {
    for (const charges of [1, 3, 8]) {
      const pots = new Array<number>(charges).fill(0);
      for (let piece = 0; piece < 24_000; piece++) pots[piece % charges] = (pots[piece % charges] ?? 0) + 1;
      const found = length.inMm(chargeLength({ length: length.m(24), charges }));
      for (const pot of pots) meets(found, pot);
    }
  });

  secondRoute('wrap/rolls', 'counting', 'millimetres drawn from one roll after another', () => {
    for (const [needed, roll, waste] of [
      [94_000, 30_000, 0.1],
      [94_000, 30_000, 0],
      [27_000, 15_000, 0.1],
      [5000, 25_000, 0.12],
    ] as const) {
      const drawn = needed + Math.round(needed * waste);
      let [opened, left] = [0, 0];
      for (let mm = 0; mm < drawn; mm++, left--) {
        if (left > 0) continue;
        opened++;
        left = roll;
      }
      const found = rolls({ length: length.mm(needed), rollLength: length.mm(roll), waste: ratio.fraction(waste) });
      meets(found.rolls, opened);
      meets(length.inMm(found.lengthWithWaste), drawn);
      meets(length.inMm(found.leftOnLastRoll), left);
    }
  });
});
