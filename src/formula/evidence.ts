/**
 * Was the source of a form or a coefficient seen?
 *
 * - `published`: read in the source's own open text.
 * - `secondary`: read in a copy, a program's tests or a web page.
 * - `recalled`: written down from memory of the named document.
 * - `practice`: common practice of the trade, no source.
 * - `chosen`: this library's own value or form.
 */
export type SourceTag = 'published' | 'secondary' | 'recalled' | 'practice' | 'chosen';

/** What stands behind a form or a coefficient. `derived` names another route that reproduces it; it never replaces the tag. */
export interface Evidence {
  /** Whether the source was seen. */
  readonly tag: SourceTag;
  /** The other route that reproduces it. */
  readonly derived?: string;
  /** What else there is to know. */
  readonly note?: string;
}

/** From the strongest to the weakest. */
export const sourceTags: readonly SourceTag[] = ['published', 'secondary', 'recalled', 'practice', 'chosen'];

/**
 * The weakest of several tags: what a step, or a whole design, may claim.
 *
 * @param tags in any order; of none the strongest
 */
export function weakest(tags: Iterable<SourceTag>): SourceTag {
  let worst = 0;
  for (const tag of tags) worst = Math.max(worst, sourceTags.indexOf(tag));
  return sourceTags[worst] ?? 'published';
}
