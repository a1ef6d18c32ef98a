import { type Hazard, shownIn } from '../hazard.js';

const by = shownIn('verification/hazards/shown/contradictions.test.ts: a contradiction');

/** Slips in a case that no field shows by itself. */
export const contradictions: readonly Hazard[] = [
  {
    could: 'A number goes into the field of another: more wall left than there was, an extent that no pipe has.',
    would: 'The strength left would be of another pipe.',
    guards: [
      'case/contradictions-defect.ts: atMost READING',
      'case/contradictions-defect.ts: atMost defect.circumferentialWidth',
      'case/contradictions-defect.ts: atMost <path>.remainingWall',
      'case/contradictions-defect.ts: atMost <path>.circumferentialWidth',
      'case/contradictions-defect.ts: atMost <path>.gapRound',
      'case/contradictions.ts: note pipe.outsideDiameter',
      'case/contradictions.ts: note pipe.wallThickness',
    ],
    tests: by(
      'a wall left that is thicker than the pipe',
      'a defect that reaches round more than the pipe',
      'a neighbour with more wall than the pipe',
      'a neighbour that reaches round more than the pipe',
      'a neighbour farther round than the pipe',
      'two measures of one pipe',
      'a wall thicker than the radius',
    ),
  },
  {
    could: 'A slot is written where there is none, or larger than the thinned metal round it, or as a hole to come.',
    would: 'The laminate would be sized for a slot that is not the one in the pipe.',
    guards: [
      'case/contradictions-defect.ts: note defect.slot',
      'case/contradictions-defect.ts: atMost defect.slot.axialLength',
      'case/contradictions-defect.ts: atMost defect.slot.circumferentialWidth',
      'case/contradictions-defect.ts: note defect.holeAtEndOfLife',
    ],
    tests: by(
      'a slot where the defect is none',
      'a slot longer than its defect',
      'a slot wider than its defect',
      'a hole that a slot would become',
    ),
  },
  {
    could: 'The radius of a bend stands on another fitting, or is that of a bend that nobody can make.',
    would: 'The laminate would be sized for a bend that is not there.',
    guards: [
      'case/contradictions.ts: note be left out where the fitting is a <fitting.kind>, not a bend',
      'case/contradictions.ts: note be above half the outside diameter, {0}',
    ],
    tests: by('a radius of what is no bend', 'a bend that cuts into itself'),
  },
  {
    could:
      'A hole is written where the kind of defect says that there is none, or larger than the defect, or shrinking.',
    would: 'The laminate would be sized for a hole that is not the one in the pipe.',
    guards: [
      'case/contradictions-defect.ts: note defect.holeDiameter',
      'case/contradictions-defect.ts: note fit into the defect, which is {0} from corner to corner',
      'case/contradictions-defect.ts: atLeast defect.holeAtEndOfLife',
    ],
    tests: by(
      'a hole in a wall that has none',
      'a hole that is larger than its defect',
      'a hole at the end of the life that is larger than its defect',
      'a hole that shrinks',
    ),
  },
  {
    could: 'A profile misses part of the defect or its deepest place, or its points stand out of order.',
    would: 'What the profile leaves out would count as sound metal.',
    guards: [
      'case/contradictions-defect.ts: note <path>.position',
      'case/contradictions-defect.ts: atMost <path>.depth',
      'case/contradictions-defect.ts: note { path: READING, must: line(must, passes, within), passes }',
      'case/contradictions-defect.ts: note { path, must: line(must, passes, within), passes }',
      'case/contradictions-defect.ts: note defect.axialLength',
    ],
    tests: by(
      'points of a profile out of order',
      'a profile deeper than the wall',
      'a wall left that the profile passes',
      'a profile that misses the deepest place',
      'a profile that is shorter than its defect',
    ),
  },
  {
    could: 'Growth is taken from readings that cannot give a rate.',
    would: 'The wall at the end of the life would be too thick by any amount.',
    guards: [
      'case/contradictions-defect.ts: note { path: READING, must }',
      'case/contradictions-defect.ts: atMost <path>.sincePrevious',
      'case/contradictions-defect.ts: atMost <path>.previousWall',
      'case/contradictions-defect.ts: atLeast <path>.previousWall',
    ],
    tests: by(
      'growth by readings of a wall that is gone',
      'a reading that is older than the pipe',
      'a wall that was thicker than the pipe',
      'a wall that grew back',
    ),
  },
  {
    could: 'Strengths of the steel are swapped, or an allowable stress is no allowable stress.',
    would: 'Flow stress and load sharing would count on steel that is not there.',
    guards: [
      'case/contradictions.ts: atLeast pipe.material.tensileStrength',
      'case/contradictions.ts: atMost pipe.material.allowableStress',
    ],
    tests: by('a tensile strength below the yield', 'an allowable stress above the yield'),
  },
  {
    could: 'The long-term strength of a laminate is above what it breaks at.',
    would: 'The laminate would be thinner than the pressure that breaks it at once.',
    guards: ['case/contradictions.ts: atMost <path>.strength', 'case/contradictions.ts: atMost <path>.second.strength'],
    tests: by('a long-term strength above the breaking stress', 'a second one above it'),
  },
  {
    could: 'Two series of long-term tests are of one temperature, and say two strengths.',
    would: 'The laminate would count on the higher of them, where the lower was found too.',
    guards: ['case/contradictions.ts: note <second>.testTemperature'],
    tests: by('two long-term strengths at one temperature'),
  },
  {
    could: 'A long-term strength rises with the temperature of its tests.',
    would: 'The laminate would be thinner than its hot strength asks for.',
    guards: ['case/contradictions.ts: atMost <path>.strength (2)', 'case/contradictions.ts: atMost <second>.strength'],
    tests: by('a long-term strength above that of colder tests', 'a second one above that of colder tests'),
  },
  {
    could: 'Pressures or temperatures of the service contradict the design values.',
    would: 'The repair would be designed for less than the line sees.',
    guards: [
      'case/contradictions.ts: atMost service.lowestTemperature',
      'case/contradictions.ts: atLeast loads.cycles.highestPressure',
      'case/contradictions.ts: atMost loads.cycles.highestPressure',
      'case/contradictions.ts: atMost line.pressure',
      'case/contradictions.ts: note line.state',
    ],
    tests: by(
      'a coldest steel above the hottest',
      'a pressure cycle upside down',
      'a cycle above the design pressure',
      'work above the design pressure',
      'a static head of gas',
    ),
  },
  {
    could: 'The survey was made on a day that two readers take for two: 11.03.2026.',
    would: 'What was read or tested long before it would count as if it were of the day.',
    guards: ['case/contradictions.ts: note date'],
    tests: by('a survey on no day'),
  },
  {
    could: 'The test that clears a service of cracks tells of cracks, or was made on no day.',
    would: 'A crack that was seen would be wrapped over.',
    guards: [
      'case/contradictions.ts: note <path>.date',
      'case/contradictions.ts: note <path>.date (2)',
      'case/contradictions.ts: note <path>.method',
    ],
    tests: by('a crack test after the survey', 'a crack test on no day', 'a crack test whose method tells of cracks'),
  },
  {
    could: 'A word mixes letters of two alphabets that look alike.',
    would: 'It would pass the lists of words that stand for hazards, or for nothing.',
    guards: ['case/contradictions-texts.ts: note { path, must: line(must) }'],
    tests: by('a word of two alphabets'),
  },
  {
    could: 'A recent pressure is of no day, or of a day after the survey.',
    would: 'A pressure that the damaged wall never carried would lift the limit for people beside it.',
    guards: [
      'case/contradictions.ts: note be the day of the reading, written as 2026-03-01',
      'case/contradictions.ts: note be no later than the survey, or it is no reading',
    ],
    tests: by('a recent pressure on no day', 'a recent pressure after the survey'),
  },
  {
    could: 'What leaves through the hole is not what the line carries.',
    would: 'Jet and toxic release would be of another fluid.',
    guards: ['case/contradictions.ts: note seal.fluid.phase'],
    tests: by('a gas in the hole of a liquid line'),
  },
  {
    could: 'Properties of the laminate or its stock cannot be those of any laminate.',
    would: 'Strains would come out of an elastic law that gives energy away, or bands without a lap.',
    guards: [
      'case/contradictions.ts: note laminate.poissonRatio',
      'case/contradictions.ts: atMost laminate.wetGlassTransition',
      'case/contradictions.ts: atLeast wrap.width',
      'case/contradictions.ts: atLeast filler.thicknessOverDefect',
      'case/contradictions.ts: note be less: so little fabric',
      'case/contradictions.ts: note be more: so much fabric',
    ],
    tests: by(
      'a laminate that gives energy when strained',
      'a laminate that softens later for being wet',
      'a sheet narrower than its laps',
      'filler that is thinner over the defect',
      'a ply that its fabric cannot fill',
      'a ply that cannot hold its fabric',
    ),
  },
  {
    could: 'Times of a cure sheet stand outside the temperatures at which they were tested.',
    would: 'The wait would be computed from times that nobody measured: a soft laminate under pressure.',
    guards: [
      'case/contradictions.ts: atMost <path>.testedFrom',
      'case/contradictions.ts: atLeast <path>.testedTo',
      'case/contradictions.ts: atMost <path>.workingTime',
    ],
    tests: by(
      'cure times from outside the tests, below',
      'cure times from outside the tests, above',
      'a working time beyond the cure',
    ),
  },
  {
    could: 'A number is confirmed under a name that no rule set has.',
    would: 'Whoever read the document would think that it counts, and the recalled one would.',
    guards: ['case/contradictions-confirmed.ts: note confirmed[<index>].path'],
    tests: by('a confirmed number that no rule set has'),
  },
  {
    could: 'A number is confirmed by nobody, or in no edition.',
    would: 'A repair would be thinner on the word of no one who read the document.',
    guards: [
      'case/contradictions-confirmed.ts: note confirmed[<index>].by',
      'case/contradictions-confirmed.ts: note confirmed[<index>].edition',
    ],
    tests: by('a number that nobody confirms', 'a number that is confirmed in no edition'),
  },
];
