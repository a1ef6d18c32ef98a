import type { Time } from '../quantity/index.js';
import type { Reason } from '../repair/design/design.js';
import { BLANK } from '../repair/plan/blank.js';
import type { PlanStep, StockItem, WorkPlan } from '../repair/plan/plan.js';
import { hourOf } from '../repair/plan/plan-work.js';
import { lineText, planAmountText } from './plan-amount.js';
import { hourlyHead, hoursRead } from './plan-hourly.js';
import { returnText, stepTimes } from './plan-times.js';
import { wrapText } from './text.js';
import { timeText } from './time-text.js';
import type { UnitSystem } from './units.js';

/** How a plan is written. */
export interface PlanTextOptions {
  /** System of units; SI where it is left out. */
  readonly units?: UnitSystem | undefined;
}

/** A plan is read on paper in the field and on a telephone. */
const WIDTH = 60;
const LABEL = 6;
/** How a cured wrap comes off stands last, under these words. */
export const REMOVAL = 'Taking it off again: common practice, without a source';
/** Whom a step may say to call. */
export const CALLED = ['designer', 'area authority', 'inspector', 'owner of the line', 'maker of the system'] as const;

/**
 * The plan of the work as plain text: one block a step, no tables, lines of at most 60 characters.
 *
 * @param plan of `planWork`
 * @param options units of the text
 * @returns text that ends with a line break
 */
export function planText(plan: WorkPlan, { units = 'si' }: PlanTextOptions = {}): string {
  const blocks = [head(plan), ...(plan.steps.length === 0 ? [refusal(plan, units)] : body(plan, units))];
  return `${blocks.map((lines) => lines.join('\n')).join('\n\n')}\n`;
}

function body(plan: WorkPlan, units: UnitSystem): string[][] {
  const alerts = plan.alerts.map((alert) => lineText(alert, units));
  return [
    ...(alerts.length === 0 ? [] : [block('BEFORE ANYTHING ELSE', alerts)]),
    timing(plan),
    block('CAUTIONS', plan.cautions),
    block(
      'WHAT TO BRING: MATERIALS',
      plan.materials.map((item) => `${stockText(item, units)}${item.hasBatch === true ? `; batch ${BLANK}` : ''}`),
    ),
    block(
      'WHAT TO BRING: TOOLS',
      plan.tools.map((item) => stockText(item, units)),
    ),
    block(
      'TELEPHONE',
      CALLED.map((whom) => `${whom}: ${BLANK}${BLANK}`),
    ),
    ...plan.steps.map((step, index) => stepLines(plan, step, index + 1, units)),
    block(
      REMOVAL.toUpperCase(),
      plan.removal.map((each) => lineText(each, units)),
    ),
  ];
}

function head({ title, reference }: WorkPlan): string[] {
  return [
    ...wrapText('PLAN OF THE WORK', WIDTH),
    ...wrapText(title, WIDTH),
    ...(reference === undefined ? [] : wrapText(reference, WIDTH)),
    '='.repeat(WIDTH),
  ];
}

/** No design, no work. */
function refusal({ verdict, reasons, missing }: WorkPlan, units: UnitSystem): string[] {
  return [
    ...wrapText(`NO WORK: the design says ${verdict.toUpperCase()}.`, WIDTH),
    ...listed([...reasons.map((reason) => reasonText(reason, units)), ...missing]),
    '',
    ...wrapText(
      'Keep people away, lower the pressure or isolate the line, and call the owner and the designer.',
      WIDTH,
    ),
  ];
}

/** Why there is no design, with the numbers of it. */
export function reasonText({ text, found, limit }: Reason, units: UnitSystem): string {
  const numbers = [
    found === undefined ? [] : [`found ${found.name} ${planAmountText(found, units)}`],
    limit === undefined ? [] : [`limit ${limit.name} ${planAmountText(limit, units)}`],
  ].flat();
  return numbers.length === 0 ? text : `${text} (${numbers.join('; ')})`;
}

function timing(plan: WorkPlan): string[] {
  return timingSentences(plan).flatMap((sentence) => wrapText(sentence, WIDTH));
}

