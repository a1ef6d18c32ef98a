import { describe, expect } from 'vitest';
import {
  designHoleDiameter,
  farthestTemperature,
  governingThickness,
  longTermStrengthAt,
  overlapLeft,
  taperLength,
  thicknessAtShortOverlap,
  unbondedDiameter,
  wrappedDiameter,
} from '../../src/laminate/index.js';
import { length, stress, temperature } from '../../src/quantity/index.js';
import { meets, rootOf, secondRoute } from './second-route.js';

/** Sizes of a laminate, laid ply by ply, cell by cell or degree by degree. Whole thousandths of a millimetre are counted. */

const um = length.um;
const inUm = (value: ReturnType<typeof length.um>): number => length.inMm(value) * 1000;

describe('the thickness of a laminate', () => {
  secondRoute('laminate/governing-thickness', 'arithmetic', 'plies added while any criterion asks for more', () => {
    for (const [hoop, axial, leak, governing] of [
      [4100, 3600, 2500, 'hoop'],
      [4100, 5250, 2500, 'axial'],
      [4100, 5250, 9001, 'leak'],
    ] as const) {
      let plies = 0;
      let asked = '';
      for (; plies < hoop || plies < axial || plies < leak; plies++)
        asked = [plies < hoop ? 'hoop' : '', plies < axial ? 'axial' : '', plies < leak ? 'leak' : '']
          .filter((each) => each !== '')
          .join();
      const found = governingThickness({ hoop: um(hoop), axial: um(axial), leak: um(leak) });
      meets(inUm(found.thickness), plies);
      expect(found.governing).toBe(asked);
      expect(found.governing).toBe(governing);
    }
  });

  secondRoute('laminate/taper-length', 'arithmetic', 'plies that each end a step before the one below', () => {
    for (const [plies, steps] of [
      [8, 5],
      [13, 7],
    ] as const) {
      const ply = 840;
      let end = 0;
      for (let i = 0; i < plies; i++) end += steps * ply;
      meets(inUm(taperLength({ laminateThickness: um(plies * ply), ratio: steps })), end);
    }
    meets(inUm(taperLength({ laminateThickness: um(1000) })), 5000);
  });

  secondRoute(
    'laminate/thickness-at-short-overlap',
    'mathematics',
    'the thickness that the rule would raise to the one that is laid',
    () => {
      for (const [laid, overlap, required] of [
        [8, 40, 50],
        [12, 30, 100],
      ] as const) {
        // By the cube root of a square, and not by a power of 2/3.
        const raised = (t: number): number => t * Math.cbrt((required / overlap) ** 2);
        const found = thicknessAtShortOverlap({
          thickness: length.mm(laid),
          overlap: length.mm(overlap),
          requiredOverlap: length.mm(required),
        });
        meets(
          length.inMm(found),
          rootOf((t) => raised(t) - laid, 0, laid),
        );
      }
      const long = { thickness: length.mm(8), overlap: length.mm(70), requiredOverlap: length.mm(50) };
      meets(length.inMm(thicknessAtShortOverlap(long)), 8);
    },
  );

  secondRoute(
    'laminate/wrapped-diameter',
    'mathematics',
    'the circle that holds the pipe and a ring of filler, by area',
    () => {
      for (const [D, filler] of [
        [168.3, 6.2],
        [60.3, 2],
      ] as const) {
        const rings = 2000;
        let area = (Math.PI * D * D) / 4;
        for (let i = 0; i < rings; i++) area += Math.PI * (D + (2 * filler * (i + 0.5)) / rings) * (filler / rings);
        const across = rootOf((d) => (Math.PI * d * d) / 4 - area, 0, 1e4);
        const found = wrappedDiameter({ outsideDiameter: length.mm(D), fillerThickness: length.mm(filler) });
        meets(length.inMm(found), across);
      }
    },
  );
});

