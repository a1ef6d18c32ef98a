import type { RepairDesign } from '../../repair/design/design.js';
import { sidesOfBend } from '../../repair/design/side-of-bend.js';
import type { ChosenOptions } from '../options.js';
import { showSafely } from '../safe-side.js';
import { type AlongPipe, alongPipe, type Stretch } from './along.js';

/** Characters from the start of the wrap to its end, and what stands to its left. */
const WIDTH = 92;
const MARGIN = 4;

/** The repair from the side in characters, to scale along the pipe; nothing where there is none. */
export function characterDrawing(design: RepairDesign, options: ChosenOptions): string[] {
  const along = alongPipe(design);
  if (along === undefined || design.extent === undefined) return [];
  const { extent } = design;
  const { inside, outside } = sidesOfBend(extent);
  const length = (name: string, value: number): string => showSafely(options)('length', name, value);
  const sizes = [
    `a taper ${length('taper', extent.taper)}`,
    `b overlap ${length('overlap', extent.overlap.value)}`,
    `c ${between(along)} ${length('defectLength', extent.defectLength)}`,
  ];
  return [
    dimension(
      along,
      along.wrap,
      `${design.rolls === undefined ? 'wrap' : 'tape'} ${spanned(along.wrap, length)}${outside}`,
    ),
    dimension(along, along.laminate, `laminate ${spanned(along.laminate, length)}${outside}`),
    letters(along),
    row(along, [
      [along.wrap, '.'],
      [along.laminate, '-'],
      [along.fullThickness, '='],
    ]),
    row(along, [[along.defect, '~'], ...(along.pad === undefined ? [] : [[along.pad, '#'] as const])]),
    pipeWall(along),
    `${' '.repeat(MARGIN)}${sizes.join(', ')}${inside === '' ? '' : `; a, b and c${inside}`}`,
    `${' '.repeat(MARGIN)}${key(along)}`,
  ].filter((line) => line.trim() !== '');
}

/** What lies between the two overlaps. */
function between({ pad, between: gap, defect }: AlongPipe): string {
  return pad !== undefined && gap.to > defect.to ? 'seal' : 'defect';
}

function spanned({ from, to }: Stretch, length: (name: string, value: number) => string): string {
  return length('overallLength', to - from);
}

function key({ hole, pad }: AlongPipe): string {
  const parts = ['= laminate', '- taper', '. end of the tape', '~ metal loss'];
  if (pad !== undefined) parts.push('# leak seal');
  if (hole !== undefined) parts.push('O hole');
  return parts.join('   ');
}

/** Column of a place along the pipe; the ends of the wrap are the ends of the line. */
function column({ wrap }: AlongPipe, at: number): number {
  const share = (at - wrap.from) / (wrap.to - wrap.from);
  return Math.round(Math.min(1, Math.max(0, share)) * (WIDTH - 1));
}

/** Paints stretches one over the other; none vanishes because it is short. */
function row(along: AlongPipe, parts: readonly (readonly [Stretch, string])[]): string {
  const cells = Array.from({ length: WIDTH }, () => ' ');
  for (const [stretch, mark] of parts)
    cells.fill(mark, column(along, stretch.from), Math.max(column(along, stretch.to), column(along, stretch.from)) + 1);
  return `${' '.repeat(MARGIN)}${cells.join('')}`.trimEnd();
}

function dimension(along: AlongPipe, stretch: Stretch, text: string): string {
  const [from, to] = [column(along, stretch.from), column(along, stretch.to)];
  const room = to - from - 1;
  const middle =
    text.length + 4 > room
      ? '-'.repeat(Math.max(0, room))
      : `<${'-'.repeat(Math.floor((room - text.length - 4) / 2))} ${text} ${'-'.repeat(Math.ceil((room - text.length - 4) / 2))}>`;
  const beside = text.length + 4 > room ? ` ${text}` : '';
  return `${' '.repeat(MARGIN + from)}|${middle}|${beside}`;
}

/** The letter of each stretch in the middle of it. */
function letters(along: AlongPipe): string {
  const { laminate, fullThickness, between } = along;
  const cells = Array.from({ length: WIDTH }, () => ' ');
  const middles: readonly (readonly [string, number, number])[] = [
    ['a', laminate.from, fullThickness.from],
    ['b', fullThickness.from, between.from],
    ['c', between.from, between.to],
    ['b', between.to, fullThickness.to],
    ['a', fullThickness.to, laminate.to],
  ];
  for (const at of [laminate.from, fullThickness.from, between.from, between.to, fullThickness.to, laminate.to])
    cells[column(along, at)] = '|';
  for (const [letter, from, to] of middles) {
    const at = column(along, (from + to) / 2);
    if (cells[at] === ' ') cells[at] = letter;
  }
  return `${' '.repeat(MARGIN)}${cells.join('')}`.trimEnd();
}

/** The wall runs on past the wrap on both sides; the hole goes through it. */
function pipeWall(along: AlongPipe): string {
  const cells = Array.from({ length: WIDTH + 2 * MARGIN }, () => '_');
  const { hole } = along;
  if (hole !== undefined) cells.fill('O', MARGIN + column(along, hole.from), MARGIN + column(along, hole.to) + 1);
  return cells.join('');
}
