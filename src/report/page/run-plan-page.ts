import { movedPlan, type PageEntries, type PagePlan } from './moved-plan.js';
import type { PageElement } from './page-element.js';
import { foldCards, type PlanWindow } from './plan-cards.js';

/** The document of a page, as far as the plan touches it. */
export interface PlanDocument {
  getElementById(id: string): PageElement | null;
  querySelectorAll(selector: string): Iterable<PageElement>;
}

/** Where entries are kept over a reload; a page that may not keep them works without. */
export interface PlanStore {
  getItem(key: string): string | null;
  setItem(key: string, text: string): void;
  removeItem(key: string): void;
}

/** Runs the page of a plan: entered hours move what follows, and stay over a reload; a telephone shows the step that comes next. */
export function runPlanPage(page: PlanDocument, storeOf: () => PlanStore, window: PlanWindow): void {
  const element = page.getElementById('plan');
  const plan = JSON.parse(element?.textContent ?? '') as PagePlan;
  const key = `hoopwright-plan-${element?.dataset['key'] ?? ''}`;
  const hours = [...page.querySelectorAll('[data-step]')];
  const holds = [...page.querySelectorAll('[data-hold]')];
  const notes = [...page.querySelectorAll('[data-note]')];
  const marks = [...page.querySelectorAll('[data-mark]')];
  const cards = [...page.querySelectorAll('[data-card]')];

  const kept = (): Partial<{
    began: Record<string, string>;
    passed: string[];
    notes: Record<string, string>;
    marks: string[];
  }> => {
    try {
      return JSON.parse(storeOf().getItem(key) ?? '{}');
    } catch {
      return {};
    }
  };
  const entries = (): PageEntries => {
    const began: Record<string, string> = {};
    for (const { dataset, value } of hours) if (value) began[dataset['step'] ?? ''] = value;
    return { began, passed: holds.flatMap(({ dataset, checked }) => (checked ? [dataset['hold'] ?? ''] : [])) };
  };
  const keep = (): void => {
    const written: Record<string, string> = {};
    for (const { dataset, value } of notes) if (value) written[dataset['note'] ?? ''] = value;
    try {
      const marked = marks.flatMap(({ dataset, checked }) => (checked ? [dataset['mark'] ?? ''] : []));
      storeOf().setItem(key, JSON.stringify({ ...entries(), notes: written, marks: marked }));
    } catch {
      // A page from a disk may have no store: what was entered then lasts as long as the page.
    }
  };
  const show = (): void => {
    const { steps, back, isStopped } = movedPlan(plan, entries());
    for (const { id, text, fault } of steps) {
      const times = page.getElementById(`when-${id}`);
      if (times !== null) times.textContent = text;
      const said = page.getElementById(`fault-${id}`);
      if (said !== null) said.textContent = fault ?? '';
      page.getElementById(`step-${id}`)?.classList.toggle('skipped', fault !== undefined);
      const card = cards.find(({ dataset }) => dataset['card'] === id);
      if (card !== undefined && fault !== undefined) card.open = true;
    }
    const output = page.getElementById('return');
    if (output === null) return;
    output.textContent = back;
    output.classList.toggle('skipped', isStopped);
  };

  const { began = {}, passed, notes: written = {}, marks: marked = [] } = kept();
  for (const field of marks) field.checked = marked.includes(field.dataset['mark'] ?? '');
  for (const field of hours) field.value = began[field.dataset['step'] ?? ''] ?? field.value ?? '';
  for (const field of holds) field.checked = passed?.includes(field.dataset['hold'] ?? '') ?? field.checked === true;
  for (const field of notes) field.value = written[field.dataset['note'] ?? ''] ?? field.value ?? '';
  const folded = foldCards(cards, window, (id) => {
    const hold = holds.find(({ dataset }) => dataset['hold'] === id);
    const hour = hours.find(({ dataset }) => dataset['step'] === id);
    return hold === undefined ? Boolean(hour?.value) : hold.checked === true;
  });
  page.getElementById('open-all')?.addEventListener('click', folded.openAll);
  for (const field of [...hours, ...holds]) {
    field.addEventListener('input', () => {
      keep();
      show();
      folded.openNext();
    });
  }
  for (const field of [...notes, ...marks]) field.addEventListener('input', keep);
  const clear = page.getElementById('clear');
  const asks = clear?.textContent ?? '';
  let isAsked = false;
  clear?.addEventListener('click', () => {
    // Readings and signatures of a day are not erased by one touch of a glove.
    isAsked = !isAsked;
    clear.textContent = isAsked ? 'Erase every hour, reading and signature? Press once more.' : asks;
    if (isAsked) return;
    for (const field of [...hours, ...notes]) field.value = '';
    for (const field of [...holds, ...marks]) field.checked = false;
    try {
      storeOf().removeItem(key);
    } catch {
      // Nothing was kept.
    }
    show();
  });
  show();
}
