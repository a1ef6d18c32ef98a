import {
  bestStart,
  caseStartingAt,
  designRepair,
  type PlanOptions,
  planWork,
  type RepairDesign,
  type WorkPlan,
} from '../repair/index.js';
import { UsageError } from './usage-error.js';

/** Options of the command that move a plan. */
export interface PlanArguments {
  /** `07:30`, or `best`. */
  readonly start?: string | undefined;
  /** `filler=09:10,wrap=2 12:30` */
  readonly actual?: string | undefined;
  /** `permit,survey` */
  readonly passed?: string | undefined;
}

/** The plan of a design, at the hours that the command line names. @throws CalculationError, UsageError */
export function planCase(design: RepairDesign, { start, actual, passed }: PlanArguments): WorkPlan {
  const entered = { actual: readHours(actual), passed: passed?.split(',').map((id) => id.trim()) };
  return start === 'best' ? planBest(design, entered) : planWork(design, { start, ...entered });
}

function planBest(design: RepairDesign, entered: PlanOptions): WorkPlan {
  if (design.case.site.forecast === undefined) {
    throw new UsageError('--start best needs site.forecast in the case: there is no other hour to try');
  }
  const { rules, rulesFrom } = design.options;
  const { best, tried } = bestStart(design.case, { rules, rulesFrom });
  if (best === undefined) {
    const alert = `No hour of the forecast will do: ${tried.length} were tried. The plan is that of the case as it stands.`;
    return alerted(planWork(design, entered), alert);
  }
  const hour = best.clock ?? `${best.start / 3600} h after the first hour of the forecast`;
  const plan = planWork(designRepair(caseStartingAt(design.case, best.start), { rules, rulesFrom }), entered);
  return alerted(plan, `Best start within the forecast: ${hour}, of ${tried.length} hours tried.`);
}

function alerted(plan: WorkPlan, text: string): WorkPlan {
  return { ...plan, alerts: [{ text, amounts: [] }, ...plan.alerts] };
}

function readHours(text: string | undefined): Record<string, string> | undefined {
  if (text === undefined) return undefined;
  return Object.fromEntries(
    text.split(',').map((part) => {
      const [, step, hour] = /^\s*([a-z-]+)=(.+?)\s*$/u.exec(part) ?? [];
      if (step === undefined || hour === undefined) {
        throw new UsageError(
          `--actual has "${part}"; it is written STEP=HH:MM, joined by commas: filler=09:10,wrap=12:30`,
        );
      }
      return [step, hour];
    }),
  );
}
