import { UsageError } from './usage-error.js';

/**
 * `name=text` pairs, each name once; the record has no prototype, so that __proto__ is a name like any other and refused as one.
 *
 * @throws UsageError
 */
export function assignmentsOf(texts: readonly string[]): Record<string, string> {
  const given: Record<string, string> = Object.create(null);
  for (const assignment of texts) {
    const [, name, text] = /^([^=\s]+)=(.*)$/su.exec(assignment) ?? [];
    if (name === undefined || text === undefined)
      throw new UsageError(`"${assignment}" is not an input; inputs are written name="value unit", in quotes`);
    if (Object.hasOwn(given, name)) throw new UsageError(`${name} is given twice; give each input once`);
    given[name] = text;
  }
  return given;
}
