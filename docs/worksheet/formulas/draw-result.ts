import type { Evaluated, HandCheck } from '../../../src/evaluate/index.js';
import type { AnyFormula } from '../../../src/formula/index.js';
import { formatNumber } from '../../../src/quantity/format.js';
import { counts } from '../answer/draw-answer.js';
import type { Refusal } from '../case/refusal.js';
import { element, list } from '../dom.js';
import type { Calculation } from './calculation.js';

/** The result of a formula: warnings before the numbers, the arithmetic below them. */
export function drawResult(formula: AnyFormula, calculation: Calculation): HTMLElement[] {
  if (calculation.sort === 'fault') return [without(`${calculation.message}`)];
  if (calculation.sort === 'refused') {
    const elsewhere = calculation.refusals.filter(({ isUnfilled }) => !isUnfilled).map(({ text }) => text);
    return [without(`${counts(calculation.refusals)}.`), ...(elsewhere.length === 0 ? [] : [list(elsewhere)])];
  }
  const { evaluated, check } = calculation;
  const { warnings, step } = evaluated;
  return [
    ...(warnings.length === 0
      ? [element('p', {}, 'No warning.')]
      : [element('div', { class: 'warnings' }, element('h4', {}, `Warnings (${warnings.length})`), list(warnings))]),
    results(formula, evaluated),
    element('h4', {}, 'Worked'),
    mathBox(step.mathml, step.text),
    ...(check === undefined ? [] : [element('h4', {}, 'Your result'), drawCheck(check)]),
  ];
}

function without(text: string): HTMLElement {
  return element(
    'div',
    { class: 'verdict refused' },
    element('p', { class: 'word' }, 'No result'),
    element('p', {}, text),
  );
}

function results(formula: AnyFormula, { results: all }: Evaluated): HTMLElement {
  const heads = ['Result', 'To four digits', 'Unrounded'].map((text) => element('th', { scope: 'col' }, text));
  const rows = Object.entries(all).map(([name, { value, unit }]) => {
    const short = typeof value === 'number' ? formatNumber(value) : plain(value);
    return element(
      'tr',
      {},
      element('th', { scope: 'row' }, outputName(formula, name)),
      element('td', { class: 'number' }, withUnit(short, unit)),
      element('td', {}, typeof value === 'number' ? withUnit(String(value), unit) : ''),
    );
  });
  return element(
    'table',
    { class: 'numbers' },
    element('thead', {}, element('tr', {}, ...heads)),
    element('tbody', {}, ...rows),
  );
}

/** What a result is, in words: one of several by its name, a single one by the declaration itself. */
function outputName({ output }: AnyFormula, name: string): string {
  const outputs = output as Readonly<Record<string, unknown>>;
  const declared = (typeof outputs['symbol'] === 'string' ? outputs : outputs[name]) as { name?: string } | undefined;
  return declared?.name ?? name;
}

function plain(value: unknown): string {
  if (Array.isArray(value)) return `${value.length} rows, in the arithmetic below`;
  return typeof value === 'string' ? value : JSON.stringify(value);
}

function withUnit(text: string, unit: string): string {
  return unit === '' || unit === '1' ? text : `${text} ${unit}`;
}

function drawCheck(check: HandCheck | Refusal): HTMLElement {
  if ('text' in check) return element('p', { class: 'refusal' }, check.text);
  const word = check.agrees ? 'Agrees' : 'Does not agree';
  return element(
    'div',
    { class: `verdict ${check.agrees ? 'designed' : 'refused'}` },
    element('p', { class: 'word' }, word),
    element('p', {}, check.message),
  );
}

/** Mathematics that the library wrote; text where there is no equation to set. */
export function mathBox(mathml: string, text: string): HTMLElement {
  const math = new DOMParser().parseFromString(mathml, 'text/html').querySelector('math');
  if (math === null || math.textContent === '') return element('pre', { class: 'worked', tabindex: '0' }, text);
  math.querySelector('mtable')?.setAttribute('displaystyle', 'true');
  const box = element('div', { class: 'worked', tabindex: '0', role: 'group', 'aria-label': 'Equation' });
  box.append(math);
  return box;
}