/** When it starts and ends, what sets the end, what nobody has stated. */
export function timingSentences(plan: WorkPlan): string[] {
  const { start, earliestReturn, criticalPath } = plan;
  const clock = start === undefined ? undefined : (time: Time): string => hourOf(plan, time) ?? '';
  const stoppedAt = plan.steps.flatMap(({ stop, title }) => (stop === undefined ? [] : [title]));
  return [
    start === undefined ? 'Start: not stated; hours count from it.' : `Start: ${start}.`,
    returnText(earliestReturn, clock, stoppedAt),
    `What sets it: ${criticalPath.join(', ')}.`,
    ...(earliestReturn.known
      ? []
      : [
          `Why it is not known: ${earliestReturn.because}. Every hour below is the earliest: enter real hours as you go.`,
        ]),
  ];
}

const SORTS: Readonly<Record<PlanStep['sort'], string>> = { work: 'work', 'hold point': 'HOLD POINT' };

function stepLines(plan: WorkPlan, step: PlanStep, number: number, units: UnitSystem): string[] {
  const text = (lines: PlanStep['does']): string[] => lines.map((each) => lineText(each, units));
  return [
    ...wrapText(`${number}  ${step.title.toUpperCase()}`, WIDTH),
    ...wrapText(`${SORTS[step.sort]}, ${planStepTimes(plan, step)}`, WIDTH - 3).map((each) => `   ${each}`),
    ...(step.stop === undefined ? [] : labelled('STOP!', [step.stop])),
    ...labelled('DO', text(step.does)),
    ...labelled('USE', text(step.uses)),
    ...labelled('TRADE', text(step.practice)),
    ...labelled('GO', text(step.goes)),
    ...labelled('STOP', text(step.stops)),
    ...hourlyLines(step, units),
    ...labelled('CALL', [step.call]),
    ...labelled('SIGN', [`${step.signs} ____________________`]),
    ...labelled('HOUR', [
      step.actual === undefined ? `${step.id} began at ____________` : `${step.id} began at ${step.actual}`,
    ]),
  ];
}

/** A place for each reading of each hour. */
function hourlyLines(step: PlanStep, units: UnitSystem): string[] {
  const { hourly } = step;
  if (hourly === undefined) return [];
  const places = Array.from({ length: hoursRead(step) }, (_, index) => {
    const blanks = hourly.map(() => '______').join(' ');
    return `${String(index + 1).padStart(3)} ${blanks}`;
  });
  const width = (places[0] ?? '').length + 1;
  const perLine = Math.max(1, Math.floor((WIDTH - LABEL + 1) / width));
  const rows = Array.from({ length: Math.ceil(places.length / perLine) }, (_, row) =>
    places.slice(row * perLine, (row + 1) * perLine).join(' '),
  );
  return [...labelled('HOURS', [hourlyHead(hourly, units)]), ...rows.map((row) => `${' '.repeat(LABEL)}${row}`)];
}

/** From when to when a step of a plan goes, on its clock where that is stated. */
export function planStepTimes(plan: WorkPlan, step: PlanStep): string {
  return stepTimes(step, (time) => hourOf(plan, time) ?? `${timeText(time, 'up')} after the start`);
}

/** A pack, a tool: what it is, how much of it, what to watch. */
export function stockText({ name, use, order, note }: StockItem, units: UnitSystem): string {
  const parts = [
    use === undefined ? [] : [`use ${planAmountText({ ...use, toward: 'up' }, units)}`],
    order === undefined
      ? []
      : [`order ${planAmountText(order, units)} ${order.value === 1 ? order.name.replace(/s$/u, '') : order.name}`],
    note === undefined ? [] : [lineText(note, units)],
  ].flat();
  return parts.length === 0 ? name : `${name}: ${parts.join('; ')}`;
}

function block(title: string, items: readonly string[]): string[] {
  return [title, ...listed(items)];
}

function listed(items: readonly string[]): string[] {
  return items.flatMap((item) => hung('- ', item, 2));
}

function labelled(label: string, items: readonly string[]): string[] {
  return items.flatMap((item, index) => hung((index === 0 ? label : '').padEnd(LABEL), item, LABEL));
}

/** A text with its first line behind a mark and the rest below it. */
function hung(mark: string, text: string, indent: number): string[] {
  return wrapText(text, WIDTH - indent).map((each, index) => `${index === 0 ? mark : ' '.repeat(indent)}${each}`);
}
