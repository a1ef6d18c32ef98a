import type { UnitSystem } from '../../../src/quantity/index.js';
import type { Refusal } from '../case/refusal.js';
import { byId, element, list } from '../dom.js';
import { markTab, type TabName, tabNames } from '../tabs.js';
import { answerCard } from './card.js';
import { showDrawings, showPlan, showSheet } from './documents.js';
import { counts, drawAnswer, drawRefusals, verdictClass } from './draw-answer.js';
import type { Outcome } from './outcome.js';

/** Takes every number of an answer off the screen while the next one is computed. */
export function showComputing(): void {
  const answer = byId('answer');
  answer.setAttribute('aria-busy', 'true');
  byId('brief').className = 'brief computing';
  byId('brief-text').textContent = 'Computing anew';
}

/** Shows what became of a case in the form that the reader chose; nothing of the answer before stays. */
export function showOutcome(outcome: Outcome, tab: TabName, units: UnitSystem, elsewhere: readonly Refusal[]): void {
  byId('answer').removeAttribute('aria-busy');
  for (const name of tabNames) emptyPanel(name);
  const isAnswered = outcome.sort === 'answered';
  byId('tabs').hidden = !isAnswered;
  brief(outcome);
  if (outcome.sort === 'answered') {
    markTab(tab);
    showTab(outcome, tab, units);
    return;
  }
  markTab('summary');
  byId('panel-summary').replaceChildren(...withoutAnswer(outcome, elsewhere));
}

/** Draws one form of an answer. */
export function showTab(outcome: Extract<Outcome, { sort: 'answered' }>, tab: TabName, units: UnitSystem): void {
  const panel = emptyPanel(tab);
  if (tab === 'summary') {
    panel.append(...drawAnswer(answerCard(outcome.design, outcome.decoded.typed, units)));
    return;
  }
  const paper = element('div', { class: `paper ${tab}` });
  panel.append(paper);
  if (tab === 'sheet') showSheet(paper, outcome, units);
  else if (tab === 'plan') showPlan(paper, outcome, units);
  else showDrawings(paper, outcome, units);
}

function emptyPanel(name: TabName): HTMLElement {
  const panel = byId(`panel-${name}`);
  panel.replaceChildren();
  return panel;
}

function withoutAnswer(outcome: Exclude<Outcome, { sort: 'answered' }>, elsewhere: readonly Refusal[]): HTMLElement[] {
  switch (outcome.sort) {
    case 'empty':
      return [
        element('div', { class: 'verdict' }, element('p', { class: 'word' }, 'No case yet')),
        element(
          'p',
          {},
          'Fill in the form, start from an example, or paste a case. The answer appears here as you type.',
        ),
      ];
    case 'unread':
    case 'fault':
      return [
        element(
          'div',
          { class: 'verdict refused' },
          element('p', { class: 'word' }, 'No answer'),
          element('p', {}, outcome.message),
        ),
      ];
    case 'refused':
      return [
        ...drawRefusals(outcome.refusals),
        ...(elsewhere.length === 0
          ? []
          : [element('h3', {}, 'Not on this form'), list(elsewhere.map(({ text }) => text))]),
      ];
  }
}

/** The verdict in one line, which is read out when it changes and stays in sight. */
function brief(outcome: Outcome): void {
  const [text, style] = briefly(outcome);
  byId('brief').className = `brief ${style}`;
  byId('brief-text').textContent = text;
  // Read out when it is another one, and never while somebody types.
  if (byId('announced').textContent !== text) byId('announced').textContent = text;
}

function briefly(outcome: Outcome): readonly [text: string, style: string] {
  switch (outcome.sort) {
    case 'empty':
      return ['No case yet', ''];
    case 'unread':
    case 'fault':
      return ['No answer: the case cannot be read', 'refused'];
    case 'refused':
      return [`No answer: ${counts(outcome.refusals)}`, 'refused'];
    case 'answered': {
      const { verdict, warnings, assumed, cautions } = outcome.design;
      const said = `${verdict.charAt(0).toUpperCase()}${verdict.slice(1)}`;
      return [
        `${said}: ${counted(warnings.length, 'warning')}, ${assumed.length} assumed, ${counted(cautions.length, 'caution')}`,
        verdictClass(verdict),
      ];
    }
  }
}

function counted(count: number, one: string): string {
  return `${count} ${one}${count === 1 ? '' : 's'}`;
}
