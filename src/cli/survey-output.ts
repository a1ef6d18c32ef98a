import { type Kind, preferredUnit, type Unit, type UnitSystem, unitOf } from '../quantity/index.js';
import { seen } from '../quantity/plain-text.js';
import { fromSi } from '../quantity/quantity.js';
import { lineOnSheet } from '../report/line-text.js';
import { chosen } from '../report/options.js';
import type { ScreenedRow } from '../survey/index.js';

/** A row of the answer: where it stands in the file, and what became of it. */
export interface AnswerRow {
  readonly line: number;
  readonly id?: string | undefined;
  readonly found: ScreenedRow;
}

const NUMBERS = [
  ['safePressure', 'gauge pressure'],
  ['safePressureAtEndOfLife', 'gauge pressure'],
  ['depthAtEndOfLife', 'length'],
  ['lengthAtEndOfLife', 'length'],
  ['timeLeft', 'time'],
] as const satisfies readonly (readonly [keyof ScreenedRow, Kind])[];

/** How rows of the answer are written: the head, where there is one, and each row with its line end. */
export interface RowWriter {
  readonly head: string;
  write(row: AnswerRow): string;
}

/** The writer of a format, each number in one unit and to so many digits, pressures and times rounded to the safe side. */
export function rowWriter(format: string, system: UnitSystem, digits: number): RowWriter {
  const columns = NUMBERS.map(([name, kind]) => {
    const symbol = name === 'timeLeft' ? 'year' : preferredUnit(kind, name, { system });
    const toward = kind === 'length' ? Math.ceil : Math.floor;
    return { name, symbol, unit: unitOf(kind, symbol) as Unit, toward };
  });
  const numberOf = (found: ScreenedRow, { name, unit, toward }: (typeof columns)[number]): number | undefined => {
    const value = found[name];
    return value === undefined ? undefined : rounded(fromSi(value, unit), digits, toward);
  };
  const options = chosen({ units: system, digits: Math.max(digits, 2) });
  const said = ({ because, unusual = [] }: ScreenedRow): string[] => [
    ...(because === undefined ? [] : [because]),
    ...unusual.map((each) => lineOnSheet(each, options)),
  ];
  if (format === 'json') {
    return {
      head: '',
      write: ({ line, id, found }) => {
        const numbers = columns.flatMap((column) => {
          const value = numberOf(found, column);
          return value === undefined ? [] : [[column.name, { value, unit: column.symbol }]];
        });
        const all = said(found);
        const because = all.length === 0 ? undefined : all.join('; ');
        return `${JSON.stringify({ line, id, status: found.status, ...Object.fromEntries(numbers), because })}\n`;
      },
    };
  }
  const heads = columns.map(({ name, symbol }) => `${name} [${symbol}]`);
  return {
    head: `${['line', 'id', 'status', ...heads, 'because'].join(',')}\n`,
    write: ({ line, id = '', found }) => {
      const numbers = columns.map((column) => numberOf(found, column) ?? '');
      return `${[line, cell(id), found.status, ...numbers, cell(said(found).join('; '))].join(',')}\n`;
    },
  };
}

/** To significant digits on one side; a millionth of the last one is no reason to go on. */
function rounded(value: number, digits: number, toward: (steps: number) => number): number {
  if (value === 0) return 0;
  const place = digits - 1 - Math.floor(Math.log10(Math.abs(value)));
  const steps = value * 10 ** place;
  const near = Math.round(steps);
  const kept = Math.abs(steps - near) < 1e-6 ? near : toward(steps);
  return Number((kept / 10 ** place).toPrecision(digits));
}

/** A text in a cell: in quotes where it needs them; what begins like a formula of a spreadsheet is no formula. */
function cell(text: string): string {
  const plain = seen(text);
  const tame = /^[=+\-@]/u.test(plain) ? `'${plain}` : plain;
  return /[",;\n]/u.test(tame) ? `"${tame.replaceAll('"', '""')}"` : tame;
}
