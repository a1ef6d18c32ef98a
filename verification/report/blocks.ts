/** A document in blocks, which both renderings understand: no markup inside text, only marked runs. */

/** A run of text: plain, code, strong, a symbol in TeX, or a link within the document. */
export type Run =
  | string
  | { readonly code: string }
  | { readonly strong: string }
  | { readonly tex: string }
  | { readonly link: string; readonly to: string }
  /** The page on which an anchor stands, in the form that has pages. */
  | { readonly pageOf: string };

export type Text = Run | readonly Run[];

export interface Table {
  readonly sort: 'table';
  readonly head: readonly Text[];
  readonly rows: readonly (readonly Text[])[];
  /** One letter a column: l, r or c; left where it is missing. */
  readonly align?: string;
  /** Verdict or tag of each row, by which it is shaded. */
  readonly marks?: readonly string[];
  /** Anchor of each row that has one. */
  readonly ids?: readonly string[];
  /** Set in two columns beside each other, for many short rows. */
  readonly twofold?: boolean;
  /** Widths of the columns in per cent of the page. */
  readonly widths?: readonly number[];
}

export type Block =
  | { readonly sort: 'heading'; readonly level: 1 | 2 | 3; readonly text: string; readonly id: string }
  | { readonly sort: 'paragraph'; readonly text: Text; readonly strong?: boolean; readonly small?: boolean }
  /** The headings of the second level. */
  | { readonly sort: 'contents' }
  | { readonly sort: 'list'; readonly items: readonly Text[] }
  | { readonly sort: 'equation'; readonly tex: string; readonly text: string; readonly note: string }
  | { readonly sort: 'code'; readonly text: string }
  /** The name is that of its file, where a form keeps its pictures apart. */
  | { readonly sort: 'plot'; readonly name: string; readonly svg: string; readonly title: string }
  | { readonly sort: 'figures'; readonly items: readonly { readonly value: string; readonly label: string }[] }
  | Table;

export const heading = (level: 1 | 2 | 3, text: string, id: string): Block => ({ sort: 'heading', level, text, id });
export const paragraph = (...text: readonly Run[]): Block => ({ sort: 'paragraph', text });
export const list = (...items: readonly Text[]): Block => ({ sort: 'list', items });
export const table = (head: readonly Text[], rows: readonly (readonly Text[])[], rest: Partial<Table> = {}): Block => ({
  sort: 'table',
  head,
  rows,
  ...rest,
});
export const code = (text: string): Run => ({ code: text });
export const strong = (text: string): Run => ({ strong: text });
export const link = (text: string, to: string): Run => ({ link: text, to });

export function runs(text: Text): readonly Run[] {
  return Array.isArray(text) ? text : [text as Run];
}

/** The anchor of a formula in the document. */
export function anchor(id: string): string {
  return `f-${id.replaceAll('/', '-')}`;
}

/** The anchor of a case. */
export function caseAnchor(id: string): string {
  return `c-${id}`;
}

export const formulaLink = (id: string): Run => link(id, anchor(id));
export const pageOf = (anchorOf: string): Run => ({ pageOf: anchorOf });

/** `1 case`, `2 cases`. */
export const count = (number: number, one: string, many = `${one}s`): string =>
  `${number} ${number === 1 ? one : many}`;
