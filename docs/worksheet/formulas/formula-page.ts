import { findFormulas, typesetEquation } from '../../../src/evaluate/index.js';
import type { AnyFormula } from '../../../src/formula/index.js';
import { parseJson } from '../../../src/json/parse-json.js';
import { type UnitSystem, units as unitTables } from '../../../src/quantity/index.js';
import { isKind } from '../../../src/quantity/units/index.js';
import { formulaById } from '../../../src/registry/index.js';
import { formulaSheet } from '../../../src/report/index.js';
import { layOnPaper } from '../answer/paper.js';
import { drawControls } from '../case/draw-control.js';
import { placeRefusals } from '../case/place-refusals.js';
import { put } from '../case/places.js';
import { byId, element, options } from '../dom.js';
import { type Calculation, calculationOf } from './calculation.js';
import { drawResult, mathBox } from './draw-result.js';
import { type Given, inputControls } from './inputs.js';

/** What a link to a calculation holds. */
interface FormulaState {
  readonly formula: string;
  readonly given: Given;
  readonly claimed: string;
}

const MOST = 30;
const PAUSE = 200;

let formula: AnyFormula | undefined;
let given: Given = {};
let system: UnitSystem = 'si';
let waiting: ReturnType<typeof setTimeout> | undefined;
let told: (state: FormulaState) => void = () => undefined;

/** Starts the calculator: formulas by words of the trade, and whatever is entered told to `tell`. */
export function watchFormulas(tell: (state: FormulaState) => void): void {
  told = tell;
  byId('find').addEventListener('input', drawFound);
  byId('claimed').addEventListener('input', later);
  byId('formula-units').addEventListener('change', ({ target }) => {
    system = (target as HTMLSelectElement).value as UnitSystem;
    drawFormula();
  });
  byId('result-unit').addEventListener('change', later);
  byId('formula-form').addEventListener('submit', (event) => event.preventDefault());
  drawFound();
}

/** Shows the calculation that the text of a link holds; false where it names no formula. */
export function openFormula(text: string): boolean {
  try {
    const { formula: id, given: entered = {}, claimed = '' } = parseJson(text) as Partial<FormulaState>;
    const found = typeof id === 'string' && typeof claimed === 'string' ? formulaById(id) : undefined;
    if (found !== undefined) choose(found, { ...entered }, claimed);
    return found !== undefined;
  } catch {
    return false;
  }
}

function drawFound(): void {
  const found = findFormulas(byId<HTMLInputElement>('find').value);
  const more = found.length - MOST;
  byId('found-count').textContent =
    found.length === 0
      ? 'No formula has all of these words.'
      : `${found.length} found${more > 0 ? `; the first ${MOST} are shown` : ''}.`;
  byId('found').replaceChildren(
    ...found.slice(0, MOST).map((each) => {
      const button = element('button', { type: 'button', class: 'link' }, each.title);
      button.addEventListener('click', () => {
        choose(each, {}, '');
        byId('formula-title').focus();
      });
      return element('li', {}, button, element('span', { class: 'says' }, ` ${each.id}`));
    }),
  );
}

function choose(next: AnyFormula, entered: Given, claimed: string): void {
  formula = next;
  given = entered;
  byId<HTMLInputElement>('claimed').value = claimed;
  const [kind] = resultKinds(next);
  const symbols = kind === undefined || !isKind(kind) ? [] : Object.keys(unitTables[kind]);
  byId('result-unit').replaceChildren(...options('as the system has it', symbols, ''));
  byId('formula-body').hidden = false;
  drawFormula();
}

function resultKinds({ output }: AnyFormula): string[] {
  const outputs = typeof output.symbol === 'string' ? [output] : Object.values(output);
  return outputs.map((each) => (each as { kind: string }).kind);
}

function drawFormula(): void {
  if (formula === undefined) return;
  byId('formula-title').textContent = formula.title;
  const { mathml, text } = typesetEquation(formula);
  byId('equation').replaceChildren(mathBox(mathml, text));
  drawInputs();
  layOnPaper(byId('card'), formulaSheet(formula, { format: 'html', units: system }), 4);
  compute();
}

function drawInputs(): void {
  if (formula === undefined) return;
  const focused = document.activeElement?.id;
  byId('formula-form').replaceChildren(
    ...drawControls(inputControls(formula, given, system), (path, value, isOtherForm) => {
      given = put(given, path, value) as Given;
      if (isOtherForm) drawInputs();
      later();
    }),
  );
  if (focused !== undefined && focused !== '') document.getElementById(focused)?.focus();
}

/** From the first key on the old result is gone. */
function later(): void {
  byId('result').replaceChildren(element('p', {}, 'Computing anew'));
  clearTimeout(waiting);
  waiting = setTimeout(compute, PAUSE);
}

function compute(): void {
  if (formula === undefined) return;
  const claimed = byId<HTMLInputElement>('claimed').value;
  const unit = byId<HTMLSelectElement>('result-unit').value;
  const [kind = ''] = resultKinds(formula);
  const kinds = unit === '' ? {} : { [kind]: unit };
  const calculation = calculationOf(formula, given, claimed, { system, kinds });
  placeRefusals(byId('formula-form'), calculation.sort === 'refused' ? calculation.refusals : []);
  byId('result').replaceChildren(...drawResult(formula, calculation));
  const said = brief(calculation);
  if (byId('result-brief').textContent !== said) byId('result-brief').textContent = said;
  told({ formula: formula.id, given, claimed });
}

function brief(calculation: Calculation): string {
  if (calculation.sort !== 'answered') return 'No result';
  const { evaluated, check } = calculation;
  const checked =
    check === undefined
      ? ''
      : 'agrees' in check && check.agrees
        ? '; your result agrees'
        : '; your result does not agree';
  return `Result: ${String(evaluated.value)} ${evaluated.unit}, ${evaluated.warnings.length} warnings${checked}`;
}
