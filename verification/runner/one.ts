import { sources } from '../../src/formula/index.js';
import { decodeFormulaInput } from '../../src/json/formula-input.js';
import { formulaById } from '../../src/registry/index.js';
import { renderStep } from '../../src/report/index.js';
import type { CaseRecord } from '../case.js';
import { judge } from './judge.js';
import { resultText } from './run.js';

/** One case in full, so that a reader can do it again: who printed it, what goes in, every step, and the verdict. */
export function caseInFull(record: CaseRecord, file: string): string {
  const { source, route, note, erratum } = record;
  const named = source === null ? undefined : (sources[source.key as keyof typeof sources] ?? undefined);
  const lines = [
    `${record.id}: ${record.class}, verification/cases/${file}`,
    named === undefined ? '' : `Source: ${named.author}, ${named.title}, ${named.year}; ${source?.locator ?? ''}`,
    route === undefined ? '' : `Second route: ${route}`,
    note === undefined ? '' : `Note: ${note}`,
    erratum === undefined ? '' : `Erratum: printed ${erratum.printed}. ${erratum.explanation}`,
  ].filter((line) => line !== '');
  return `${lines.join('\n')}\n\n${calculation(record)}${resultText(judge(record, file, formulaById))}\n`;
}

/** The substituted step, of the first where a list runs through; nothing where an input is itself the result of a formula. */
function calculation({ formula: id, inputs, vary = {}, expect }: CaseRecord): string {
  const formula = formulaById(id);
  const first = Object.fromEntries(Object.entries(vary).map(([name, values]) => [name, values[0] ?? '']));
  const texts = Object.entries({ ...inputs, ...first });
  const isPlain = texts.every(([, given]) => typeof given === 'string' || Array.isArray(given));
  if (formula === undefined || !isPlain || 'refused' in expect) return '';
  const given = decodeFormulaInput(formula, Object.fromEntries(texts));
  const recorded = {
    sort: 'step',
    formula: id,
    input: given.input,
    result: formula.compute(given.input as never),
  } as const;
  return `${renderStep(recorded, { typed: given.typed, units: { system: 'si', names: {} }, digits: 7 })}\n`;
}
