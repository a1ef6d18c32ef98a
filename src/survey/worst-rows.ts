import { compareRanks, type Rank } from './rank.js';

/** Keeps the rows that rank first, so many and no more, whatever comes by. */
export class WorstRows<T> {
  /** A heap: what ranks last of those kept stands at the top. */
  readonly #kept: { readonly rank: Rank; readonly order: number; readonly row: T }[] = [];
  readonly #most: number;
  #seen = 0;

  /** @param most rows that are kept, 1 or above */
  constructor(most: number) {
    this.#most = most;
  }

  /** Takes a row by its rank; of those kept the one that then ranks last falls out. */
  add(rank: Rank, row: T): void {
    const entry = { rank, order: this.#seen++, row };
    if (this.#kept.length < this.#most) {
      this.#kept.push(entry);
      this.#rise(this.#kept.length - 1);
    } else if (this.#isBefore(entry, this.#kept[0] as typeof entry)) {
      this.#kept[0] = entry;
      this.#sink();
    }
  }

  /** The rows kept, the worst first; of equal ones the earlier. */
  inOrder(): T[] {
    return [...this.#kept].sort((a, b) => (this.#isBefore(a, b) ? -1 : 1)).map(({ row }) => row);
  }

  #isBefore(a: { rank: Rank; order: number }, b: { rank: Rank; order: number }): boolean {
    const by = compareRanks(a.rank, b.rank);
    return by === 0 ? a.order < b.order : by < 0;
  }

  #rise(from: number): void {
    const kept = this.#kept;
    for (let at = from; at > 0; ) {
      const above = (at - 1) >> 1;
      if (!this.#isBefore(entryAt(kept, above), entryAt(kept, at))) return;
      [kept[at], kept[above]] = [entryAt(kept, above), entryAt(kept, at)];
      at = above;
    }
  }

  #sink(): void {
    const kept = this.#kept;
    for (let at = 0; ; ) {
      let last = at;
      for (const below of [2 * at + 1, 2 * at + 2])
        if (below < kept.length && this.#isBefore(entryAt(kept, last), entryAt(kept, below))) last = below;
      if (last === at) return;
      [kept[at], kept[last]] = [entryAt(kept, last), entryAt(kept, at)];
      at = last;
    }
  }
}

function entryAt<T>(list: readonly T[], index: number): T {
  return list[index] as T;
}
