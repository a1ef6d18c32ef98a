import { escapedHtml } from '../html-text.js';

/** Width of every drawing, in its own units: it fills a telephone, and half a sheet of A4. */
export const DRAWING_WIDTH = 420;
/** Letters of a drawing, and the widest that one of them is taken to be on average. */
export const LETTERS = 11;
const LETTER_WIDTH = 0.6;

export const INK = '#161616';
const FAINT = '#8a8a8a';

/** A piece of a drawing. */
export type Piece = string;

export type Anchor = 'start' | 'middle' | 'end';

/** Room that a text takes, on the safe side. */
export function textWidth(text: string, size = LETTERS): number {
  return text.length * size * LETTER_WIDTH;
}

export function label(x: number, y: number, text: string, anchor: Anchor = 'start', size = LETTERS): Piece {
  const set = anchor === 'start' ? '' : ` text-anchor="${anchor}"`;
  const sized = size === LETTERS ? '' : ` font-size="${size}"`;
  return `<text x="${at(x)}" y="${at(y)}"${set}${sized}>${escapedHtml(text)}</text>`;
}

export function line(x1: number, y1: number, x2: number, y2: number, style: 'ink' | 'faint' | 'dashed' = 'ink'): Piece {
  const look = style === 'ink' ? ` stroke="${INK}"` : ` stroke="${FAINT}"`;
  const dashes = style === 'dashed' ? ' stroke-dasharray="4 3"' : '';
  return `<line x1="${at(x1)}" y1="${at(y1)}" x2="${at(x2)}" y2="${at(y2)}"${look}${dashes}/>`;
}

export function area(points: readonly (readonly [number, number])[], fill: string, outline = INK): Piece {
  const path = points.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${at(x)} ${at(y)}`).join('');
  return `<path d="${path}Z" fill="${fill}" stroke="${outline}"/>`;
}

export function box(x: number, y: number, width: number, height: number, fill: string, outline = INK): Piece {
  return `<rect x="${at(x)}" y="${at(y)}" width="${at(width)}" height="${at(height)}" fill="${fill}" stroke="${outline}"/>`;
}

/** A coordinate to a hundredth: no drawing needs more, and the same design gives the same bytes. */
export function at(value: number): string {
  return String(Math.round(value * 100) / 100);
}

/** A whole drawing: it says in words what it shows to whoever cannot see it. */
export function drawing(name: string, title: string, height: number, pieces: readonly Piece[]): string {
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${DRAWING_WIDTH} ${at(height)}" width="${DRAWING_WIDTH}" height="${at(height)}" role="img" aria-labelledby="${name}-title" font-family="'DejaVu Sans',Verdana,Arial,sans-serif" font-size="${LETTERS}" fill="${INK}">`,
    `<title id="${name}-title">${escapedHtml(title)}</title>`,
    ...pieces,
    '</svg>',
  ].join('\n');
}
