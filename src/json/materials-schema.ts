import * as z from 'zod';
import { choice, count, flag, list, plainNumber, quantity, words } from './field.js';

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

/** How a material cures. */
export const cure = z.discriminatedUnion('mechanism', [reactionCure, moistureCure]);

/** The cured laminate as qualified. */
export const laminate = z.strictObject({
  name: words('Name of the repair system', 'glass/epoxy tape'),
  hoopModulus: quantity('modulus', 'Modulus round the pipe', { above: 0 }),
  axialModulus: quantity('modulus', 'Modulus along the pipe', { above: 0 }),
  poissonRatio: plainNumber("Poisson's ratio, load round the pipe, contraction along it", { from: 0, below: 1 }, 0.12),
  shearModulus: quantity('modulus', 'Shear modulus', { above: 0 }).optional(),
  plyThickness: quantity('length', 'Thickness of one cured ply', { above: 0 }),
  qualifiedPlies: count('Plies of the qualification test, the least that may be laid', 1, 2).optional(),
  strainToFailure: quantity('strain', 'Short-term strain to failure round the pipe', {
    above: 0,
    below: 0.2,
  }).optional(),
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

/** What the pipe is wrapped with. */
export const wrap = z.discriminatedUnion('form', [tape, sheet]);

const parts = z.strictObject({
  base: plainNumber('Parts of the base, by mass', { above: 0 }, 100),
  hardener: plainNumber('Parts of the hardener, by mass', { above: 0 }, 25),
});

/** Fabric wetted out on site. */
export const wetLayUp = z.strictObject({
  fabricWeight: quantity('areal weight', 'Weight of the dry fabric', { above: 0 }),
  fibreMassFraction: quantity('ratio', 'Mass of fibre over mass of laminate', { above: 0, below: 1 }),
  parts,
  kitMass: quantity('mass', 'Mass of one kit', { above: 0 }),
  rate: quantity('mass flow', 'Mixed resin that the crew lays per time', { above: 0 }),
  waste: waste('resin'),
});

/** What the surface is built up with. */
export const filler = z.strictObject({
  name: words('Name of the filler', 'two-part epoxy filler'),
  thickness: quantity('length', 'Thickness over the built-up length', { above: 0 }),
  thicknessOverDefect: quantity('length', 'Thickness over the defect', { above: 0 }),
  density: quantity('density', 'Density of the mixed filler', { above: 0 }),
  parts,
  kitMass: quantity('mass', 'Mass of one kit', { above: 0 }),
  rate: quantity('mass flow', 'Mixed filler that the crew lays per time', { above: 0 }),
  waste: waste('filler'),
  underWholeWrap: flag('Built up under the whole wrap, bonded overlap included').optional(),
  qualifiedOverFiller: z
    .strictObject({
      energyReleaseRate: quantity('energy release rate', 'Bond of the laminate to the filler, as qualified', {
        above: 0,
      }),
    })
    .optional(),
  cure,
});
