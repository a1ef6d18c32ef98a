/**
 * The candidate that a mistyped word most likely stands for, if any is near enough to be worth naming.
 *
 * @param word as typed
 * @param candidates what would have been right
 */
export function nearMiss(word: string, candidates: readonly string[]): string | undefined {
  const reach = Math.max(1, Math.floor(word.length / 3));
  let best: string | undefined;
  let least = reach + 1;
  for (const candidate of candidates) {
    const edits = editDistance(word.toLowerCase(), candidate.toLowerCase(), least);
    if (edits < least) [best, least] = [candidate, edits];
  }
  return best ?? beginning(word, candidates);
}

/** The one candidate that a word is the beginning of. */
function beginning(word: string, candidates: readonly string[]): string | undefined {
  const longer = candidates.filter((candidate) => candidate.toLowerCase().startsWith(word.toLowerCase()));
  return word.length >= 3 && longer.length === 1 ? longer[0] : undefined;
}

/**
 * Insertions, deletions, replacements and swaps of neighbours that turn one word into the other (restricted
 * Damerau-Levenshtein); stops at `enough`, since only the nearest word is of interest.
 */
export function editDistance(a: string, b: string, enough = Number.POSITIVE_INFINITY): number {
  if (Math.abs(a.length - b.length) >= enough) return enough;
  let before: number[] = [];
  let above = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let edits = Math.min((above[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (above[j - 1] ?? 0) + same);
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      if (swapped) edits = Math.min(edits, (before[j - 2] ?? 0) + 1);
      row.push(edits);
    }
    [before, above] = [above, row];
  }
  return above[b.length] ?? enough;
}
