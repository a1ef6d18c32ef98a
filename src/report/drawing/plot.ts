import { at, DRAWING_WIDTH, INK, label, line, type Piece, textWidth } from './svg.js';

/** One axis: what is drawn along it, from where to where, and the values that are marked. */
export interface Axis {
  readonly title: string;
  readonly from: number;
  readonly to: number;
  readonly marks: readonly number[];
  readonly write?: (mark: number) => string;
}

/** A frame of two axes and the way from values to places in it. */
export interface Plot {
  readonly pieces: readonly Piece[];
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
  readonly bottom: number;
}

const LEFT = 46;
const RIGHT = DRAWING_WIDTH - 46;

/** Axes, marks and their numbers; faint lines lead from the numbers at the left. */
export function plot(across: Axis, up: Axis, top: number, bottom: number): Plot {
  const x = (value: number): number => LEFT + ((value - across.from) / (across.to - across.from)) * (RIGHT - LEFT);
  const y = (value: number): number => bottom - ((value - up.from) / (up.to - up.from)) * (bottom - top);
  const { write: acrossText = String } = across;
  const { write: upText = String } = up;
  const pieces = [
    ...up.marks.map(
      (mark) => `${line(LEFT, y(mark), RIGHT, y(mark), 'faint')}${label(LEFT - 5, y(mark) + 4, upText(mark), 'end')}`,
    ),
    ...across.marks.map(
      (mark) =>
        `${line(x(mark), bottom, x(mark), bottom + 4)}${label(x(mark), bottom + 16, acrossText(mark), 'middle')}`,
    ),
    line(LEFT, bottom, RIGHT, bottom),
    line(LEFT, top, LEFT, bottom),
    label(2, top - 12, up.title),
    label(RIGHT, bottom + 31, across.title, 'end'),
  ];
  return { pieces, x, y, bottom: bottom + 36 };
}

/** The look of a line of values: told apart by its dashes, so that grey print and every eye do. */
export type Stroke = 'solid' | 'dashed' | 'dotted';

const DASHES: Readonly<Record<Stroke, string>> = { solid: '', dashed: '6 3', dotted: '1.5 2.5' };

export function curve(points: readonly (readonly [number, number])[], stroke: Stroke): Piece {
  const path = points.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${at(x)} ${at(y)}`).join('');
  const dashes = DASHES[stroke] === '' ? '' : ` stroke-dasharray="${DASHES[stroke]}"`;
  return `<path d="${path}" fill="none" stroke="${INK}" stroke-width="1.6"${dashes}/>`;
}

/** What each stroke stands for, side by side on one line. */
export function strokeKey(entries: readonly (readonly [Stroke, string])[], y: number): Piece {
  let x = LEFT;
  return entries
    .map(([stroke, text]) => {
      const piece =
        curve(
          [
            [x, y - 4],
            [x + 24, y - 4],
          ],
          stroke,
        ) + label(x + 29, y, text);
      x += 29 + textWidth(text) * 1.15 + 14;
      return piece;
    })
    .join('');
}

/** Round values from one to another, at most so many: steps of 1, 2 or 5 and a power of ten. */
export function marks(from: number, to: number, most: number): number[] {
  const rough = (to - from) / most;
  const decade = 10 ** Math.floor(Math.log10(rough));
  const step = decade * ([1, 2, 5].find((each) => each * decade >= rough * (1 - 1e-9)) ?? 10);
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, index) => Number(((first + index) * step).toPrecision(12)));
}
