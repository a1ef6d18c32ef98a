import { type Hazard, shownIn } from '../hazard.js';

const file = 'verification/hazards/shown/as-built.test.ts';
const survey = shownIn(`${file}: the survey after the steel was prepared`);
const rest = shownIn(`${file}: what the laminate rests on`);
const steel = shownIn(`${file}: the steel`);
const climate = shownIn(`${file}: the climate`);
const batch = shownIn(`${file}: a batch`);
const line = shownIn(`${file}: the line`);
const filled = shownIn(`${file}: filler under the wrap`);
const cracking = shownIn(`${file}: steel that cracks`);
const dimension = shownIn(`${file}: a dimension`);
const cure = shownIn(`${file}: the cure`);
const finished = shownIn(`${file}: the finished repair`);

/** What a record of the finished work leaves out, or shows to be wrong. */
export const asBuilt: readonly Hazard[] = [
  {
    could: 'One salty place hides in the mean of clean ones, or one number stands for two batches.',
    would: 'The wrap would come off that place, or a soft batch pass as its neighbour.',
    guards: [
      'as-built/points.ts: against one place has more salts than {0}',
      'as-built/batches.ts: open two batches of <use> have the number <number>',
    ],
    tests: [
      'tests/faults/as-built-hot.test.ts: the salts of prepared steel: are no mean: one place of 35 mg/m2 among clean ones is too salty',
      'tests/faults/as-built-hot.test.ts: two batches with one number: are not told apart',
    ],
  },
  {
    could: 'The steel was prepared, and is wrapped, beside the defect.',
    would: 'The wrap would lie over sound pipe, and the defect beside it.',
    guards: ['as-built/survey.ts: notShown the prepared steel has lost less than half of what the repai'],
    tests: survey('of a wall that is nearly whole'),
  },
  {
    could: 'Preparation uncovers less wall, or a larger hole, than the repair was designed for.',
    would: 'The repair would stand on metal that is not there.',
    guards: [
      'as-built/survey.ts: notShown nobody measured the wall after the steel was prepared',
      'as-built/survey.ts: reaching wall',
      'as-built/survey.ts: notShown the reading is more than the wall that the pipe was made with: m',
      'as-built/survey.ts: notShown nobody measured the hole after the steel was prepared',
      'as-built/survey.ts: holePoint: does not meet',
      'as-built/survey.ts: unknownSlot: does not meet',
      'as-built/survey.ts: if !isKnown',
      'as-built/survey.ts: if survey.hole === 0',
    ],
    tests: survey(
      'of a wall that nobody measured',
      'of a wall that is thinner',
      'of a wall that no such pipe has',
      'of a hole that nobody measured',
      'of a hole that has opened',
      'of a hole that the design knows nothing of',
      'of a slot that the design knows nothing of',
      'of a hole that is nothing, where there was one',
    ),
  },
  {
    could: 'Preparation uncovers a loss that goes farther along or round the pipe than surveyed.',
    would: 'Strength, overlap and width would be those of a smaller loss, and the wrap would end over thin wall.',
    guards: [
      'as-built/loss.ts: notShown nobody measured the loss <way> the pipe after the steel was prep',
      'as-built/loss.ts: lossPoints: does not meet',
      'as-built/loss.ts: notShown text',
    ],
    tests: survey(
      'of a loss that nobody measured along the pipe',
      'of a loss that nobody measured round the pipe',
      'of a loss larger along the pipe than designed for',
      'of a loss larger round the pipe than designed for',
      'of a loss along the pipe that is smaller than the hole in it',
      'of a loss round the pipe that is smaller than the hole in it',
    ),
  },
  {
    could: 'A leak is found and sealed on the day, and the laminate is that of a wall that was only thinned.',
    would: 'The laminate would peel off a hole that nobody designed it for.',
    guards: ['as-built/seal.ts: notShown UNDESIGNED'],
    tests: rest('a seal that held dry where none was designed', 'putty that was firm where none was designed'),
  },
  {
    could: 'The seal weeps, putty or filler is still soft, or bands stay under the wrap.',
    would: 'The laminate would lie wet, hollow or on steel that it was not designed to bond round.',
    guards: [
      'as-built/seal.ts: seenTrue seal',
      'as-built/seal.ts: seenTrue putty firm',
      'as-built/seal.ts: seenTrue bands',
      'as-built/seal.ts: notShown open',
      'as-built/seal.ts: seenTrue: does not meet',
      'as-built/acceptance.ts: seenTrue filler firm',
    ],
    tests: rest(
      'the seal, of which nobody says a word',
      'the seal, seen to be wrong',
      'the putty, of which nobody says a word',
      'the putty, seen to be wrong',
      'the bands, of which nobody says a word',
      'the bands, seen to be wrong',
      'the filler, of which nobody says a word',
      'the filler, seen to be wrong',
    ),
  },
  {
    could: 'The steel was rough-cleaned only, rusted again, or carries salts that nobody measured.',
    would: 'The bond would be that of rust, or blister off by the water that salts draw.',
    guards: [
      'as-built/points.ts: notShown the prepared steel was not recorded',
      'as-built/points.ts: reaching steel',
      'as-built/points.ts: notShown the profile is deeper than any blasting leaves it, as a slip of',
      'as-built/points.ts: steelPoint: does not meet',
      'as-built/points.ts: notShown nobody recorded the soluble salts on the prepared steel',
    ],
    tests: steel(
      'that nobody recorded',
      'of a profile that is too low',
      'of a profile that no blasting leaves',
      'that rusts again',
      'whose salts nobody measured',
      'with no reading of its salts',
    ),
  },
  {
    could: 'Resin was opened on damp, cold or hot steel, or nobody read the climate.',
    would: 'Dew would lie under the laminate, or it would gel too fast or never.',
    guards: [
      'as-built/points.ts: notShown air and steel were not read',
      'as-built/points.ts: reaching climate',
      'as-built/points.ts: faults the air was above {0}',
      'as-built/points.ts: faults the steel was colder than the resin cures',
      'as-built/points.ts: faults the steel was hotter than the maker tested, {0}',
      'as-built/points.ts: climatePoint: does not meet',
    ],
    tests: climate(
      'that nobody read',
      'close to the dew point',
      'too humid',
      'of steel too cold to cure on',
      'of steel hotter than was tested',
    ),
  },
  {
    could: 'The line is raised while people work on it or the laminate is soft, and nobody wrote it down.',
    would: 'The laminate would be lifted off the steel before it bonds, and cure so.',
    guards: [
      'as-built/line.ts: notShown nobody recorded the highest reading',
      'as-built/line.ts: linePoint: does not meet',
    ],
    tests: line('of which nobody read the gauge', 'raised while the laminate was soft'),
  },
  {
    could: 'A batch of laminate resin stays soft under others, where no tester reaches it.',
    would: 'The plies that it wetted would carry nothing.',
    guards: ['as-built/witness.ts: notShown', 'as-built/witness.ts: reaching witness'],
    tests: batch('whose witness nobody measured', 'whose witness stayed soft'),
  },
  {
    could: 'A repair of a line that cracks is laid long after the test that found no crack.',
    would: 'It would be wrapped over the cracks that have grown since.',
    guards: [
      'as-built/crack-test.ts: notShown nobody recorded the day on which',
      'as-built/crack-test.ts: crackTestPoint: does not meet',
    ],
    tests: cracking('wrapped nobody knows when', 'wrapped a year after its test'),
  },
  {
    could: 'Filler lies open for weeks before it is wrapped.',
    would: 'Chalk, grease and rust beside it would part the laminate from what it lies on.',
    guards: [
      'as-built/filler-age.ts: notShown nobody recorded the days',
      'as-built/filler-age.ts: if filled === undefined',
      'as-built/filler-age.ts: if laid === undefined',
      'as-built/filler-age.ts: faults the laminate was laid before the filler was mixed',
      'as-built/filler-age.ts: faults the filler lay for {0}',
      'as-built/filler-age.ts: fillerAgePoint: does not meet',
    ],
    tests: filled(
      'laid nobody knows when',
      'wrapped nobody knows when',
      'laid weeks before it',
      'laid after it',
      'wrapped weeks later, whatever the batches say',
    ),
  },
  {
    could: 'A digit or a unit of a measured thickness, length or count slipped.',
    would: 'A wrap that is too thin or too short would look like one that is more than enough.',
    guards: ['as-built/points.ts: notShown FAR_BEYOND', 'as-built/points.ts: notShown FAR_BEYOND (2)'],
    tests: dimension(
      'that is more than a wrap can have: layers',
      'that is more than a wrap can have: thickness',
      'that is more than a wrap can have: length',
      'that is more than a wrap can have: overlap',
    ),
  },
  {
    could: 'More layers lie on the pipe than the overlap, or the equations, were made for.',
    would: 'A thick laminate pulls harder on its bond, and past a thin one nothing was computed.',
    guards: ['as-built/points.ts: thicknessPoint: does not meet'],
    tests: dimension('that is beyond the equations of a thin laminate', 'on an overlap for fewer layers'),
  },
  {
    could: 'The layers that were counted and the thickness that was measured are not of one laminate.',
    would: 'A wrap of half its plies, or of twice their resin, would look like the one that was designed.',
    guards: ['as-built/points.ts: notShown the thickness contradicts the layers'],
    tests: dimension('that contradicts another: plies half as thick', 'that contradicts another: half as thick again'),
  },
  {
    could: 'Less was mixed than has to lie on the pipe, or of something that the design does not have.',
    would: 'Fibre would stay dry, or a hollow would stay under the wrap.',
    guards: [
      'as-built/batches.ts: open no batch of <use> was recorded',
      'as-built/batches.ts: faults <use>: <place(amounts, roundedDown(',
      'as-built/batches.ts: faults <called>: the design has no <batch.use>',
    ],
    tests: batch('that nobody recorded', 'too small for what has to lie there', 'of what the design does not have'),
  },
  {
    could: 'A batch was off its ratio, laid after its working time, or from a pack that is out of date or unknown.',
    would: 'That part of the laminate would never reach the strength that the design counts on.',
    guards: [
      'as-built/batches.ts: batchPoint: does not meet',
      'as-built/batches.ts: notShown ;',
      'as-built/batches.ts: faults <called>: hardener over',
      'as-built/batches.ts: faults <called>: hardener under',
      'as-built/batches.ts: faults <called>: <place(amounts, roundedUp(',
      'as-built/batches.ts: open <called>: nobody recorded the date',
      'as-built/batches.ts: open <called>: nobody recorded the day',
      'as-built/batches.ts: faults <called>: mixed on',
      'as-built/batches.ts: open laid on <laidOn>, the last of its resin mixed on',
      'as-built/batches.ts: faults batch <number>: laid on',
      'as-built/batches.ts: open a batch has no number',
      'as-built/batches.ts: faults laid on <laid.first>, before the survey of this design on <date>',
      'as-built/batches.ts: faults <called>: <place(amounts, found)> mixed at once where <place(amo',
      'as-built/batches.ts: open resin of the laminate mixed on <mixed.first> and on <mixed.last>',
    ],
    tests: batch(
      'with too much hardener',
      'with too little hardener',
      'laid after its working time',
      'from a pack without a date',
      'mixed nobody knows when',
      'from a pack out of date',
      'laid on another day than its resin was mixed',
      'laid after the last day of its pack',
      'of a laminate that was laid on two days',
      'of a laminate that was laid before the survey',
      'of a wrap that brings its resin, laid before the survey',
      'of more than was planned at once',
      'without a number',
    ),
  },
  {
    could:
      'Resin without fibre is measured as laminate, or plies are thinner on their witness than those of the system.',
    would: 'The laminate would hold less than its thickness says.',
    guards: [
      'as-built/points.ts: thicknessPoint: does not meet (2)',
      'as-built/points.ts: thicknessPoint: does not meet (3)',
    ],
    tests: dimension('that is resin in part: thickness', 'of plies that are thinner on their witness: thickness'),
  },
  {
    could: 'An overlap is recorded that does not fit into the length, or leaves hardly any taper on it.',
    would: 'The bond would be shorter than the record says, or peel from a blunt end.',
    guards: [
      'as-built/points.ts: notShown the overlap does not fit into the length that was measured: one',
      'as-built/points.ts: notShown STEEP',
    ],
    tests: dimension(
      'that does not fit into the length: overlap',
      'that leaves no taper: overlap',
      'that leaves less than half of the taper: overlap',
    ),
  },
  {
    could: 'The laminate has fewer layers, is thinner or shorter than designed, or nobody measured it.',
    would: 'It would resist less than the design pressure, and nobody would know.',
    guards: [
      'as-built/points.ts: notShown: not shown',
      'as-built/points.ts: reaching: does not meet',
      'as-built/points.ts: notShown the layers were not counted',
      'as-built/points.ts: reaching layers',
      'as-built/points.ts: measured thickness',
      'as-built/points.ts: measured length',
      'as-built/points.ts: measured overlap',
      'as-built/points.ts: notShown the <name> was not measured',
      'as-built/points.ts: reaching point',
    ],
    tests: dimension(
      'that nobody measured: layers',
      'that nobody measured: thickness',
      'that nobody measured: length',
      'that nobody measured: overlap',
      'that falls short: layers',
      'that falls short: thickness',
      'that falls short: length',
      'that falls short: overlap',
    ),
  },
  {
    could: 'The laminate had too few hours, or hours at temperatures of which nothing is known.',
    would: 'It would go into service soft.',
    guards: [
      'as-built/acceptance.ts: notShown the temperature over the cure was not recorded',
      'as-built/acceptance.ts: if steps === undefined',
      'as-built/acceptance.ts: if steps.length === 0',
      'as-built/moisture-cure.ts: notShown the steel was colder than the sample of the transition was cured',
      'as-built/moisture-cure.ts: notShown the steel was colder or hotter than the rows of the maker',
      'as-built/moisture-cure.ts: reaching cure',
      'as-built/acceptance.ts: notShown the steel left the span of temperature in which the maker tested',
      'as-built/acceptance.ts: reaching cure',
      'as-built/acceptance.ts: notShown the steel was colder than the resin cures, and colder than the d',
    ],
    tests: cure(
      'that nobody recorded',
      'with no temperature in its record',
      'of fewer hours than the maker asks for',
      'hotter than the maker tested',
      'colder than all that was foreseen',
      'by moisture, of fewer hours than the row of the maker',
      'by moisture, colder than the sample of the transition',
      'by moisture, hotter than the rows of the maker',
      'by moisture, of fewer hours than the row of its coldest steel',
    ),
  },
  {
    could: 'The finished repair is soft, leaks under test, or nobody measured or tested it.',
    would: 'It would be accepted on a word.',
    guards: [
      'as-built/acceptance.ts: pointBy point',
      'as-built/acceptance.ts: pointBy pressure test',
      'as-built/acceptance.ts: notStated: not shown',
      'as-built/against.ts: byAcceptance: does not meet',
      'as-built/against.ts: byAcceptance: not shown',
    ],
    tests: finished(
      'whose hardness nobody measured',
      'that is soft',
      'that leaks under test',
      'whose test nobody made',
      'whose test nobody asked for or ruled out',
    ),
  },
  {
    could: 'The test went higher than the repair or the line bears, or a leak was put down to cooling.',
    would: 'Damage done by the test itself would go into service.',
    guards: [
      'as-built/pressure-test.ts: beyondTest: does not meet',
      'as-built/pressure-test.ts: beyondTest: not shown',
      'as-built/pressure-test.ts: coolingOfOther: not shown',
      'as-built/pressure-test.ts: fallUnsaid: not shown',
    ],
    tests: finished(
      'that fell under test, and nobody says so',
      'tested above its plan',
      'tested above the rating of a valve within its length',
      'tested to a height that nobody recorded',
      'whose fall of pressure is put down to the cooling of another liquid',
    ),
  },
];
