/** What is missing, why it is needed and who has it. */
export interface MissingInput {
  /** Path in the case: `laminate.energyReleaseRate`. */
  readonly field: string;
  /** What it is needed for. */
  readonly why: string;
  /** Who has it. */
  readonly askWhom: string;
}
