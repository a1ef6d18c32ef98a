/**
 * Where the note and the library disagree and nobody has decided yet. The second route reads as the note does; set to
 * `library`, it follows the library, so that what comes after it is compared all the same.
 */
export interface Readings {
  /** The shared line with pressure during application: the pipe up to its allowable stress, or up to the strain of the laminate too. */
  readonly liveStrain: 'note' | 'library';
  /** Pipe and laminate in both directions, laid under pressure: what comes later within the stress left, or all of it within that. */
  readonly biaxialAtWork: 'note' | 'library';
  /** The time that the climate has to hold is known only where every step in it is, or where the waits alone are. */
  readonly holdTime: 'note' | 'library';
  /** The charge of a sheet in bands: its longest turn, the outermost, or its first. */
  readonly bandCharge: 'note' | 'library';
}

export const byNote: Readings = {
  liveStrain: 'note',
  biaxialAtWork: 'note',
  holdTime: 'note',
  bandCharge: 'note',
};
export const byLibrary: Readings = {
  liveStrain: 'library',
  biaxialAtWork: 'library',
  holdTime: 'library',
  bandCharge: 'library',
};
