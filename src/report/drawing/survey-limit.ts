import { b31g1991AllowableLength } from '../../pipe/index.js';
import type { GaugePressure, Length } from '../../quantity/index.js';
import type { RowStatus, SurveyRow } from '../../survey/index.js';
import { curve, marks, plot, strokeKey } from './plot.js';
import { at, drawing, INK, label, type Piece } from './svg.js';

/** A loss of a survey and what its screening said. */
export interface SurveyPoint
  extends Pick<SurveyRow, 'outsideDiameter' | 'wallThickness' | 'defectDepth' | 'defectLength'> {
  readonly status: RowStatus;
}

const TOP = 48;
const BOTTOM = 250;
const LONGEST = 8;
const DEEPEST = 0.8;

/**
 * Depth of each loss over its wall against its length over the root of diameter and wall, with the longest loss of each depth
 * that may stay where the line runs at the full design pressure of its sound pipe, after the figure of ASME B31G. The screening of
 * each row is by its own pressure, today and at the end of life, and its mark says what came of it.
 *
 * @param of how many rows the survey has, where only those that rank first are drawn
 */
export function surveyAgainstLimit(points: readonly SurveyPoint[], of = points.length): string {
  const axes = plot(
    { title: 'length / root of (diameter x wall)', from: 0, to: LONGEST, marks: marks(0, LONGEST, 8) },
    { title: 'depth / wall', from: 0, to: 1, marks: marks(0, 1, 5) },
    TOP,
    BOTTOM,
  );
  const placed = points.flatMap(({ status, ...loss }) => {
    const depth = loss.defectDepth / loss.wallThickness;
    const along = loss.defectLength / Math.sqrt(loss.outsideDiameter * loss.wallThickness);
    if (!(depth >= 0 && along >= 0)) return [];
    return [
      {
        x: axes.x(Math.min(along, LONGEST)),
        y: axes.y(Math.min(depth, 1)),
        status,
        isBeyond: along > LONGEST || depth > 1,
      },
    ];
  });
  const beyond = placed.filter(({ isBeyond }) => isBeyond).length;
  const missing = points.length - placed.length;
  const notes = [
    of === points.length ? '' : `the worst ${points.length} of ${of}`,
    beyond === 0 ? '' : `${beyond} beyond the axes, drawn at their edge`,
    missing === 0 ? '' : `${missing} without depth or length, not drawn`,
  ].filter((note) => note !== '');
  return drawing(
    'limit',
    'Depth against length of the losses of a survey, with the limit after B31G',
    axes.bottom + 42,
    [
      label(2, 12, 'Depth against length, with the limit after ASME B31G'),
      ...(notes.length === 0 ? [] : [label(2, 25, notes.join('; '))]),
      ...axes.pieces,
      ...placed.map(({ x, y, status }) => mark(x, y, status)),
      ...overMarks(limit().map(([x, y]) => [axes.x(x), axes.y(y)])),
      strokeKey([['solid', 'longest that may stay at its full pressure']], axes.bottom + 12),
      ...key(axes.bottom + 30),
    ],
  );
}

/** The allowable length of each depth: as a share of the root of diameter and wall it is the same on every thin pipe. */
function limit(): (readonly [number, number])[] {
  const pipe = { outsideDiameter: 1 as Length, wallThickness: 0.01 as Length };
  // Any pressure serves: only that it is the full pressure of the sound pipe counts.
  const pressure = 1e6 as GaugePressure;
  const depths = Array.from({ length: 71 }, (_, index) => DEEPEST - index / 100);
  return depths.flatMap((depth) => {
    const found = b31g1991AllowableLength({
      ...pipe,
      designPressure: pressure,
      operatingPressure: pressure,
      defectDepth: (depth * 0.01) as Length,
    });
    return found === 'unlimited' ? [] : [[found / Math.sqrt(0.01), depth] as const];
  });
}

/** A line that is seen among many marks: on a band of white. */
function overMarks(points: readonly (readonly [number, number])[]): Piece[] {
  const solid = curve(points, 'solid');
  return [solid.replace(/stroke="[^"]*" stroke-width="[^"]*"/u, 'stroke="#fff" stroke-width="5"'), solid];
}

/** Told apart by shape: what is sound is hollow, what asks for something is filled or crossed. */
function mark(x: number, y: number, status: RowStatus): Piece {
  if (status === 'sound') return `<circle cx="${at(x)}" cy="${at(y)}" r="3.2" fill="#fff" stroke="${INK}"/>`;
  if (status === 'to check') return `<path d="M${at(x)} ${at(y - 4)}l4 7h-8Z" fill="#fff" stroke="${INK}"/>`;
  if (status === 'repair') return `<circle cx="${at(x)}" cy="${at(y)}" r="3.2" fill="${INK}" stroke="${INK}"/>`;
  return `<path d="M${at(x - 3.5)} ${at(y - 3.5)}l7 7m0 -7l-7 7" stroke="${INK}" stroke-width="1.6"/>`;
}

function key(y: number): Piece[] {
  const entries: readonly (readonly [RowStatus, string, number])[] = [
    ['sound', 'sound', 52],
    ['to check', 'to check', 130],
    ['repair', 'repair', 222],
    ['too deep', 'too deep or refused', 296],
  ];
  return entries.map(([status, text, x]) => mark(x, y - 4, status) + label(x + 9, y, text));
}
