/** A place to write on: a reading, a name, a day. Where it stays empty the step stops. */
export const BLANK = '__________';
