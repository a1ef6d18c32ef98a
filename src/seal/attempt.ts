import { formula, nonNegative, oneOf, refuse } from '../formula/index.js';
import type { GaugePressure } from '../quantity/index.js';

/** Phase of what the line carries. */
export type ContentsPhase = 'liquid' | 'gas' | 'two-phase';

const phases = ['liquid', 'gas', 'two-phase'] as const satisfies readonly ContentsPhase[];

/** The decision, and what stands against it. */
export interface SealAttempt {
  readonly decision: 'attempt' | 'refuse';
  readonly pressureTooHigh: boolean;
  readonly procedureMissing: boolean;
}

export interface AttemptInput {
  readonly linePressure: GaugePressure;
  readonly highestPressure: GaugePressure;
  readonly phase: ContentsPhase;
  readonly hazardous: boolean;
  readonly writtenProcedure: boolean;
}

/**
 * Whether a live leak may be sealed: not above the highest pressure, and gas or harmful contents only under a
 * written procedure of the site.
 *
 * @param input.linePressure p, pressure in the line while the seal goes on [Pa], >= 0
 * @param input.highestPressure p_max, highest line pressure for attempting the seal [Pa], >= 0
 * @param input.phase phase, phase of the contents, `liquid`, `gas` or `two-phase`
 * @param input.hazardous hazardous, contents are toxic, flammable, hot or otherwise harmful
 * @param input.writtenProcedure procedure, the case names the written procedure of the site for this work
 * @returns `attempt` or `refuse`, and each of the two reasons against
 * @throws CalculationError `invalid-input`
 * @remarks No procedure lifts the limit of pressure. Two-phase contents count as gas.
 */
export function attempt(input: AttemptInput): SealAttempt {
  const { linePressure: p, highestPressure: pMax, phase, hazardous, writtenProcedure } = input;
  nonNegative(p, 'linePressure', 'Pa');
  nonNegative(pMax, 'highestPressure', 'Pa');
  oneOf(phase, phases, 'phase');
  // What nobody stated is not harmless: a missing answer must not read as no.
  answered(hazardous, 'hazardous');
  answered(writtenProcedure, 'writtenProcedure');
  const pressureTooHigh = p > pMax;
  const procedureMissing = (phase !== 'liquid' || hazardous) && !writtenProcedure;
  return { decision: pressureTooHigh || procedureMissing ? 'refuse' : 'attempt', pressureTooHigh, procedureMissing };
}

function answered(value: boolean, parameter: string): void {
  if (typeof value !== 'boolean') {
    refuse({ code: 'invalid-input', parameter, value, unit: '', constraint: 'must be true or false' });
  }
}

export const attemptFormula = /* @__PURE__ */ formula<AttemptInput, SealAttempt>({
  id: 'seal/attempt',
  title: 'Whether the seal may be attempted',
  search: ['leak sealing', 'stop the leak', 'plug'],
  compute: attempt,
  equation: {
    branches: [
      { when: 'p > p_max', expression: '"refuse"' },
      { when: '(phase != "liquid" or hazardous) and not procedure', expression: '"refuse"' },
      { expression: '"attempt"' },
    ],
  },
  inputs: {
    linePressure: {
      symbol: 'p',
      kind: 'gauge pressure',
      name: 'pressure in the line while the seal goes on',
      sample: [0, 10e6],
    },
    highestPressure: {
      symbol: 'p_max',
      kind: 'gauge pressure',
      name: 'highest line pressure for attempting the seal',
      sample: [0, 10e6],
    },
    phase: { symbol: 'phase', kind: 'choice', name: 'phase of the contents', choices: ['liquid', 'gas', 'two-phase'] },
    hazardous: { symbol: 'hazardous', kind: 'flag', name: 'contents are toxic, flammable, hot or otherwise harmful' },
    writtenProcedure: {
      symbol: 'procedure',
      kind: 'flag',
      name: 'the case names the written procedure of the site for this work',
    },
  },
  output: {
    decision: { symbol: 'decision', kind: 'choice', name: 'whether the seal may be attempted' },
    pressureTooHigh: { symbol: 'too_high', kind: 'flag', name: 'the line pressure is above the highest' },
    procedureMissing: {
      symbol: 'missing',
      kind: 'flag',
      name: 'the contents ask for a written procedure, and none is named',
    },
  },
  sources: [],
  evidence: { form: { tag: 'chosen' } },
  limits: [],
});
