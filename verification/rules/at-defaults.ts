/**
 * Inputs that stand exactly where a default decides, for defaults whose part in the result hardly any drawn call would show:
 * the floor that governs, the bound that is met, the step that is taken.
 */
const energies = ['cure-wait', 'cure-wait-over-history', 'cure-wait-over-swing', 'overcoat-window', 'pot-life'];
const waits = [...energies, 'warmest-for-working-time', 'working-time'].map((name) => `cure/${name}`);
const unstated = { activationEnergy: undefined };
const rows = (length: number, value: number): number[] => Array.from({ length }, () => value);
const farFromSteps = { distanceToDiscontinuity: undefined, insideDiameter: 0.2, futureAllowance: 0 };

export const atDefaults: Readonly<Record<string, object>> = {
  // The three energies are taken in order, so that each is met by its neighbour.
  ...Object.fromEntries(
    waits.flatMap((id) => [
      [`${id} lowEnergy`, { ...unstated, typicalEnergy: 40_000 }],
      [`${id} typicalEnergy`, { ...unstated, highEnergy: 50_000 }],
      [`${id} highEnergy`, { ...unstated, typicalEnergy: 60_000 }],
    ]),
  ),
  'laminate/leak-service-factor longestLife': { designLife: 20 * 31_557_600 },
  'pipe/damage-safety-factor safetyFactor': { designFactor: 1, leastFactor: 1 },
  'wrap/final-lap thicknesses': { plyThickness: 0.02 },
  // Four sheets of 0.3 m with laps of 25 mm cover 1.125 m to the last millimetre.
  'wrap/sheet-plan sideLap': { axialLength: 1.125, sheetWidth: 0.3 },
  'wrap/sheets-side-by-side sideLap': { axialLength: 1.125, sheetWidth: 0.3 },
  'acceptance/test-distance highDistance': { energy: 200e6, scaledDistance: 1 },
  'acceptance/test-distance highEnergy': { energy: 271e6, scaledDistance: 1, lowEnergy: 100e6 },
  'acceptance/test-distance lowEnergy': { energy: 135.5e6, scaledDistance: 1, highEnergy: 300e6 },
  'pipe/flow-stress-offset highestYield': { yieldStrength: 483e6 },
  'laminate/governing-overlap hole': { geometry: 1e-4, adhesive: 0, minimum: 1e-4 },
  'laminate/governing-overlap minimum': { geometry: 0.01, adhesive: 0.01, hole: 0.01 },
  'laminate/governing-thickness leak': { hoop: 0, axial: 0 },
  'laminate/default-strains modulusShare': {
    hoopModulus: 20e9,
    axialModulus: 10.001e9,
    warmHoopModulus: undefined,
    warmAxialModulus: undefined,
  },
  'laminate/default-strains failureMargin': {
    table: [{ life: 31_557_600, hoop: 0.005, axial: 0.005, softAxial: 0.001 }],
    designLife: 31_557_600,
    failureStrain: 0.0125,
  },
  'acceptance/hardness-gate leastMean': {
    scale: 'Shore D',
    qualifiedHardness: 80,
    readings: rows(12, 72),
    leastReadings: 5,
  },
  'acceptance/hardness-gate leastSingle': {
    scale: 'Shore D',
    qualifiedHardness: 80,
    readings: [...rows(11, 80), ...rows(1, 64)],
    leastReadings: 5,
  },
  'acceptance/hardness-gate material': {
    scale: 'Barcol',
    qualifiedHardness: 50,
    readings: rows(25, 50),
    leastReadings: undefined,
  },
  'pipe/through-wall-at-end-of-life leastWall': { wallAtEndOfLife: 0.001 },
  'pipe/local-metal-loss leastWall': { ...farFromSteps, correctedWall: 0.005, measuredMinimum: 0.0013 },
  'pipe/local-metal-loss-profile leastWall': {
    ...farFromSteps,
    correctedWall: 0.005,
    profile: [
      { position: 0, wall: 0.005 },
      { position: 0.05, wall: 0.0013 },
      { position: 0.1, wall: 0.005 },
    ],
  },
  'pipe/local-metal-loss-profile allowableFactor': {
    ...farFromSteps,
    correctedWall: 0.01,
    leastWall: 0.001,
    workingPressure: 5e6,
    profile: [
      { position: 0, wall: 0.01 },
      { position: 0.1, wall: 0.004 },
      { position: 0.4, wall: 0.004 },
      { position: 0.5, wall: 0.01 },
    ],
  },
  'pipe/least-wall-pressure leastWall': { remainingWall: 0.0013 },
  'laminate/overlap-from-hole share': { holeDiameter: 0.0249999, outsideDiameter: 0.25, wallThickness: 0.01 },
  'resin/adiabatic-rise overheatingRise': { heatOfReaction: 100_000, specificHeat: 1000, resinMassFraction: 1 },
  'acceptance/warmed-temperature turn': { temperature: 309 },
};
