/**
 * Where the note and the library disagree and nobody has decided yet. The second route reads as the note does; set to
 * `library`, it follows the library, so that what comes after it is compared all the same.
 */
export interface Readings {
  /** The shared line with pressure during application: the pipe up to its allowable stress, or up to the strain of the laminate too. */
  readonly liveStrain: 'note' | 'library';
  /** Pipe and laminate in both directions, laid under pressure: what comes later within the stress left, or all of it within that. */
  readonly biaxialAtWork: 'note' | 'library';
  /** Hours of the work that nobody has stated: the weather waits for them, or goes by those that are known. */
  readonly unknownHours: 'note' | 'library';
  /** Sheet in bands under shear: every turn carries round the pipe, or those that go through along it alone. */
  readonly shearAtJoints: 'note' | 'library';
}

export const byNote: Readings = {
  liveStrain: 'note',
  biaxialAtWork: 'note',
  unknownHours: 'note',
  shearAtJoints: 'note',
};
export const byLibrary: Readings = {
  liveStrain: 'library',
  biaxialAtWork: 'library',
  unknownHours: 'library',
  shearAtJoints: 'library',
};
