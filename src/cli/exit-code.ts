import { seen } from '../quantity/plain-text.js';

/** What the process returns. */
export const exitCode = {
  /** Done as asked. */
  done: 0,
  /** Nothing that can be built: any verdict but `designed`, or no solution. */
  noDesign: 1,
  /** The input or the command line is wrong. */
  badInput: 2,
  /** A fault of this program. */
  fault: 3,
} as const;

export type ExitCode = (typeof exitCode)[keyof typeof exitCode];

/** The exit code of an error that a command threw. Errors are told by name, so that this costs no import. */
export function exitCodeOf(error: unknown): ExitCode {
  if (!(error instanceof Error)) return exitCode.fault;
  if (error.name === 'CaseError' || error.name === 'UsageError') return exitCode.badInput;
  if (error.name !== 'CalculationError') return exitCode.fault;
  return 'code' in error && error.code === 'no-solution' ? exitCode.noDesign : exitCode.badInput;
}

/** An error in words, for standard error. */
export function inWords(error: unknown): string {
  const message = seen(error instanceof Error ? error.message : String(error), '\n');
  if (exitCodeOf(error) !== exitCode.fault) return `${message}\n`;
  return `This is a fault of hoopwright, not of your input: ${message}\n`;
}
