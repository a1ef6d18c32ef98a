/** What code tells while it runs with no change switched on: which changes it comes by, and which of them make a difference there. */

/** A changed value to be worked out beside the original; 0 where that might do something twice. */
type Beside = Readonly<Record<string, (() => unknown) | 0>>;

export class Differences {
  /** How many times each change was come by. */
  readonly reached: Record<string, number> = {};
  private readonly different = new Set<string>();

  has(id: string): boolean {
    return this.different.has(id);
  }

  /** Where there is no value to compare, coming by is as good as a difference. */
  met(ids: readonly string[]): void {
    for (const id of ids) {
      this.count(id);
      this.different.add(id);
    }
  }

  compared<T>(original: () => T, changes: Beside): T {
    let value: T;
    try {
      value = original();
    } catch (error) {
      this.met(Object.keys(changes));
      throw error;
    }
    for (const id in changes) {
      this.count(id);
      const changed = changes[id];
      if (!(this.different.has(id) || (typeof changed === 'function' && isAlike(value, changed)))) {
        this.different.add(id);
      }
    }
    return value;
  }

  private count(id: string): void {
    this.reached[id] = (this.reached[id] ?? 0) + 1;
  }
}

function isAlike(value: unknown, changed: () => unknown): boolean {
  try {
    return Object.is(value, changed());
  } catch {
    return false;
  }
}
