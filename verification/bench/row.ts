/** One line of the bench. */
export interface Row {
  readonly what: string;
  readonly measured: number;
  readonly unit: 'x' | 'ns' | 'ms' | 'kB' | 'packages';
  /** The most that it may be, in the same unit; left out where none was ever set. */
  readonly budget?: number;
  /** What the number is made of. */
  readonly note?: string;
}

/** Whether the budget holds; nothing where there is none. A measurement that is no number holds no budget. */
export function held({ measured, budget }: Row): boolean | undefined {
  return budget === undefined ? undefined : measured <= budget;
}

/** The rows as a Markdown table that can be read without being rendered. */
export function table(rows: readonly Row[]): string {
  const cells = [['what', 'measured', 'budget', '', 'of which'], ...rows.map(cellsOf)];
  const widths = [0, 1, 2, 3, 4].map((column) => Math.max(3, ...cells.map((row) => row[column]?.length ?? 0)));
  const line = (row: readonly string[], fill: string): string =>
    `| ${widths.map((width, column) => (row[column] ?? '').padEnd(width, fill)).join(' | ')} |\n`;
  const [head = [], ...others] = cells;
  return line(head, ' ') + line([], '-') + others.map((row) => line(row, ' ')).join('');
}

function cellsOf(row: Row): string[] {
  const { what, measured, unit, budget, note = '' } = row;
  const verdict = { true: 'held', false: 'MISSED', undefined: '' }[String(held(row))] ?? '';
  return [
    what,
    `${shown(measured)} ${unit}`,
    budget === undefined ? 'none' : `${shown(budget)} ${unit}`,
    verdict,
    note,
  ];
}

function shown(value: number): string {
  return Number.isInteger(value) ? String(value) : value.toFixed(2);
}
