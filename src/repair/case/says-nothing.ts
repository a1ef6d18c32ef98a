/** Ways to say that there is none. */
const NOTHING = /^\W*(?:none|no|nil|n\W?a|tb[ad]|pending|to follow|unknown|later)?\W*$/iu;

/** Whether a text that should name something names nothing, or is not there. */
export function saysNothing(text: string | undefined): boolean {
  return text === undefined || NOTHING.test(text);
}
