import * as z from 'zod';
import { choice, count, nameOrNumber, quantity, words } from './field.js';

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

/** The pipe: measured, or by the name of its size and its grade. */
export const pipe = z.strictObject({
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
