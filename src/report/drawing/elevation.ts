import type { RepairDesign } from '../../repair/design/design.js';
import { sidesOfBend } from '../../repair/design/side-of-bend.js';
import { leavesHollow } from '../../repair/found/hollow.js';
import type { ChosenOptions } from '../options.js';
import { showSafely } from '../safe-side.js';
import { shownValue } from '../shown-value.js';
import { type AlongPipe, alongPipe, type Stretch } from './along.js';
import { dimension } from './dimension.js';
import { legend } from './legend.js';
import { filled, type Material, patterns } from './materials.js';
import { area, box, DRAWING_WIDTH, drawing, label, line, type Piece } from './svg.js';

const NAME = 'elevation';
/** Ends of the wrap on the drawing; the pipe runs on beyond them. */
const LEFT = 34;
const RIGHT = DRAWING_WIDTH - LEFT;
/** Height that wall, filler and laminate take together. */
const STACK = 84;
const ROW = 19;
/** By how much a thickness may be drawn too large: a number that can be said. */
const TIMES = [1, 1.5, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50];

/** Thicknesses of the layers, outward from the bore. */
interface Layers {
  readonly wall: number;
  readonly left: number;
  readonly filler: number;
  readonly laminate: number;
  readonly isOutside: boolean;
}

/** Where things come to lie on the drawing. */
interface Place {
  readonly x: (along: number) => number;
  /** Of a height above the surface of the sound pipe. */
  readonly y: (height: number) => number;
}

/** The wall in section along the pipe, with all that lies on it, dimensioned; nothing where there is no laminate. */
export function elevation(design: RepairDesign, options: ChosenOptions): string | undefined {
  const along = alongPipe(design);
  const { found, laminate, extent, case: repairCase } = design;
  if (along === undefined || found === undefined || laminate === undefined || extent === undefined) return undefined;
  const { filler, pipe, defect } = repairCase;
  const layers: Layers = {
    wall: pipe.wallThickness,
    left: Math.max(0, found.wallAtEndOfLife),
    filler: filler === 'none' ? 0 : filler.thicknessOverDefect,
    laminate: laminate.laidThickness,
    isOutside: leavesHollow(defect),
  };
  const scale = (RIGHT - LEFT) / (along.wrap.to - along.wrap.from);
  const times = timesFor(STACK / (layers.wall + layers.filler + layers.laminate) / scale);
  const surface = 24 + 3 * ROW + (layers.filler + layers.laminate) * scale * times;
  const place: Place = {
    x: (at) => LEFT + (at - along.wrap.from) * scale,
    y: (height) => surface - height * scale * times,
  };
  const length = (name: string, value: number): string => showSafely(options)('length', name, value);
  const { outside } = sidesOfBend(extent);
  const above = [
    label(4, 14, 'Along the pipe: length to scale,'),
    label(4, 28, `thickness drawn ${times === 1 ? 'to the same scale' : `${times} times too large`}`),
    dimension(
      place.x(along.wrap.from),
      place.x(along.wrap.to),
      24 + ROW,
      `${design.wrap?.form === 'tape' ? 'tape' : 'wrap'} ${length('overallLength', along.wrap.to - along.wrap.from)}${outside}`,
    ),
    dimension(
      place.x(along.laminate.from),
      place.x(along.laminate.to),
      24 + 2 * ROW,
      `laminate ${length('totalLength', extent.totalLength)}${outside}`,
    ),
    ...tapeEnds(design, along, place, 24 + 3 * ROW - 4),
  ];
  const below = dimensionsBelow(design, along, length);
  const bottom = place.y(-layers.wall);
  const rows = below.map(([stretch, text], index) =>
    dimension(place.x(stretch.from), place.x(stretch.to), bottom + 6 + (index + 0.5) * ROW, text),
  );
  const key = legend(NAME, bottom + 14 + below.length * ROW, legendRows(design, along, layers, options));
  const title = `${repairCase.title}: the repair along the pipe`;
  return drawing(NAME, title, key.bottom + 16, [
    patterns(NAME),
    ...above,
    ...section(design, along, layers, place),
    ...rows,
    ...key.pieces,
    label(
      4,
      key.bottom + 9,
      `${along.hole === undefined ? 'Defect and wall' : 'Defect, opening and wall'} at the end of life`,
    ),
  ]);
}

/** The largest round number that is not above the one that would fill the height. */
function timesFor(most: number): number {
  return TIMES.findLast((times) => times <= most) ?? 1;
}

function section(design: RepairDesign, along: AlongPipe, layers: Layers, place: Place): Piece[] {
  const { x, y } = place;
  const { between, laminate, fullThickness, wrap } = along;
  const ramp = (between.to - between.from) * 0.12;
  const [low, high] = [layers.filler, layers.filler + layers.laminate];
  const pieces: Piece[] = [
    area(
      [
        [x(wrap.from), y(0)],
        [x(fullThickness.from), y(layers.laminate)],
        [x(fullThickness.to), y(layers.laminate)],
        [x(wrap.to), y(0)],
      ],
      filled(NAME, 'tape'),
    ),
    area(
      [
        [x(laminate.from), y(0)],
        [x(fullThickness.from), y(layers.laminate)],
        [x(between.from), y(layers.laminate)],
        [x(between.from + ramp), y(high)],
        [x(between.to - ramp), y(high)],
        [x(between.to), y(layers.laminate)],
        [x(fullThickness.to), y(layers.laminate)],
        [x(laminate.to), y(0)],
      ],
      filled(NAME, 'laminate'),
    ),
  ];
  if (layers.filler > 0)
    pieces.push(
      area(
        [
          [x(between.from), y(0)],
          [x(between.from + ramp), y(low)],
          [x(between.to - ramp), y(low)],
          [x(between.to), y(0)],
        ],
        filled(NAME, 'filler'),
      ),
    );
  pieces.push(...wall(design, along, layers, place));
  if (along.pad !== undefined) {
    const height = layers.filler > 0 ? layers.filler / 2 : layers.laminate / 2;
    const { from, to } = along.pad;
    pieces.push(box(x(from), y(height), x(to) - x(from), y(0) - y(height), filled(NAME, 'seal')));
  }
  return pieces;
}

