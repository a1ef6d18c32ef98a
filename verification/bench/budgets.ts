/** What a caller may be made to pay. A budget is changed here and nowhere else, and with a reason. */
export const budgets = {
  /** A formula with its guards, called by name, against the bare arithmetic [ns]. */
  call: (raw: number): number => 3 * raw + 5,
  /** The array form against a loop of the bare arithmetic. */
  columns: 1.2,
  /** A whole design against its own formula calls. */
  design: 2,
  /** The weakest stretch of a long profile, and the best start over a long forecast [ms]. */
  long: { profile: 50, bestStart: 300 },
  /** `hoopwright survey` against a loop that a person wrote on the same parser. */
  survey: 2,
  /** Minified and gzipped [kB of 1000 bytes]. */
  size: { root: 75, designRepair: 55, formula: 1 },
  /** `import` of an entry against a start of Node that does nothing. */
  imports: { '.': 1.6, './json': 2, './formulas': 2 } as Readonly<Record<string, number>>,
  /** A command against the same. */
  commands: { evaluate: 1.5, design: 2.2 } as Readonly<Record<string, number>>,
};

/** The row of a budget, or no member where none is set: `undefined` is no budget. */
export function within(budget: number | undefined): { readonly budget?: number } {
  return budget === undefined ? {} : { budget };
}
