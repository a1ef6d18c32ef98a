import { type Hazard, shownIn } from '../hazard.js';

const file = 'verification/hazards/shown/laminate.test.ts';
const overLeak = shownIn(`${file}: a laminate over a leak`);
const thickness = shownIn(`${file}: a thickness`);
const tape = shownIn(`${file}: a tape`);

/** The laminate over loss and leak, and how it is wrapped. */
export const laminate: readonly Hazard[] = [
  {
    could: 'The energy release rate of the bond and the tests that it comes from are both stated, and differ.',
    would: 'The higher of the two could count, and the laminate would peel from the rim of the hole.',
    guards: ['case/contradictions.ts: note laminate.holeTests'],
    tests: shownIn('verification/hazards/shown/contradictions.test.ts: a contradiction')(
      'an energy beside its own tests',
    ),
  },
  {
    could: 'The laminate over a leak rests on a bond or a stiffness that nobody measured.',
    would: 'It would blister and peel from the rim of the hole.',
    guards: [
      'laminate/bond-energy.ts: need laminate.energyReleaseRate',
      'laminate/leak-resistance.ts: need laminate.shearModulus',
    ],
    tests: overLeak('of a bond that nobody tested', 'of a shear modulus that nobody stated'),
  },
  {
    could: 'The bond over a seal is stated tougher than that to bare steel, by a slip or by tests over another seal.',
    would: 'A third of the plies would lie over the leak, and they would peel.',
    guards: ['laminate/bond-energy.ts: warn The bond that was found over a seal, {0}, is tougher than that t'],
    tests: overLeak('held by a bond that a seal makes tougher than steel'),
  },
  {
    could:
      'The laminate lies on pad, sheet, collar and bands, to which it does not bond, and is sized for the bare hole.',
    would: 'It would start to peel at a rim far wider than the hole.',
    guards: ['laminate/footprint.ts: need field', 'laminate/footprint.ts: need seal.bands'],
    tests: overLeak(
      'over a sheet of unknown size',
      'over a collar that nobody spoke of',
      'over bands that may stay or go',
    ),
  },
  {
    could: 'No thickness holds the pressure over the hole, or the hole is too large for its formula.',
    would: 'A formula would give plies beyond where it holds.',
    guards: [
      'laminate/leak.ts: reasons no thickness of this laminate holds the design pressure over thi',
      'laminate/validity.ts: notCovered the hole is too large for the formula of a round hole',
      'laminate/leak-resistance.ts: warn The <leak.under> is more than three',
    ],
    tests: overLeak(
      'under more pressure than any thickness holds',
      'over a hole that is too large for its formula',
      'over a hole wider than three thicknesses',
    ),
  },
  {
    could: 'The bond over the leak is weaker when warm, or a less conservative factor stands for its ageing.',
    would: 'The leak would come back on the first hot day, or in the tenth year.',
    guards: [
      'laminate/leak-factor.ts: warnOwner The leak service factor is taken by formula, as the case asks, i',
      'laminate/leak-factor.ts: warn The temperature factor of the leak resistance is not known: the',
      'laminate/leak-factor.ts: warn The energy release rate at the design temperature is that of the',
    ],
    tests: overLeak(
      'by the less conservative leak factor',
      'that nobody tested warm',
      'over filler, tested warm on steel only',
    ),
  },
  {
    could: 'The thickness counts on metal that is not there, or on a strength that nobody tested.',
    would: 'Plies would be missing.',
    guards: [
      'laminate/methods.ts: reasons the case names the method "<named>", which counts on metal that',
      'laminate/methods.ts: if throughWall',
      'laminate/methods.ts: if countsOnMetal(named)',
      'laminate/methods.ts: need outcome.field',
    ],
    tests: thickness(
      'by metal that is not there',
      'by a method of the laminate alone, at a leak',
      'that counts on the pipe',
      'by a strength that nobody tested',
    ),
  },
  {
    could: 'A less conservative method is chosen, and the reader does not see it.',
    would: 'Somebody would cite a thin laminate as the rule.',
    guards: [
      'laminate/methods.ts: warnOwner The thickness counts on',
      'laminate/yielded.ts: warnOwner The yielded form counts on the thinned pipe up to its yield stre',
    ],
    tests: thickness('that counts on the pipe', 'that counts on a pipe that yields'),
  },
  {
    could: 'The laminate is so thick that it is no thin shell.',
    would: 'The inner plies would carry more than the equations say.',
    guards: [
      'laminate/validity.ts: reasons the laminate would be too thick for the equations of a thin one',
      'wrap/wrap.ts: reasons with the laps of its turns or bands the wrap',
    ],
    tests: thickness('beyond that of a thin laminate', 'beyond that of a thin laminate by what the passes lay besides'),
  },
  {
    could: 'The tape runs so steeply that it is stiff along the pipe instead of round it.',
    would: 'The hoop strain would be larger than designed.',
    guards: [
      'laminate/ply-moduli.ts: need laminate.shearModulus',
      'laminate/ply-moduli.ts: notCovered the tape is too wide for this pipe: it runs so steeply that the',
      'wrap/tape-warnings.ts: warn The tape is so wide for this pipe that it runs steeply: its stif',
    ],
    tests: tape('whose stiffness off the hoop direction nobody can tell', 'that runs too steeply', 'that runs steeply'),
  },
  {
    could: 'The overlap of the tape drifts by a hair.',
    would: 'A stripe of the wrap would be one layer short.',
    guards: [
      'wrap/tape-warnings.ts: warnCrew An overlap of {0} is exactly what {1} layers need: any drift lea',
      'wrap/tape-warnings.ts: warn An overlap of {0} instead of {1} would lay {2} layers in each pa',
    ],
    tests: tape('whose overlap is just enough', 'that a little more overlap would save a pass of'),
  },
  {
    could: 'The turns of the tape lie edge to edge.',
    would: 'Nothing would carry along the pipe there, and a leak would find its way out.',
    guards: ['wrap/tape-lap.ts: reasons the turns of the tape hardly lap, and every pass is open at thei'],
    tests: tape('whose turns hardly lap'),
  },
  {
    could: 'A narrow sheet is wound in more bands than anybody can follow.',
    would: 'Joints would come to lie on each other.',
    guards: ['wrap/sheet.ts: notCovered the sheet is too narrow for this length'],
    tests: tape('of sheet in more bands than a plan lists'),
  },
  {
    could: 'A support, a weld or a flange stands where the wrap has to lie.',
    would: 'The overlap would be shorter than the bond needs.',
    guards: ['wrap/wrap.ts: reasons there is not enough sound pipe beside the defect for the wrap wi'],
    tests: tape('that finds no room beside the defect'),
  },
];
