import { encodeDesign } from '../../src/json/index.js';
import { type Designed, planWork } from '../../src/repair/index.js';
import { calculationSheet, planText } from '../../src/report/index.js';

/** Every hour that an output tells is that of the timeline. */

const SECONDS: Readonly<Record<string, number>> = { min: 60, h: 3600, day: 86_400, s: 1 };
const WAITS = ['putty', 'filler-wait', 'cure'] as const;

interface EncodedStep {
  readonly id: string;
  readonly startsAt: { readonly value: number };
  readonly endsAt: { readonly value: number };
}

function inJson(design: Designed): string | undefined {
  const { timeline } = JSON.parse(JSON.stringify(encodeDesign(design))) as {
    timeline: { steps: readonly EncodedStep[] };
  };
  for (const { id, startsAt, endsAt } of design.timeline.steps) {
    const told = timeline.steps.find((step) => step.id === id);
    if (told?.startsAt.value !== startsAt || told.endsAt.value !== endsAt) return `the JSON has other hours of ${id}`;
  }
  return undefined;
}

/** The waits of the sheet are those of the timeline, to the digits that it prints. */
function onSheet(design: Designed): string | undefined {
  const told = [...calculationSheet(design).matchAll(/^Wait for cure\s+(?:at least )?([\d.]+) (\w+)/gmu)].map(
    ([, number, unit]) => Number(number) * (SECONDS[unit ?? ''] ?? Number.NaN),
  );
  const waits = design.timeline.steps.filter(({ id }) => (WAITS as readonly string[]).includes(id));
  for (const { id, duration } of waits) {
    if (!duration.known || duration.time === 0) continue;
    if (!told.some((time) => Math.abs(time / duration.time - 1) < 1e-3))
      return `the sheet does not tell the wait ${id}`;
  }
  return undefined;
}

/** The plan as text tells each wait to the minute above. */
function inPlan(design: Designed): string | undefined {
  const told = [
    ...planText(planWork(design))
      .replace(/\s+/gu, ' ')
      .matchAll(/, (?:(\d+) h )?(?:(\d+) min)?, to /gu),
  ].map(([, hours, minutes]) => 3600 * Number(hours ?? 0) + 60 * Number(minutes ?? 0));
  const hours = [
    ...planText(planWork(design))
      .replace(/\s+/gu, ' ')
      .matchAll(/, (\d+) h, to /gu),
  ].map(([, number]) => 3600 * Number(number));
  for (const { id, duration } of design.timeline.steps) {
    if (!duration.known || duration.time === 0 || !(WAITS as readonly string[]).includes(id)) continue;
    const found = [...told, ...hours].some((time) => time >= duration.time - 60 && time - duration.time < 61);
    if (!found) return `the plan does not tell the wait ${id}`;
  }
  return undefined;
}

export function outputsApart(design: Designed): string | undefined {
  return inJson(design) ?? onSheet(design) ?? inPlan(design);
}
