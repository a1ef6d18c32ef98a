import * as z from 'zod';
import { choice, clock, count, list, plainNumber, quantity, words } from './field.js';
import { cure } from './materials-schema.js';

const surfaceGrade = (about: string) => choice(about, ['St 2', 'St 3', 'SP 11', 'Sa 1', 'Sa 2', 'Sa 2 1/2', 'Sa 3']);

/** The air and the steel on the day of the work. */
export const site = z.strictObject({
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
  instruments: z
    .strictObject({
      temperatureError: quantity('temperature difference', 'How far the thermometers may be off', { from: 0 }),
      humidityError: quantity('ratio', 'How far the hygrometer may be off', { from: 0, below: 1 }),
    })
    .optional(),
  forecast: list(
    'Air and steel over the coming hours, from the start of the work',
    z.strictObject({
      duration: quantity('time', 'Length of this step', { above: 0 }),
      pipeTemperature: quantity('temperature', 'Temperature of the steel in this step'),
      airTemperature: quantity('temperature', 'Temperature of the air in this step'),
      relativeHumidity: quantity('ratio', 'Relative humidity in this step', { from: 0, to: 1 }),
    }),
    1,
    'a list of at least one step',
    [{ duration: '6 h', pipeTemperature: '18 degC', airTemperature: '16 degC', relativeHumidity: '65 %' }],
  ).optional(),
  surface: z
    .strictObject({
      grade: surfaceGrade('Grade of the prepared surface'),
      profile: quantity('length', 'Height of the surface profile', { above: 0 }),
      salts: quantity('areal weight', 'Soluble salts as measured', { from: 0 }).optional(),
      qualified: z
        .strictObject({
          grade: surfaceGrade('Grade on which the lap shear strength was qualified'),
          profile: quantity('length', 'Profile on which the lap shear strength was qualified', { above: 0 }),
        })
        .optional(),
    })
    .optional(),
});

const pad = z.strictObject({
  multiple: plainNumber('Size of the pad over the size of the hole', { above: 0 }, 4),
  multipleOf: choice('What the multiple speaks of', ['area', 'diameter', 'not stated']),
  margin: quantity('length', 'Pad beyond the hole on every side', { from: 0 }),
});

const putty = z.strictObject({ name: words('Name of the putty', 'hand-kneaded epoxy putty'), cure });

const band = z.strictObject({
  width: quantity('length', 'Width of the band', { above: 0 }),
  thickness: quantity('length', 'Thickness of the band', { above: 0 }),
  strength: quantity('stress', 'Strength of the band', { above: 0 }),
  factor: plainNumber('Safety factor on the strength of the band', { from: 1 }, 2),
  friction: plainNumber('Friction between band and what lies under it', { from: 0 }, 0.15),
  count: count('Bands side by side over the pad', 1, 2),
  overlap: quantity('length', 'Free length for the fastener', { from: 0 }),
  holdingFactor: plainNumber('Factor of the clamping force on the force of the leak', { from: 1 }, 1.5),
});

const fastener = z.strictObject({
  threadDiameter: quantity('length', 'Diameter of the thread', { above: 0 }),
  nutFactor: plainNumber('Nut factor', { above: 0 }, 0.2),
  scatter: quantity('ratio', 'Scatter of the tension at a given torque', { from: 0, below: 1 }),
  permittedTension: quantity('force', 'What the fastener may be tightened to', { above: 0 }),
});

const backingSheet = z.strictObject({
  thickness: quantity('length', 'Thickness of the sheet', { above: 0 }),
  modulus: quantity('modulus', "Young's modulus of the sheet", { above: 0 }),
  yieldStrength: quantity('stress', 'Yield strength of the sheet', { above: 0 }),
  poissonRatio: plainNumber("Poisson's ratio of the sheet", { from: 0, below: 0.5 }, 0.3),
  factor: plainNumber('Safety factor on the yield strength of the sheet', { from: 1 }, 1.5),
  support: choice('How the edge of the sheet is held', ['clamped', 'simply supported']),
});

const liquid = z.strictObject({
  phase: z.literal('liquid'),
  density: quantity('density', 'Density of the liquid', { above: 0 }),
});

const gas = z.strictObject({
  phase: z.literal('gas'),
  molarMass: quantity('molar mass', 'Molar mass of the gas', { above: 0 }),
  heatCapacityRatio: plainNumber('Ratio of the heat capacities of the gas', { above: 1 }, 1.3),
  atmosphere: quantity('absolute pressure', 'Pressure of the surrounding air', { above: 0 }),
});

/** The line while people work on it. */
export const line = z.discriminatedUnion('state', [
  z.strictObject({
    state: choice('The line while people work on it: under pressure, or at a static head', [
      'under pressure',
      'static head',
    ]),
    pressure: quantity('gauge pressure', 'Pressure in the line from the first touch to the cured laminate', {
      above: 0,
    }),
    writtenProcedure: words("Number of the site's written procedure, or none", 'WP-LS-02'),
  }),
  z.strictObject({ state: z.literal('empty, dry, isolated, vented') }),
]);

/** How the leak is held before the wrap. */
export const seal = z.strictObject({
  siteLimit: quantity('gauge pressure', 'Highest pressure at which the site lets anyone touch a leak', { from: 0 }),
  pad,
  putty,
  band,
  fastener,
  sheet: backingSheet,
  pipeFactor: plainNumber('Factor on buckling and yielding of the thinned pipe under the band', { from: 1 }, 2),
  fluid: z.discriminatedUnion('phase', [liquid, gas]).optional(),
});

/** The people who lay the wrap. */
export const crew = z.strictObject({
  layingSpeed: quantity('speed', 'Tape or sheet laid per time by one crew', { above: 0 }),
  crews: count('Crews that work side by side', 1, 1),
  soakTime: quantity('time', 'Soaking of a roll before it is laid', { from: 0 }).optional(),
  start: clock('Start of the work on the clock of the site'),
});

const pressureTest = z.strictObject({
  medium: choice('What the line is tested with', ['liquid', 'gas']),
  length: quantity('length', 'Length of line that is filled and closed off', { above: 0 }),
  atmosphere: quantity('absolute pressure', 'Pressure of the surrounding air', { above: 0 }),
});

/** What the repair must show before the line goes back to service. */
export const acceptance = z.strictObject({
  hardnessScale: choice('Scale of the hardness', ['Shore D', 'Barcol']),
  qualifiedHardness: plainNumber('Hardness that the qualification reached', { above: 0, to: 100 }, 80),
  pressureTest: z.union([z.literal('none'), pressureTest]),
});
