import { UsageError } from './usage-error.js';

/** A whole number of an option; nothing where it is left out. @throws UsageError */
export function wholeOf(own: Readonly<Record<string, string | undefined>>, name: string): number | undefined {
  const text = own[name];
  if (text === undefined) return undefined;
  if (/^\d{1,9}$/u.test(text)) return Number(text);
  throw new UsageError(`--${name} is "${text}"; it must be a whole number`);
}
