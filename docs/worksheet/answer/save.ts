import type { UnitSystem } from '../../../src/quantity/index.js';
import { byId, element, options } from '../dom.js';
import { designFile, drawingFile, planPage, sheetPage } from './documents.js';
import type { Outcome } from './outcome.js';

type Answered = Extract<Outcome, { sort: 'answered' }>;

/** A file that the page can save. */
interface Saved {
  readonly words: string;
  readonly name: string;
  readonly type: string;
  /** Its text; nothing where this answer has no such file. */
  readonly text: (document: unknown, outcome: Outcome, units: UnitSystem) => string | undefined;
}

const ofAnswer = (write: (answered: Answered, units: UnitSystem) => string | undefined): Saved['text'] => {
  return (_, outcome, units) => (outcome.sort === 'answered' ? write(outcome, units) : undefined);
};

/** What can be saved: the case at any time, the rest as long as there is an answer. */
const saves: readonly Saved[] = [
  { words: 'the case', name: 'case.json', type: 'application/json', text: (document) => caseText(document) },
  { words: 'the calculation sheet', name: 'sheet.html', type: 'text/html', text: ofAnswer(sheetPage) },
  { words: 'the plan of the work', name: 'plan.html', type: 'text/html', text: ofAnswer(planPage) },
  { words: 'the drawing', name: 'drawing.svg', type: 'image/svg+xml', text: ofAnswer(drawingFile) },
  { words: 'the design as JSON', name: 'design.json', type: 'application/json', text: ofAnswer(designFile) },
];

/** A case as its file has it. */
export function caseText(document: unknown): string {
  return `${JSON.stringify(document, null, 2)}\n`;
}

/** The box of what can be saved; `write` gives its text as of now. */
export function watchSaves(write: (text: Saved['text']) => string | undefined): void {
  const box = byId<HTMLSelectElement>('save');
  const all = saves.map(({ words }) => words);
  box.append(...options(undefined, all, ''));
  byId('take-save').addEventListener('click', () => {
    const chosen = saves.find(({ words }) => words === box.value);
    const text = chosen === undefined ? undefined : write(chosen.text);
    byId('save-says').textContent = text === undefined ? 'There is no such file as long as there is no answer.' : '';
    if (chosen !== undefined && text !== undefined) saveFile(chosen, text);
  });
}

/** Hands a text to the browser as a file. */
function saveFile({ name, type }: Saved, text: string): void {
  const url = URL.createObjectURL(new Blob([text], { type: `${type};charset=utf-8` }));
  element('a', { href: url, download: name }).click();
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}
