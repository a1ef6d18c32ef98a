import { type AnyFormula, sources } from '../../src/formula/index.js';
import { decodeFormulaInput } from '../../src/json/formula-input.js';
import { formulaById } from '../../src/registry/index.js';
import { renderStep } from '../../src/report/index.js';
import type { CaseInput, CaseRecord } from '../case.js';
import { resultOf } from './call.js';
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

/** The substituted steps, of the first where a list runs through; of a refused case what goes in. */
function calculation({ formula, inputs, vary = {}, expect }: CaseRecord): string {
  const first = Object.fromEntries(Object.entries(vary).map(([name, values]) => [name, values[0] ?? '']));
  const all = { ...inputs, ...first };
  if ('refused' in expect)
    return Object.entries(all)
      .map(([name, given]) => `  ${name}: ${JSON.stringify(given)}\n`)
      .join('');
  return worked(formula, all).text;
}

/** One formula worked out, after the formulas whose results it is given. */
function worked(
  id: string,
  inputs: Readonly<Record<string, CaseInput>>,
): { readonly text: string; readonly result: unknown } {
  const formula = formulaById(id);
  if (formula === undefined) throw new Error(`there is no formula ${id}`);
  let before = '';
  const texts = Object.entries(inputs).map(([name, given]) => {
    if (typeof given === 'string' || !('from' in given)) return [name, given] as const;
    const { from } = given;
    const { text, result } = worked(from.formula, from.inputs);
    before += `${name} is the result of\n${text}`;
    return [name, resultOf(formulaById(from.formula) as AnyFormula, result, from.output ?? 'result')] as const;
  });
  const { input, typed } = decodeFormulaInput(formula, Object.fromEntries(texts), { typedValues: true });
  const result = formula.compute(input as never);
  const recorded = { sort: 'step', formula: id, input, result } as const;
  return {
    text: `${before}${renderStep(recorded, { typed, units: { system: 'si', names: {} }, digits: 7 })}\n`,
    result,
  };
}
