/** One line of the table: what was measured, its budget, and whether it held (`undefined`: no budget, for comparison). */
export interface BudgetRow {
  readonly what: string;
  readonly budget: string;
  readonly measured: string;
  readonly held: boolean | undefined;
  /** Why it does not hold, where it does not. */
  readonly why?: string;
}

/** The budgets as a Markdown table. */
export function table(rows: readonly BudgetRow[]): string {
  const lines = rows.map(
    ({ what, budget, measured, held }) =>
      `| ${what} | ${budget} | ${measured} | ${held === undefined ? '' : held ? 'held' : 'NOT held'} |`,
  );
  return ['| what | budget | measured | |', '| --- | --- | --- | --- |', ...lines].join('\n');
}

/** Why the budgets that were missed were missed; nothing when all are held. */
export function reasons(rows: readonly BudgetRow[]): string {
  const missed = rows.filter(({ held }) => held === false);
  return missed.map(({ what, why }) => `\nNot held: ${what}. ${why ?? 'No reason is known: look into it.'}\n`).join('');
}
