import type { Amount, Kind, Line, Time } from '../../quantity/index.js';
import type { Reason, Verdict } from '../design/design.js';
import type { Cures } from '../timeline/cure-law.js';
import type { Duration } from '../timeline/duration.js';
import type { TimelineStep } from '../timeline/timeline.js';

/** A reading that is taken each hour. */
export interface HourlyReading {
  /** What is read. */
  readonly name: string;
  /** Kind of what is read, and so its units. */
  readonly kind: Kind;
}

/** One step of the timeline in words: what to do, with what, the number that lets the crew go on and the one that stops it. */
export interface PlanStep extends TimelineStep {
  /** What the step is called. */
  readonly title: string;
  /** The real hour, where it was entered. */
  readonly actual?: string;
  /** Where it is a hold point that was entered as read and passed. */
  readonly passed?: true;
  /** Why the work must not go on from here, by what was entered. */
  readonly stop?: string | undefined;
  /** What the crew does, in order; what the design warns of at the step comes first. */
  readonly does: readonly Line[];
  /** What the step takes, with its amounts. */
  readonly uses: readonly Line[];
  /** Figures of common practice, without a source: only where the design has none of its own. */
  readonly practice: readonly Line[];
  /** What has to be so before the crew goes on. */
  readonly goes: readonly Line[];
  /** What stops the crew. */
  readonly stops: readonly Line[];
  /** What is read and written down each hour of the step, from its start. */
  readonly hourly?: readonly HourlyReading[];
  /** Whom the crew calls when it is stopped. */
  readonly call: string;
  /** Who signs that the step is done, or that nobody may yet. */
  readonly signs: string;
}

/** Something to bring: how much the job uses, and how many whole packs to order. */
export interface StockItem {
  /** What to bring. */
  readonly name: string;
  /** How much the job uses; absent where nobody counts it. */
  readonly use?: Amount;
  /** How many whole packs or pieces to order; absent where nobody counts them. */
  readonly order?: Amount;
  /** What else to know of it: the size of a pack, a measure to cut to. */
  readonly note?: Line;
  /** Whether its packs have a batch number and a use-by date to write down. */
  readonly hasBatch?: true;
}

/** The whole work on site, from the permit to the return to service. */
export interface WorkPlan {
  /** Title of the case. */
  readonly title: string;
  /** Reference of the case, where it has one. */
  readonly reference?: string;
  /** What became of the design. */
  readonly verdict: Verdict;
  /** Why there is nothing to do: a plan has steps only for a design that was made. */
  readonly reasons: readonly Reason[];
  /** What has to be known first, why, and who has it. */
  readonly missing: readonly string[];
  /** Clock time of the start, where it is stated. */
  readonly start?: string;
  /** Every step in the order of the work; empty where no design was made. */
  readonly steps: readonly PlanStep[];
  /** What cures, each by its own law, and the steel over the hours from the start of this plan; absent without a design. */
  readonly cures?: Cures;
  /** Times of steps that were stated beside the case. */
  readonly stated?: Readonly<Record<string, Time>>;
  /** Ids of the steps that set the return to service, in order. */
  readonly criticalPath: readonly string[];
  /** Steps whose time is not known; each says why. */
  readonly withoutTime: readonly string[];
  /** From the start of the job; not known as long as the time of a step is not, at a stop, or where there is no design. */
  readonly earliestReturn: Duration;
  /** Entered hours and waits that contradict each other, and what the design says about today. */
  readonly alerts: readonly Line[];
  /** What is used up. */
  readonly materials: readonly StockItem[];
  /** What the crew works and measures with. */
  readonly tools: readonly StockItem[];
  /** How the repair comes off again. */
  readonly removal: readonly Line[];
  /** Dangers of the work, as the design lists them. */
  readonly cautions: readonly string[];
}

/** What moves a plan. */
export interface PlanOptions {
  /** Start on the clock of the site, `07:30`; else that of the crew in the case. */
  readonly start?: string | undefined;
  /** Real hour at which a step began, by its id: `09:10`, or `2 09:10` on the second day. It moves what follows. */
  readonly actual?: Readonly<Record<string, string>> | undefined;
  /** Ids of the hold points that were read and passed: one that is passed over leaves no time of return. */
  readonly passed?: readonly string[] | undefined;
  /** Time of steps for which the design has none, by their id. */
  readonly durations?: Readonly<Record<string, Time>> | undefined;
}