/** The wall with its loss, on the side on which it is; what is hollow on the outside is filled. */
function wall(design: RepairDesign, along: AlongPipe, { wall: t, left, isOutside }: Layers, place: Place): Piece[] {
  const { x, y } = place;
  const { defect, hole } = along;
  const slope = (defect.to - defect.from) * 0.15;
  const [outer, inner] = isOutside ? [y(-(t - left)), y(-t)] : [y(0), y(-left)];
  const outside: [number, number][] = isOutside
    ? [
        [x(defect.from), y(0)],
        [x(defect.from + slope), outer],
        [x(defect.to - slope), outer],
        [x(defect.to), y(0)],
      ]
    : [];
  const inside: [number, number][] = isOutside
    ? []
    : [
        [x(defect.to), y(-t)],
        [x(defect.to - slope), inner],
        [x(defect.from + slope), inner],
        [x(defect.from), y(-t)],
      ];
  const pieces: Piece[] = [];
  if (isOutside && design.case.filler !== 'none') pieces.push(area(outside, filled(NAME, 'filler')));
  pieces.push(
    area(
      [[2, y(0)], ...outside, [DRAWING_WIDTH - 2, y(0)], [DRAWING_WIDTH - 2, y(-t)], ...inside, [2, y(-t)]],
      filled(NAME, 'steel'),
    ),
  );
  if (hole !== undefined) {
    const [from, to] = [x(hole.from), x(hole.to)];
    pieces.push(box(from, outer, Math.max(to - from, 2), Math.max(inner - outer, 2), '#fff'));
  }
  return pieces;
}

/** Where the tape begins and where it ends, in words at the place. */
function tapeEnds({ rolls, wrap }: RepairDesign, { wrap: ends }: AlongPipe, { x }: Place, y: number): Piece[] {
  const last = rolls?.passes.at(-1);
  if (wrap?.form !== 'tape' || last === undefined) return [];
  const middle = (ends.from + ends.to) / 2;
  const endsLeft = last.to < middle;
  const [left, right] = [x(ends.from) - 8, x(ends.to) + 8];
  return [
    label(left, y, endsLeft ? 'tape starts and ends here' : 'tape starts here'),
    ...(endsLeft ? [] : [label(right, y, 'tape ends here', 'end')]),
    line(x(ends.from), y + 3, x(ends.from), y + 12, 'dashed'),
    ...(endsLeft ? [] : [line(x(ends.to), y + 3, x(ends.to), y + 12, 'dashed')]),
  ];
}

type Length = (name: string, value: number) => string;

/** What is measured below the wall, one to a row. */
function dimensionsBelow({ extent, found, seal }: RepairDesign, along: AlongPipe, length: Length): [Stretch, string][] {
  if (extent === undefined || found === undefined) return [];
  const { laminate, fullThickness, between, defect, hole, pad } = along;
  const side = sidesOfBend(extent).inside;
  const rows: [Stretch, string][] = [
    [{ from: fullThickness.from, to: between.from }, `overlap ${length('overlap', extent.overlap.value)}${side}`],
    [{ from: laminate.from, to: fullThickness.from }, `taper ${length('taper', extent.taper)}${side}`],
    [defect, `defect ${length('lengthAtEndOfLife', found.lengthAtEndOfLife)}`],
  ];
  if (pad !== undefined && seal !== undefined && seal !== 'none')
    rows.push([pad, `leak seal ${length('padDiameter', seal.padDiameter)}`]);
  if (hole !== undefined)
    rows.push([
      hole,
      `${found.designSlot === undefined ? 'hole' : 'slot'} ${length('designHole', hole.to - hole.from)}`,
    ]);
  return rows;
}

function legendRows(
  { laminate, case: { filler } }: RepairDesign,
  along: AlongPipe,
  layers: Layers,
  options: ChosenOptions,
): [Material, string][] {
  const given = (name: string, value: number): string => shownValue('length', name, value, options, false);
  const show = showSafely(options);
  const rows: [Material, string][] = [
    ['laminate', `laminate: ${laminate?.plies} plies, ${show('length', 'laidThickness', layers.laminate)}`],
    ['tape', 'end of the wrap: fewer layers'],
  ];
  if (filler !== 'none') rows.push(['filler', `filler: ${given('filler', layers.filler)} over the defect`]);
  if (along.pad !== undefined) rows.push(['seal', 'leak seal: putty under a thin sheet (height not to scale)']);
  rows.push([
    'steel',
    `wall: ${given('wallThickness', layers.wall)}, ${show('length', 'wallAtEndOfLife', layers.left)} left`,
  ]);
  return rows;
}
