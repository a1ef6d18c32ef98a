const EXAMPLE = 'docs/examples/cooling-water-leak.json';

/** What each command is asked where its start is timed. */
export const asked: Readonly<Record<string, readonly string[]>> = {
  design: [EXAMPLE],
  plan: [EXAMPLE],
  compare: [EXAMPLE],
  doubt: [EXAMPLE],
  evaluate: ['pipe/hoop-stress', 'pressure=16 bar', 'outsideDiameter=219.1 mm', 'wallThickness=8.18 mm'],
  check: ['pipe/hoop-stress', 'P=10.37 MPa', 'D=203.4 mm', 't=9.81 mm', '--claimed', '107.5 MPa'],
  exercises: ['pipe/hoop-stress'],
  formulas: [],
  survey: [
    'docs/examples/survey.csv',
    'yieldStrength=359 MPa',
    'designPressure=100 bar',
    'depthRate=0.2 mm/year',
    'lengthRate=0 mm/year',
    '--factor',
    '1.39',
    '--life',
    '10 year',
  ],
  schema: [],
};
