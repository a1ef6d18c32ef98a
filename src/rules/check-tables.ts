import { refuse } from '../formula/index.js';
import { rulesOf } from './coefficients.js';
import type { RuleSet } from './rule-set.js';

/**
 * What holds between the numbers of a rule set, whoever changed one of them: a table goes from the shorter life to the
 * longer one and allows no more there, and no default strain reaches the strain to failure that the defaults ask for.
 *
 * @param who begins the name of the place in a refusal
 * @throws CalculationError `invalid-input`
 */
export function checkTables(set: RuleSet, who: string): void {
  const tables = rulesOf(set).flatMap(({ path, rule }) => ('value' in rule ? tableIn(path, rule.value) : []));
  const least = set.leastFailureStrain.value;
  for (const { path, rows } of tables) {
    for (const [index, row] of rows.entries()) {
      const before = rows[index - 1];
      if (before !== undefined) checkOrder(`${who}${path}[${index}]`, row, before);
      if (!path.startsWith('defaultStrains')) continue;
      for (const [column, value] of Object.entries(row))
        if (column !== 'life' && !(value < least))
          unfit(`${who}${path}[${index}].${column}`, value, `must be below the least strain to failure, ${least}`);
    }
  }
}

type Row = Readonly<Record<string, number>>;

function tableIn(path: string, value: unknown): { readonly path: string; readonly rows: readonly Row[] }[] {
  if (Array.isArray(value)) return [{ path, rows: value as readonly Row[] }];
  const table = typeof value === 'object' && value !== null && 'table' in value ? value.table : undefined;
  return Array.isArray(table) ? [{ path: `${path}.table`, rows: table as readonly Row[] }] : [];
}

function checkOrder(path: string, row: Row, before: Row): void {
  for (const [column, value] of Object.entries(row)) {
    const last = before[column] ?? Number.NaN;
    if (column === 'life' && !(value > last))
      unfit(`${path}.life`, value, `must be above that of the row before it, ${last} s`);
    if (column !== 'life' && !(value <= last))
      unfit(`${path}.${column}`, value, `must be at most that of the shorter life before it, ${last}`);
  }
}

function unfit(parameter: string, value: number, constraint: string): never {
  refuse({ code: 'invalid-input', parameter, value, unit: '', constraint });
}
