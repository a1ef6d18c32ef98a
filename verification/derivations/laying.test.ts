import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Length, length, type Ratio, speed, type Time, time } from '../../src/quantity/index.js';
import { layingTime, longestCharge, rollsAlongTape, sheetBands, staggeredPasses } from '../../src/wrap/index.js';
import { bandsByHand, clockOf, type LaidTape, passesByHand, rollEndsByHand } from './laying.js';

const run = <T>(property: fc.IProperty<T>, numRuns = 200) => fc.assert(property, { seed: 20261125, numRuns });
const span = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const tapes = fc
  .record({
    width: span(25, 150),
    overlap: span(0, 0.75),
    surface: span(60, 1200),
    layer: span(0.2, 2),
    passes: fc.integer({ min: 1, max: 8 }),
    overallLength: span(700, 2000),
    step: span(0, 12),
  })
  .filter(({ width, overlap, surface }) => width * (1 - overlap) < Math.PI * surface * 0.9);

const inputOf = (tape: LaidTape) => ({
  outsideDiameter: length.mm(tape.surface),
  tapeWidth: length.mm(tape.width),
  overlap: tape.overlap as Ratio,
  layerThickness: length.mm(tape.layer),
  passes: tape.passes,
  overallLength: length.mm(tape.overallLength),
  stagger: length.mm(tape.step),
});

describe("the passes 'wrap/staggered-passes'", () => {
  it('run from end to end, a step farther in each time, with the tape that covers their area', () => {
    run(
      fc.property(tapes, (tape) => {
        const { rows, tapeLength } = staggeredPasses(inputOf(tape));
        const hand = passesByHand(tape);
        expect(rows.length).toBe(hand.length);
        let sum = 0;
        hand.forEach((pass, index) => {
          const row = rows[index];
          expect(length.inMm(row?.from as Length)).toBeCloseTo(pass.from, 9);
          expect(length.inMm(row?.to as Length)).toBeCloseTo(pass.to, 9);
          expect(length.inMm(row?.tapeLength as Length) / pass.tape).toBeCloseTo(1, 9);
          sum += pass.tape;
        });
        expect(length.inMm(tapeLength) / sum).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe("the rolls 'wrap/rolls-along-tape'", () => {
  it('end where the tape has come when it is followed piece by piece', () => {
    run(
      fc.property(tapes, span(3000, 60_000), (tape, rollLength) => {
        const { rolls, rows } = rollsAlongTape({ ...inputOf(tape), rollLength: length.mm(rollLength) });
        const hand = rollEndsByHand(tape, rollLength, 50);
        expect(rolls).toBe(hand.length);
        hand.forEach(({ pass, edge }, index) => {
          expect(rows[index]?.endsInPass).toBe(pass);
          expect(length.inMm(rows[index]?.endsAt as Length)).toBeCloseTo(edge, 5);
        });
      }),
    );
  });

  it('hold all the tape between them, each but the last a whole roll', () => {
    run(
      fc.property(tapes, span(3000, 60_000), (tape, rollLength) => {
        const { rows } = rollsAlongTape({ ...inputOf(tape), rollLength: length.mm(rollLength) });
        const all = passesByHand(tape).reduce((sum, pass) => sum + pass.tape, 0);
        expect(rows.reduce((sum, row) => sum + length.inMm(row.length), 0) / all).toBeCloseTo(1, 9);
        for (const row of rows.slice(0, -1)) expect(length.inMm(row.length)).toBeCloseTo(rollLength, 9);
      }),
    );
  });
});

describe("the bands 'wrap/sheet-bands'", () => {
  it('lie where they are put down one after another, until the length is covered', () => {
    run(
      fc.property(span(100, 3000), span(100, 1300), span(0, 50), (axial, width, lap) => {
        const { bands, rows, lengthOfEach } = sheetBands({
          axialLength: length.mm(axial),
          sheetWidth: length.mm(width),
          sideLap: length.mm(lap),
          sheetLength: length.m(12),
        });
        const hand = bandsByHand(axial, width, lap);
        expect(bands).toBe(hand.length);
        expect(length.inM(lengthOfEach) * hand.length).toBeCloseTo(12, 9);
        hand.forEach(({ from, to }, index) => {
          expect(length.inMm(rows[index]?.from as Length)).toBeCloseTo(from, 7);
          expect(length.inMm(rows[index]?.to as Length)).toBeCloseTo(to, 7);
        });
      }),
    );
  });
});

describe('the time to lay a wrap', () => {
  const crews = fc.integer({ min: 1, max: 4 });
  const paces = span(0.002, 0.2);

  it('is what the clock reads roll after roll and batch after batch', () => {
    run(
      fc.property(
        span(1, 60),
        paces,
        crews,
        fc.nat(8),
        span(0, 60),
        fc.nat(8),
        span(0, 400),
        (metres, pace, n, soakings, soak, batches, stir) => {
          const computed = layingTime({
            length: length.m(metres),
            layingSpeed: speed.mPerS(pace),
            crews: n,
            soakings,
            soakTime: time.s(soak),
            batches,
            mixingTime: time.s(stir),
          });
          const clock = clockOf({
            length: metres,
            speed: pace,
            crews: n,
            soaks: Array.from({ length: soakings }, () => soak),
            stirs: Array.from({ length: batches }, () => stir),
          });
          expect(computed / clock).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  it('is the working time at the longest charge', () => {
    run(
      fc.property(span(500, 7000), span(0, 400), span(0, 60), paces, (working, stir, soak, pace) => {
        const given = {
          workingTime: working as Time,
          mixingTime: stir as Time,
          soakTime: soak as Time,
          layingSpeed: speed.mPerS(pace),
        };
        const timeOf = (laid: Length, n: number): number =>
          clockOf({ length: length.inM(laid), speed: pace, crews: n, soaks: [soak], stirs: [stir] });
        expect(timeOf(longestCharge({ ...given, crews: 2 }), 2) / working).toBeCloseTo(1, 9);
      }),
    );
  });
});
