/** The command line itself is wrong: an unknown option, a missing file. The message is a sentence. */
export class UsageError extends Error {
  override readonly name = 'UsageError';
}
