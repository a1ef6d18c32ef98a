import { at, DRAWING_WIDTH, INK, label, line, type Piece, textWidth } from './svg.js';

const ARROW = 5;
const GAP = 4;

/** A dimension along the pipe on a row of its own; its text stands between the arrows, or beside them where it is too long. */
export function dimension(from: number, to: number, y: number, text: string): Piece {
  const width = textWidth(text);
  const parts = [line(from, y - 5, from, y + 5), line(to, y - 5, to, y + 5)];
  if (to - from >= width + 2 * (ARROW + GAP)) {
    const middle = (from + to) / 2;
    parts.push(line(from, y, middle - width / 2 - GAP, y), line(middle + width / 2 + GAP, y, to, y));
    parts.push(arrow(from, y, 1), arrow(to, y, -1), label(middle, y + 4, text, 'middle'));
    return parts.join('');
  }
  parts.push(line(from, y, to, y));
  if (to - from > 2 * ARROW + 1) parts.push(arrow(from, y, 1), arrow(to, y, -1));
  else parts.push(line(from - 8, y, from, y), line(to, y, to + 8, y), arrow(from, y, -1), arrow(to, y, 1));
  const isRoomRight = to + 8 + GAP + width <= DRAWING_WIDTH - 2;
  parts.push(isRoomRight ? label(to + 8 + GAP, y + 4, text) : label(from - 8 - GAP, y + 4, text, 'end'));
  return parts.join('');
}

function arrow(x: number, y: number, way: 1 | -1): Piece {
  return `<path d="M${at(x)} ${at(y)}l${ARROW * way} -2.5v5Z" fill="${INK}"/>`;
}
