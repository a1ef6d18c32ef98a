import { onClock } from '../../quantity/clock.js';
import { type Line, saidIn, type Time } from '../../quantity/index.js';
import type { RepairDesign, Warning } from '../design/design.js';
import { type Duration, leastOf } from '../timeline/duration.js';
import { stopsOf } from '../timeline/stops.js';
import type { StepId, Timeline, TimelineStep } from '../timeline/timeline.js';
import { alertsFor } from './alerts.js';
import { readHour } from './clock.js';
import { hoursWith } from './entered-hours.js';
import { factsOf, type PlanFacts } from './facts.js';
import { withGauge } from './gauge.js';
import type { PlanOptions, PlanStep, WorkPlan } from './plan.js';
import { cureStep } from './step-cure.js';
import type { StepWords } from './step-words.js';
import { removal, stepsAfter } from './steps-after.js';
import { stepsBefore } from './steps-before.js';
import { fillerSteps } from './steps-filler.js';
import { sealSteps } from './steps-seal.js';
import { wrapStep } from './steps-wrap.js';
import { materialsFor, toolsFor } from './stock.js';

/**
 * Puts a design into words for the crew: every step of its timeline with what to do, how much, when, what lets the crew go
 * on, what stops it and who signs. Waits are those at the hour at which a material is really laid.
 *
 * A design that was not made has no steps: the plan then says why nobody starts.
 *
 * @param design made or not
 * @param options start on the clock, real hours of steps, times of steps that the design cannot know
 * @throws CalculationError `invalid-input` for an hour that is none, or a step that the plan does not have
 */
export function planWork(design: RepairDesign, options: PlanOptions = {}): WorkPlan {
  const { case: repairCase, verdict, reasons, missing, cautions } = design;
  const start = options.start ?? repairCase.crew?.start;
  const base = {
    title: repairCase.title,
    ...(repairCase.reference === undefined ? {} : { reference: repairCase.reference }),
    verdict,
    reasons,
    missing: missing.map(({ field, why, askWhom }) => `${field}: ${why}; ask ${askWhom}`),
    ...(start === undefined ? {} : { start }),
    removal,
    cautions,
  };
  if (design.verdict !== 'designed') {
    const earliestReturn = { known: false, because: 'there is no design' } as const;
    const nothing = { steps: [], criticalPath: [], withoutTime: [], alerts: [], materials: [], tools: [], removal: [] };
    return { ...base, ...nothing, earliestReturn };
  }
  const moved = hoursWith(design, start, options);
  const { timeline: hours } = moved;
  const facts = factsOf(design, moved);
  const words = wordsOf(facts);
  const { actual: began = {} } = options;
  const passed = [...new Set(options.passed)];
  const stops = stopsOf(hours.steps, { began, passed });
  const steps = hours.steps.map((step) => ({
    ...inWords(step, words, warnedAt(step.id, hours, design.warnings)),
    ...(began[step.id] === undefined ? {} : { actual: began[step.id] }),
    ...(passed.includes(step.id) ? { passed: true as const } : {}),
    ...(stops.has(step.id) ? { stop: stops.get(step.id) } : {}),
  }));
  return {
    ...base,
    steps,
    cures: moved.cures,
    ...(options.durations === undefined ? {} : { stated: options.durations }),
    criticalPath: steps.filter(({ critical }) => critical).map(({ id }) => id),
    withoutTime: steps.filter(({ duration }) => !duration.known).map(({ id }) => id),
    earliestReturn: stops.size === 0 ? hours.earliestReturn : stoppedReturn(stops, hours.earliestReturn),
    alerts: alertsFor(facts, steps),
    materials: materialsFor(facts),
    tools: toolsFor(facts),
  };
}

function wordsOf(facts: PlanFacts): StepWords[] {
  return [
    ...stepsBefore(facts),
    ...sealSteps(facts),
    ...fillerSteps(facts),
    wrapStep(facts),
    cureStep(facts),
    ...stepsAfter(facts),
  ].map((words) => withGauge(words, facts));
}

/** What the design warns the crew of at a step; a warning of a step that this job does not have stands at the first. */
function warnedAt(id: StepId, { steps }: Timeline, warnings: readonly Warning[]): Line[] {
  const [first] = steps;
  return warnings.flatMap((warning) => {
    if (warning.step === undefined) return [];
    const at = steps.some((each) => each.id === warning.step) ? warning.step : first?.id;
    return at === id ? [saidIn(warning, (text) => `WARNING: ${text}`)] : [];
  });
}

/** Nobody knows when the line is back while the work is stopped: not before it would have been. */
function stoppedReturn(stops: ReadonlyMap<string, string>, planned: Duration): Duration {
  return { known: false, because: `stopped at ${[...stops.keys()].join(', ')}`, atLeast: leastOf(planned) };
}

function inWords(step: TimelineStep, words: readonly StepWords[], warned: readonly Line[]): PlanStep {
  const own = words.find(({ id }) => id === step.id);
  if (own === undefined) throw new Error(`the plan has no words for the step "${step.id}": a fault of this library`);
  const { uses = [], practice = [] } = own;
  return { ...step, ...own, does: [...warned, ...own.does], uses, practice };
}

/**
 * A time of the job as people write it: on the clock where the start is known.
 *
 * @param plan with the start on the clock, where it has one
 * @param time from the start of the job
 * @returns clock time, with its day where that is not the first; nothing where the plan has no start
 */
export function hourOf({ start }: WorkPlan, time: Time): string | undefined {
  return start === undefined ? undefined : onClock(readHour(start, 'start'), time);
}
