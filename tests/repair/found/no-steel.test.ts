import { describe, expect, it } from 'vitest';
import { designOf, verdictOf } from '../../faults/answers.js';
import { quietLoss, withPaths } from '../../faults/cases.js';

/** What the pipe is called and how stiff it is: whether it can be steel. */

describe('a pipe', () => {
  const called = (name: string) => verdictOf(withPaths(quietLoss, { 'pipe.material.name': name }));

  it.each([
    ...['EN-GJL-250', 'EN-GJS-400-15', 'GG25', 'GG-20', 'GGG 40', 'CI', 'C.I.', 'FC200', 'HT250', 'pit-cast'],
    ...['ASTM A48', 'ASTM A126 B', 'A536 65-45-12', 'DI K9', 'ductile', 'EN 545', 'spheroidal graphite'],
    ...['Grauguss', 'Sphäroguss', 'fonte', 'ghisa', 'fundición', 'чугун', 'Ni-resist', 'K9', 'Cu-DHP'],
    ...['AC pipe', 'fibre cement', 'vitrified clay', 'glass', 'ABS', 'PP-H', 'PVDF', 'CuNi10Fe1Mn', 'C70600'],
    ...['Al 6061-T6', '6061-T6', 'EN AW-6082', 'Ti Gr 2', 'nickel alloy', 'zinc'],
  ])('called "%s" is no steel', (name) => {
    expect(called(name)).toBe('not covered');
  });

  it.each([
    ...['API 5L B', 'API 5L X52', 'ASTM A106 B', 'A333 6', 'A53 B', 'A312 TP304', 'P235GH', 'St 37', '1.4571'],
    ...['cement-lined API 5L B', 'glass-lined P265GH', 'zinc coated A53 B', 'cast steel', 'tubo di acciaio', 'CS'],
  ])('called "%s" may be', (name) => {
    expect(called(name)).toBe('designed');
  });

  it.each([
    ['105 GPa', 170e9],
    ['135 GPa', 170e9],
    ['169.9 GPa', 170e9],
    ['220.1 GPa', 220e9],
  ])('with a modulus of %s has none of steel', (modulus, limit) => {
    const { verdict, reasons } = designOf(withPaths(quietLoss, { 'pipe.material.modulus': modulus }));
    expect(verdict).toBe('not covered');
    expect(reasons.map((reason) => reason.limit?.value)).toEqual([limit]);
  });

  it.each(['170 GPa', '193 GPa', '220 GPa', undefined])('with a modulus of %s may', (modulus) => {
    expect(verdictOf(withPaths(quietLoss, { 'pipe.material.modulus': modulus }))).toBe('designed');
  });
});
