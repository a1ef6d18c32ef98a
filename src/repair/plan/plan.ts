import type { Amount, Line, Time } from '../../quantity/index.js';
import type { Reason, Verdict } from '../design/design.js';

export type StepSort = 'work' | 'wait' | 'hold point';

/** One step: what to do, with what, when, the number that lets the crew go on and the one that stops it. */
export interface PlanStep {
  readonly id: string;
  readonly title: string;
  readonly sort: StepSort;
  /** Steps that have to be finished first. */
  readonly after: readonly string[];
  /** From the start of the job. */
  readonly startsAt: Time;
  readonly endsAt: Time;
  /** Absent where nobody has stated it: the step then counts nothing, and what follows is `not before`. */
  readonly duration?: Time;
  /** The real hour, where it was entered. */
  readonly actual?: string;
  /** On the chain that sets the return to service. */
  readonly critical: boolean;
  /** How much later the step may end without moving the return to service. */
  readonly slack: Time;
  readonly does: readonly Line[];
  readonly uses: readonly Line[];
  /** Figures of common practice, without a source: to hold the work against, never the design's own. */
  readonly practice: readonly Line[];
  readonly goes: readonly Line[];
  readonly stops: readonly Line[];
  readonly call: string;
  readonly signs: string;
}

/** Something to bring: how much the job uses, and how many whole packs to order. */
export interface StockItem {
  readonly name: string;
  readonly use?: Amount;
  readonly order?: Amount;
  readonly note?: Line;
}

/** The whole work on site, from the permit to the return to service. */
export interface WorkPlan {
  readonly title: string;
  readonly reference?: string;
  readonly verdict: Verdict;
  /** Why there is nothing to do: a plan has steps only for a design that was made. */
  readonly reasons: readonly Reason[];
  readonly missing: readonly string[];
  /** Clock time of the start, where it is stated. */
  readonly start?: string;
  readonly steps: readonly PlanStep[];
  /** Ids of the steps that set the return to service, in order. */
  readonly criticalPath: readonly string[];
  /** Steps whose time nobody has stated. */
  readonly withoutTime: readonly string[];
  /** From the start of the job; not before, as long as a step has no time. */
  readonly earliestReturn?: Time;
  /** Entered hours and waits that contradict each other, and what the design says about today. */
  readonly alerts: readonly Line[];
  readonly materials: readonly StockItem[];
  readonly tools: readonly StockItem[];
  /** How the repair comes off again. */
  readonly removal: readonly Line[];
  readonly cautions: readonly string[];
}

/** What moves a plan. */
export interface PlanOptions {
  /** Start on the clock of the site, `07:30`; else that of the crew in the case. */
  readonly start?: string | undefined;
  /** Real hour at which a step began, by its id: `09:10`, or `2 09:10` on the second day. It moves what follows. */
  readonly actual?: Readonly<Record<string, string>> | undefined;
  /** Time of steps for which the design has none, by their id. */
  readonly durations?: Readonly<Record<string, Time>> | undefined;
}
