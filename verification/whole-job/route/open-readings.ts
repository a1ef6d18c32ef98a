/**
 * Where the note and the library disagree and nobody has decided yet. The second route reads as the note does; set to
 * `library`, it follows the library, so that what comes after it is compared all the same.
 */
export interface Readings {
  /** The shared line with pressure during application: the pipe up to its allowable stress, or up to the strain of the laminate too. */
  readonly liveStrain: 'note' | 'library';
  /** Loss from outside round a hole is filled like any other, or left out of the volume. */
  readonly lossRoundHole: 'note' | 'library';
  /** Pipe and laminate in both directions, laid under pressure: what comes later within the stress left, or all of it within that. */
  readonly biaxialAtWork: 'note' | 'library';
  /** The time that the climate has to hold is known only where every step in it is, or where the waits alone are. */
  readonly holdTime: 'note' | 'library';
  /** The charge of a sheet in bands: its longest turn, the outermost, or its first. */
  readonly bandCharge: 'note' | 'library';
  /** An energy found over a seal, over a larger one: held to the worst place of the rim as any other, or whole. */
  readonly rimBeyondFootprint: 'note' | 'library';
}

export const byNote: Readings = {
  liveStrain: 'note',
  lossRoundHole: 'note',
  biaxialAtWork: 'note',
  holdTime: 'note',
  bandCharge: 'note',
  rimBeyondFootprint: 'note',
};
export const byLibrary: Readings = {
  liveStrain: 'library',
  lossRoundHole: 'library',
  biaxialAtWork: 'library',
  holdTime: 'library',
  bandCharge: 'library',
  rimBeyondFootprint: 'library',
};
