import type { Time } from '../../quantity/index.js';
import type { RepairDesign } from '../../repair/design/design.js';
import { planWork } from '../../repair/plan/plan-work.js';
import { type CureOverHistory, type Cures, waitOf } from '../../repair/timeline/cure-law.js';
import type { ChosenOptions } from '../options.js';
import { numberIn, preferredUnit } from '../units.js';
import { curve, marks, plot, strokeKey } from './plot.js';
import { drawing, label, line } from './svg.js';

const HOUR = 3600;
const SHARES = Array.from({ length: 20 }, (_, index) => (index + 1) / 20);

/**
 * The steel over the hours of the job, and the share of its cure that the laminate has by then: to each share the wait of a
 * law that asks for that share of the time, by the timeline itself. Nothing where no history is stated or the wait is not known.
 */
export function cureCurve(design: RepairDesign, options: ChosenOptions): string | undefined {
  const { cures, steps } = planWork(design);
  const started = steps.find(({ id }) => id === 'cure')?.startsAt;
  const law = cures?.laws.laminate.law;
  const history = cures?.history;
  if (cures === undefined || history === undefined || started === undefined || law?.sort !== 'over the history')
    return undefined;
  const shares = curedShares(cures, law, started);
  const cured = shares.at(-1);
  if (cured === undefined || cured[1] !== 1) return undefined;
  const unit = preferredUnit('temperature', 'temperature', options.units);
  const steel = hourly(history).map(([hour, kelvin]) => [hour, numberIn('temperature', kelvin, unit)] as const);
  const end = Math.ceil(cured[0]);
  const shown = steel.filter(([hour]) => hour <= end);
  const last = shown.at(-1);
  const lowest = Math.min(...shown.map(([, degrees]) => degrees));
  const highest = Math.max(...shown.map(([, degrees]) => degrees));
  const room = Math.max(2, (highest - lowest) / 6);
  const axes = plot(
    { title: 'hours from the start of the work', from: 0, to: end, marks: marks(0, end, 8) },
    {
      title: `steel [${unit}]`,
      from: lowest - room,
      to: highest + room,
      marks: marks(lowest - room, highest + room, 5),
    },
    40,
    190,
  );
  const share = (value: number): number => 190 - value * 150;
  const [firstShare] = shares;
  return drawing(
    'cure',
    `${design.case.title}: cure of the laminate over the temperature of the steel`,
    axes.bottom + 22,
    [
      label(2, 12, 'Cure of the laminate over the temperature of the steel'),
      ...axes.pieces,
      label(418, 28, 'cured [%]', 'end'),
      ...[0, 0.25, 0.5, 0.75, 1].map((value) => label(379, share(value) + 4, String(value * 100))),
      curve(
        [...shown, ...(last === undefined ? [] : [[end, last[1]] as const])].map(([hour, degrees]) => [
          axes.x(hour),
          axes.y(degrees),
        ]),
        'solid',
      ),
      curve(
        [[started / HOUR, 0] as const, ...shares].map(([hour, part]) => [axes.x(hour), share(part)]),
        'dashed',
      ),
      ...(firstShare === undefined ? [] : [line(axes.x(started / HOUR), 190, axes.x(started / HOUR), 182)]),
      strokeKey(
        [
          ['solid', 'steel'],
          ['dashed', 'share of the cure'],
        ],
        axes.bottom + 14,
      ),
    ],
  );
}

/** Hour and share, from the hour at which the laminate is laid. */
function curedShares(cures: Cures, law: CureOverHistory, started: Time): (readonly [number, number])[] {
  return SHARES.flatMap((share) => {
    const part = { ...law, requiredTime: (law.requiredTime * share) as Time };
    const wait = waitOf({ ...cures, laws: { ...cures.laws, laminate: { law: part } } }, 'laminate', started);
    return wait.known ? [[(started + wait.time) / HOUR, share] as const] : [];
  });
}

/** Corners of the stepped line of a history. */
function hourly(history: NonNullable<Cures['history']>): (readonly [number, number])[] {
  let hour = 0;
  return history.flatMap(({ duration, temperature }) => {
    const from = hour;
    hour += duration / HOUR;
    return [[from, temperature] as const, [hour, temperature] as const];
  });
}
