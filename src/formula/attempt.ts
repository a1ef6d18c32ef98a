/** What became of a call that may be refused. */
export type Attempt<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly refusal: Error & { readonly name: 'CalculationError' | 'CaseError' } };

/**
 * Calls any function of this library and gives a refusal back as a value: `attempt(() => hoopStress(input))`. A fault that is
 * no refusal is thrown on, since nobody should compute further past it.
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
