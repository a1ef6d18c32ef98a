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
    const where = placeIn(json, why);
    const begins = /^\s*[{[]/u.test(json) ? '' : '; one begins like {"title": "Cooling-water header"';
    const message = `the case is not a JSON document${where} (${why})${begins}`;
    throw new CaseError([{ path: '', value: json.slice(0, 80), expected: 'a JSON document', message }]);
  }
}

/** Line and column of the position that an engine names; some name line and column themselves. */
function placeIn(json: string, why: string): string {
  const position = /at position (\d+)(?! \(line)/u.exec(why)?.[1];
  if (position === undefined) return '';
  const before = json.slice(0, Number(position)).split('\n');
  return `: line ${before.length}, column ${(before.at(-1) ?? '').length + 1}`;
}
