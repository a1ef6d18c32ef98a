/** The worksheet page: what is entered becomes a case, the case an answer, and both stay on the page. */
import { parseJson } from '../../src/json/parse-json.js';
import type { UnitSystem } from '../../src/quantity/index.js';
import { version } from '../../src/repair/index.js';
import { readAddress, watchWays, writeAddress } from './address.js';
import { type Outcome, outcomeOf } from './answer/outcome.js';
import { caseText, watchSaves } from './answer/save.js';
import { showComputing, showOutcome, showTab } from './answer/show-outcome.js';
import { drawForm } from './case/draw-form.js';
import { placeRefusals } from './case/place-refusals.js';
import { put } from './case/places.js';
import { byId } from './dom.js';
import { openFormula, watchFormulas } from './formulas/formula-page.js';
import { type TabName, watchTabs } from './tabs.js';
import { watchStart } from './watch-start.js';

/** How long nothing is typed before the case is designed. */
const PAUSE = 200;

let held: unknown = {};
let outcome: Outcome = { sort: 'empty' };
let tab: TabName = 'summary';
let units: UnitSystem = 'si';
/** What is computed when the typing pauses, and the clock that waits for it. */
let pending: (() => void) | undefined;
let waiting: ReturnType<typeof setTimeout> | undefined;

const form = byId<HTMLFormElement>('form');
const json = byId<HTMLTextAreaElement>('json');

/** From the first key on the old answer is gone; the new one comes when the typing pauses. */
function later(compute: () => void): void {
  showComputing();
  clearTimeout(waiting);
  pending = compute;
  waiting = setTimeout(settle, PAUSE);
}

/** Computes now what still waits: nothing may be printed, saved or shown in other units of an answer that is out of date. */
function settle(): void {
  clearTimeout(waiting);
  const compute = pending;
  pending = undefined;
  compute?.();
}

function redrawForm(): void {
  const focused = document.activeElement?.id;
  form.replaceChildren(...drawForm(held, change));
  if (focused !== undefined && focused !== '') document.getElementById(focused)?.focus();
}

function change(path: string, value: unknown, isOtherForm: boolean): void {
  held = put(held, path, value);
  if (isOtherForm) redrawForm();
  later(design);
}

function design(): void {
  show(outcomeOf(held));
  if (document.activeElement !== json) json.value = caseText(held);
  say(json, undefined);
  void keepAddress(false);
}

function show(next: Outcome): void {
  clearTimeout(waiting);
  pending = undefined;
  outcome = next;
  const elsewhere = placeRefusals(form, next.sort === 'refused' ? next.refusals : []);
  shown(() => showOutcome(outcome, tab, units, elsewhere));
}

/** An answer that cannot be shown in full is not shown at all. */
function shown(draw: () => void): void {
  try {
    draw();
  } catch (error) {
    outcome = { sort: 'fault', message: `This page failed to show the answer: ${messageOf(error)}` };
    showOutcome(outcome, tab, units, []);
  }
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}

/** Takes a text as the case: a file, a link, or what was typed into the box. */
function take(text: string): void {
  try {
    replace(parseJson(text));
  } catch (error) {
    refuse(messageOf(error));
  }
}

function replace(document: unknown): void {
  held = document;
  redrawForm();
  design();
}

/** What came in is no case: the form is emptied, so that no other case stands beside the refusal. */
function refuse(message: string): void {
  held = {};
  redrawForm();
  show({ sort: 'unread', message });
}

function say(box: HTMLElement, message: string | undefined): void {
  const slot = byId(`${box.id}-refusal`);
  slot.hidden = message === undefined;
  slot.textContent = message ?? '';
  if (message === undefined) box.removeAttribute('aria-invalid');
  else box.setAttribute('aria-invalid', 'true');
}

async function keepAddress(isNew: boolean): Promise<void> {
  const written = held;
  const text = outcome.sort === 'empty' ? undefined : JSON.stringify(written);
  const address = await writeAddress('case', text, isNew, () => written === held);
  if (written === held)
    byId<HTMLInputElement>('link').value = address ?? 'This case is too long for a link: save it as a file.';
}

/** Opens what the address holds: a case, the numbers of a formula, or an empty form. */
async function openAddress(): Promise<void> {
  const addressed = await readAddress();
  if (addressed.sort === 'elsewhere') return;
  if (addressed.sort === 'nothing') return replace({});
  const { linked, reading } = addressed;
  if (linked === 'formula' && reading.ok && openFormula(reading.text)) return view('formula');
  view('case');
  if (!reading.ok) refuse(reading.problem);
  else if (linked === 'case') take(reading.text);
  else refuse('What this link holds cannot be read: it names no formula of this page.');
}

/** Shows the case or the calculator. */
function view(name: 'case' | 'formula'): void {
  for (const each of ['case', 'formula'] as const) {
    byId(`${each}-view`).hidden = each !== name;
    byId(`view-${each}`).setAttribute('aria-pressed', String(each === name));
  }
}

/** Another case in place of this one: the way back brings this one again. */
async function start(document: unknown): Promise<void> {
  showComputing();
  held = document;
  outcome = outcomeOf(held);
  await keepAddress(true);
  replace(document);
}

json.addEventListener('input', () =>
  later(() => {
    try {
      replace(parseJson(json.value));
    } catch (error) {
      // Half a text is no reason to lose the case: the form keeps it, and there is no answer until the text can be read.
      const message = messageOf(error);
      show({ sort: 'unread', message: `${message}. The form keeps the case that was read last.` });
      say(json, message);
    }
  }),
);
form.addEventListener('submit', (event) => event.preventDefault());

watchStart((document) => void start(document), take);
byId<HTMLSelectElement>('units').addEventListener('change', ({ target }) => {
  settle();
  units = (target as HTMLSelectElement).value as UnitSystem;
  show(outcome);
});
byId('print').addEventListener('click', () => {
  settle();
  print();
});
byId('copy').addEventListener('click', async () => {
  const link = byId<HTMLInputElement>('link');
  link.select();
  await navigator.clipboard?.writeText(link.value).catch(() => undefined);
});
watchSaves((text) => {
  settle();
  return text(held, outcome, units);
});

watchTabs((chosen) => {
  settle();
  tab = chosen;
  const answered = outcome;
  if (answered.sort === 'answered') shown(() => showTab(answered, tab, units));
});
byId('version').textContent = `hoopwright ${version}`;
byId('view-case').addEventListener('click', () => {
  view('case');
  void keepAddress(false);
});
byId('view-formula').addEventListener('click', () => view('formula'));
watchFormulas((state) => void writeAddress('formula', JSON.stringify(state)));
watchWays();
addEventListener('popstate', () => void openAddress());
void openAddress();
