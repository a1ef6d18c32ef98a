import {
  type CureMechanism,
  cureWaitOverHistory,
  historyDuration,
  historyFrom,
  type TemperatureStep,
} from '../../cure/index.js';
import { isCalculationError, type Recorder, step } from '../../formula/index.js';
import type { ActivationEnergy, Temperature, Time } from '../../quantity/index.js';
import { type CureUse, type Duration, notStated } from './duration.js';

/** How long a material waits, by the hour at which it is laid. */
export type CureLaw = SteadyCure | CureOverHistory;

/** On steel that stays as it is, and by a maker's rows, one wait holds at every hour. */
export interface SteadyCure {
  /** Tells the two laws apart. */
  readonly sort: 'same at every hour';
  /** From the hour at which it is laid until it has cured. */
  readonly wait: Time;
}

/** Over the hours of a history: until it has done what the required time does at the reference temperature. */
export interface CureOverHistory {
  /** Tells the two laws apart. */
  readonly sort: 'over the history';
  /** What cures it, and so how its times move with the temperature. */
  readonly mechanism: CureMechanism;
  /** Cure time of the maker at the reference temperature. */
  readonly requiredTime: Time;
  /** Temperature at which the maker states the times. */
  readonly referenceTemperature: Temperature;
  /** Below it nothing counts: it does not cure. */
  readonly minimumTemperature: Temperature;
  /** The coldest at which it was tested. */
  readonly testedFrom: Temperature;
  /** The hottest at which it was tested. */
  readonly testedTo: Temperature;
  /** Of the cure; absent where the maker gives none, and the longest wait of several counts. */
  readonly activationEnergy?: ActivationEnergy | undefined;
}

/** What cures, each by its own law, and the steel over the hours of the job where it is foreseen. */
export interface Cures {
  /** By the use of each material. */
  readonly laws: {
    /** That of the seal; `none` where no seal is laid. */
    readonly putty:
      | {
          /** How it waits. */
          readonly law: CureLaw;
        }
      | 'none';
    /** Built up under the wrap; `none` where the case has no filler. */
    readonly filler:
      | {
          /** How it waits. */
          readonly law: CureLaw;
        }
      | 'none';
    /** The resin of the laminate itself. */
    readonly laminate: {
      /** How it waits. */
      readonly law: CureLaw;
    };
  };
  /** Stretches of steel temperature from the start of the job on; absent where nobody foresees them. */
  readonly history?: readonly TemperatureStep[] | undefined;
}

const HISTORY_ENDS = 'the temperature history ends before it has cured';
const HISTORY_BEGINS = 'the temperature history begins after it was laid';

/** The wait of a material that is laid at an hour of the job. */
export function waitOf({ laws, history }: Cures, use: CureUse, laidAt: Time, recorder?: Recorder): Duration {
  const cure = laws[use];
  if (cure === 'none') return notStated;
  const { law } = cure;
  if (law.sort === 'same at every hour') return { known: true, time: law.wait };
  // A page of the plan takes any hour that is entered: a wait from before the history is not known.
  if (laidAt < 0) return { known: false, because: HISTORY_BEGINS };
  const steps = historyLeft(history, laidAt, use, recorder);
  if (steps.length === 0) return { known: false, because: HISTORY_ENDS };
  try {
    const input = {
      steps,
      requiredTime: law.requiredTime,
      mechanism: law.mechanism,
      referenceTemperature: law.referenceTemperature,
      minimumTemperature: law.minimumTemperature,
      activationEnergy: law.activationEnergy,
      testedFrom: law.testedFrom,
      testedTo: law.testedTo,
    };
    const { wait } = step(recorder, 'cure/cure-wait-over-history', cureWaitOverHistory, input, use);
    return { known: true, time: wait };
  } catch (error) {
    if (!isCalculationError(error) || error.code !== 'no-solution') throw error;
    // It surely outlasts the history: counting nothing would bring back earlier what is laid later.
    const atLeast = step(recorder, 'cure/history-duration', historyDuration, { steps }, use);
    return { known: false, because: HISTORY_ENDS, atLeast };
  }
}

/** The history from an hour of the job on; nothing where it ends before. */
export function historyLeft(
  history: readonly TemperatureStep[] | undefined,
  from: Time,
  use?: CureUse,
  recorder?: Recorder,
): readonly TemperatureStep[] {
  if (history === undefined || history.length === 0) return [];
  return step(recorder, 'cure/history-from', historyFrom, { steps: history, start: from }, use).steps;
}
