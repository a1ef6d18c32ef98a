import { describe, expect } from 'vitest';
import { holeAtEndOfLife } from '../../src/laminate/index.js';
import {
  defectAspectRatio,
  defectCircleDiameter,
  defectDepthAtEndOfLife,
  defectLengthAtEndOfLife,
  metalLossDepth,
  remainingWall,
  wallAtEndOfLife,
  wallLessReadingError,
} from '../../src/pipe/index.js';
import { corrosionRate, length, type Time, time } from '../../src/quantity/index.js';
import { lowestOf, meets, secondRoute } from './second-route.js';

/** The size of a loss today and at the end of life, counted leaf by leaf and day by day. */

const DAY = 86_400 as Time;

/** A length that a rate changes day by day, for whole days; never below nothing. */
function dayByDay(start: number, perYear: number, days: number): number {
  const perDay = corrosionRate.mmPerYear(perYear) * DAY * 1000;
  let now = start;
  for (let day = 0; day < days; day++) now = Math.max(0, now + perDay);
  return now;
}

describe('a wall in leaves of a thousandth of a millimetre', () => {
  const walls = [
    [7110, 2340],
    [9530, 1],
    [12_700, 12_699],
  ] as const;
  const leaves = (count: number): boolean[] => Array.from({ length: count }, () => true);
  const corroded = (wall: number, depth: number): boolean[] => leaves(wall).fill(false, 0, depth);

  secondRoute('pipe/remaining-wall', 'arithmetic', 'the leaves that a loss leaves', () => {
    for (const [wall, depth] of walls) {
      const left = corroded(wall, depth).filter((leaf) => leaf).length;
      meets(length.inMm(remainingWall({ wallThickness: length.um(wall), defectDepth: length.um(depth) })), left / 1000);
    }
  });

  secondRoute('pipe/metal-loss-depth', 'arithmetic', 'the leaves that are gone', () => {
    for (const [wall, depth] of walls) {
      const gone = corroded(wall, depth).filter((leaf) => !leaf).length;
      const found = metalLossDepth({ wallThickness: length.um(wall), remainingWall: length.um(wall - depth) });
      meets(length.inMm(found), gone / 1000);
    }
  });

  secondRoute(
    'pipe/wall-less-reading-error',
    'arithmetic',
    'the thinnest of all walls that may stand behind a reading',
    () => {
      const thinnest = (reading: number, error: number): number => {
        for (let wall = 0; ; wall++) if (Math.abs(wall - reading) <= error) return wall;
      };
      for (const [reading, error] of [
        [4200, 500],
        [7110, 100],
        [510, 500],
      ] as const) {
        const found = wallLessReadingError({ wallReading: length.um(reading), readingError: length.um(error) });
        meets(length.inMm(found), thinnest(reading, error) / 1000);
      }
      expect(thinnest(400, 500)).toBe(0);
      expect(wallLessReadingError({ wallReading: length.um(400), readingError: length.um(500) })).toBe(0);
    },
  );
});

describe('a loss that grows day by day', () => {
  const years = [1, 10, 20] as const;
  const rate = corrosionRate.mmPerYear(0.13);
  const daysOf = (life: number): number => Math.round(time.year(life) / DAY);
  const lifeOf = (life: number): Time => (daysOf(life) * DAY) as Time;

  secondRoute('pipe/defect-depth-at-end-of-life', 'arithmetic', 'adding up days', () => {
    for (const life of years) {
      const found = defectDepthAtEndOfLife({ defectDepth: length.mm(2.4), rate, life: lifeOf(life) });
      meets(length.inMm(found), dayByDay(2.4, 0.13, daysOf(life)));
    }
  });

  secondRoute('pipe/wall-at-end-of-life', 'arithmetic', 'taking off day by day until nothing is left', () => {
    for (const life of years) {
      const found = wallAtEndOfLife({ presentWall: length.mm(4.7), rate, life: lifeOf(life) });
      meets(length.inMm(found), dayByDay(4.7, -0.13, daysOf(life)));
    }
    const gone = wallAtEndOfLife({ presentWall: length.mm(1), rate, life: lifeOf(20) });
    expect(gone).toBe(0);
    expect(dayByDay(1, -0.13, daysOf(20))).toBe(0);
  });

  /** Both ends move outward, each by its own days. */
  const bothEnds = (start: number, life: number): number => {
    const half = dayByDay(start / 2, 0.13, daysOf(life));
    return half + half;
  };

  secondRoute('pipe/defect-length-at-end-of-life', 'arithmetic', 'moving both ends outward day by day', () => {
    for (const life of years) {
      const found = defectLengthAtEndOfLife({ defectLength: length.mm(85), rate, life: lifeOf(life) });
      meets(length.inMm(found), bothEnds(85, life));
    }
  });

  secondRoute(
    'laminate/hole-at-end-of-life',
    'arithmetic',
    'moving opposite places of the rim outward day by day',
    () => {
      for (const life of years) {
        const found = holeAtEndOfLife({ holeDiameter: length.mm(6), corrosionRate: rate, designLife: lifeOf(life) });
        meets(length.inMm(found), bothEnds(6, life));
      }
    },
  );
});

describe('the shape of a loss on the unrolled pipe', () => {
  const shapes = [
    [300, 40],
    [25, 90],
    [77, 77],
  ] as const;

  secondRoute(
    'pipe/defect-aspect-ratio',
    'arithmetic',
    'squares of the short side laid along the long one, and so on in what is left',
    () => {
      const squares = (long: number, short: number): number => {
        let [whole, rest] = [0, long];
        for (; rest >= short; rest -= short) whole++;
        return rest === 0 ? whole : whole + 1 / squares(short, rest);
      };
      for (const [along, round] of shapes) {
        const found = defectAspectRatio({ defectLength: length.mm(along), defectWidth: length.mm(round) });
        meets(found, along > round ? squares(along, round) : squares(round, along));
      }
    },
  );

  secondRoute(
    'pipe/defect-circle-diameter',
    'mathematics',
    'a search for the smallest circle that holds all corners',
    () => {
      for (const [along, round] of shapes) {
        const corners = [0, along].flatMap((x) => [0, round].map((y) => [x, y] as const));
        const reach = (x: number, y: number): number =>
          Math.max(...corners.map(([a, b]) => Math.sqrt((a - x) ** 2 + (b - y) ** 2)));
        const best = (x: number): number =>
          reach(
            x,
            lowestOf((y) => reach(x, y), 0, round),
          );
        const radius = best(lowestOf(best, 0, along));
        const found = defectCircleDiameter({ defectLength: length.mm(along), defectWidth: length.mm(round) });
        meets(length.inMm(found), 2 * radius, 1e-7);
      }
    },
  );
});
