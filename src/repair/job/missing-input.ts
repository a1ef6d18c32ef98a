/** What is missing, why it is needed and who has it. */
export interface MissingInput {
  /** Path in the case: `laminate.energyReleaseRate`. */
  readonly field: string;
  readonly why: string;
  readonly askWhom: string;
}
