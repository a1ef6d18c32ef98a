/** One line of the table: what was measured, its budget, and whether it held (`undefined`: no budget, for comparison). */
export interface BudgetRow {
  readonly what: string;
  readonly budget: string;
  readonly measured: string;
  readonly held: boolean | undefined;
}

/** The budgets as a Markdown table. */
export function table(rows: readonly BudgetRow[]): string {
  const lines = rows.map(
    ({ what, budget, measured, held }) =>
      `| ${what} | ${budget} | ${measured} | ${held === undefined ? '' : held ? 'held' : 'NOT held'} |`,
  );
  return ['| what | budget | measured | |', '| --- | --- | --- | --- |', ...lines].join('\n');
}
