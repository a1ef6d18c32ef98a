import { alike, type Equivalent, KNOWN, TIE } from './alike.js';

/** Changes of the laminate that no admissible case can tell from the original. */

const laminate = (file: string): string => `src/repair/laminate/${file}.ts`;
const ROOT = 'such a ceiling is a root of what is stated: no stated pressure meets it to the last digit';

export const equivalentInLaminate: readonly Equivalent[] = [
  ...alike(laminate('bond-energy'), TIE, [
    ['overSeal.energyReleaseRate < toSteel', 'overSeal.energyReleaseRate <= toSteel'],
  ]),
  ...alike(laminate('bond-energy'), 'the word "none" has none of the members that are looked at', [
    ["filler === 'none'", 'false'],
  ]),
  ...alike(laminate('bond-energy'), 'such a filler that was not tested so is not covered, and ends before', [
    ['filler.qualifiedOverFiller === undefined', 'false'],
  ]),
  ...alike(laminate('candidates'), `${TIE}; either name is that of a criterion with it`, [
    ['candidate.value < least.value', 'candidate.value <= least.value'],
  ]),
  ...alike(laminate('candidates'), 'every method has a line round the pipe: the list is never empty', [
    ['candidate === undefined', 'false'],
  ]),
  ...alike(laminate('footprint'), `${KNOWN}: a seal is designed where the case has one`, [
    ['asked !== undefined', 'true'],
  ]),
  ...alike(laminate('footprint'), `${TIE}; one of the two holds pi`, [
    ['Math.max(padDiameter, sheetSize, collarSize) > half', 'Math.max(padDiameter, sheetSize, collarSize) >= half'],
    ['forceOnPad <= mostOnPutty.value', 'forceOnPad < mostOnPutty.value'],
  ]),
  ...alike(laminate('bond-energy'), 'no energy is below one that is not there', [['toSteel !== undefined', 'true']]),
  ...alike(laminate('extent'), 'the word "none" has none of the members that are looked at', [
    ["fitting === 'none'", 'false'],
  ]),
  ...alike(laminate('leak-resistance'), TIE, [['asPlate > asRing', 'asPlate >= asRing']]),
  ...alike(
    laminate('extent'),
    'four diameters of the largest hole of that rule are what the geometry asks for: the hole never asks for more',
    [
      ['hole === undefined', 'true'],
      ['hole === undefined', 'false'],
      ['hole === undefined', 'hole !== undefined'],
    ],
  ),
  ...alike(laminate('fitting'), TIE, [['inside > flat', 'inside >= flat']]),
  ...alike(laminate('joints'), `${KNOWN}: without that strength no extent is made, and nothing is joined`, [
    ['lapShearStrength === undefined', 'false'],
    ['extent === open', 'false'],
  ]),
  ...alike(laminate('joints'), TIE, [['value > most', 'value >= most']]),
  ...alike(laminate('laminate'), `${KNOWN}: without a method or the loads there are no candidates either`, [
    ['method === undefined', 'false'],
    ['job === undefined', 'false'],
  ]),
  ...alike(laminate('leak'), ROOT, [
    ['pressure < ceiling', 'pressure <= ceiling'],
    ['pressure < ceilingAsPlate', 'pressure <= ceilingAsPlate'],
    ['pressure < ceilingAsRing', 'pressure <= ceilingAsRing'],
  ]),
  ...alike(laminate('leak'), TIE, [['asRing < thickness', 'asRing <= thickness']]),
  ...alike(laminate('leak-slot'), ROOT, [['pressure < highest', 'pressure <= highest']]),
  ...alike(laminate('leak-slot'), TIE, [
    ['thickness >= least.thickness', 'thickness > least.thickness'],
    ['pressure > most', 'pressure >= most'],
  ]),
  ...alike(
    laminate('long-term'),
    'two series at one temperature are a contradiction, and one series is its own second',
    [['second.testTemperature < first.testTemperature', 'second.testTemperature <= first.testTemperature']],
  ),
  ...alike(
    laminate('sharing'),
    'what refuses that line refuses the pressure that the laminate resists too, and no laminate is made',
    [['value === undefined', 'false']],
  ),
  ...alike(laminate('why-not'), 'every refusal of a calculation has its amounts', [['[]', '["Stryker was here"]']]),
  ...alike(laminate('ply-moduli'), 'the limit holds pi, and the lead angle is an arc of stated numbers', [
    ['angle <= steepestTape.value', 'angle < steepestTape.value'],
  ]),
];
