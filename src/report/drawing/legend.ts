import { wrapText } from '../text.js';
import { filled, type Material } from './materials.js';
import { box, DRAWING_WIDTH, LETTERS, label, type Piece, textWidth } from './svg.js';

const ROW = 15;
const TEXT = 30;

/** What each pattern stands for, one to a row, from a height on; and where it ends. */
export function legend(
  name: string,
  top: number,
  rows: readonly (readonly [Material, string])[],
): { readonly pieces: readonly Piece[]; readonly bottom: number } {
  const width = Math.floor((DRAWING_WIDTH - TEXT - 4) / textWidth('m', LETTERS));
  const pieces: Piece[] = [];
  let y = top;
  for (const [material, words] of rows) {
    pieces.push(box(4, y + 1, 20, 10, filled(name, material)));
    for (const line of wrapText(words, width)) {
      pieces.push(label(TEXT, y + 10, line));
      y += ROW;
    }
  }
  return { pieces, bottom: y + 4 };
}
