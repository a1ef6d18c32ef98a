import { keysOf } from '../../../src/repair/case/place.js';
import { fieldId } from './draw-leaf.js';
import type { Refusal } from './refusal.js';

/** Says each refusal beside its field, and takes away what was said before. Those of no field of the form are given back. */
export function placeRefusals(form: HTMLElement, refusals: readonly Refusal[]): Refusal[] {
  const slots = new Map<string, HTMLElement>();
  for (const slot of form.querySelectorAll<HTMLElement>('[data-refusal]')) {
    slot.hidden = true;
    slot.textContent = '';
    slots.set(slot.dataset['refusal'] ?? '', slot);
  }
  for (const box of form.querySelectorAll('[aria-invalid]')) box.removeAttribute('aria-invalid');
  return refusals.filter((refusal) => {
    const slot = slotFor(slots, refusal.path);
    if (slot === undefined) return true;
    const isFirst = slot.textContent === '';
    slot.hidden = false;
    slot.classList.toggle('unfilled', refusal.isUnfilled && (isFirst || slot.classList.contains('unfilled')));
    slot.textContent = isFirst ? refusal.text : `${slot.textContent} ${refusal.text}`;
    if (!refusal.isUnfilled) for (const box of boxesAt(refusal.path)) box.setAttribute('aria-invalid', 'true');
    return false;
  });
}

/** The slot of a place, or that of the nearest field that holds it. */
function slotFor(slots: ReadonlyMap<string, HTMLElement>, path: string): HTMLElement | undefined {
  for (let at = path; at !== ''; at = holderOf(at)) {
    const slot = slots.get(at);
    if (slot !== undefined) return slot;
  }
  return undefined;
}

function holderOf(path: string): string {
  const last = keysOf(path).at(-1);
  return path.slice(0, Math.max(0, path.length - (typeof last === 'number' ? `[${last}]`.length : `.${last}`.length)));
}

function boxesAt(path: string): HTMLElement[] {
  return ['box', 'unit', 'way'].flatMap((part) => document.getElementById(fieldId(path, part)) ?? []);
}
