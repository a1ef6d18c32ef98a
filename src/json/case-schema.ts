import * as z from 'zod';
import { choice, count, flag, list, nameOrNumber, plainNumber, quantity, quantityOrNone, words } from './field.js';

/*
 * A repair case as a document: the shape of `RepairCase` in src/repair/case.ts, with every quantity as text. It differs
 * in three places, where a document may name a row of a table instead of the numbers in it: the size of the pipe, its
 * grade, and its allowable stress.
 */

const none = z.literal('none');

const sizeName = words(
  'Size by name, for the record; the diameter and the wall stand beside it',
  'NPS 8 schedule 40, ASME B36.10M',
);

const schedule = nameOrNumber('Schedule: 40, 80S, STD, XS, XXS', '40');

const sizeOptions = {
  schedule,
  standard: choice('Standard of the pipe; follows from the schedule where it is left out', [
    'ASME B36.10M',
    'ASME B36.19M',
  ]).optional(),
  measures: choice('Which printed measures to take; they differ by rounding; mm where it is left out', [
    'mm',
    'inch',
  ]).optional(),
};

const sizeByNps = z.strictObject({ nps: nameOrNumber('Nominal pipe size in inches', '8'), ...sizeOptions });

const sizeByDn = z.strictObject({ dn: count('Nominal diameter in millimetres', 6, 200), ...sizeOptions });

const allowableRow = z.strictObject({
  row: words('Row of the table of allowable stresses', 'API 5L B'),
  at: quantity(
    'temperature',
    'Temperature at which the row is read; the design temperature where it is left out',
  ).optional(),
});

const materialFields = {
  allowableStress: z
    .union([
      quantity('stress', 'Allowable stress at the design temperature under the code of the pipe', { above: 0 }),
      allowableRow,
    ])
    .optional(),
  modulus: quantity('modulus', "Young's modulus of the pipe", { above: 0 }).optional(),
  thermalExpansion: quantity('thermal expansion', 'Thermal expansion of the pipe').optional(),
};

const materialByStrength = z.strictObject({
  name: words('Material by its specification', 'API 5L B'),
  yieldStrength: quantity('stress', 'Specified minimum yield strength', { above: 0 }),
  tensileStrength: quantity('stress', 'Specified minimum tensile strength', { above: 0 }).optional(),
  ...materialFields,
});

const materialByGrade = z.strictObject({
  grade: words('Line-pipe grade; its strengths are taken from the table', 'API 5L B'),
  edition: choice('Edition of the specification that the pipe was made to', ['43rd and earlier', '44th and later']),
  name: words('Material by the name the site gives it', 'API 5L B').optional(),
  ...materialFields,
});

const pipe = z.strictObject({
  outsideDiameter: quantity('length', 'Outside diameter; or give the circumference, or a size', {
    above: 0,
  }).optional(),
  circumference: quantity('length', 'Circumference measured round the bare pipe', { above: 0 }).optional(),
  wallThickness: quantity('length', 'Nominal wall of the undamaged pipe; left out where a size gives it', {
    above: 0,
  }).optional(),
  size: z.union([sizeName, sizeByNps, sizeByDn]).optional(),
  material: z.union([materialByStrength, materialByGrade]),
});

const service = z.strictObject({
  contents: words('What the line carries', 'cooling water'),
  phase: choice('Phase of the contents', ['liquid', 'gas', 'two-phase']),
  hazards: list(
    'What the contents can do to people; an empty list says that somebody looked and found nothing',
    choice('Hazard', ['flammable', 'toxic', 'hot', 'corrosive', 'asphyxiant']),
    0,
    'a list of "flammable", "toxic", "hot", "corrosive", "asphyxiant"',
    [],
  ),
  safetyCritical: flag('Firewater, deluge, emergency shutdown and the like'),
  designPressure: quantity('gauge pressure', 'Design pressure', { above: 0 }),
  designTemperature: quantity('temperature', 'Design temperature'),
});

