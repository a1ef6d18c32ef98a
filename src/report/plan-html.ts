import type { WorkPlan } from '../repair/plan/plan.js';
import { escapedHtml } from './html-text.js';
import { planScript } from './page/plan-script.js';
import { pagePolicy } from './page-policy.js';
import { lineText } from './plan-amount.js';
import { stepCard } from './plan-card.js';
import { planStyle } from './plan-page.js';
import { CALLED, type PlanTextOptions, REMOVAL, reasonText, stockText, timingSentences } from './plan-text.js';
import { sha256 } from './sha-256.js';
import type { UnitSystem } from './units.js';

/**
 * The plan of the work as one HTML page that needs nothing else: it reads without a network and without script, at the
 * width of a telephone and on paper. With script, a real hour that is entered moves the hours that follow.
 *
 * @param plan of `planWork`
 * @param options units of the page
 */
export function planHtml(plan: WorkPlan, { units = 'si' }: PlanTextOptions = {}): string {
  return [
    '<!doctype html>',
    '<html lang="en"><head><meta charset="utf-8">',
    pagePolicy(planScript),
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>Plan: ${escapedHtml(plan.title)}</title>`,
    `<style>${planStyle}</style></head><body><main>`,
    `<header><p class="kind">Plan of the work</p><h1>${escapedHtml(plan.title)}</h1>`,
    plan.reference === undefined ? '' : `<p>${escapedHtml(plan.reference)}</p>`,
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
        index === 1 ? `<p><output id="return">${escapedHtml(text)}</output></p>` : `<p>${escapedHtml(text)}</p>`,
      )
      .join('')}</section>`,
    listSection('Cautions', plan.cautions, 'cautions'),
    bringSection(plan, units),
    plan.start === undefined ? '' : '<p><button type="button" id="open-all">Open every step</button></p>',
    ...plan.steps.map((step, index) => stepCard(plan, step, index + 1, units)),
    listSection(
      REMOVAL,
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
          `<li><label><input type="checkbox" data-mark="${sort}-${index}"> ${escapedHtml(stockText(item, units))}</label>${
            item.hasBatch === true ? `; <label>batch <input type="text" data-note="batch-${index}"></label>` : ''
          }</li>`,
      )
      .join('');
  return [
    '<section class="bring"><h2>What to bring</h2>',
    `<h3>Materials, each with its batch number and use-by date</h3><ul>${items(materials, 'material')}</ul>`,
    `<h3>Tools</h3><ul>${items(tools, 'tool')}</ul>`,
    `<h3>Telephone</h3><p class="fields">${CALLED.map(callField).join('')}</p></section>`,
  ].join('');
}

function callField(whom: string): string {
  return `<label>${whom} <input type="tel" data-note="telephone-${whom.replaceAll(' ', '-')}"></label>`;
}

function refusal({ verdict, reasons, missing }: WorkPlan, units: UnitSystem): string {
  const items = [...reasons.map((reason) => reasonText(reason, units)), ...missing];
  return [
    `<section class="alert"><h2>No work: the design says ${escapedHtml(verdict)}</h2>${list(items)}`,
    '<p>Keep people away, lower the pressure or isolate the line, and call the owner and the designer.</p></section>',
  ].join('');
}

function listSection(title: string, items: readonly string[], style = ''): string {
  return `<section class="${style}"><h2>${title}</h2>${list(items)}</section>`;
}

function list(items: readonly string[], style = ''): string {
  const name = style === '' ? '' : ` class="${style}"`;
  return `<ul${name}>${items.map((item) => `<li>${escapedHtml(item)}</li>`).join('')}</ul>`;
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
