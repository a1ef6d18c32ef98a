import type { CoursePoint, OutcomeCourse } from '../../doubt/course.js';
import { isKind } from '../../quantity/units/index.js';
import { type ChosenOptions, chosen, type SheetOptions } from '../options.js';
import { numberIn, preferredUnit, unitText } from '../units.js';
import { curve, marks, plot, type Stroke, strokeKey } from './plot.js';
import { at, drawing, INK, label, line } from './svg.js';

const TOP = 56;
const BOTTOM = 216;
/** Criteria told apart by their strokes; what governs beyond these shares the last one. */
const STROKES: readonly Stroke[] = ['solid', 'dashed', 'dotted'];

interface Place {
  readonly x: number;
  readonly y: number;
  readonly governing: string;
}

/**
 * An outcome against the input that was moved, each stretch with the stroke of the criterion that governs there; a gap where the
 * case is not designed, and a ring at the case as it is. Nothing where hardly any value is designed.
 */
export function outcomeCourse(found: OutcomeCourse, options: Omit<SheetOptions, 'format'> = {}): string | undefined {
  const { input, name, kind, points } = found;
  const all = chosen(options);
  const [across, up] = [axisOf(input.kind, last(input.path), all), axisOf(kind, name, all)];
  const places = points.map((point) => placeOf(point, across.number, up.number));
  const drawn = places.filter((place) => place !== undefined);
  if (drawn.length < 2) return undefined;
  const [low, high] = [Math.min(...drawn.map(({ y }) => y)), Math.max(...drawn.map(({ y }) => y))];
  const room = high > low ? (high - low) / 8 : Math.max(Math.abs(high) / 10, 1e-9);
  const [from, to] = [across.number(points[0]?.value ?? 0), across.number(points.at(-1)?.value ?? 1)];
  const axes = plot(
    { title: titled(input.path, across.unit), from, to, marks: marks(from, to, 6) },
    { title: titled(name, up.unit), from: low - room, to: high + room, marks: marks(low - room, high + room, 5) },
    TOP,
    BOTTOM,
  );
  const criteria = [...new Set(drawn.map(({ governing }) => governing))];
  const strokeOf = (criterion: string): Stroke =>
    STROKES[Math.min(criteria.indexOf(criterion), STROKES.length - 1)] ?? 'solid';
  const stated = places[(places.length - 1) / 2];
  const gaps = places.some((place) => place === undefined);
  const keys = criteria.length === 1 && criteria[0] === '' ? [] : criteria;
  const title = `${name.charAt(0).toUpperCase()}${name.slice(1)} against the input that moves it most`;
  return drawing('course', `${title}: ${input.path}`, axes.bottom + 10 + 16 * keys.length, [
    label(2, 12, title),
    label(2, 27, gaps ? 'ring: the case as it is; gap: not designed' : 'ring: the case as it is'),
    ...axes.pieces,
    ...stretches(places).map((stretch) =>
      curve(
        stretch.map(({ x, y }) => [axes.x(x), axes.y(y)]),
        strokeOf(stretch[0]?.governing ?? ''),
      ),
    ),
    ...(stated === undefined
      ? []
      : [
          line(axes.x(stated.x), axes.y(stated.y) + 4, axes.x(stated.x), BOTTOM, 'dashed'),
          `<circle cx="${at(axes.x(stated.x))}" cy="${at(axes.y(stated.y))}" r="4" fill="#fff" stroke="${INK}" stroke-width="1.6"/>`,
        ]),
    ...keys.map((criterion, index) => strokeKey([[strokeOf(criterion), criterion]], axes.bottom + 12 + 16 * index)),
  ]);
}

/** Neighbours by one criterion are one line; the line of the next begins where it ends. */
function stretches(places: readonly (Place | undefined)[]): Place[][] {
  const all: Place[][] = [];
  let open: Place[] | undefined;
  for (const place of places) {
    if (place === undefined) open = undefined;
    else if (open !== undefined && open[0]?.governing === place.governing) open.push(place);
    else {
      open?.push(place);
      open = [place];
      all.push(open);
    }
  }
  return all.filter((stretch) => stretch.length > 1);
}

function placeOf(
  { value, outcome, governing = '' }: CoursePoint,
  across: (si: number) => number,
  up: (si: number) => number,
): Place | undefined {
  return outcome === undefined ? undefined : { x: across(value), y: up(outcome), governing };
}

interface Scale {
  readonly unit: string;
  readonly number: (si: number) => number;
}

function axisOf(kind: string, name: string, { units }: ChosenOptions): Scale {
  if (!isKind(kind)) return { unit: '', number: (si) => si };
  const symbol = preferredUnit(kind, name, units);
  return { unit: unitText(symbol), number: (si) => numberIn(kind, si, symbol) };
}

const titled = (name: string, unit: string): string => (unit === '' ? name : `${name} [${unit}]`);

const last = (path: string): string => path.split('.').at(-1) ?? path;
