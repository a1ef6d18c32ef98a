/** A fault that the library once had: what it did, how it is put back, and which law then goes red. */
export interface Fault {
  /** What the library did. */
  readonly did: string;
  /** Each place stands once in its file. */
  readonly changes: readonly Change[];
  /** The law that notices, by its name. */
  readonly law: string;
  /** What it then says. */
  readonly says: RegExp;
}

/** An expression of a source file that is another with the fault, and what stands before and after it, to tell it from others. */
export interface Change {
  readonly file: string;
  readonly text: string;
  readonly putBack: string;
  readonly around: readonly [before: string, after: string];
}

export const change = (file: string, text: string, putBack: string, around: Change['around'] = ['', '']): Change => ({
  file: `src/${file}.ts`,
  text,
  putBack,
  around,
});

/** A fault that no law of whole designs can express, and why. */
export interface Unseen {
  readonly did: string;
  readonly because: string;
  /** The test that shows it instead. */
  readonly shownBy: string;
}
