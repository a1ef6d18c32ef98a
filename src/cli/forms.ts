import { UsageError } from './usage-error.js';

/** A form in which a design can be written. */
export type Form =
  | 'sheet-text'
  | 'sheet-markdown'
  | 'sheet-html'
  | 'design-json'
  | 'drawing'
  | 'plan-text'
  | 'plan-html';

/** What a folder holds: every form, under one name each. */
export const folderForms: readonly (readonly [name: string, form: Form])[] = [
  ['sheet.html', 'sheet-html'],
  ['sheet.md', 'sheet-markdown'],
  ['sheet.txt', 'sheet-text'],
  ['drawing.svg', 'drawing'],
  ['plan.html', 'plan-html'],
  ['plan.txt', 'plan-text'],
  ['design.json', 'design-json'],
];

/** Files of a design by the ending of their name: a page is the sheet, the plan has its own command. */
export const designEndings: Readonly<Record<string, Form>> = {
  html: 'sheet-html',
  md: 'sheet-markdown',
  markdown: 'sheet-markdown',
  txt: 'sheet-text',
  json: 'design-json',
  svg: 'drawing',
};

/** Files of a plan by the ending of their name. */
export const planEndings: Readonly<Record<string, Form>> = { html: 'plan-html', txt: 'plan-text' };

/** The form that the name of a file asks for; nothing where the name is that of a folder. @throws UsageError */
export function formOf(path: string, endings: Readonly<Record<string, Form>>): Form | undefined {
  const ending = /[^/\\]\.([^./\\]+)$/u.exec(path)?.[1]?.toLowerCase();
  if (ending === undefined) return undefined;
  if (Object.hasOwn(endings, ending)) return endings[ending];
  const known = Object.keys(endings).map((each) => `.${each}`);
  throw new UsageError(`--out is "${path}"; the name of a file must end with ${known.join(', ')}`);
}
