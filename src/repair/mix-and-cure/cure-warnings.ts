/** Beyond the temperatures at which the maker tested a time is a guess. */
export function outsideTestedSpan(what: string): string {
  return `The ${what} is shifted beyond the temperatures at which its maker tested: treat it as a guess and prove it on a trial batch.`;
}