describe('the length and the circle that a laminate covers', () => {
  secondRoute(
    'laminate/overlap-left',
    'arithmetic',
    'cells of the length that are neither defect nor taper, on the shorter side',
    () => {
      for (const [total, defect, taper] of [
        [400_000, 120_000, 40_000],
        [301_000, 60_500, 25_250],
      ] as const) {
        // Cells of a quarter of a millimetre from the middle of the defect outward.
        let cells = 0;
        for (let x = 125; x < total / 2; x += 250) if (x > defect / 2 && x < total / 2 - taper) cells++;
        meets(
          inUm(overlapLeft({ totalLength: um(total), defectLength: um(defect), taperLength: um(taper) })),
          250 * cells,
        );
      }
      expect(overlapLeft({ totalLength: um(100), defectLength: um(90), taperLength: um(30) })).toBe(0);
    },
  );

  secondRoute(
    'laminate/unbonded-diameter',
    'arithmetic',
    'cells along the pipe that lie under hole, pad, sheet or collar',
    () => {
      for (const [hole, pad, sheet, collar] of [
        [25_000, 54_000, 90_000, 0],
        [25_000, 54_000, 90_000, 126_000],
        [25_000, 54_000, 0, 0],
        [60_000, 54_000, 0, 0],
      ] as const) {
        let cells = 0;
        for (let x = -100_000 + 50; x < 100_000; x += 100)
          if ([hole, pad, sheet, collar].some((size) => Math.abs(x) < size / 2)) cells++;
        const found = unbondedDiameter({
          holeDiameter: um(hole),
          padDiameter: um(pad),
          sheetSize: um(sheet),
          collarSize: um(collar),
        });
        meets(inUm(found), 100 * cells);
      }
    },
  );

  secondRoute(
    'laminate/design-hole-diameter',
    'arithmetic',
    'the smallest circle that is as wide as the hole and as the least',
    () => {
      for (const hole of [5000, 15_000, 15_001, 40_000]) {
        let circle = 0;
        while (circle < hole || circle < 15_000) circle++;
        meets(inUm(designHoleDiameter({ holeDiameter: um(hole) })), circle);
      }
    },
  );
});

describe('the temperatures of a laminate', () => {
  secondRoute(
    'laminate/farthest-temperature',
    'arithmetic',
    'a window that opens both ways until both ends are in it',
    () => {
      for (const [day, design, lowest] of [
        [15, 60, -10],
        [15, 25, -10],
        [-5, -4, -30],
        [20, 45, -5],
      ] as const) {
        let reach = 0;
        let last = design;
        for (let seen = new Set<number>(); seen.size < 2; reach++)
          for (const end of [lowest, design])
            if (Math.abs(end - day) <= reach && !seen.has(end)) {
              seen = new Set([...seen, end]);
              last = end as typeof design;
            }
        const found = farthestTemperature({
          installationTemperature: temperature.degC(day),
          designTemperature: temperature.degC(design),
          lowestTemperature: temperature.degC(lowest),
        });
        meets(found, last + 273.15);
      }
    },
  );

  secondRoute(
    'laminate/long-term-strength-at',
    'mathematics',
    'halving the line between two tests until it is at the temperature',
    () => {
      const at = (celsius: number): number => {
        let [cool, warm] = [
          { at: 20, strength: 180 },
          { at: 60, strength: 121 },
        ];
        for (let step = 0; step < 60; step++) {
          const middle = { at: (cool.at + warm.at) / 2, strength: (cool.strength + warm.strength) / 2 };
          if (middle.at > celsius) warm = middle;
          else cool = middle;
        }
        return cool.strength;
      };
      for (const celsius of [25, 33.3, 48, 59.5]) {
        const found = longTermStrengthAt({
          coolStrength: stress.MPa(180),
          coolTemperature: temperature.degC(20),
          warmStrength: stress.MPa(121),
          warmTemperature: temperature.degC(60),
          designTemperature: temperature.degC(celsius),
        });
        meets(found / 1e6, at(celsius));
      }
    },
  );
});
