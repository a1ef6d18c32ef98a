import { evaluate } from '../../src/evaluate/index.js';
import { type AnyFormula, attempt } from '../../src/formula/index.js';
import type { CaseRecord } from '../../verification/case.js';

/** A formula with numbers in it: the command that somebody types, and the step that it gives. */
export interface Example {
  readonly command: string;
  /** The words of the command behind its name. */
  readonly words: readonly string[];
  readonly mathml: string;
  /** The case whose numbers these are. */
  readonly from: string;
}

const US = /\d ?(?:psi[ag]?|ksi|in|ft|lbf|lb|degF|mil)\b/u;

/** The first case of a formula whose inputs can be typed, each as one text, and whose step can be typeset. */
export function exampleOf(formula: AnyFormula, records: readonly CaseRecord[]): Example | undefined {
  for (const { id, inputs, vary, expect } of records) {
    const given = Object.entries(inputs);
    if (vary !== undefined || 'refused' in expect || !given.every(([, text]) => typeof text === 'string')) continue;
    const units = given.some(([, text]) => US.test(String(text))) ? 'us' : 'si';
    const outcome = attempt(() => evaluate(formula.id, inputs, { units }));
    if (!outcome.ok) continue;
    const assigned = given.map(([name, text]) => `${name}=${String(text)}`);
    const words = ['evaluate', formula.id, ...assigned, ...(units === 'us' ? ['--units', 'us'] : [])];
    const command = `hoopwright ${words.map((word) => (/[^\w./=-]/u.test(word) ? word.replace(/^([^=]+=)?(.*)$/su, '$1"$2"') : word)).join(' ')}`;
    return { command, words, mathml: outcome.value.step.mathml, from: id };
  }
  return undefined;
}
