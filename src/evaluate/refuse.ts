import { CaseError, shown } from '../json/case-error.js';

/** Refuses what was given at a path, in a sentence with what would pass. @throws CaseError */
export function refuse(path: string, value: unknown, expected: string): never {
  throw new CaseError([{ path, value, expected, message: `${path} is ${shown(value)}; it must be ${expected}` }]);
}
