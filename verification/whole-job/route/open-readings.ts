/**
 * Where the note and the library disagree and nobody has decided yet. The second route reads as the note does; set to
 * `library`, it follows the library, so that what comes after it is compared all the same.
 */
export interface Readings {
  /**
   * Pipe and laminate in both directions, laid under pressure: what comes later within the stress left, or all of it within that.
   * The library counts the pressure at work twice and comes out thicker: its reading is on the safe side.
   */
  readonly biaxialAtWork: 'note' | 'library';
  /**
   * Sheet in bands under shear: every turn carries round the pipe, or those that go through along it alone. By the note the line
   * along the pipe holds shear and torsion (F_eq) with the plies that go through. The library refuses more: on the safe side.
   */
  readonly shearAtJoints: 'note' | 'library';
  /**
   * Losses by internal corrosion and internal erosion that act as one: both lie inside, or their cause is unknown. The library
   * counts more filler, and asks for filler where none is stated: its reading is on the safe side.
   */
  readonly insideCauses: 'note' | 'library';
}

export const byNote: Readings = {
  biaxialAtWork: 'note',
  shearAtJoints: 'note',
  insideCauses: 'note',
};
export const byLibrary: Readings = {
  biaxialAtWork: 'library',
  shearAtJoints: 'library',
  insideCauses: 'library',
};
