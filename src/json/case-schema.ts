import * as z from 'zod';
import { choice, count, flag, list, plainNumber, quantity, quantityOrNone, words } from './field.js';
import { filler, laminate, wetLayUp, wrap } from './materials-schema.js';
import { pipe } from './pipe-schema.js';
import { acceptance, crew, line, seal, site } from './work-schema.js';

/*
 * A repair case as a document: the shape of `RepairCase` in src/repair/case.ts, with every quantity as text. It differs
 * in three places, where a document may name a row of a table instead of the numbers in it: the size of the pipe, its
 * grade, and its allowable stress.
 */

const none = z.literal('none');

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
  lowestTemperature: quantity('temperature', 'Coldest steel over the life of the repair').optional(),
  recentPressure: z
    .strictObject({
      pressure: quantity('gauge pressure', 'Highest pressure that the line has carried lately with this defect in it', {
        above: 0,
      }),
      date: words('Day on which it was read', '2026-03-01'),
    })
    .optional(),
});

const profilePoint = z.strictObject({
  position: quantity('length', 'Place along the pipe'),
  depth: quantity('length', 'Depth of the metal loss there', { from: 0 }),
});

const wallReadings = z.strictObject({
  previousWall: quantity('length', 'Wall at the reading before this one', { above: 0 }),
  sincePrevious: quantity('time', 'Time since that reading', { above: 0 }),
  service: quantity('time', 'Time since the wall was that of the new pipe', { above: 0 }),
});

const growth = z.strictObject({
  depth: z.union([wallReadings, quantity('corrosion rate', 'Wall loss per time', { from: 0 })]),
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
  readingError: quantityOrNone('length', 'How far the reading of the remaining wall may be off', { from: 0 }),
  holeDiameter: quantity('length', 'Diameter of the circle that encloses a through-wall hole', {
    above: 0,
  }).optional(),
  holeAtEndOfLife: quantity(
    'length',
    'Hole to expect by the end of the life of the repair where the wall is used up; without it the whole defect counts as the hole; less conservative',
    { above: 0 },
  ).optional(),
  profile: list(
    'Depth of the metal loss along the pipe, in order of position, over the whole defect and down to its least wall',
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
  creditPressureDuringApplication: flag('Credit for that pressure in the yielded form; less conservative').optional(),
  loading: choice('How often the design load acts; rare is less conservative', ['rare', 'continuous']).optional(),
  axialRelief: flag('Poisson relief of the hoop line by the end load; less conservative').optional(),
  leakFactorByFormula: flag('Class 3: leak service factor by formula; less conservative').optional(),
  availableOverlap: quantity('length', 'Sound pipe free for the overlap on the shorter side', { above: 0 }).optional(),
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
  line,
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
  wrap,
  resin: z.union([none, wetLayUp]),
  filler: z.union([none, filler]),
  site,
  seal: seal.optional(),
  crew: crew.optional(),
  acceptance: acceptance.optional(),
});

/** A case as its document holds it, quantities decoded, rows of tables still by name. */
export type CaseDocument = z.output<typeof caseSchema>;

/** A case as text, as it stands in a JSON file. */
export type CaseText = z.input<typeof caseSchema>;
