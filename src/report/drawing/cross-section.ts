import type { RepairDesign } from '../../repair/design/design.js';
import { leavesHollow } from '../../repair/found/hollow.js';
import type { ChosenOptions } from '../options.js';
import { showSafely } from '../safe-side.js';
import { shownValue } from '../shown-value.js';
import { wrapText } from '../text.js';
import { filled, type Material, patterns } from './materials.js';
import { at, box, DRAWING_WIDTH, drawing, INK, label, line, type Piece, textWidth } from './svg.js';

const NAME = 'section';
const RADIUS = 88;
const CENTRE_X = 98;
const TOP = 24;
/** The column of layers beside the circle, and the text beside the column. */
const COLUMN = 212;
const COLUMN_WIDTH = 34;
const TEXT = COLUMN + COLUMN_WIDTH + 18;
const LINE = 13;

/** One layer at the defect, from the bore outward. */
interface Layer {
  readonly material: Material;
  readonly words: string;
}

/** The pipe cut across at the defect, to scale, and its layers at the defect, dimensioned; nothing without a laminate. */
export function crossSection(design: RepairDesign, options: ChosenOptions): string | undefined {
  const { found, laminate, case: repairCase } = design;
  if (found === undefined || laminate === undefined) return undefined;
  const layers = layersOf(design, options);
  const outside = laminate.wrappedDiameter / 2 + laminate.laidThickness;
  const scale = RADIUS / outside;
  const centreY = TOP + RADIUS + 4;
  const column = columnOf(layers, TOP + 4, 2 * RADIUS);
  const height = Math.max(centreY + RADIUS + 26, column.bottom + 8);
  const diameter = shownValue('length', 'outsideDiameter', found.outsideDiameter, options, false);
  return drawing(NAME, `${repairCase.title}: the pipe cut across at the defect`, height, [
    patterns(NAME),
    label(4, 14, 'Across the pipe, to scale'),
    label(COLUMN, 14, 'Layers (heights not to scale)'),
    ...rings(design, scale, centreY),
    line(
      CENTRE_X - (scale * found.outsideDiameter) / 2,
      centreY,
      CENTRE_X + (scale * found.outsideDiameter) / 2,
      centreY,
    ),
    box(CENTRE_X - textWidth(diameter) / 2 - 3, centreY - 8, textWidth(diameter) + 6, 16, '#fff', '#fff'),
    label(CENTRE_X, centreY + 4, diameter, 'middle'),
    label(CENTRE_X, centreY + RADIUS + 20, 'the defect is drawn at the top', 'middle'),
    ...column.pieces,
  ]);
}

/** Laminate, filler, wall and bore, from the outside in: each paints over the middle of the one before. */
function rings(
  { found, laminate, extent, case: { pipe, filler, defect } }: RepairDesign,
  scale: number,
  y: number,
): Piece[] {
  if (found === undefined || laminate === undefined || extent === undefined) return [];
  const pipeRadius = (found.outsideDiameter / 2) * scale;
  const half = Math.min(Math.PI, found.widthAtEndOfLife / found.outsideDiameter);
  const built = filler === 'none' ? 0 : filler.thicknessOverDefect * scale;
  const laid = laminate.laidThickness * scale;
  const bore = pipeRadius - pipe.wallThickness * scale;
  const left = Math.max(0, found.wallAtEndOfLife) * scale;
  const isOutside = leavesHollow(defect);
  const bulge = (radius: number, more: number): string => bulged(y, radius, more, half);
  return [
    shape(bulge(pipeRadius + laid, built), filled(NAME, 'laminate')),
    ...(built > 0 ? [shape(bulge(pipeRadius, built), filled(NAME, 'filler'))] : []),
    shape(
      isOutside ? bulge(pipeRadius, left - pipe.wallThickness * scale) : bulge(pipeRadius, 0),
      filled(NAME, 'steel'),
    ),
    shape(isOutside ? bulge(bore, 0) : bulge(bore, pipe.wallThickness * scale - left), '#fff'),
  ];
}