const profilePoint = z.strictObject({
  position: quantity('length', 'Place along the pipe'),
  depth: quantity('length', 'Depth of the metal loss there', { from: 0 }),
});

const growth = z.strictObject({
  depth: quantity('corrosion rate', 'Wall loss per time', { from: 0 }),
  length: quantity('corrosion rate', 'Growth of the extent at each end, and of the radius of a hole, per time', {
    from: 0,
  }),
});

const defect = z.strictObject({
  kind: choice('Kind of the defect', [
    'metal loss',
    'through-wall hole',
    'through-wall slot',
    'crack',
    'dent',
    'gouge',
    'lamination',
    'bulge',
    'seam defect',
  ]),
  cause: choice('Cause of the defect', [
    'internal corrosion',
    'external corrosion',
    'internal erosion',
    'mechanical damage',
    'unknown',
  ]),
  axialLength: quantity('length', 'Extent along the pipe', { above: 0 }),
  circumferentialWidth: quantity('length', 'Extent round the pipe', { above: 0 }),
  remainingWall: quantity(
    'length',
    'The least wall left anywhere in the defect; of a through-wall hole, in the metal round the hole',
    { from: 0 },
  ),
  holeDiameter: quantity('length', 'Diameter of the circle that encloses a through-wall hole', {
    above: 0,
  }).optional(),
  profile: list(
    'Depth of the metal loss along the pipe, in order of position',
    profilePoint,
    2,
    'a list of at least two points in order of position',
    [
      { position: '0 mm', depth: '0 mm' },
      { position: '20 mm', depth: '1.5 mm' },
      { position: '40 mm', depth: '0 mm' },
    ],
  ).optional(),
  growth: z.union([none, growth]),
});

const cycles = z.strictObject({
  number: count('Number of pressure cycles over the life of the repair', 1, 7000),
  lowestPressure: quantity('gauge pressure', 'Lowest pressure of a cycle', { from: 0 }),
  highestPressure: quantity('gauge pressure', 'Highest pressure of a cycle', { above: 0 }),
});

const loads = z.strictObject({
  axialForce: quantityOrNone('force', 'Tension along the pipe beside that of the pressure'),
  bendingMoment: quantityOrNone('moment', 'Bending moment'),
  torsion: quantityOrNone('moment', 'Torsion'),
  shearForce: quantityOrNone('force', 'Shear force'),
  externalPressure: quantityOrNone('gauge pressure', 'Pressure on the outside above that inside: vacuum, water', {
    from: 0,
  }),
  soil: choice('Soil or traffic over a buried pipe', ['present', 'none']),
  cycles: z.union([none, cycles]),
});

const assessment = z.strictObject({
  method: choice('Method for the remaining strength', [
    'original B31G',
    'modified B31G',
    'effective area',
    'DNV-RP-F101',
    'API 579-1 Level 1',
    'API 579-1 Level 2',
  ]).optional(),
  flowStress: choice('Flow stress', ['SMYS + 69 MPa', '1.1 SMYS', '(SMYS + SMTS) / 2']).optional(),
  safetyFactor: plainNumber('Safety factor on the failure pressure', { from: 1 }, 1.39).optional(),
  designFactor: plainNumber(
    'Design factor F of the pipeline code; the safety factor is at least 1/F',
    { above: 0, to: 1 },
    0.72,
  ).optional(),
});

const repairClass = z
  .literal([1, 2, 3])
  .meta({ description: 'Class of the repair: 1 low-hazard utility, 2 fire water and the like, 3 all else' });

const demands = z.strictObject({
  class: repairClass,
  life: quantity('time', 'How long the repair has to last', { above: 0 }),
  method: choice('Method for the thickness of the laminate', [
    'substrate ignored',
    'substrate sharing load',
    'substrate yielded',
    'long-term strength',
  ]).optional(),
  pressureDuringApplication: quantity('gauge pressure', 'Pressure in the pipe while the laminate goes on and cures', {
    from: 0,
  }).optional(),
  creditPressureDuringApplication: flag('Credit for that pressure in the yielded form; less conservative').optional(),
  axialRelief: flag('Poisson relief of the hoop line by the end load; less conservative').optional(),
  leakFactorByFormula: flag('Class 3: leak service factor by formula; less conservative').optional(),
  availableOverlap: quantity('length', 'Sound pipe free for the overlap on the shorter side', { above: 0 }).optional(),
});

