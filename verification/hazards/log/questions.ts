import { type Hazard, shownIn } from '../hazard.js';

const file = 'verification/hazards/shown/questions.test.ts';
const unasked = shownIn(`${file}: nobody was asked`);
const buried = shownIn(`${file}: a buried line`);
const answered = shownIn(`${file}: an answer`);

/** What is asked before anybody signs. */
export const questions: readonly Hazard[] = [
  {
    could: 'The loss is a hollow on the outside, and the wrap goes over it.',
    would: 'The laminate would hang free there, and carry nothing into the pipe.',
    guards: ['asked/hollow.ts: need filler', 'asked/hollow.ts: need filler.thicknessOverDefect'],
    tests: shownIn('verification/hazards/shown/hollow.test.ts: a hollow on the outside')(
      'without filler',
      'round a hole, without filler',
      'of a cause that nobody knows, without filler',
      'with filler that is thinner than it is deep',
    ),
  },
  {
    could: 'A pump that starts or a valve that shuts lifts the pressure above that of the design.',
    would: 'Wall, laminate and bond would see more than they are sized for, once, and that is enough.',
    guards: [
      'asked/surge.ts: need service.surge',
      'asked/surge.ts: warnOwner The surge of {0} is above the design pressure of {1}: wall, lami',
    ],
    tests: [...unasked('service.surge'), ...answered('of a surge above the design pressure')],
  },
  {
    could: 'The contents are more dangerous than the list of hazards says.',
    would: 'People would stand at petrol or acid as they stand at water.',
    guards: [
      'asked/hazards.ts: need service.hazards',
      'asked/hazards.ts: need service.hazards (2)',
      'asked/hazards.ts: need service.hazards (3)',
      "asked/hazards.ts: if !hazards.includes('hot')",
      'asked/hazards.ts: if !reaches(',
      'asked/hazards.ts: need service.contents',
    ],
    tests: answered(
      'that calls gasoline no hazard',
      'that calls sewage no hazard',
      'that calls contents of 101 degC not hot',
      'that calls gasoline of 101 degC hot and nothing else',
      'that finds no hazard in contents that nobody looked at',
      'that names no contents',
    ),
  },
  {
    could: 'The contents feed fire, oxygen or peroxide, and no word of the list of hazards says so.',
    would: 'Resin, oil and grease would burn like tinder at the first spark.',
    guards: ['asked/hazards.ts: need service.hazardsStatedBy'],
    tests: answered('that says nothing of contents that feed fire'),
  },
  {
    could: 'The case calls gas or vapour a liquid.',
    would: 'Limits, class and test would be those of water, at a line that stores far more energy.',
    guards: ['asked/called.ts: need service.phase'],
    tests: answered('that calls air a liquid'),
  },
  {
    could: 'The line is sucked empty, its name says so, and the case states nothing that presses from outside.',
    would: 'The thinned pipe with its laminate would fold: nobody would have sized it for the air.',
    guards: ['asked/called.ts: need loads.externalPressure'],
    tests: answered(
      'that calls a line under vacuum pressed by nothing',
      'that calls a line under vacuum pressed by 0 bar',
    ),
  },
  {
    could: 'Nobody knows what the pipe is made of, and the case says so in the place of its name.',
    would: 'Cast iron or plastic would be wrapped as steel, at a strength that nobody has found.',
    guards: ['asked/material.ts: need pipe.material.name'],
    tests: answered('that names no material of the pipe'),
  },
  {
    could: 'A leak is called a thinned wall, and the case says beside it how it is sealed.',
    would: 'The seal would be dropped in silence: a wrap for a wall over a live leak that nobody held to a limit.',
    guards: ['asked/leak.ts: need seal'],
    tests: answered('that seals a leak it does not have'),
  },
  {
    could: 'Nobody says that lives hang on the line: firewater, deluge, sprinklers.',
    would: 'The line would be repaired where it should be replaced, and fail in the fire that it is for.',
    guards: ['asked/called.ts: need service.safetyCritical'],
    tests: answered('that calls firewater not safety-critical'),
  },
  {
    could: 'The service cracks steel: sour, or stress corrosion.',
    would: 'A crack would run under the wrap at a pressure that the metal loss alone bears.',
    guards: [
      'asked/cracks.ts: need service.cracking',
      'asked/cracks.ts: need service.cracking (2)',
      'asked/cracks.ts: need service.cracking.test',
      'asked/cracks.ts: need service.cracking.test (2)',
      'asked/cracks.ts: need service.cracking.test (3)',
    ],
    tests: [
      ...unasked('service.cracking'),
      ...answered(
        'that no crack is to be feared in sour service',
        'that names no test for cracks',
        'that was tested for cracks long before the survey',
        'that was tested for cracks before a survey on no day',
        'that looked for cracks with the eye',
      ),
    ],
  },
  {
    could: 'A weld, a branch, a support or a flange lies where the laminate has to lie.',
    would: 'A bead lifts the laminate, a branch cuts it: the overlap would not bond there.',
    guards: [
      'asked/attachment.ts: need defect.nearestAttachment',
      'wrap/attachment.ts: notCovered a weld, branch, support or flange lies inside the laid length: t',
    ],
    tests: [...unasked('defect.nearestAttachment'), ...answered('of a weld that the wrap would run over')],
  },
  {
    could: 'Another loss lies near the defect, and each is judged as if it stood alone.',
    would: 'The two fail as one larger defect, and the overlap of the laminate lies on thinned metal.',
    guards: [
      'asked/neighbours.ts: need defect.neighbours',
      'found/joined-defect.ts: warn Neighbouring losses act as one with the defect: the repair is de',
      'found/joined-defect.ts: warn Neighbouring losses that lie apart from the defect act as one wi',
      'wrap/neighbours.ts: notCovered a neighbouring loss that does not act with the defect lies under',
      'found/neighbour-strength.ts: need defect.growth',
      "found/neighbour-strength.ts: if defect.growth === 'none'",
      "found/neighbour-strength.ts: if neighbour.cause !== 'mechanical damage'",
      'found/neighbour-strength.ts: reasons a neighbouring loss that this repair does not cover does not bea',
      'wrap/neighbours.ts: warnOwner A neighbouring loss lies {0} along the pipe beside the defect, a',
    ],
    tests: [
      ...unasked('defect.neighbours'),
      ...answered(
        'of a neighbouring loss that lies apart and under the laminate',
        'of a neighbouring loss that lies clear of the laminate',
        'of a neighbouring loss that acts with the defect',
        'of neighbouring losses that act as one with each other',
        'of a neighbouring loss that does not bear the design pressure',
        'of a neighbouring loss that grows at no rate',
        'of a neighbouring loss that somebody made with a tool',
      ),
    ],
  },
  {
    could: 'Vacuum, ground water, soil or traffic press on a neighbouring loss that no laminate keeps round.',
    would: 'It would fold or bend shut beside a repair that was sized for them.',
    guards: [
      'found/neighbour-from-outside.ts: reasons a neighbouring loss that this repair does not cover does not bea',
      'found/neighbour-from-outside.ts: notCovered a neighbouring loss that this repair does not cover would yield',
    ],
    tests: [...answered('of a neighbouring loss that folds under a vacuum'), ...buried('bends at a neighbouring loss')],
  },
  {
    could: 'The line cannot move along itself, and nobody says at which temperature it was tied in.',
    would: 'The push of heat or the pull of cold would be missing in every line along the pipe.',
    guards: ['asked/held-line.ts: need loads.heldLine', 'asked/held-line.ts: need service.lowestTemperature'],
    tests: [...unasked('loads.heldLine'), ...unasked('the coldest steel of a held line')],
  },
  {
    could: 'The fibre is carbon, and nothing keeps it off the steel.',
    would: 'In the wet the steel would be eaten away under the wrap, where nobody sees it.',
    guards: [
      'asked/fibre.ts: need laminate.fibre',
      'asked/fibre.ts: need laminate.isolatingLayer',
      'asked/fibre.ts: warnCrew',
      "asked/fibre.ts: if fibre === 'glass'",
      'asked/fibre.ts: if Math.max(hoopModulus, axialModulus) <=',
    ],
    tests: [
      ...unasked('laminate.fibre'),
      ...answered(
        'that lays carbon on bare steel',
        'that lays carbon over a layer that the crew has to know of',
        'that calls a laminate glass that is stiffer than glass makes one',
      ),
    ],
  },
  {
    could: 'The contents boil when the line is let down: liquefied gas.',
    would: 'The steel would get colder than the resin was ever tested, and the laminate crack off it.',
    guards: ['asked/cold.ts: need service.lowestTemperature'],
    tests: answered('that says nothing of how cold liquefied gas gets'),
  },
  {
    could: 'The pipe is of cast iron, plastic or another metal than steel.',
    would: 'It would break where steel yields, or expand off the laminate.',
    guards: [
      'found/coverage.ts: reason the pipe is called',
      'found/coverage.ts: reason the pipe has a modulus that no steel has: strength, expansion',
    ],
    tests: answered('that calls the pipe cast iron', 'of a modulus that is that of cast iron'),
  },
  {
    could: 'A buried line has cathodic protection, and nobody asked what becomes of it under the wrap.',
    would: 'Where the laminate comes off, the steel would corrode with neither coating nor current.',
    guards: [
      'asked/protection.ts: need pipe.cathodicProtection',
      'asked/protection.ts: need pipe.cathodicProtection.underWrap',
      'asked/protection.ts: warnOwner The line has cathodic protection',
    ],
    tests: buried('has cathodic protection or not', 'knows what the wrap does to it', 'tells its owner'),
  },
  {
    could: 'The title says fire water, sour, vacuum, cast iron or a crack, and the case states none of it.',
    would: 'The line would be designed for as what it is not, while every reader sees what it is.',
    guards: ['asked/titled.ts: warn The title or the note says'],
    tests: answered('whose title calls the line another one'),
  },
  {
    could: 'The line is buried, and the crew stands in a trench beside it.',
    would: 'Its sides would fall in on them, or the freed pipe would sag and break.',
    guards: ['asked/trench.ts: warnCrew Buried {0} deep: find other services, dig by hand, let nobod'],
    tests: buried('tells the crew of its trench'),
  },
  {
    could: 'The laminate cures colder than the sample whose transition was measured.',
    would: 'It would soften on the first hot day, below the temperature that the design allows.',
    guards: [
      'asked/sample.ts: need laminate.transitionCuredAt',
      'limits/transition.ts: need laminate.transitionCuredAt',
    ],
    tests: [
      ...unasked('laminate.transitionCuredAt'),
      ...answered('of a sample that was cured warmer than the site is'),
    ],
  },
  {
    could: 'Filler is poured deeper than its maker allows.',
    would: 'It would heat itself until it cracks or burns.',
    guards: [
      'asked/lift.ts: need filler.greatestLift',
      'mix-and-cure/lift.ts: notCovered the filler is deeper than may be placed at once, and this versio',
    ],
    tests: [...unasked('filler.greatestLift'), ...answered('of filler that may not lie so deep at once')],
  },
  {
    could: 'A flange, valve or hose within the length under test bears less than the test pressure, and nobody looked.',
    would: 'It would burst beside the people who watch the repair.',
    guards: ['asked/rating.ts: need acceptance.pressureTest.lowestRating'],
    tests: unasked('acceptance.pressureTest.lowestRating'),
  },
];
