import type { ScreenedSurvey } from '../../survey/index.js';
import { filled, patterns } from './materials.js';
import { box, drawing, label } from './svg.js';

const NAME = 'bands';
/** Bands of safe pressure over design pressure: the last is open above. */
const EDGES = [0, 0.5, 0.75, 0.9, 1, 1.1, 1.25, 1.5] as const;
const ROW = 22;
const TOP = 34;
const BAR = 150;
const LENGTH = 200;

/**
 * How many rows of a survey lie in each band of safe pressure today over design pressure. Rows without a safe pressure stand
 * in bands of their own: none is left out.
 *
 * @param designPressure of each row, or of all [Pa]
 */
export function surveyBands({ safePressure, status }: ScreenedSurvey, designPressure: Float64Array | number): string {
  const share = (index: number): number =>
    (safePressure[index] ?? Number.NaN) /
    (typeof designPressure === 'number' ? designPressure : (designPressure[index] ?? Number.NaN));
  const bands = EDGES.map((from, index) => ({ from, to: EDGES[index + 1] ?? Number.POSITIVE_INFINITY, count: 0 }));
  let [refused, unrated] = [0, 0];
  for (const [index, each] of status.entries()) {
    const value = share(index);
    const band = bands.find(({ from, to }) => value >= from && value < to);
    if (band !== undefined) band.count += 1;
    else if (each === 'refused') refused += 1;
    else unrated += 1;
  }
  const rows = [
    ...bands.map(({ from, to, count }) => ({
      name: Number.isFinite(to) ? `${from} to ${to}` : `${from} and more`,
      count,
      isBelow: to <= 1,
    })),
    { name: 'too deep', count: unrated, isBelow: true },
    { name: 'refused', count: refused, isBelow: true },
  ];
  const most = Math.max(1, ...rows.map(({ count }) => count));
  const height = TOP + rows.length * ROW + 26;
  return drawing(NAME, 'Rows of a survey by safe pressure today over design pressure', height, [
    patterns(NAME),
    label(2, 12, 'Rows by safe pressure today over design pressure'),
    ...rows.flatMap(({ name, count, isBelow }, index) => {
      const y = TOP + index * ROW;
      const length = (count / most) * LENGTH;
      return [
        label(BAR - 8, y + 11, name, 'end'),
        ...(count === 0 ? [] : [box(BAR, y, length, 14, filled(NAME, isBelow ? 'steel' : 'tape'))]),
        label(BAR + length + 6, y + 11, String(count)),
      ];
    }),
    box(BAR, height - 20, 14, 10, filled(NAME, 'steel')),
    label(BAR + 20, height - 11, 'below the design pressure, or unknown'),
  ]);
}
