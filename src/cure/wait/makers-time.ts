import { formula, oneOf, positive, refuse, within } from '../../formula/index.js';
import type { Ratio, Temperature, Time } from '../../quantity/index.js';
import { checkRows, type MakersRow } from './makers-rows.js';

export interface MakersTimeInput {
  readonly rows: readonly MakersRow[];
  readonly temperature: Temperature;
  readonly humidity: Ratio;
  readonly purpose: 'wait' | 'working time';
}

export interface MakersTime {
  readonly time: Time;
  readonly row: number;
}

/**
 * The maker's own time in a climate that was tested; for a moisture-cured system the only time there is.
 *
 * A wait takes the shortest time among the rows measured no warmer and no damper than the site: each of them is long
 * enough. A working time takes the longest among the rows measured no cooler and no drier: each of them is short enough.
 *
 * @param input.rows        the maker's rows; time must not rise with temperature or with humidity
 * @param input.temperature T, of the site [K], inside the rows' temperatures
 * @param input.humidity    RH, of the air, from 0 to 1, inside the rows' humidities
 * @param input.purpose     `wait` or `working time`
 * @returns the time [s] and the number of its row, counted from 1
 * @throws CalculationError `invalid-input`; `outside-validity` when the climate lies outside what was tested
 * @remarks No interpolation and no shift: between two rows the safe one is taken. Rows that contradict "warmer and damper
 *   cures sooner" are refused, since the choice rests on it.
 */
export function makersTime(input: MakersTimeInput): MakersTime {
  const { rows, temperature: T, humidity: RH, purpose } = input;
  positive(T, 'temperature', 'K');
  within(RH, 0, 1, 'humidity', '');
  oneOf(purpose, ['wait', 'working time'], 'purpose');
  checkRows(rows);
  inside(rows, T, 'temperature', 'K');
  inside(rows, RH, 'humidity', '');
  const isWait = purpose === 'wait';
  let [time, row] = [isWait ? Number.POSITIVE_INFINITY : Number.NEGATIVE_INFINITY, 0];
  rows.forEach((candidate, index) => {
    const safe = isWait
      ? candidate.temperature <= T && candidate.humidity <= RH
      : candidate.temperature >= T && candidate.humidity >= RH;
    if (safe && (isWait ? candidate.time < time : candidate.time > time)) [time, row] = [candidate.time, index + 1];
  });
  if (row === 0) outsideTested('temperature', T, 'K', isWait ? 'no warmer and no damper' : 'no cooler and no drier');
  return { time: time as Time, row };
}

function inside(rows: readonly MakersRow[], value: number, name: 'temperature' | 'humidity', unit: string): void {
  const low = rows.reduce((least, row) => Math.min(least, row[name]), Number.POSITIVE_INFINITY);
  const high = rows.reduce((most, row) => Math.max(most, row[name]), Number.NEGATIVE_INFINITY);
  if (!(value >= low && value <= high)) {
    refuse({
      code: 'outside-validity',
      parameter: name,
      value,
      unit,
      constraint: `must lie inside what the maker tested, ${low} to ${high} ${unit}`.trimEnd(),
    });
  }
}

function outsideTested(parameter: string, value: number, unit: string, what: string): never {
  refuse({
    code: 'outside-validity',
    parameter,
    value,
    unit,
    constraint: `there must be a row that was measured ${what} than the site; ask the maker`,
  });
}

export const makersTimeFormula = /* @__PURE__ */ formula<MakersTimeInput, MakersTime>({
  id: 'cure/makers-time',
  title: "The maker's time in a tested climate",
  compute: makersTime,
  equation: {
    algorithm:
      'Wait: the shortest time of the rows no warmer and no damper than the site. Working time: the longest of the rows no cooler and no drier. Nothing outside the tested temperatures and humidities.',
  },
  inputs: {
    rows: {
      symbol: 'rows',
      kind: 'list',
      name: "maker's rows",
      columns: { temperature: 'temperature', humidity: 'ratio', time: 'time' },
    },
    temperature: { symbol: 'T', kind: 'temperature', name: 'temperature', sample: [278.15, 313.15] },
    humidity: { symbol: 'RH', kind: 'ratio', name: 'relative humidity', sample: [0.2, 0.95] },
    purpose: { symbol: 'purpose', kind: 'choice', name: 'what the time is for', choices: ['wait', 'working time'] },
  },
  output: {
    time: { symbol: 't', kind: 'time', name: 'time' },
    row: { symbol: 'i', kind: 'count', name: 'row it comes from' },
  },
  sources: [],
  evidence: { form: { tag: 'chosen', note: 'safe side between rows, no interpolation' } },
  limits: [{ sort: 'stop', text: 'Nothing outside the temperatures and humidities that the maker tested.' }],
});
