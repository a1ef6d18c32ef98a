/** One line of an equation, right of its equals sign. */
export interface EquationLine {
  readonly text: string;
  /** A few words beside the line: in which units it stands, what the result is. */
  readonly note?: string | undefined;
}

/** A part of what people read, before it is text, Markdown or HTML. */
export type Block =
  | { readonly sort: 'title'; readonly text: string }
  /** Level 1 opens a part of the sheet, level 2 a section, level 3 a step; the mark stands at the right edge. */
  | { readonly sort: 'heading'; readonly level: 1 | 2 | 3; readonly text: string; readonly mark?: string | undefined }
  | { readonly sort: 'paragraph'; readonly text: string }
  | { readonly sort: 'list'; readonly items: readonly string[] }
  /** Labels and what they say, in columns of which the last may be long. */
  | {
      readonly sort: 'rows';
      readonly rows: readonly (readonly string[])[];
      /** The cells before the last are symbols and numbers: Markdown sets them as code. */
      readonly code?: boolean | undefined;
    }
  /** Columns with heads; a column of numbers is set to the right. */
  | { readonly sort: 'table'; readonly head: readonly string[]; readonly rows: readonly (readonly string[])[] }
  | { readonly sort: 'equation'; readonly left: string; readonly lines: readonly EquationLine[] }
  /** A line for each who signs, for pages alone. */
  | { readonly sort: 'signatures'; readonly who: readonly string[] }
  /** Drawings, for pages alone. */
  | { readonly sort: 'figures'; readonly svgs: readonly string[] };
