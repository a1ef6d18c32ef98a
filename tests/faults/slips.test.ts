import { describe, expect, it } from 'vitest';
import { isCalculationError } from '../../src/formula/index.js';
import { decodeFormulaInput } from '../../src/json/index.js';
import { formulaById } from '../../src/registry/index.js';
import { run } from '../cli/run.js';
import { designOf, verdictOf } from './answers.js';
import { type CaseFile, loss, type Paths, withPaths } from './cases.js';

/** Issue 9, items 18 and 19: slips that a person makes, and options that nobody reads. */

/** Slips with the field that they sit in. */
const slips: readonly (readonly [what: string, field: string, changes: Paths])[] = [
  ['joule for kilojoule', 'laminate.cure.activationEnergy', { 'laminate.cure.activationEnergy': '55 J/mol' }],
  [
    'a radius for a diameter: no pipe size is near it',
    'pipe.outsideDiameter',
    { 'pipe.outsideDiameter': '84.1 mm', 'defect.circumferentialWidth': '40 mm' },
  ],
  ['kilogram for gram of fabric', 'resin.fabricWeight', { 'resin.fabricWeight': '800 kg/m2', crew: undefined }],
  ['a strain of 0.1953 that was per cent', 'laminate.strainToFailure', { 'laminate.strainToFailure': '0.1953' }],
  [
    'psi for ksi',
    'laminate.longTermStrength.strength',
    { 'laminate.longTermStrength': { strength: '38.5 psi', test: '1000 h survival' } },
  ],
  ['kelvin for degC', 'site.airTemperature', { 'site.airTemperature': '23 K' }],
];

/** Whether a warning names a field, by a member of its own or by its path. */
const warnsOf = (file: CaseFile, field: string): boolean =>
  designOf(file).warnings.some(
    (warning) => ('field' in warning && warning.field === field) || warning.text.includes(field),
  );

const strict = (file: CaseFile) =>
  run(['design', 'case.json', '--strict'], { 'case.json': JSON.stringify(file) }).then(({ code }) => code);

describe('a slip in a case', () => {
  it.each(slips)('leaves a design, and without it the field has no warning: %s', (_, field, changes) => {
    expect(verdictOf(withPaths(loss, changes))).toBe('designed');
    expect(warnsOf(loss, field)).toBe(false);
  });

  it.each(slips)('is warned of by its field: %s', (_, field, changes) => {
    expect(warnsOf(withPaths(loss, changes), field)).toBe(true);
  });

  it('is refused where the command is told to be strict, and nothing else is', async () => {
    const [, , changes] = slips[2] ?? ['', '', {}];
    const codes = await Promise.all([strict(loss), strict(withPaths(loss, changes))]);
    expect([codes[0], codes[1] === 0]).toEqual([0, false]);
  });
});

describe('evaluate', () => {
  const warnings = async (outsideDiameter: string): Promise<unknown> => {
    const inputs = ['pressure=38.5 bar', `outsideDiameter=${outsideDiameter}`, 'wallThickness=8.18 mm'];
    const { out } = await run(['evaluate', 'pipe/hoop-stress', ...inputs, '--format', 'json']);
    return JSON.parse(out).warnings;
  };

  it('warns of nothing usual', async () => {
    expect(await warnings('219.1 mm')).toEqual([]);
  });

  it('warns of an input outside its declared samples: a pipe of 21.9 m', async () => {
    expect(await warnings('21.91 m')).not.toEqual([]);
  });
});

describe('a formula', () => {
  const dnv = formulaById('pipe/dnv-single-defect');
  const outcome = (changes: object): string => {
    if (dnv === undefined) throw new Error('no such formula');
    const given = {
      ...{ outsideDiameter: '168.3 mm', wallThickness: '7.11 mm', defectDepth: '3 mm' },
      ...{ defectLength: '100 mm', tensileStrength: '414 MPa' },
    };
    try {
      return String(dnv.compute({ ...decodeFormulaInput(dnv, given).input, ...changes } as never));
    } catch (error) {
      return isCalculationError(error) ? error.code : String(error);
    }
  };

  it('takes the factor of either edition', () => {
    expect(Number(outcome({ editionFactor: 1.05 })) / Number(outcome({ editionFactor: 1 }))).toBeCloseTo(1.05, 12);
  });

  it('takes no factor of an edition that is none: 10', () => {
    expect(outcome({ editionFactor: 10 })).toBe('invalid-input');
  });

  it('that is found by its id refuses an option that it does not know', () => {
    expect(outcome({ editionFacter: 1.05 })).toBe('invalid-input');
  });
});
