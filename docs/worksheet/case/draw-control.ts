import { element, options } from '../dom.js';
import type { Control, GroupControl, Must, RowsControl, TicksControl, WaysControl } from './control.js';
import { drawLeaf, fieldId, hint, leafBoxes } from './draw-leaf.js';
import { writtenTicks } from './written.js';

/** Tells the page that a place of the case holds something else, and whether other fields belong on the form now. */
export type Change = (path: string, value: unknown, isOtherForm: boolean) => void;

/** Controls one after the other, those of single fields side by side where there is room. */
export function drawControls(controls: readonly Control[], change: Change): HTMLElement[] {
  const drawn: HTMLElement[] = [];
  let grid: HTMLElement | undefined;
  for (const control of controls) {
    if (isWide(control)) {
      grid = undefined;
      drawn.push(drawControl(control, change));
    } else {
      if (grid === undefined) {
        grid = element('div', { class: 'grid' });
        drawn.push(grid);
      }
      grid.append(drawControl(control, change));
    }
  }
  return drawn;
}

function isWide(control: Control): boolean {
  if (control.sort === 'ways') return !control.isValue;
  return control.sort === 'group' || control.sort === 'rows' || control.sort === 'ticks';
}

function drawControl(control: Control, change: Change): HTMLElement {
  switch (control.sort) {
    case 'group':
      return drawGroup(control, change);
    case 'ways':
      return control.isValue ? drawValueWays(control, change) : drawWays(control, change);
    case 'rows':
      return drawRows(control, change);
    case 'ticks':
      return drawTicks(control, change);
    default:
      return drawLeaf(control, change);
  }
}

function drawGroup({ path, label, says, must, inside }: GroupControl, change: Change): HTMLElement {
  return fieldset(path, label, must, says, drawControls(inside, change));
}

/** How a block is given, and the fields of that way. */
function drawWays(control: WaysControl, change: Change): HTMLElement {
  const { path, label, says, must, inside } = control;
  const id = fieldId(path, 'way');
  const way = element(
    'p',
    { class: 'way' },
    element('label', { for: id }, 'Given', element('span', { class: 'unseen' }, `: ${label}`)),
    wayBox(control, id, change),
  );
  return fieldset(path, label, must, says, [way, ...drawControls(inside, change)]);
}

/** A value that may also be said in a word: one field, with its boxes beside the choice. */
function drawValueWays(control: WaysControl, change: Change): HTMLElement {
  const { path, label, says, must, inside } = control;
  const id = fieldId(path, 'way');
  const [leaf] = inside;
  const boxes = leaf === undefined || !('keepsPlace' in leaf) ? [] : leafBoxes(leaf, change, label);
  return element(
    'div',
    { class: 'field', 'data-path': path },
    element('label', { for: id }, label, mark(must)),
    element('div', { class: 'boxes' }, wayBox(control, id, change), ...boxes),
    element(
      'p',
      { class: 'says', id: fieldId(path, 'says') },
      leaf !== undefined && 'usual' in leaf ? hint(leaf) : `${says}.`,
    ),
    refusalSlot(path),
  );
}

function wayBox({ path, ways, chosen }: WaysControl, id: string, change: Change): HTMLElement {
  const box = element(
    'select',
    { id, class: 'way-box', 'aria-describedby': `${fieldId(path, 'says')} ${fieldId(path, 'refusal')}` },
    ...options(
      chosen === '' ? 'choose' : undefined,
      ways.map(({ name }) => name),
      chosen,
    ),
  );
  box.addEventListener('change', () => {
    const way = ways.find(({ name }) => name === box.value);
    change(path, structuredClone(way?.start), true);
  });
  return box;
}

function drawRows({ path, label, says, must, held, rows, start }: RowsControl, change: Change): HTMLElement {
  const drawn = rows.map((row, index) => {
    const remove = element('button', { type: 'button', class: 'quiet' }, `Take row ${index + 1} away`);
    remove.addEventListener('click', () => {
      const left = held.toSpliced(index, 1);
      change(path, left.length === 0 ? undefined : left, true);
    });
    return element(
      'fieldset',
      { class: 'row' },
      element('legend', {}, `${label}, row ${index + 1}`),
      ...drawControls(row, change),
      remove,
    );
  });
  const add = element(
    'button',
    { type: 'button', id: fieldId(path, 'add') },
    rows.length === 0 ? 'Add a row' : 'Add another row',
  );
  add.addEventListener('click', () => change(`${path}[${rows.length}]`, start, true));
  return fieldset(path, label, must, says, [...drawn, add]);
}

function drawTicks(control: TicksControl, change: Change): HTMLElement {
  const { path, label, says, must, options: words, ticked, isNone } = control;
  const tick = (text: string, on: boolean, valueFor: (checked: boolean) => unknown): HTMLElement => {
    const box = element('input', { type: 'checkbox', id: fieldId(path, text), checked: on });
    box.addEventListener('change', () => change(path, valueFor(box.checked), true));
    return element('label', { class: 'tick' }, box, ` ${text}`);
  };
  return fieldset(path, label, must, says, [
    element(
      'div',
      { class: 'ticks' },
      ...words.map((word) => tick(String(word), ticked.includes(word), (on) => writtenTicks(control, word, on))),
      tick('none found', isNone, (on) => (on ? [] : undefined)),
    ),
  ]);
}

function fieldset(path: string, label: string, must: Must, says: string, inside: readonly HTMLElement[]): HTMLElement {
  return element(
    'fieldset',
    { class: 'group', 'data-path': path },
    element('legend', {}, label, mark(must)),
    element('p', { class: 'says', id: fieldId(path, 'says') }, says === '' ? '' : `${says}.`),
    refusalSlot(path),
    ...inside,
  );
}

/** Where a refusal of this place is said. */
export function refusalSlot(path: string): HTMLElement {
  return element('p', { class: 'refusal', id: fieldId(path, 'refusal'), 'data-refusal': path, hidden: true });
}

const marks: Readonly<Record<Must, string>> = {
  required: '',
  'for numbers': 'needed for numbers',
  'to sign': 'needed to sign',
  optional: 'optional',
};

/** Beside the label of what is not asked of every case. */
export function mark(must: Must): HTMLElement | undefined {
  return marks[must] === '' ? undefined : element('span', { class: 'must' }, ` ${marks[must]}`);
}
