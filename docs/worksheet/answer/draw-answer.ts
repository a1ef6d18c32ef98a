import { fieldId } from '../case/draw-leaf.js';
import { labelOf, type Refusal } from '../case/refusal.js';
import { element, list } from '../dom.js';
import type { AnswerCard } from './card.js';

/** The answer: the verdict and what speaks against it first, then the numbers, then what they rest on. Nothing is folded away. */
export function drawAnswer(card: AnswerCard): HTMLElement[] {
  const { verdict, ruleSet, reasons, missing, warnings, numbers, assumed, recalled, cautions } = card;
  const asked = missing.map(({ field, text }) => element('span', {}, fieldLink(field, labelOf(field)), `: ${text}`));
  return [
    element(
      'div',
      { class: `verdict ${verdictClass(verdict)}` },
      element('p', { class: 'word' }, `Verdict: ${verdict}`),
      element('p', {}, ruleSet),
    ),
    ...titled('Why not', reasons),
    ...titled('What is missing', asked),
    ...titled(`Warnings (${warnings.length})`, warnings, 'No warning.', 'warnings'),
    ...(numbers.length === 0 ? [] : [element('h3', {}, 'Numbers'), numbersTable(numbers)]),
    ...titled(`Assumed (${assumed.length})`, assumed, 'Nothing: the case gave every value.'),
    element('p', {}, recalled),
    ...titled(`Cautions (${cautions.length})`, cautions, 'None.', 'cautions'),
  ];
}

function titled(title: string, items: readonly (Node | string)[], otherwise?: string, style?: string): HTMLElement[] {
  if (items.length === 0 && otherwise === undefined) return [];
  const body = items.length === 0 ? element('p', {}, otherwise) : list(items);
  return [element('div', { class: style }, element('h3', {}, title), body)];
}

function numbersTable(rows: AnswerCard['numbers']): HTMLElement {
  const heads = ['What', 'How much', 'By, and with'].map((text) => element('th', { scope: 'col' }, text));
  const body = rows.map(({ what, howMuch, by }) =>
    element(
      'tr',
      {},
      element('th', { scope: 'row' }, what),
      element('td', { class: 'number' }, howMuch),
      element('td', {}, by),
    ),
  );
  return element(
    'table',
    { class: 'numbers' },
    element('thead', {}, element('tr', {}, ...heads)),
    element('tbody', {}, ...body),
  );
}

/** How a verdict is coloured; its word says it too. */
export function verdictClass(verdict: AnswerCard['verdict']): string {
  return verdict.replaceAll(' ', '-');
}

const MOST = 12;

/** Why there is no answer: what is to be mended, then what is still to be filled in, each with a way to its field. */
export function drawRefusals(refusals: readonly Refusal[]): HTMLElement[] {
  const faults = refusals.filter(({ isUnfilled }) => !isUnfilled);
  const unfilled = refusals.filter(({ isUnfilled }) => isUnfilled);
  return [
    element(
      'div',
      { class: 'verdict refused' },
      element('p', { class: 'word' }, 'No answer'),
      element('p', {}, `The case cannot be designed yet: ${counts(refusals)}.`),
    ),
    ...titled(
      'To mend',
      faults.map(({ path, text }) => element('span', {}, fieldLink(path, 'Go to the field'), ` ${text}`)),
    ),
    ...titled(
      'Still to fill in',
      unfilled.slice(0, MOST).map(({ path, label }) => fieldLink(path, `${placeOf(path)}${label}`)),
    ),
    ...(unfilled.length > MOST ? [element('p', {}, `and ${unfilled.length - MOST} more, marked on the form.`)] : []),
  ];
}

/** "2 fields to mend, 31 to fill in". */
export function counts(refusals: readonly Refusal[]): string {
  const unfilled = refusals.filter(({ isUnfilled }) => isUnfilled).length;
  const faults = refusals.length - unfilled;
  const parts = [
    ...(faults === 0 ? [] : [`${faults} ${faults === 1 ? 'field' : 'fields'} to mend`]),
    ...(unfilled === 0 ? [] : [`${unfilled} still to fill in`]),
  ];
  return parts.join(', ');
}

/** The block that a field stands in, since labels repeat. */
function placeOf(path: string): string {
  const holder = path.slice(0, Math.max(0, path.lastIndexOf('.')));
  return holder === '' ? '' : `${labelOf(holder)}: `;
}

/** A button that goes to a field of the form. */
function fieldLink(path: string, words: string): HTMLElement {
  const button = element('button', { type: 'button', class: 'link' }, words);
  button.addEventListener('click', () => {
    const target = ['box', 'way', 'add'].map((part) => document.getElementById(fieldId(path, part))).find(Boolean);
    const place = target ?? document.getElementById(fieldId(path, 'refusal'))?.parentElement;
    place?.scrollIntoView({ block: 'center' });
    target?.focus();
  });
  return button;
}
