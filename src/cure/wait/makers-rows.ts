import { listOfRows, nonNegative, positive, refuse, within } from '../../formula/index.js';
import type { Ratio, Temperature, Time } from '../../quantity/index.js';

/** A time from the maker's sheet, with the climate in which it was measured. */
export interface MakersRow {
  /** At which the maker tested [K]. */
  readonly temperature: Temperature;
  /** Relative humidity at the test. */
  readonly humidity: Ratio;
  /** The maker's time there [s]. */
  readonly time: Time;
}

/** Refuses rows that cannot be, and rows that contradict "warmer and damper cures sooner". */
export function checkRows(rows: readonly MakersRow[]): void {
  listOfRows(rows, 'rows');
  if (rows.length === 0) {
    refuse({
      code: 'invalid-input',
      parameter: 'rows',
      value: 'empty',
      unit: '',
      constraint: "must hold at least one of the maker's rows",
    });
  }
  for (const [index, { temperature, humidity, time }] of rows.entries()) {
    positive(temperature, `rows[${index}].temperature`, 'K');
    within(humidity, 0, 1, `rows[${index}].humidity`, '');
    nonNegative(time, `rows[${index}].time`, 's');
  }
  const longest = longestOfHarsher(rows);
  const i = rows.findIndex(({ time }, index) => (longest[index] as number) > time);
  const milder = rows[i];
  if (milder === undefined) return;
  const j = rows.findIndex((row) => isHarsher(row, milder) && row.time > milder.time);
  refuse({
    code: 'invalid-input',
    parameter: `rows[${j}].time`,
    value: (rows[j] as MakersRow).time,
    unit: 's',
    constraint: `must not exceed that of rows[${i}], which is no warmer and no damper: a row between such two cannot be chosen safely`,
  });
}

function isHarsher(row: MakersRow, milder: MakersRow): boolean {
  return row.temperature >= milder.temperature && row.humidity >= milder.humidity;
}

/**
 * For each row the longest time of those as warm and damp, itself among them. From the warmest down: the longest time from
 * each humidity upward stands in a binary indexed tree, so that a long list is not compared row by row.
 */
function longestOfHarsher(rows: readonly MakersRow[]): Float64Array {
  const falling = (name: 'temperature' | 'humidity') =>
    rows.map((_, index) => index).sort((a, b) => (rows[b] as MakersRow)[name] - (rows[a] as MakersRow)[name]);
  const place = placesFrom(falling('humidity'), rows);
  const tree = new Float64Array(rows.length + 1);
  const longest = new Float64Array(rows.length);
  const warmestFirst = falling('temperature');
  let noted = 0;
  for (const index of warmestFirst) {
    const { temperature } = rows[index] as MakersRow;
    for (; noted < rows.length; noted++) {
      const next = warmestFirst[noted] as number;
      const row = rows[next] as MakersRow;
      if (row.temperature < temperature) break;
      for (let at = place[next] as number; at < tree.length; at += at & -at)
        tree[at] = Math.max(tree[at] as number, row.time);
    }
    for (let at = place[index] as number; at > 0; at -= at & -at)
      longest[index] = Math.max(longest[index] as number, tree[at] as number);
  }
  return longest;
}

/** For each row its place from 1, the dampest first; rows as damp as each other share the place of the last of them. */
function placesFrom(dampestFirst: readonly number[], rows: readonly MakersRow[]): Uint32Array {
  const place = new Uint32Array(rows.length);
  let shared = 0;
  let drier = Number.NaN;
  for (let at = dampestFirst.length - 1; at >= 0; at--) {
    const index = dampestFirst[at] as number;
    const { humidity } = rows[index] as MakersRow;
    if (humidity !== drier) [shared, drier] = [at + 1, humidity];
    place[index] = shared;
  }
  return place;
}
