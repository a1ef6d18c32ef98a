import { type Problem, wordOf } from '../repair/case/admit.js';
import { boundsInWords } from '../repair/case/expected.js';
import { writtenPlace } from '../repair/case/place.js';
import type { Field } from '../repair/case/table-field.js';
import { type CaseIssue, shown } from './case-error.js';
import { exampleOf, expectedIn } from './expected.js';
import { nearMiss } from './near-miss.js';

/** What is wrong at one place of a document, as a sentence: where, what stands there, what was expected, an example. */
export function issueOf(problem: Problem): CaseIssue {
  const path = writtenPlace(problem.place);
  if (problem.sort === 'unknown') return unknownField(path, problem);
  const { field } = problem;
  const [expected, example] = [expectedIn(field), exampleOf(field, path)];
  const such = `, for example ${JSON.stringify(example)}`;
  const value = problem.sort === 'missing' ? undefined : problem.value;
  const issue = { path, value, expected, example };
  if (problem.sort === 'outside' && typeof value === 'string')
    return { ...issue, message: `${path} is ${shown(value)}; it must be ${boundsInWords(problem.field)}${such}` };
  if (problem.sort === 'unfit' && problem.why !== undefined) return { ...issue, message: `${path}: ${problem.why}` };
  const is = problem.sort === 'missing' ? 'is missing' : `is ${shown(value)}`;
  const near = typeof value === 'string' ? nearMiss(value, wordsOf(field)) : undefined;
  const hint = near === undefined ? such : `; did you mean ${JSON.stringify(near)}?`;
  return { ...issue, example: near ?? example, message: `${path || 'the case'} ${is}; expected ${expected}${hint}` };
}

function wordsOf(field: Field): string[] {
  const words =
    field.kind === 'choice' ? field.words.map(String) : field.kind === 'variants' ? wordsOf(wordOf(field)) : [];
  return field.none === true ? ['none', ...words] : words;
}

function unknownField(path: string, { place, fields, value }: Extract<Problem, { sort: 'unknown' }>): CaseIssue {
  const names = Object.keys(fields);
  const holder = writtenPlace(place?.within);
  const where = holder || 'a case';
  const near = nearMiss(String(place?.key), names);
  const field = near === undefined ? undefined : fields[near];
  const stranger = `${path} (${shown(value)}) is not a field of ${where}`;
  if (near === undefined || field === undefined) {
    const held = names.join(', ') || 'nothing more';
    const expected = `no such field; ${where} holds ${held}`;
    return { path, value, expected, message: `${stranger}, which holds ${held}; leave it out` };
  }
  const [expected, example] = [expectedIn(field), exampleOf(field, holder === '' ? near : `${holder}.${near}`)];
  const takes = `It takes ${expected}, for example ${JSON.stringify(example)}`;
  return { path, value, expected, example, message: `${stranger}; did you mean "${near}"? ${takes}` };
}
