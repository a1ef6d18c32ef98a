import type { RowStatus, ScreenedSurvey } from '../../survey/index.js';
import { filled, patterns } from './materials.js';
import { box, drawing, label } from './svg.js';

const NAME = 'bands';
/** Bands of safe pressure over design pressure: the last is open above. */
const EDGES = [0, 0.5, 0.75, 0.9, 1, 1.1, 1.25, 1.5] as const;
const ROW = 22;
const TOP = 34;
const BAR = 150;
const LENGTH = 200;

/** How many rows of a survey lie in each band of safe pressure today over design pressure. */
export interface BandCounts {
  /** By the edges of the bands. */
  readonly bands: readonly number[];
  /** Without a safe pressure, since the methods reach no such depth. */
  readonly tooDeep: number;
  readonly refused: number;
}

/** Counts rows one by one, so that a survey of any size takes no more room. */
export function bandCounter(): {
  readonly add: (status: RowStatus, safePressure: number | undefined, designPressure: number) => void;
  readonly counts: () => BandCounts;
} {
  const bands = EDGES.map(() => 0);
  let [refused, tooDeep] = [0, 0];
  return {
    add: (status, safePressure = Number.NaN, designPressure) => {
      const share = safePressure / designPressure;
      const band = EDGES.findLastIndex((edge) => share >= edge);
      if (band >= 0) bands[band] = (bands[band] ?? 0) + 1;
      else if (status === 'refused') refused += 1;
      else tooDeep += 1;
    },
    counts: () => ({ bands: [...bands], tooDeep, refused }),
  };
}

/**
 * How many rows of a survey lie in each band of safe pressure today over design pressure. Rows without a safe pressure stand
 * in bands of their own: none is left out.
 *
 * @param designPressure of each row, or of all [Pa]
 */
export function surveyBands({ safePressure, status }: ScreenedSurvey, designPressure: Float64Array | number): string {
  const counter = bandCounter();
  for (const [index, each] of status.entries()) {
    const of = typeof designPressure === 'number' ? designPressure : (designPressure[index] ?? Number.NaN);
    counter.add(each, safePressure[index], of);
  }
  return bandsDrawing(counter.counts());
}

/** The counts of the bands as bars. */
export function bandsDrawing({ bands, tooDeep, refused }: BandCounts): string {
  const rows = [
    ...EDGES.map((from, index) => {
      const to = EDGES[index + 1];
      const name = to === undefined ? `${from} and more` : `${from} to ${to}`;
      return { name, count: bands[index] ?? 0, isBelow: to !== undefined && to <= 1 };
    }),
    { name: 'too deep', count: tooDeep, isBelow: true },
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
