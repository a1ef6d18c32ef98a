import { INK, type Piece } from './svg.js';

/** What a repair is made of, as the drawings tell it apart: by pattern first, so that grey print and every eye do. */
export type Material = 'steel' | 'laminate' | 'filler' | 'seal' | 'tape';

/** The patterns of a drawing; two drawings on one page have their own. */
export function patterns(name: string): Piece {
  const pattern = (material: Material, size: number, inside: string): string =>
    `<pattern id="${name}-${material}" width="${size}" height="${size}" patternUnits="userSpaceOnUse">${inside}</pattern>`;
  return [
    '<defs>',
    pattern(
      'steel',
      6,
      `<rect width="6" height="6" fill="#e4e4e4"/><path d="M0 6L6 0M-1 1L1 -1M5 7L7 5" stroke="#555" stroke-width=".8"/>`,
    ),
    pattern(
      'laminate',
      3,
      '<rect width="3" height="3" fill="#d6e4f0"/><path d="M0 1.5H3" stroke="#1f4e79" stroke-width=".7"/>',
    ),
    pattern(
      'filler',
      5,
      '<rect width="5" height="5" fill="#f6ead0"/><circle cx="1.3" cy="1.3" r=".7" fill="#6b5313"/><circle cx="3.8" cy="3.8" r=".7" fill="#6b5313"/>',
    ),
    pattern(
      'seal',
      4,
      `<rect width="4" height="4" fill="#9a9a9a"/><path d="M0 0L4 4M4 0L0 4" stroke="${INK}" stroke-width=".8"/>`,
    ),
    pattern('tape', 4, '<rect width="4" height="4" fill="#fff"/><path d="M0 2H4" stroke="#1f4e79" stroke-width=".6"/>'),
    '</defs>',
  ].join('');
}

export function filled(name: string, material: Material): string {
  return `url(#${name}-${material})`;
}
