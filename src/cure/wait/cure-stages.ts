import type { SourceTag } from '../../formula/index.js';

/** A stage of cure that lets the next step begin, and what permits that. Time alone never does. */
export interface CureStage {
  /** Stage of the cure. */
  readonly stage: 'no print' | 'overcoat' | 'handling' | 'full cure';
  /** What the clock says. */
  readonly time: string;
  /** What has to be seen before the hold point is released. */
  readonly releasedBy: string;
  /** How well its share is known. */
  readonly tag: SourceTag;
}

/** The stages of a resin on the pipe, in order. */
export const cureStages: readonly CureStage[] = [
  {
    stage: 'no print',
    time: 'earliest look: the wait at the temperature of the pipe',
    releasedBy: 'a gloved thumb leaves no print at the coldest place',
    tag: 'practice',
  },
  {
    stage: 'overcoat',
    time: 'opens after the longest, closes after the shortest time of the bounds',
    releasedBy: 'no print and no greasy film (blush); after it has closed, abraded to a dull surface all over',
    tag: 'practice',
  },
  {
    stage: 'handling',
    time: 'earliest look: the wait at the temperature of the pipe',
    releasedBy: 'hardness of the witness sample from the same batch, cured on the pipe',
    tag: 'practice',
  },
  {
    stage: 'full cure',
    time: 'earliest look: the wait at the temperature of the pipe',
    releasedBy:
      'hardness on the repair or its witness, against the value found in qualification; degree of cure of the witness where the system asks for it',
    tag: 'recalled',
  },
];
