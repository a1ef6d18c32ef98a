/** What can govern the thickness of the laminate, or limit the pressure that it resists: the one list of these names. */
export const laminateCriteria = [
  'hoop strain, substrate ignored',
  'axial strain, substrate ignored',
  'axial strain, external force without pressure',
  'hoop stress of the pipe, load shared',
  'hoop stress of the pipe, with pressure during application',
  'axial stress of the pipe, load shared',
  'both stresses of the pipe and both strains, closed ends, load shared',
  'hoop strain, substrate yielded',
  'axial strain, substrate yielded',
  'hoop stress, long-term strength, substrate ignored',
  'hoop strain with ring bending under soil',
  'ring buckling under pressure from outside',
  'leak through the hole',
  'leak through the slot',
  'size of the hole',
] as const;

export type LaminateCriterion = (typeof laminateCriteria)[number];

/** Criteria of the hoop direction alone, in which every turn of a sheet goes through: the others need plies that do along the pipe. */
export const roundThePipe: readonly LaminateCriterion[] = [
  'hoop strain, substrate ignored',
  'hoop stress of the pipe, load shared',
  'hoop stress of the pipe, with pressure during application',
  'hoop strain, substrate yielded',
  'hoop stress, long-term strength, substrate ignored',
  'hoop strain with ring bending under soil',
  'ring buckling under pressure from outside',
  'size of the hole',
];

/** What can limit the pressure at which people work on the damaged pipe. */
export const lineLimits = [
  'safe pressure of the thinned wall',
  'recent pressure',
  'metal round the hole',
  'safe pressure of a neighbouring loss',
  'metal beside the hole, along the pipe',
  'design pressure',
  'leak seal',
  'pressure that the leak seal is tightened for',
] as const;

export type LineLimit = (typeof lineLimits)[number];
