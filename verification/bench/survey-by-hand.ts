import { createReadStream } from 'node:fs';
import { parse } from 'csv-parse';
import type { Times } from './fresh-process.js';

/** What all rows of the file share. */
const [YIELD, FACTOR, LIFE, DEPTH_RATE, DESIGN] = [359, 1.39, 10, 0.1, 10] as const;
const TOP = 1000;

/**
 * The same ranking as `hoopwright survey --top 1000`, as a person writes it once for one file: the same parser, the arithmetic in
 * the units of the columns [mm, MPa], no guard, no reason, no word on what is refused.
 */
export async function surveyByHand(path: string): Promise<Times> {
  const start = process.hrtime.bigint();
  const worst: { id: string; rank: number; left: number }[] = [];
  let text = '';
  for await (const cells of createReadStream(path).pipe(parse({ from_line: 2 })) as AsyncIterable<string[]>) {
    const [id = '', D = 0, t = 0, d = 0, L = 0] = [cells[0], ...cells.slice(1).map(Number)] as [string, ...number[]];
    const rank = safeAt(D, t, d + DEPTH_RATE * LIFE, L) / DESIGN;
    worst.push({ id, rank, left: rank >= 1 ? LIFE : yearsLeft(D, t, d, L) });
    if (worst.length > 20 * TOP) worst.sort(byRank).splice(TOP);
  }
  for (const { id, rank, left } of worst.sort(byRank).slice(0, TOP))
    text += `${id},${rank.toPrecision(4)},${left.toFixed(1)}\n`;
  const time = Number(process.hrtime.bigint() - start);
  if (text.length === 0) throw new Error(`${path} holds no row`);
  return { time };
}

function byRank(a: { rank: number; left: number }, b: { rank: number; left: number }): number {
  return a.rank - b.rank || a.left - b.left;
}

/** The lower of original and modified B31G over the safety factor; nothing beyond 0.8 of the wall. */
function safeAt(D: number, t: number, d: number, L: number): number {
  if (d > 0.8 * t) return 0;
  const z = (L * L) / (D * t);
  const x = d / t;
  const loss = 0.85 * x;
  const modified = z <= 50 ? Math.sqrt(1 + 0.6275 * z - 0.003375 * z * z) : 0.032 * z + 3.3;
  const part = (2 / 3) * x;
  const original = z <= 20 ? (1 - part) / (1 - part / Math.sqrt(1 + 0.8 * z)) : 1 - x;
  return (1.1 * YIELD * ((2 * t) / D) * Math.min(original, (1 - loss) / (1 - loss / modified))) / FACTOR;
}

function yearsLeft(D: number, t: number, d: number, L: number): number {
  let [low, high]: [number, number] = [0, LIFE];
  for (let halving = 0; halving < 30; halving++) {
    const middle = (low + high) / 2;
    if (safeAt(D, t, d + DEPTH_RATE * middle, L) >= DESIGN) low = middle;
    else high = middle;
  }
  return low;
}
