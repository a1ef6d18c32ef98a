/**
 * Characters that nobody sees: line ends, control and escape codes, marks of direction and the like, but for the two joiners
 * that scripts need. In a sheet, a terminal or Markdown they would let a title look like a line of the answer.
 * As ranges, since a JSON Schema is read without the flag that classes of characters need.
 */
const UNSEEN =
  '\\u0000-\\u001f\\u007f-\\u009f\\u00ad\\u061c\\u180e\\u200b\\u200e\\u200f\\u2028-\\u202e\\u2060-\\u206f\\ufeff\\ufff9-\\ufffb';

/** One line of text that is not empty, as a pattern that takes time in proportion to the text. */
export const PLAIN_LINE = /* @__PURE__ */ new RegExp(`^(?=\\s*\\S)[^${UNSEEN}]+$`, 'u');

const ANY_UNSEEN = /* @__PURE__ */ new RegExp(`[${UNSEEN}]`, 'gu');

/** A text of others as it may stand in a message: what nobody sees is written as its code, but for the characters in `but`. */
export function seen(text: string, but = ''): string {
  return text.replaceAll(ANY_UNSEEN, (unseen) =>
    but.includes(unseen) ? unseen : `\\u${unseen.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}
