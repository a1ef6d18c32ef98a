import { CaseError, shown } from './case-error.js';
import { duplicateKeys } from './duplicate-keys.js';

/** Parses JSON text, and refuses a key that stands twice in one object. */
export function parseJson(text: string): unknown {
  const json = text.replace(/^\uFEFF/u, '');
  const document = parsed(json);
  const twice = duplicateKeys(json);
  if (twice.length > 0) {
    throw new CaseError(
      twice.map(({ key, line }) => ({
        path: key,
        value: undefined,
        expected: 'each field once',
        message: `${shown(key)} stands twice in one object, the second time on line ${line}; give each field once`,
      })),
    );
  }
  return document;
}

function parsed(json: string): unknown {
  try {
    return JSON.parse(json);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    const expected = 'a JSON document';
    const message = `the case is not a JSON document (${why}); it begins like {"title": "Cooling-water header"`;
    throw new CaseError([{ path: '', value: json.slice(0, 80), expected, message }]);
  }
}
