/** The worksheet page: what is entered becomes a case, the case an answer, and both stay on the page. */
import { parseJson } from '../../src/json/parse-json.js';
import type { UnitSystem } from '../../src/quantity/index.js';
import { version } from '../../src/repair/index.js';
import { type Outcome, outcomeOf } from './answer/outcome.js';
import { caseText, saveFile, saves } from './answer/save.js';
import { showComputing, showOutcome, showTab } from './answer/show-outcome.js';
import { drawForm } from './case/draw-form.js';
import { placeRefusals } from './case/place-refusals.js';
import { put } from './case/places.js';
import { byId, options } from './dom.js';
import { examples } from './examples.js';
import { type FormulaState, openFormula, watchFormulas } from './formulas/formula-page.js';
import { linkedBy, linkOf, readLink } from './link.js';
import { type TabName, watchTabs } from './tabs.js';

/** How long nothing is typed before the case is designed. */
const PAUSE = 200;

let held: unknown = {};
let outcome: Outcome = { sort: 'empty' };
let tab: TabName = 'summary';
let units: UnitSystem = 'si';
let waiting: ReturnType<typeof setTimeout> | undefined;

const form = byId<HTMLFormElement>('form');
const json = byId<HTMLTextAreaElement>('json');

/** From the first key on the old answer is gone; the new one comes when the typing pauses. */
function later(compute: () => void): void {
  showComputing();
  clearTimeout(waiting);
  waiting = setTimeout(compute, PAUSE);
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
  void writeAddress(false);
}

function show(next: Outcome): void {
  clearTimeout(waiting);
  outcome = next;
  const elsewhere = placeRefusals(form, next.sort === 'refused' ? next.refusals : []);
  showOutcome(next, tab, units, elsewhere);
}

/** Takes a text as the case: a file, a link, or what was typed into the box. */
function take(text: string): void {
  try {
    replace(parseJson(text));
  } catch (error) {
    refuse(error instanceof Error ? error.message : String(error));
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

/** The case stands in the address, so that a reload keeps it and a copy of the address shares it. */
async function writeAddress(isNew: boolean): Promise<void> {
  const written = held;
  const fragment = outcome.sort === 'empty' ? '' : await linkOf('case', JSON.stringify(written));
  if (written !== held) return;
  const address = `${location.href.split('#')[0]}${fragment ?? ''}`;
  if (isNew) history.pushState(null, '', address);
  else history.replaceState(null, '', address);
  byId<HTMLInputElement>('link').value =
    fragment === undefined ? 'This case is too long for a link: save it as a file.' : address;
}

async function readAddress(): Promise<void> {
  if (location.hash === '') return replace({});
  const linked = linkedBy(location.hash);
  if (linked === undefined) return;
  const reading = await readLink(linked, location.hash);
  if (linked === 'formula' && reading.ok && tookFormula(reading.text)) return view('formula');
  view('case');
  if (!reading.ok) refuse(reading.problem);
  else if (linked === 'case') take(reading.text);
  else refuse('What this link holds cannot be read: it names no formula of this page.');
}

/** Whether a text names a formula and what was entered for it. */
function tookFormula(text: string): boolean {
  try {
    const state = parseJson(text) as Partial<FormulaState> | null;
    const { formula = '', given = {}, claimed = '' } = state ?? {};
    if (typeof formula !== 'string' || typeof claimed !== 'string') return false;
    return openFormula({ formula, given: { ...given }, claimed });
  } catch {
    return false;
  }
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
  held = document;
  outcome = outcomeOf(held);
  await writeAddress(true);
  replace(document);
}

json.addEventListener('input', () =>
  later(() => {
    try {
      replace(parseJson(json.value));
    } catch (error) {
      const message = error instanceof Error ? error.message : String(error);
      refuse(message);
      say(json, message);
    }
  }),
);
form.addEventListener('submit', (event) => event.preventDefault());

const example = byId<HTMLSelectElement>('example');
example.append(
  ...options(
    undefined,
    examples.map(({ title }) => title),
    '',
  ),
);
byId('take-example').addEventListener('click', () => {
  const chosen = examples.find(({ title }) => title === example.value);
  if (chosen !== undefined) void start(structuredClone(chosen));
});
byId('clear').addEventListener('click', () => void start({}));
byId<HTMLInputElement>('file').addEventListener('change', async ({ target }) => {
  const file = (target as HTMLInputElement).files?.[0];
  if (file !== undefined) take(await file.text());
});

byId<HTMLSelectElement>('units').addEventListener('change', ({ target }) => {
  units = (target as HTMLSelectElement).value as UnitSystem;
  show(outcome);
});
byId('print').addEventListener('click', () => print());
byId('copy').addEventListener('click', async () => {
  const link = byId<HTMLInputElement>('link');
  link.select();
  await navigator.clipboard?.writeText(link.value).catch(() => undefined);
});
const save = byId<HTMLSelectElement>('save');
save.append(
  ...options(
    undefined,
    saves.map(({ words }) => words),
    '',
  ),
);
byId('take-save').addEventListener('click', () => {
  const chosen = saves.find(({ words }) => words === save.value);
  const text = chosen?.text(held, outcome, units);
  if (chosen !== undefined && text !== undefined) saveFile(chosen, text);
});

watchTabs((chosen) => {
  tab = chosen;
  if (outcome.sort === 'answered') showTab(outcome, tab, units);
});
byId('version').textContent = `hoopwright ${version}`;
// The address holds the case: a way to a place on the page must not write over it.
for (const way of document.querySelectorAll<HTMLAnchorElement>('a[href^="#"]'))
  way.addEventListener('click', (event) => {
    event.preventDefault();
    const target = byId(way.hash.slice(1));
    target.scrollIntoView();
    target.focus();
  });
byId('view-case').addEventListener('click', () => {
  view('case');
  void writeAddress(false);
});
byId('view-formula').addEventListener('click', () => view('formula'));
watchFormulas(async (state) => {
  const fragment = await linkOf('formula', JSON.stringify(state));
  if (fragment !== undefined) history.replaceState(null, '', fragment);
});
addEventListener('popstate', () => void readAddress());
void readAddress();
