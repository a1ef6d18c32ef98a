import { type Hazard, shownIn } from '../hazard.js';

const file = 'verification/hazards/shown/limits.test.ts';
const ofClass = shownIn(`${file}: the class of a repair`);
const ofBond = shownIn(`${file}: the bond`);
const ofContents = shownIn(`${file}: what the contents reach`);
const ofHeat = shownIn(`${file}: the temperature`);
const ofStrain = shownIn(`${file}: the strain of the laminate`);
const ofRules = shownIn(`${file}: the rule set`);
const uncovered = shownIn(`${file}: what this version does not design for`);

/** What the repair system, the class and the rule set stay below. */
export const limits: readonly Hazard[] = [
  {
    could: 'A repair of a low class is put on a line that is too hot or under too much pressure for it.',
    would: 'Less inspection, less qualification and less margin than the line calls for.',
    guards: ['limits/class.ts: reasons the design <what> is above what class <repair.class> covers (<li'],
    tests: ofClass('pressure above it', 'heat above it'),
  },
  {
    could: 'A class for low-hazard utilities is taken on fire water, on gas or on a hazard.',
    would: 'A failure of the repair would hurt people, not only wet the ground.',
    guards: [
      'limits/class.ts: reasons the line is safety-critical: class 1 covers low-hazard utilities',
      'limits/class.ts: reasons the contents are <service.hazards.length > 0 ? service.hazards.j',
      "limits/class.ts: if service.phase !== 'liquid'",
      'limits/class.ts: if service.hazards.length > 0',
    ],
    tests: ofClass('a safety-critical line in class 1', 'a hazard in class 1', 'gas in class 1'),
  },
  {
    could: 'A repair is asked to last longer than the rule set says anything about.',
    would: 'Creep and growth would go on past the last strain that a table holds.',
    guards: ['limits/class.ts: reasons the life asked for is longer than the rule set covers'],
    tests: ofClass('a life beyond the rule set'),
  },
  {
    could: 'A repair of high risk is treated by the rules for a simple one.',
    would: 'Qualification and inspection that the risk calls for would be left out.',
    guards: ['limits/risk.ts: warnOwner The repair counts as high risk (<risks>): the full rules apply,'],
    tests: ofClass(
      'a high risk by its contents',
      'a high risk by what depends on it',
      'a high risk by its pressure',
      'a high risk by its heat',
      'a high risk by the size of its hole',
      'a high risk by pressure and hole',
    ),
  },
  {
    could: 'The bond is weak, or nobody measured it.',
    would: 'The end load would peel the laminate off the pipe.',
    guards: [
      'limits/bond.ts: need laminate.lapShearStrength',
      'limits/bond.ts: reasons the lap shear strength of the bond is too low',
      'limits/bond.ts: warnOwner minima',
      'limits/bond.ts: warnOwner The bond counts with its lap shear strength as it is stated',
    ],
    tests: ofBond('of no stated strength', 'below the least', 'between the two minima', 'hotter than it was tested'),
  },
  {
    could: 'The contents eat resin or putty.',
    would: 'The repair would dissolve from inside, out of sight.',
    guards: ['limits/contents.ts: need field'],
    tests: ofContents('resin of no stated resistance', 'putty of no stated resistance'),
  },
  {
    could: 'The steel gets hotter than the laminate keeps its stiffness.',
    would: 'The laminate would soften and creep under pressure.',
    guards: [
      'limits/temperature.ts: reasons the design temperature is above the upper temperature limit of t',
      'limits/temperature.ts: need laminate.glassTransition',
    ],
    tests: ofHeat(
      'above what the laminate keeps',
      'above what its heat distortion keeps',
      'above what its glass transition keeps',
      'judged by the heat distortion alone',
      'of a transition that nobody measured',
    ),
  },
  {
    could: 'The steel gets colder than anybody tested the laminate.',
    would: 'The resin would turn brittle and shrink off the steel.',
    guards: [
      'limits/lowest-temperature.ts: need laminate.lowestTemperature',
      'limits/lowest-temperature.ts: reasons the steel gets colder than the repair system was qualified for:',
    ],
    tests: ofHeat('of steel below freezing, without a word about it', 'of steel below the qualification'),
  },
  {
    could: 'Water freezes in a repaired pipe, or under the laminate.',
    would: 'Ice would burst either at any design pressure.',
    guards: [
      'limits/lowest-temperature.ts: warnOwner The steel gets as cold as {0}: water that freezes in the pipe, u',
    ],
    tests: ofHeat('of steel on which water freezes'),
  },
  {
    could: 'Pipe and laminate expand differently, and nobody stated by how much.',
    would: 'The mismatch would use up strain that the design gives to the pressure.',
    guards: ['limits/expansions.ts: need field'],
    tests: ofHeat(
      'with an expansion that nobody stated, round the pipe',
      'with an expansion that nobody stated, along the pipe',
    ),
  },
  {
    could: 'The laminate is brittler than the table of strains supposes.',
    would: 'It would crack before it reaches the strain that it is sized for.',
    guards: ['limits/strains.ts: need laminate.strainToFailure'],
    tests: ofStrain('at failure is not stated'),
  },
  {
    could: 'A less conservative column of strains is taken, by choice or by a hair.',
    would: 'The laminate would be thinner, and nobody would know that somebody chose it.',
    guards: [
      'limits/strains.ts: warnOwner The design load is taken as rare, as the case states: less conse',
      'limits/strains.ts: warn The axial modulus of the laminate lies within 5 per cent of the',
    ],
    tests: ofStrain('under a load that counts as rare', 'at the step of the soft column'),
  },
  {
    could: 'The defect is a crack, a dent, a gouge, a lamination, a bulge or in a seam.',
    would: 'A method for corroded wall would call it strong, and it would run.',
    guards: ['found/coverage.ts: reason the defect is a <defect.kind>: <why>'],
    tests: uncovered('a crack', 'a dent', 'a gouge', 'a lamination', 'a bulge', 'a seam defect'),
  },
  {
    could: 'The repair lies on a tee, a reducer, a nozzle or a weld.',
    would: 'Stress and lay of the tape would be those of a straight pipe.',
    guards: ['found/coverage.ts: reason the repair would lie on a <fitting.kind>: <why>'],
    tests: uncovered('a tee', 'a reducer', 'a nozzle', 'a weld'),
  },
  {
    could: 'Filler is spread under the whole wrap.',
    would: 'The overlap would bond to filler, whose bond nobody tested.',
    guards: ['found/coverage.ts: reason the filler would lie under the whole wrap, bonded overlap includ'],
    tests: uncovered('filler under the whole wrap'),
  },
  {
    could: 'A number is confirmed that lets a repair be thinner than the recalled one, by a slip or in another sense.',
    would: 'The repair would be thinner, and nobody would have been told by what.',
    guards: ['job/own-rules.ts: warn bothNumbers'],
    tests: ofRules('a confirmed number that is less conservative'),
  },
  {
    could: 'A rule set of the user has less conservative values than that of this library, and its name.',
    would: 'The repair would be thinner by the word of nobody, under a heading that people trust.',
    guards: ['job/own-rules.ts: warn bothValues(difference)'],
    tests: ofRules('an own set of a name that people know, with a less conservative value'),
  },
];
