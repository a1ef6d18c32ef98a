import { documentTable } from '../../../src/json/document-table.js';
import type { Fields } from '../../../src/repair/case/table-field.js';
import { element } from '../dom.js';
import { controlsOf } from './controls.js';
import { type Change, drawControls } from './draw-control.js';
import { parts } from './parts.js';

/** The form of a case: each part a section, each block of the case a group of fields in it. */
export function drawForm(held: unknown, change: Change): HTMLElement[] {
  const controls = controlsOf(documentTable as Fields, held);
  return parts.map(({ id, title, says, keys }, index) => {
    const own = keys.flatMap((key) => controls.filter(({ path }) => path === key));
    return element(
      'section',
      { class: 'part', id: `part-${id}`, 'aria-labelledby': `part-${id}-title` },
      element('h3', { id: `part-${id}-title` }, element('span', { class: 'count' }, String(index + 1)), ` ${title}`),
      element('p', { class: 'says' }, says),
      ...drawControls(own, change),
    );
  });
}
