import { element, options } from '../dom.js';
import { boxesOf } from './amount-text.js';
import type { AmountControl, ChoiceControl, TextControl } from './control.js';
import { type Change, mark, refusalSlot } from './draw-control.js';
import { writtenAmount, writtenChoice, writtenText } from './written.js';

type LeafControl = AmountControl | TextControl | ChoiceControl;

/** The id of a part of a field: one for each place of the case. */
export function fieldId(path: string, part: string): string {
  return `${path}/${part.replaceAll(' ', '-')}`;
}

/** One field: its label, its boxes, what it is, and room for what is wrong with it. */
export function drawLeaf(control: LeafControl, change: Change): HTMLElement {
  const { path, label, must } = control;
  return element(
    'div',
    { class: 'field', 'data-path': path },
    element('label', { for: fieldId(path, 'box') }, label, mark(must)),
    element('div', { class: 'boxes' }, ...leafBoxes(control, change)),
    element('p', { class: 'says', id: fieldId(path, 'says') }, hint(control)),
    refusalSlot(path),
  );
}

/** What a field is, where it usually lies, and an example. */
export function hint(control: LeafControl): string {
  const { says, example } = control;
  const usual = control.sort === 'choice' || control.usual === '' ? '' : ` Usually ${control.usual}.`;
  const such = control.sort === 'choice' || example === '' ? '' : ` Such as ${example}.`;
  return `${says}.${usual}${such}`;
}

/** The boxes of a field; one that stands beside a choice has no label of its own and takes `called`. */
export function leafBoxes(control: LeafControl, change: Change, called?: string): HTMLElement[] {
  switch (control.sort) {
    case 'amount':
      return amountBoxes(control, change, called);
    case 'choice':
      return [choiceBox(control, change, called)];
    default:
      return [textBox(control, change, called)];
  }
}

function boxAttributes({ path }: LeafControl, called: string | undefined): Record<string, string | undefined> {
  return {
    id: fieldId(path, 'box'),
    'aria-label': called,
    'aria-describedby': `${fieldId(path, 'says')} ${fieldId(path, 'refusal')}`,
    autocomplete: 'off',
    spellcheck: 'false',
  };
}

function amountBoxes(control: AmountControl, change: Change, called: string | undefined): HTMLElement[] {
  const { path, kind, label } = control;
  const number = element('input', { ...boxAttributes(control, called), inputmode: 'text', class: 'number' });
  number.value = control.number;
  const unit = element(
    'select',
    { id: fieldId(path, 'unit'), class: 'unit', 'aria-label': `Unit of ${label}` },
    ...options('unit', control.units.map(unitWords), unitWords(control.unit)),
  );
  const chosenUnit = (): string => (unit.value === FRACTION ? '1' : unit.value);
  number.addEventListener('input', () => change(path, writtenAmount(control, number.value, chosenUnit()), false));
  // A unit that was typed after the number moves to its own box.
  number.addEventListener('change', () => {
    const boxes = boxesOf(kind, writtenAmount(control, number.value, chosenUnit()) ?? '');
    if (boxes.unit === '') return;
    number.value = boxes.number;
    unit.value = unitWords(boxes.unit);
  });
  unit.addEventListener('change', () => change(path, writtenAmount(control, number.value, chosenUnit()), true));
  return [number, unit];
}

const FRACTION = 'fraction';

/** A ratio without a unit is a fraction, and its unit has to be chosen like any other. */
function unitWords(symbol: string): string {
  return symbol === '1' ? FRACTION : symbol;
}

function textBox(control: TextControl, change: Change, called: string | undefined): HTMLElement {
  const { path, sort } = control;
  const box = element('input', {
    ...boxAttributes(control, called),
    type: sort === 'clock' ? 'time' : 'text',
    inputmode: sort === 'number' ? 'decimal' : undefined,
    class: sort === 'number' || sort === 'clock' ? 'number' : 'words',
  });
  box.value = control.text;
  box.addEventListener('input', () => change(path, writtenText(control, box.value), false));
  return box;
}

function choiceBox(control: ChoiceControl, change: Change, called: string | undefined): HTMLElement {
  const { path, options: all, text } = control;
  const box = element(
    'select',
    { ...boxAttributes(control, called), autocomplete: undefined, spellcheck: undefined },
    ...options(
      'choose',
      all.map(({ words }) => words),
      text,
    ),
  );
  box.addEventListener('change', () => change(path, writtenChoice(control, box.value), false));
  return box;
}