function shape(path: string, fill: string): Piece {
  return `<path d="${path}" fill="${fill}" stroke="${INK}"/>`;
}

/** A circle whose radius is larger or smaller by so much over the width of the defect, at the top. */
function bulged(y: number, radius: number, more: number, half: number): string {
  const point = (r: number, angle: number): string =>
    `${at(CENTRE_X + r * Math.sin(angle))} ${at(y - r * Math.cos(angle))}`;
  if (more === 0 || half >= Math.PI)
    return `M${point(radius + more, 0)}A${at(radius + more)} ${at(radius + more)} 0 1 1 ${point(radius + more, Math.PI)}A${at(radius + more)} ${at(radius + more)} 0 1 1 ${point(radius + more, 0)}Z`;
  const edge = Math.min(half * 1.25 + 0.04, Math.PI);
  const long = edge < Math.PI / 2 ? 1 : 0;
  return [
    `M${point(radius + more, -half)}`,
    `A${at(radius + more)} ${at(radius + more)} 0 ${half > Math.PI / 2 ? 1 : 0} 1 ${point(radius + more, half)}`,
    `L${point(radius, edge)}`,
    `A${at(radius)} ${at(radius)} 0 ${long} 1 ${point(radius, -edge)}Z`,
  ].join('');
}

function layersOf(design: RepairDesign, options: ChosenOptions): Layer[] {
  const { found, laminate, case: repairCase } = design;
  if (found === undefined || laminate === undefined) return [];
  const { filler, pipe } = repairCase;
  const given = (name: string, value: number): string => shownValue('length', name, value, options, false);
  const show = showSafely(options);
  const { wallAtEndOfLife } = found;
  const layers: Layer[] = [
    {
      material: 'steel',
      words: `wall: ${show('length', 'wallAtEndOfLife', Math.max(0, wallAtEndOfLife))} of ${given('wallThickness', pipe.wallThickness)} left at the end of life`,
    },
  ];
  const { seal } = repairCase;
  if (design.seal !== undefined && design.seal !== 'none' && seal !== undefined)
    layers.push({
      material: 'seal',
      words: `leak seal: putty under a sheet of ${given('thickness', seal.sheet.thickness)}`,
    });
  if (filler !== 'none')
    layers.push({
      material: 'filler',
      words: `filler: ${given('filler', filler.thicknessOverDefect)} over the defect, ${given('filler', filler.thickness)} round the pipe`,
    });
  layers.push({
    material: 'laminate',
    words: `laminate: ${laminate.plies} plies of ${given('plyThickness', repairCase.laminate.plyThickness)}, ${show('length', 'laidThickness', laminate.laidThickness)} in all`,
  });
  return layers.reverse();
}

/** The layers one over the other, each as tall as its text: what lies where, not how thick. */
function columnOf(layers: readonly Layer[], top: number, least: number): { pieces: Piece[]; bottom: number } {
  const width = Math.floor((DRAWING_WIDTH - TEXT - 2) / textWidth('m'));
  const texts = layers.map(({ words }) => wrapText(words, width));
  const own = texts.map((lines) => lines.length * LINE + 10);
  const spare = Math.max(0, least - own.reduce((sum, each) => sum + each, 0)) / layers.length;
  const pieces: Piece[] = [];
  let y = top;
  for (const [index, { material }] of layers.entries()) {
    const height = (own[index] ?? 0) + spare;
    pieces.push(box(COLUMN, y, COLUMN_WIDTH, height, filled(NAME, material)));
    pieces.push(line(COLUMN + COLUMN_WIDTH, y + height / 2, TEXT - 4, y + height / 2, 'faint'));
    const lines = texts[index] ?? [];
    const first = y + height / 2 - ((lines.length - 1) * LINE) / 2 + 4;
    for (const [row, words] of lines.entries()) pieces.push(label(TEXT, first + row * LINE, words));
    y += height;
  }
  return { pieces, bottom: y };
}
