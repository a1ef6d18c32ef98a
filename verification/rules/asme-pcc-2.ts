import type { Coefficient } from './coefficient.js';

/**
 * The coefficients of the rule set after ASME PCC-2 Part 4, typed in row by row from the notes of three recollections and, for
 * the screening, from the excerpt that was seen. No script writes this list.
 */
const unclassed = 'the set has no repair classes';
const rare = 'Table 401-3.4.4, rarely occurring';
const continuous = 'Table 401-3.4.4, continuous';
const metric = 'the metric line, used for both unit systems';
const margins = 'Table 401-3.4.2';
const hole = '401-3.4, Eq. 12';
const leak = '401-3.4, Eq. 12 to 14';
const extent = '401-3.4, axial extent';
const bond = '401-3.4, axial extent, with Table 401-3.4.4, rarely occurring';
const chosenBond = 'the notes name no strain: chosen, the largest of the column';
const cycles = 'gives 0.500 at 7000 cycles and 0.250 at 1e8';

export const asmePcc2List: readonly Coefficient[] = [
  ['classes/{1,2,3}/highestPressure', 'none', unclassed, ''],
  ['classes/{1,2,3}/highestTemperature', 'none', unclassed, ''],
  ['classes/{1,2,3}/mayReachTemperature', 'yes', unclassed, ''],
  ['classes/{1,2,3}/safetyCritical', 'yes', unclassed, ''],
  ['classes/{1,2,3}/gasOrHazard', 'yes', unclassed, ''],
  [
    'longestLife',
    '20 year',
    'design life',
    'chosen: the strains and the leak factor are the 20 year ones of the other set',
  ],
  ['throughWallBelow', '1 mm', '401-3.4', 'wall below 1 mm at end of life counts as type B, both documents'],

  ['defaultStrains/rare/{1,2,3}/0/life', '20 year', rare, 'the table has no life'],
  ['defaultStrains/rare/{1,2,3}/0/hoop', '0.40 %', rare, ''],
  ['defaultStrains/rare/{1,2,3}/0/axial', '0.40 %', rare, 'E_a >= 0.5 E_c'],
  ['defaultStrains/rare/{1,2,3}/0/softAxial', '0.25 %', rare, 'E_a < 0.5 E_c'],
  ['defaultStrains/continuous/{1,2,3}/0/life', '20 year', continuous, 'the table has no life'],
  ['defaultStrains/continuous/{1,2,3}/0/hoop', '0.25 %', continuous, ''],
  ['defaultStrains/continuous/{1,2,3}/0/axial', '0.25 %', continuous, 'E_a >= 0.5 E_c'],
  ['defaultStrains/continuous/{1,2,3}/0/softAxial', '0.10 %', continuous, 'E_a < 0.5 E_c'],
  ['modulusShare', '0.5', 'Table 401-3.4.4', 'E_a >= 0.5 E_c'],
  ['leastFailureStrain', '1 %', 'Table 401-3.4.4', 'only if short-term strain to failure >= 1 %'],
  ['temperatureFactor/quadratic', '6e-5', '401-3.4, Eq. 10', metric],
  ['temperatureFactor/linear', '0.001', '401-3.4, Eq. 10', metric],
  ['temperatureFactor/constant', '0.7014', '401-3.4, Eq. 10', metric],
  ['temperatureFactor/unit', '1 K', '401-3.4, Eq. 10', metric],
  ['mismatch', 'absolute', '401-3.4, Eq. 10', 'printed signed; the absolute value is the safe reading'],
  ['cyclic/slope', '2.888', 'cyclic loading', cycles],
  ['cyclic/intercept', '7.108', 'cyclic loading', cycles],
  ['cyclic/freeCycles', '7000', 'cyclic loading', 'f_c = 1 for N <= 7000'],
  ['cyclic/lastCycles', '1e8', 'cyclic loading', 'N <= 1e8'],
  ['temperatureMargin/glassTransition/notLeaking', '20 K', margins, 'T_m = Tg - 20 degC'],
  ['temperatureMargin/glassTransition/leaking', '30 K', margins, 'T_m = Tg - 30 degC'],
  ['temperatureMargin/heatDeflection/notLeaking', '15 K', margins, 'HDT - 15 degC'],
  ['temperatureMargin/heatDeflection/leaking', '25 K', margins, '20 recalled twice, 25 adopted as conservative'],

  ['performance/survivalTest/{1,2,3}/0/life', '20 year', '401-3.4, Eq. 11, 1000 h survival', 'no life in the rule'],
  ['performance/survivalTest/{1,2,3}/0/factor', '0.5', '401-3.4, Eq. 11, 1000 h survival', ''],
  ['performance/designLifeTest/{1,2,3}/0/life', '20 year', '401-3.4, Eq. 11, design life data', 'no life in the rule'],
  ['performance/designLifeTest/{1,2,3}/0/factor', '0.67', '401-3.4, Eq. 11, design life data', ''],
  ['leakFactor/{1,2,3}/firstYear', '0.333', leak, 'fixed'],
  ['leakFactor/{1,2,3}/decay', '0', leak, 'fixed'],
  ['leakFactorOption/{1,2,3}', 'none', leak, ''],
  ['leakTemperatureFactor', 'not known', leak, 'gap: ask for gamma and E at the design temperature'],
  ['hole/leastDiameter', '15 mm', hole, 'older editions give none: chosen, the one of the other set'],
  ['hole/validity', '6', hole, 'd <= sqrt(6 D t)'],
  ['hole/aspectRatio', '5', hole, 'aspect ratio below about 5'],

  ['overlap/geometry/coefficient', '2.5', extent, '2.5 sqrt(D t/2) = 1.768 sqrt(D t)'],
  ['overlap/geometry/divisor', '2', extent, '2.5 sqrt(D t/2) = 1.768 sqrt(D t)'],
  ['overlap/minimum', '50 mm', extent, '2 in'],
  ['overlap/hole', 'none', extent, ''],
  [
    'overlap/adhesiveFactor',
    '3',
    extent,
    'open: the notes adopt 1 for this set with the 3 as option; the set holds the 3, the longer overlap',
  ],
  ['overlap/bondStrains/life', '20 year', bond, chosenBond],
  ['overlap/bondStrains/table/0/life', '20 year', bond, chosenBond],
  ['overlap/bondStrains/table/0/hoop', '0.40 %', bond, chosenBond],
  ['overlap/bondStrains/table/0/axial', '0.40 %', bond, chosenBond],
  ['overlap/bondStrains/table/0/softAxial', '0.25 %', bond, chosenBond],
  ['overlap/leastAvailable', '25 mm', 'restricted extent', 'recalled thrice, weak'],
  ['overlap/taper', '5', '401-3.4, taper', '5:1'],

  ['thinLaminateRatio', '12', 'thin laminate', 't < D/12; D/6 in one recollection'],
  ['leastPlies', '2', 'minimum thickness', 'two plies at least: practice'],
  ['lapShear/required', '5 MPa', 'lap shear strength', '4 recalled for this set; 5 adopted for both'],
  ['lapShear/withWarning', '4 MPa', 'lap shear strength', '580 psi'],
  ['components/bend', '1.2', 'component factors', 'never below the intrados factor'],
  ['components/flange', '1.1', 'component factors', ''],
  ['components/overlayExponent', '2/3', 'component factors', '(l_over/l_available)^(2/3)'],
  ['systemTest/factor', '1.1', 'system pressure test', '1.0 to 1.1; 1.1 adopted'],
  ['systemTest/hold', '60 min', 'system pressure test', '30 min in one recollection; 60 adopted'],

  ['highRisk/si/pressure', '1 MPa', '401-1.1', '1 MN/m2'],
  ['highRisk/si/highestTemperature', '50 degC', '401-1.1', ''],
  ['highRisk/si/lowestTemperature', '253.15 K', '401-1.1', '-20 degC'],
  ['highRisk/si/leakSeverity', '160000 Pa m^0.5', '401-1.1', '0.16 MN/m^1.5'],
  ['highRisk/si/holeOverDiameter', '0.25', '401-1.1', 'd > 0.25 D'],
  ['highRisk/us/pressure', '150 psi', '401-1.1', '150 psig'],
  ['highRisk/us/highestTemperature', '120 degF', '401-1.1', ''],
  ['highRisk/us/lowestTemperature', '0 degF', '401-1.1', ''],
  ['highRisk/us/leakSeverity', '164826.524 Pa m^0.5', '401-1.1', '150 psig in^0.5, worked out to nine digits'],
  ['highRisk/us/holeOverDiameter', '0.25', '401-1.1', 'd > 0.25 D'],
  ['inspectionInterval', 'not known', 'inspection', 'gap: the interval of the owner'],
];