const reactionCure = z.strictObject({
  mechanism: z.literal('two-part reaction'),
  referenceTemperature: quantity('temperature', 'Temperature at which the times hold'),
  cureTime: quantity('time', 'From mixing to full cure', { above: 0 }),
  workingTime: quantity('time', 'From mixing until the material can no longer be worked', { above: 0 }),
  activationEnergy: quantity('activation energy', 'Activation energy of the cure', { above: 0 }).optional(),
  testedFrom: quantity('temperature', 'Lowest temperature at which the maker tested'),
  testedTo: quantity('temperature', 'Highest temperature at which the maker tested'),
  minimumTemperature: quantity('temperature', 'Below this the reaction stalls'),
});

const moistureCureRow = z.strictObject({
  temperature: quantity('temperature', 'Temperature of the test'),
  humidity: quantity('ratio', 'Relative humidity of the test', { from: 0, to: 1 }),
  cureTime: quantity('time', 'Full cure in the test', { above: 0 }),
  workingTime: quantity('time', 'Working time in the test', { above: 0 }),
});

const moistureCure = z.strictObject({
  mechanism: z.literal('moisture'),
  rows: list("The maker's own times", moistureCureRow, 1, "a list of at least one row of the maker's times", [
    { temperature: '23 degC', humidity: '50 %', cureTime: '2 h', workingTime: '20 min' },
  ]),
});

const cure = z.discriminatedUnion('mechanism', [reactionCure, moistureCure]);

const laminate = z.strictObject({
  name: words('Name of the repair system', 'glass/epoxy tape'),
  hoopModulus: quantity('modulus', 'Modulus round the pipe', { above: 0 }),
  axialModulus: quantity('modulus', 'Modulus along the pipe', { above: 0 }),
  poissonRatio: plainNumber("Poisson's ratio, load round the pipe, contraction along it", { from: 0, below: 1 }, 0.12),
  shearModulus: quantity('modulus', 'Shear modulus', { above: 0 }).optional(),
  plyThickness: quantity('length', 'Thickness of one cured ply', { above: 0 }),
  qualifiedPlies: count('Plies of the qualification test, the least that may be laid', 1, 2).optional(),
  strainToFailure: quantity('strain', 'Short-term strain to failure round the pipe', { above: 0 }).optional(),
  hoopExpansion: quantity('thermal expansion', 'Thermal expansion round the pipe').optional(),
  axialExpansion: quantity('thermal expansion', 'Thermal expansion along the pipe').optional(),
  glassTransition: quantity('temperature', 'Glass transition temperature').optional(),
  heatDistortion: quantity('temperature', 'Heat distortion temperature').optional(),
  energyReleaseRate: quantity('energy release rate', 'Lower confidence limit, bond to the prepared pipe', {
    above: 0,
  }).optional(),
  atDesignTemperature: z
    .strictObject({
      energyReleaseRate: quantity('energy release rate', 'The same at the design temperature', { above: 0 }),
      hoopModulus: quantity('modulus', 'Modulus round the pipe at the design temperature', { above: 0 }),
      axialModulus: quantity('modulus', 'Modulus along the pipe at the design temperature', { above: 0 }),
    })
    .optional(),
  lapShearStrength: quantity('stress', 'Lap shear strength of the bond', { above: 0 }).optional(),
  longTermStrength: z
    .strictObject({
      strength: quantity('stress', 'Lower confidence limit of the long-term strength', { above: 0 }),
      test: choice('Kind of the test', ['1000 h survival', 'design life regression']),
    })
    .optional(),
  cure,
});

