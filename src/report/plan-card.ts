import { BLANK } from '../repair/plan/blank.js';
import type { PlanStep, WorkPlan } from '../repair/plan/plan.js';
import { escapedHtml } from './html-text.js';
import { lineText } from './plan-amount.js';
import { hourlyHead, hoursRead } from './plan-hourly.js';
import { planStepTimes } from './plan-text.js';
import type { UnitSystem } from './units.js';

/** A step as a card: its head says what and when, folded or not; what it asks for stands below it. */
export function stepCard(plan: WorkPlan, step: PlanStep, number: number, units: UnitSystem): string {
  const text = (lines: PlanStep['does']): string[] => lines.map((each) => lineText(each, units));
  const parts: readonly (readonly [label: string, items: readonly string[], style: string])[] = [
    ['Do', text(step.does), 'do'],
    ['Use', text(step.uses), 'use'],
    ['Common practice, without a source', text(step.practice), 'trade'],
    ['Go on when', text(step.goes), 'go'],
    ['Stop when', text(step.stops), 'stop'],
    ['Call', [step.call], 'call'],
    ['Signs', [`${step.signs}: ${BLANK}${BLANK}`], 'sign'],
  ];
  const isHold = step.sort === 'hold point';
  return [
    `<section class="step${isHold ? ' hold' : ''}" id="step-${step.id}"><details open data-card="${step.id}">`,
    `<summary><h2><span>${number}</span> ${escapedHtml(step.title)}</h2>`,
    `<p class="when"><b>${step.sort}</b> <output id="when-${step.id}">${escapedHtml(planStepTimes(plan, step))}</output></p></summary>`,
    ...parts.filter(([, items]) => items.length > 0).map(([label, items, style]) => part(step.id, label, items, style)),
    hourly(step, units),
    `<p class="hour"><label>Real hour <input type="time" required data-step="${step.id}" value="${step.actual === undefined ? '' : clockOf(step.actual)}"></label>${
      isHold
        ? ` <label><input type="checkbox" data-hold="${step.id}"${step.passed === true ? ' checked' : ''}> read and passed</label>`
        : ''
    }</p></details>`,
    `<p class="fault" id="fault-${step.id}" role="alert">${step.stop ?? ''}</p>`,
    '</section>',
  ].join('');
}

/** What belongs under one word, which stands in front of the first of it: a heading of its own would take a line on a telephone. */
function part(id: string, label: string, items: readonly string[], style: string): string {
  const rows = items.map((item, index) => {
    const word = index === 0 ? `<b>${label}</b> ` : '';
    return `<li>${word}${withFields(item, `${id}-${style}-${index}`)}</li>`;
  });
  return `<ul class="${style}" aria-label="${label}">${rows.join('')}</ul>`;
}

/** A text whose places to write on are fields, each kept by a name of its own. */
function withFields(text: string, key: string): string {
  const label = escapedHtml(text.replaceAll(BLANK, '').trim());
  const [first = '', ...rest] = text.split(BLANK);
  // Two places in a row are one that is twice as long.
  const fields = rest.map((after, index) => {
    const isDoubled = after === '' && index < rest.length - 1;
    if (isDoubled) return '';
    // What ends the clause stays on the line of the place that it ends.
    const end = /^[.,;:]/u.exec(after)?.[0] ?? '';
    const field = `<input class="blank" type="text" data-note="${key}-${index}" aria-label="${label}">`;
    return `<span class="place">${field}${end}</span>${escapedHtml(after.slice(end.length))}`;
  });
  return `${escapedHtml(first)}${fields.join('')}`;
}

/** A place for each reading of each hour. */
function hourly(step: PlanStep, units: UnitSystem): string {
  const { hourly: readings } = step;
  if (readings === undefined) return '';
  const hours = Array.from({ length: hoursRead(step) }, (_, index) => index + 1);
  const fields = (hour: number): string =>
    readings
      .map(
        ({ name }) =>
          `<input type="text" inputmode="decimal" data-note="${step.id}-${name}-${hour}" aria-label="${name}, hour ${hour}">`,
      )
      .join('');
  return `<p>${escapedHtml(hourlyHead(readings, units))}</p><ol class="hourly">${hours.map((hour) => `<li><span>${hour}</span>${fields(hour)}</li>`).join('')}</ol>`;
}

/** A time of day for the input, without its day. */
function clockOf(actual: string): string {
  return (actual.split(' ').at(-1) ?? '').padStart(5, '0');
}
