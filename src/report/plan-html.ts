import type { PlanStep, WorkPlan } from '../repair/plan/plan.js';
import { planScript } from './page/plan-script.js';
import { pagePolicy } from './page-policy.js';
import { lineText } from './plan-amount.js';
import { planStyle } from './plan-page.js';
import { type PlanTextOptions, planStepTimes, reasonText, stockText, timingSentences } from './plan-text.js';
import { sha256 } from './sha-256.js';
import type { UnitSystem } from './units.js';

/**
 * The plan of the work as one HTML page that needs nothing else: it reads without a network and without script, at the
 * width of a telephone and on paper. With script, a real hour that is entered moves the hours that follow.
 */
export function planHtml(plan: WorkPlan, { units = 'si' }: PlanTextOptions = {}): string {
  return [
    '<!doctype html>',
    '<html lang="en"><head><meta charset="utf-8">',
    pagePolicy(planScript),
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>Plan: ${escaped(plan.title)}</title>`,
    `<style>${planStyle}</style></head><body><main>`,
    `<header><p class="kind">Plan of the work</p><h1>${escaped(plan.title)}</h1>`,
    plan.reference === undefined ? '' : `<p>${escaped(plan.reference)}</p>`,
    '</header>',
    ...(plan.steps.length === 0 ? [refusal(plan, units)] : body(plan, units)),
    '</main></body></html>',
    '',
  ].join('\n');
}

function body(plan: WorkPlan, units: UnitSystem): string[] {
  const alerts = plan.alerts.map((alert) => lineText(alert, units));
  return [
    alerts.length === 0 ? '' : listSection('Before anything else', alerts, 'alert'),
    `<section class="timing">${timingSentences(plan)
      .map((text, index) =>
        index === 1 ? `<p><output id="return">${escaped(text)}</output></p>` : `<p>${escaped(text)}</p>`,
      )
      .join('')}</section>`,
    listSection('Cautions', plan.cautions, 'cautions'),
    bringSection(plan, units),
    ...plan.steps.map((step, index) => stepSection(plan, step, index + 1, units)),
    listSection(
      'Taking it off again',
      plan.removal.map((each) => lineText(each, units)),
    ),
    plan.start === undefined ? '' : scripted(plan),
  ];
}

/** What to bring, on one page: boxes to tick, batch numbers to write down. */
function bringSection({ materials, tools }: WorkPlan, units: UnitSystem): string {
  const items = (stock: WorkPlan['materials'], sort: string): string =>
    stock
      .map(
        (item, index) =>
          `<li><label><input type="checkbox" data-mark="${sort}-${index}"> ${escaped(stockText(item, units))}</label></li>`,
      )
      .join('');
  return [
    '<section class="bring"><h2>What to bring</h2>',
    `<h3>Materials, each with its batch number and use-by date</h3><ul>${items(materials, 'material')}</ul>`,
    `<h3>Tools</h3><ul>${items(tools, 'tool')}</ul>`,
    '<p><label>Batch numbers <input type="text" data-note="batches"></label></p>',
    '<p><label>Telephone of the designer <input type="text" data-note="designer"></label></p></section>',
  ].join('');
}

function refusal({ verdict, reasons, missing }: WorkPlan, units: UnitSystem): string {
  const items = [...reasons.map((reason) => reasonText(reason, units)), ...missing];
  return [
    `<section class="alert"><h2>No work: the design says ${escaped(verdict)}</h2>${list(items)}`,
    '<p>Keep people away, lower the pressure or isolate the line, and call the owner and the designer.</p></section>',
  ].join('');
}

function stepSection(plan: WorkPlan, step: PlanStep, number: number, units: UnitSystem): string {
  const text = (lines: PlanStep['does']): string[] => lines.map((each) => lineText(each, units));
  const parts: readonly (readonly [label: string, items: readonly string[], style: string])[] = [
    ['Do', text(step.does), ''],
    ['Use', text(step.uses), ''],
    ['Common practice, without a source', text(step.practice), 'trade'],
    ['Go on when', text(step.goes), 'go'],
    ['Stop when', text(step.stops), 'stop'],
    ['Call', [step.call], ''],
    ['Signs', [step.signs], 'sign'],
  ];
  const hold = step.sort === 'hold point' ? ' hold' : '';
  return [
    `<section class="step${hold}" id="step-${step.id}"><h2><span>${number}</span> ${escaped(step.title)}</h2>`,
    `<p class="when"><b>${step.sort}</b> <output id="when-${step.id}">${escaped(planStepTimes(plan, step))}</output></p>`,
    ...parts
      .filter(([, items]) => items.length > 0)
      .map(([label, items, style]) => `<h3>${label}</h3>${list(items, style)}`),
    `<p class="hour"><label>Real hour <input type="time" required data-step="${step.id}" value="${step.actual === undefined ? '' : clockOf(step.actual)}"></label>${
      step.sort === 'hold point' ? ` <label><input type="checkbox" data-hold="${step.id}"> read and passed</label>` : ''
    }</p>`,
    `<p class="fault" id="fault-${step.id}" role="alert"></p>`,
    '</section>',
  ].join('');
}

/** A time of day for the input, without its day. */
function clockOf(actual: string): string {
  return (actual.split(' ').at(-1) ?? '').padStart(5, '0');
}

function listSection(title: string, items: readonly string[], style = ''): string {
  return `<section class="${style}"><h2>${title}</h2>${list(items)}</section>`;
}

function list(items: readonly string[], style = ''): string {
  const name = style === '' ? '' : ` class="${style}"`;
  return `<ul${name}>${items.map((item) => `<li>${escaped(item)}</li>`).join('')}</ul>`;
}

/** What the script needs to move the hours by the timeline itself. No text of the case can end the element. */
function data({ start, steps, cures, stated }: WorkPlan): string {
  const rows = steps.map(({ id, title, sort, after, takes }) => ({ id, title, sort, after, takes }));
  return JSON.stringify({ start, steps: rows, ...cures, stated }, rounded).replaceAll('<', '\\u003c');
}

/** Engines differ in the last bits of a power, and one plan has one page, whoever writes it: twelve digits are far beyond a second. */
function rounded(_: string, value: unknown): unknown {
  return typeof value === 'number' ? Number(value.toPrecision(12)) : value;
}

/** The page with the place of its data, by which its entries are kept apart from those of another plan. */
function scripted(plan: WorkPlan): string {
  const text = data(plan);
  const key = sha256(text)
    .replaceAll(/[^A-Za-z0-9]/gu, '')
    .slice(0, 16);
  return `<p><button type="button" id="clear">Clear all entries</button></p><script type="application/json" id="plan" data-key="${key}">${text}</script><script>${planScript}</script>`;
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
}
