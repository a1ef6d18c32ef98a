import type { Designed } from '../../../src/repair/index.js';
import { calculationSheet } from '../../../src/report/index.js';

const SECONDS: Readonly<Record<string, number>> = { min: 60, h: 3600, day: 86_400, s: 1 };
const WAITS: readonly string[] = ['putty', 'filler-wait', 'cure'];

/** Times that stand behind a label, in seconds. */
function toldAs(sheet: string, label: string): number[] {
  return [...sheet.matchAll(new RegExp(`^${label}\\s+(?:at least )?([\\d.]+) (\\w+)`, 'gmu'))].map(
    ([, number, unit]) => Number(number) * (SECONDS[unit ?? ''] ?? Number.NaN),
  );
}

/** The sheet tells each wait, the time that the climate has to hold and that of the wrap, to the digits that it prints. */
export function hoursOnSheet(design: Designed): string | undefined {
  const sheet = calculationSheet(design);
  const tells = (label: string, time: number): boolean =>
    toldAs(sheet, label).some((told) => Math.abs(told / time - 1) < 1e-3);
  for (const { id, duration } of design.timeline.steps) {
    if (!duration.known || duration.time === 0 || !WAITS.includes(id)) continue;
    if (!tells('Wait for cure', duration.time)) return `the sheet does not tell the wait ${id}`;
  }
  const { holdTime } = design.site;
  const hold = holdTime.known ? holdTime.time : (holdTime.atLeast ?? 0);
  if (hold > 0 && !tells('Weather has to hold', hold)) return 'the sheet has another time that the climate has to hold';
  const { wrapTime } = design.rolls;
  return wrapTime === undefined || tells('Whole wrap', wrapTime) ? undefined : 'the sheet has another time of the wrap';
}