const waste = (of: string) => quantity('ratio', `Waste of ${of}`, { from: 0, below: 1 }).optional();

const tape = z.strictObject({
  form: z.literal('tape'),
  width: quantity('length', 'Width of the tape', { above: 0 }),
  overlap: quantity('ratio', 'Part of the width that the next turn covers', { from: 0, below: 1 }),
  rollLength: quantity('length', 'Length of a roll', { above: 0 }),
  waste: waste('tape'),
});

const sheet = z.strictObject({
  form: z.literal('sheet'),
  width: quantity('length', 'Width of the sheet', { above: 0 }),
  rollLength: quantity('length', 'Length of a roll', { above: 0 }),
  finalLap: quantity('length', 'Lap round the pipe at the end of the last layer', { from: 0 }).optional(),
  waste: waste('sheet'),
});

const parts = z.strictObject({
  base: plainNumber('Parts of the base, by mass', { above: 0 }, 100),
  hardener: plainNumber('Parts of the hardener, by mass', { above: 0 }, 25),
});

const wetLayUp = z.strictObject({
  fabricWeight: quantity('areal weight', 'Weight of the dry fabric', { above: 0 }),
  fibreMassFraction: quantity('ratio', 'Mass of fibre over mass of laminate', { above: 0, below: 1 }),
  parts,
  kitMass: quantity('mass', 'Mass of one kit', { above: 0 }),
  rate: quantity('mass flow', 'Mixed resin that the crew lays per time', { above: 0 }),
  waste: waste('resin'),
});

const filler = z.strictObject({
  name: words('Name of the filler', 'two-part epoxy filler'),
  thickness: quantity('length', 'Thickness over the built-up length', { above: 0 }),
  thicknessOverDefect: quantity('length', 'Thickness over the defect', { above: 0 }),
  density: quantity('density', 'Density of the mixed filler', { above: 0 }),
  parts,
  kitMass: quantity('mass', 'Mass of one kit', { above: 0 }),
  rate: quantity('mass flow', 'Mixed filler that the crew lays per time', { above: 0 }),
  waste: waste('filler'),
  cure,
});

const site = z.strictObject({
  pipeTemperature: quantity('temperature', 'Temperature of the steel where the repair goes on'),
  airTemperature: quantity('temperature', 'Temperature of the air'),
  relativeHumidity: quantity('ratio', 'Relative humidity of the air', { from: 0, to: 1 }),
  history: list(
    'Temperature of the steel over the hours of the cure',
    z.strictObject({
      duration: quantity('time', 'Length of this step', { above: 0 }),
      temperature: quantity('temperature', 'Temperature of the steel in this step'),
    }),
    1,
    'a list of at least one step',
    [{ duration: '6 h', temperature: '18 degC' }],
  ).optional(),
});

/** The schema of a case, both ways: text with units in the document, quantities in SI in the decoded case. */
export const caseSchema = z.strictObject({
  title: words('What is repaired, in a few words', 'Cooling-water header, pinhole leak'),
  reference: words('Line number, drawing, work order', 'CW-1104').optional(),
  date: words('Day of the survey', '2026-03-14').optional(),
  note: words('Anything a reader should know about this case', 'Survey with the line drained').optional(),
  basis: choice('Rule set', ['ISO 24817', 'ASME PCC-2']),
  pipe,
  service,
  defect,
  loads,
  fitting: choice('Fitting that the repair would lie on', [
    'none',
    'bend',
    'tee',
    'reducer',
    'flange',
    'nozzle',
    'weld',
  ]),
  assessment: assessment.optional(),
  repair: demands,
  laminate,
  wrap: z.discriminatedUnion('form', [tape, sheet]),
  resin: z.union([none, wetLayUp]),
  filler: z.union([none, filler]),
  site,
});

/** A case as its document holds it, quantities decoded, rows of tables still by name. */
export type CaseDocument = z.output<typeof caseSchema>;

/** A case as text, as it stands in a JSON file. */
export type CaseText = z.input<typeof caseSchema>;
