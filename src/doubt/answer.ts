import { type Outcome, outcomesOf } from '../compare/index.js';
import { isCalculationError } from '../formula/index.js';
import {
  type Designed,
  type DesignOptions,
  designRepair,
  laidInCase,
  type RepairCase,
  type Verdict,
} from '../repair/index.js';

/** What became of a case that differs a little from the one in hand: its outcomes, or why there are none. */
export interface Answer {
  /** Verdict of the design, or that the case was refused. */
  readonly verdict: Verdict | 'refused';
  /** The sentence of the refusal, or the first reason, where the case is not designed. */
  readonly because?: string | undefined;
  /** Its outcomes. */
  readonly outcomes: readonly Outcome[];
}

/** The design of a case, its refusal by the door included: a number can be moved where two fields contradict each other. */
export function answerTo(repairCase: RepairCase, { rules }: DesignOptions): Answer {
  try {
    const design = designRepair(repairCase, { rules });
    if (design.verdict === 'designed') return { verdict: design.verdict, outcomes: outcomesOf(design) };
    const because = design.reasons[0]?.text ?? `${design.missing.map(({ field }) => field).join(', ')} is missing`;
    return { verdict: design.verdict, because, outcomes: outcomesOf(design) };
  } catch (error) {
    if (!isCalculationError(error) || error.code !== 'invalid-input') throw error;
    return { verdict: 'refused', because: error.message, outcomes: [] };
  }
}

/** What the plies of a design come to in another case: their resistance and their margin there, nothing where no line reaches. */
export function laidOutcomes(design: Designed, repairCase: RepairCase): Outcome[] {
  const { resistance, pressure, reasons } = laidInCase(design, repairCase);
  const value = reasons.length > 0 ? undefined : resistance?.value;
  const governing = resistance?.governing;
  const margin = value === undefined ? undefined : value / pressure - 1;
  return [
    { name: 'resistance', kind: 'gauge pressure', value, governing },
    { name: 'margin', kind: 'ratio', value: margin, governing },
  ];
}
