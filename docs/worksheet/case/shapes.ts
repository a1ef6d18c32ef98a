/** What a reader chooses between where a field takes several shapes, in the order of the table; a choice is its own words. */
export const shapeNames: Readonly<Record<string, readonly string[]>> = {
  'pipe.size': ['in words, for the record', 'DN and schedule', 'NPS and schedule'],
  'pipe.material': ['by grade', 'by strengths'],
  'pipe.material.allowableStress': ['as a stress', 'by a row of the table'],
  'service.surge': ['', 'as a pressure'],
  'defect.growth.depth': ['as a rate', 'from readings of the wall'],
};
