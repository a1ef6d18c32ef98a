/** The rectangle that encloses an opening. */
export interface Opening {
  readonly axialLength: number;
  readonly circumferentialWidth: number;
}
