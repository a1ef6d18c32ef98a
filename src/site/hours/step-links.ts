import { finite, listOfRows, nonNegative, refuse } from '../../formula/index.js';
import type { Time } from '../../quantity/index.js';

/** A step of the work, and how long it takes. */
export interface ScheduledStep {
  /** A name that no other step bears. */
  readonly name: string;
  /** How long it takes. */
  readonly duration: Time;
}

/** A step begins only when another has ended. */
export interface StepLink {
  /** The step that waits. */
  readonly step: string;
  /** The step that has to end first. */
  readonly after: string;
}

/** The hour at which a step really began. */
export interface EnteredHour {
  /** The step that began. */
  readonly step: string;
  /** From the start of the work. */
  readonly at: Time;
}

export interface ScheduleInput {
  readonly steps: readonly ScheduledStep[];
  readonly links: readonly StepLink[];
  readonly entered?: readonly EnteredHour[] | undefined;
}

/** For each step the places of those that it waits for; steps, links and hours that cannot be are refused. */
export function linksByStep({ steps, links, entered = [] }: ScheduleInput): readonly (readonly number[])[] {
  listOfRows(steps, 'steps');
  listOfRows(links, 'links');
  listOfRows(entered, 'entered');
  if (steps.length === 0) bad('steps', 'empty', 'must hold at least one step of { name, duration }');
  const places = new Map<string, number>();
  for (const [index, { name, duration }] of steps.entries()) {
    if (places.has(name)) bad(`steps[${index}].name`, name, 'must be the name of no other step');
    nonNegative(duration, `steps[${index}].duration`, 's');
    places.set(name, index);
  }
  const before: number[][] = steps.map(() => []);
  for (const [index, { step, after }] of links.entries()) {
    const [at, on] = [placeOf(places, step, `links[${index}].step`), placeOf(places, after, `links[${index}].after`)];
    if (on >= at) bad(`links[${index}].after`, after, `must stand before ${step} in the list of steps`);
    (before[at] as number[]).push(on);
  }
  for (const [index, { step, at }] of entered.entries()) {
    placeOf(places, step, `entered[${index}].step`);
    finite(at, `entered[${index}].at`, 's');
  }
  return before;
}

function placeOf(places: ReadonlyMap<string, number>, name: string, parameter: string): number {
  return places.get(name) ?? bad(parameter, name, `must be one of ${[...places.keys()].join(', ')}`);
}

function bad(parameter: string, value: unknown, constraint: string): never {
  refuse({ code: 'invalid-input', parameter, value, unit: '', constraint });
}
