import type { PageElement } from './page-element.js';

/** What the page of a plan asks of its window. */
export interface PlanWindow {
  /** Whether all cards together would be many screens long. */
  readonly isNarrow: boolean;
  /** Calls before the page is printed. */
  beforePrint(call: () => void): void;
}

/** What was done of a step: read and passed at a hold point, begun else. */
export type IsDone = (id: string) => boolean;

/**
 * Folds the cards on a telephone, all but that of the step that comes next; `openNext` opens the one after it when that is
 * done. What is open stays open, and paper has all of them.
 */
export function foldCards(cards: readonly PageElement[], { isNarrow, beforePrint }: PlanWindow, isDone: IsDone) {
  const openNext = (): void => {
    const next = cards.find(({ dataset }) => !isDone(dataset['card'] ?? ''));
    if (next !== undefined) next.open = true;
  };
  const openAll = (): void => {
    for (const card of cards) card.open = true;
  };
  beforePrint(openAll);
  if (isNarrow) {
    for (const card of cards) card.open = false;
    openNext();
  }
  return { openNext, openAll };
}
