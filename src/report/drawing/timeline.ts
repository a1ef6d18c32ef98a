import { type ClockTime, onClock, readClock } from '../../quantity/clock.js';
import type { Time } from '../../quantity/index.js';
import type { RepairDesign } from '../../repair/design/design.js';
import type { StepId, TimelineStep } from '../../repair/timeline/timeline.js';
import type { ChosenOptions } from '../options.js';
import { planAmountText } from '../plan-amount.js';
import { at, box, drawing, INK, label, line, type Piece } from './svg.js';

const NAME = 'timeline';
const NAMES = 126;
const PLOT_LEFT = NAMES + 12;
const PLOT_RIGHT = 318;
const TEXT = PLOT_RIGHT + 14;
const ROW = 18;
const TOP = 62;
const HOUR = 3600;
/** Between two marks of the hour. */
const TICKS = [1, 2, 3, 4, 6, 12, 24, 48, 96].map((hours) => hours * HOUR);

const WORDS: Readonly<Record<StepId, string>> = {
  permit: 'permit',
  stock: 'check the stock',
  survey: 'survey',
  'rough-cleaning': 'rough cleaning',
  seal: 'seal the leak',
  putty: 'putty hardens',
  surface: 'prepare surface',
  gate: 'site gate',
  filler: 'place filler',
  'filler-wait': 'filler hardens',
  'surface-again': 'abrade again',
  wrap: 'lay the wrap',
  cure: 'wrap cures',
  inspection: 'inspection',
  'pressure-test': 'pressure test',
  return: 'return to service',
};

const WAITS: readonly StepId[] = ['putty', 'filler-wait', 'cure'];

/** Every step of the job over the hours of its one timeline, with its hold points; nothing without a timeline. */
export function timelineDrawing(design: RepairDesign, { units }: ChosenOptions): string | undefined {
  const { timeline, case: repairCase } = design;
  if (timeline === undefined) return undefined;
  const { steps } = timeline;
  const end = Math.max(HOUR, ...steps.map(({ endsAt }) => endsAt));
  const x = (time: number): number => PLOT_LEFT + (time / end) * (PLOT_RIGHT - PLOT_LEFT);
  const bottom = TOP + steps.length * ROW;
  const start = repairCase.crew === undefined ? undefined : readClock(repairCase.crew.start);
  const windows = windowsOf(design, units.system);
  return drawing(NAME, `${repairCase.title}: the steps of the job over time`, bottom + 58 + windows.length * 15, [
    label(4, 14, 'Hours of the job, at the earliest'),
    label(4, 28, start === undefined ? 'from its start' : `from ${onClock(start, 0 as Time)} on the first day`),
    ...ticks(end, x, bottom),
    ...steps.flatMap((step, index) => row(step, TOP + index * ROW, x, units.system, start)),
    ...key(bottom + 8),
    ...windows.map((words, index) => label(8, bottom + 64 + index * 15, words)),
  ]);
}

/** What has to be done within a time from the mixing, or before steel that is prepared is prepared again. */
function windowsOf({ rolls, timeline }: RepairDesign, system: 'si' | 'us'): string[] {
  const within = (value: number): string =>
    planAmountText({ name: 'time', kind: 'time', value, toward: 'down' }, system);
  const windows: string[] = [];
  if (rolls?.allowedTime !== undefined)
    windows.push(`wrap: lay each ${rolls.charge} within ${within(rolls.allowedTime)}`);
  for (const { takes } of timeline?.steps ?? [])
    if ('goodFor' in takes) windows.push(`prepared steel: covered within ${within(takes.goodFor)}, or abraded again`);
  return windows;
}

function ticks(end: number, x: (time: number) => number, bottom: number): Piece[] {
  const every = TICKS.find((each) => end / each <= 5) ?? end;
  const pieces: Piece[] = [];
  for (let time = 0; time <= end; time += every)
    pieces.push(
      line(x(time), TOP - 8, x(time), bottom, 'faint'),
      label(x(time), TOP - 12, `${time / HOUR} h`, 'middle'),
    );
  return pieces;
}

/** A bar as long as the step; a diamond where it is a hold point; open where nobody knows how long it takes. */
function row(
  { id, sort, startsAt, endsAt, duration }: TimelineStep,
  y: number,
  x: (time: number) => number,
  system: 'si' | 'us',
  start: ClockTime | undefined,
): Piece[] {
  const middle = y + ROW / 2;
  const pieces = [label(NAMES, middle + 4, WORDS[id], 'end')];
  const [from, to] = [x(startsAt), x(endsAt)];
  if (!duration.known) {
    pieces.push(
      `<path d="M${at(from)} ${at(middle - 5)}h7l4 5l-4 5h-7Z" fill="#fff" stroke="${INK}" stroke-dasharray="2 2"/>`,
    );
  } else if (endsAt > startsAt) {
    const fill = WAITS.includes(id) ? '#fff' : '#1f4e79';
    pieces.push(box(from, middle - 5, Math.max(to - from, 2), 10, fill));
    if (WAITS.includes(id))
      for (let each = from + 4; each < to; each += 5) pieces.push(line(each, middle - 5, each, middle + 5, 'faint'));
  }
  if (sort === 'hold point') pieces.push(`<path d="M${at(to)} ${at(middle - 6)}l6 6l-6 6l-6 -6Z" fill="${INK}"/>`);
  const text = duration.known
    ? duration.time === 0
      ? start === undefined
        ? ''
        : onClock(start, startsAt)
      : planAmountText({ name: 'time', kind: 'time', value: duration.time, toward: 'up' }, system)
    : 'not stated';
  pieces.push(label(TEXT, middle + 4, text));
  return pieces;
}

function key(y: number): Piece[] {
  return [
    box(8, y + 2, 18, 10, '#1f4e79'),
    label(32, y + 11, 'work'),
    box(84, y + 2, 18, 10, '#fff'),
    line(88, y + 2, 88, y + 12, 'faint'),
    line(93, y + 2, 93, y + 12, 'faint'),
    line(98, y + 2, 98, y + 12, 'faint'),
    label(108, y + 11, 'wait'),
    `<path d="M${164} ${at(y + 1)}l6 6l-6 6l-6 -6Z" fill="${INK}"/>`,
    label(176, y + 11, 'hold point: its reading releases it,'),
    label(176, y + 25, 'never the clock'),
    `<path d="M8 ${at(y + 31)}h7l4 5l-4 5h-7Z" fill="#fff" stroke="${INK}" stroke-dasharray="2 2"/>`,
    label(32, y + 40, 'time not stated: all that follows is later'),
  ];
}
