/** What became of a call that may be refused. */
export type Attempt<T> =
  | {
      /** Tells a result from a refusal. */
      readonly ok: true;
      /** What the call returned. */
      readonly value: T;
    }
  | {
      /** Tells a result from a refusal. */
      readonly ok: false;
      /** The error with which it was refused. */
      readonly refusal: Error & {
        /** Which of the two refused. */
        readonly name: 'CalculationError' | 'CaseError';
      };
    };

/**
 * Calls any function of this library and gives a refusal back as a value: `attempt(() => hoopStress(input))`. A fault that is
 * no refusal is thrown on, since nobody should compute further past it.
 *
 * @param call what is to be tried
 */
export function attempt<T>(call: () => T): Attempt<T> {
  try {
    return { ok: true, value: call() };
  } catch (error) {
    if (isRefusal(error)) return { ok: false, refusal: error };
    throw error;
  }
}

/** Told by name, so that a refusal of another copy of this library is one too. */
function isRefusal(error: unknown): error is Error & { readonly name: 'CalculationError' | 'CaseError' } {
  return error instanceof Error && (error.name === 'CalculationError' || error.name === 'CaseError');
}
