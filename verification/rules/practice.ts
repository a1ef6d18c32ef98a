/** One value of practice as a person typed it in: its name, its value with its unit, its tag, and what the notes say. */
type PracticeRow = readonly [name: string, value: string, tag: string, note: string];

const none = 'not in the notes: chosen by this project';
const customary = 'not in the notes: customary, no source';

/** The values that neither a case nor a rule set gives. No script writes this list. */
export const practiceList: readonly PracticeRow[] = [
  ['modulusOfSteel', '207 GPa', 'practice', 'E_s 207000 MPa in the numeric cases'],
  ['poissonRatioOfSteel', '0.3', 'practice', 'nu 0.3 in the comparison with closed ends'],
  ['expansionOfSteel', '12 /MK', 'practice', customary],
  ['coldestUnasked', '0 degC', 'chosen', none],
  ['hottestByHand', '60 degC', 'chosen', none],
  ['hottestBondAsTested', '40 degC', 'chosen', none],
  ['hottestUnasked', '70 degC', 'chosen', none],
  ['highestPressureByHand', '0.7 MPa', 'chosen', none],
  ['largestJetByHand', '200 N', 'chosen', none],
  ['mixingTime', '5 min', 'practice', customary],
  ['soakingTime', '10 s', 'practice', customary],
  ['highestTestPressure', '1.05', 'chosen', none],
  ['openTime', '4 h', 'practice', 'time between preparation and primer: 4 h, less if rust bloom'],
  ['wrapBeforeDefect', '100 mm', 'practice', customary],
  ['sideLap', '25 mm', 'secondary', '1 in side lap, of coating felts and tapes'],
  ['leastJointReach', '25 mm', 'chosen', 'as long as the side lap'],
  ['leastThroughPlies', '1', 'chosen', none],
  ['mostRollsLaidOut', '500', 'chosen', none],
  ['leastSheetWidth', '50 mm', 'chosen', 'twice the side lap'],
  ['tapeWaste', '10 %', 'secondary', '10 % waste is the figure quoted for tape'],
  ['mixWaste', '15 %', 'practice', 'waste w 10-25 %'],
  ['shareOfWorkingTime', '80 %', 'chosen', none],
  ['leastRadiusUnderWrap', '5 mm', 'recalled', 'corner radius >= 5 mm'],
  ['ratioTolerance', '5 %', 'practice', 'tolerance 5 % by mass; the value of the maker governs'],
  ['leastMeanHardness', '90 %', 'chosen', 'mean >= 90 % of the qualified: memory, not confirmed'],
  ['leastSingleHardness', '80 %', 'chosen', 'no reading under 80 %: our choice'],
  ['shoreReadings', '5', 'practice', 'at least 5 readings'],
  ['heatCapacityRatioOfTestGas', '1.4', 'secondary', 'not in the notes: air and nitrogen'],
  ['dewPointMargin', '3 K', 'practice', 'steel at least 3 K above the dew point: pages citing ISO 8502-4'],
  ['highestHumidity', '85 %', 'practice', 'RH <= 85 %'],
  ['highestSalts', '20 mg/m2', 'practice', '20 offshore, 50 ship ballast tanks'],
  ['leastProfile', '60 um', 'practice', 'Rz >= 60 um'],
  ['thermometerError', '0.5 K', 'practice', '0.5 K in the band of the dew point'],
  ['leastSealFactor', '1.25', 'chosen', 'as the damaged pipe'],
  ['deepestProfile', '0.5 mm', 'chosen', none],
  ['leastPadMargin', '10 mm', 'chosen', 'the trade takes 25 mm'],
  ['leastSafetyFactor', '1.25', 'chosen', '1.25 is the recalled least of B31G-2009'],
  ['neighbourCollapseFactor', '3', 'chosen', 'as the laminate: factor 3 on ring buckling'],
  ['layerReadingsApart', '25 %', 'chosen', none],
  ['wallReadingsApart', '0.1 mm', 'chosen', none],
  ['steepestTape', '15 deg', 'chosen', none],
  ['pipeSizeTolerance', '1.5 %', 'chosen', none],
  ['recentPressureAge', '60 day', 'chosen', 'two months'],
  ['fillerMayLie', '2 day', 'chosen', none],
  ['mostOverPlan', '2', 'chosen', none],
  ['gaugeInterval', '1 h', 'chosen', none],
  ['mostOnPutty', '150 N', 'chosen', 'what two hands hold back'],
  ['stiffestGlass', '45 GPa', 'practice', 'not in the notes: 0.6 of E-glass at 72 GPa and 0.4 of resin at 3 GPa'],
  ['lightestPly', '1000 kg/m3', 'chosen', 'lighter than resin without fibre'],
  ['heaviestPly', '2600 kg/m3', 'chosen', 'heavier than glass without resin'],
  ['mostListed', '30', 'chosen', none],
];

/** What the trade uses for leak seals. */
export const sealPracticeList: readonly (readonly [name: string, value: string, note: string])[] = [
  ['padMultiple', '3', customary],
  ['padMargin', '25 mm', customary],
  ['sheetThickness/0', '0.3 mm', customary],
  ['sheetThickness/1', '0.4 mm', customary],
  ['leastPipeDiameter', '50 mm', customary],
];
