import { encodeDesign } from '../../../src/json/index.js';
import type { Designed } from '../../../src/repair/index.js';

interface Told {
  readonly value: number;
}
interface ToldDuration {
  readonly known: boolean;
  readonly time?: Told;
  readonly atLeast?: Told;
}
interface ToldStep {
  readonly id: string;
  readonly startsAt: Told;
  readonly endsAt: Told;
  readonly slack: Told;
  readonly duration: ToldDuration;
}
interface ToldDesign {
  readonly timeline: { readonly steps: readonly ToldStep[]; readonly earliestReturn: ToldDuration };
  readonly site: { readonly holdTime: ToldDuration };
}
type Duration = Designed['timeline']['earliestReturn'];

const agrees = (told: ToldDuration | undefined, own: Duration): boolean =>
  own.known
    ? told?.known === true && told.time?.value === own.time
    : told?.known === false && told.atLeast?.value === own.atLeast;

/** The JSON tells every hour to the last digit. */
export function hoursInJson(design: Designed): string | undefined {
  const { timeline, site } = JSON.parse(JSON.stringify(encodeDesign(design))) as ToldDesign;
  for (const { id, startsAt, endsAt, slack, duration } of design.timeline.steps) {
    const told = timeline.steps.find((step) => step.id === id);
    if (told?.startsAt.value !== startsAt || told.endsAt.value !== endsAt || told.slack.value !== slack)
      return `the JSON has other hours of ${id}`;
    if (!agrees(told.duration, duration)) return `the JSON has another duration of ${id}`;
  }
  if (!agrees(timeline.earliestReturn, design.timeline.earliestReturn)) return 'the JSON has another return';
  return agrees(site.holdTime, design.site.holdTime)
    ? undefined
    : 'the JSON has another time that the climate has to hold';
}
