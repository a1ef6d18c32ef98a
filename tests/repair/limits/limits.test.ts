import { describe, expect, it } from 'vitest';
import { asksFor, designOf } from '../../faults/answers.js';
import { type CaseFile, emptyLeak, evenLoss, leak, type Paths, quietLoss, withPaths } from '../../faults/cases.js';

/** What stops a repair at all, at its limit and beside it. */

const said = (file: CaseFile, changes: Paths) => {
  const { verdict, reasons, warnings } = designOf(withPaths(file, changes));
  return { verdict, reasons, why: reasons.map(({ text }) => text), warned: warnings.map(({ text }) => text) };
};

/** Treated water in class 1 after ISO 24817, within all that the class covers. */
const utility = withPaths(quietLoss, {
  basis: 'ISO 24817',
  'repair.class': 1,
  'service.designPressure': '8 bar',
  'service.designTemperature': '35 degC',
});

describe('the class of a repair', () => {
  it.each([
    [1, '10 bar', '35 degC'],
    [1, '8 bar', '40 degC'],
    [2, '20 bar', '35 degC'],
    [2, '8 bar', '60 degC'],
  ])('covers what reaches its limits: class %s at %s and %s', (repairClass, pressure, heat) => {
    const atLimit = {
      'repair.class': repairClass,
      'service.designPressure': pressure,
      'service.designTemperature': heat,
    };
    expect(said(utility, atLimit).verdict).toBe('designed');
  });

  it.each([
    [1, '10.1 bar', 'class 2 is needed'],
    [1, '20 bar', 'class 2 is needed'],
    [1, '20.1 bar', 'class 3 is needed'],
    [2, '20.1 bar', 'class 3 is needed'],
  ])('names the lowest one that covers the pressure: class %s at %s', (repairClass, pressure, needed) => {
    const { verdict, why } = said(utility, { 'repair.class': repairClass, 'service.designPressure': pressure });
    expect(verdict).toBe('not repairable');
    expect(why).toEqual([expect.stringContaining(needed)]);
  });

  it('asks in class 2 whether what is above 60 degC scalds, and covers nothing that reaches 100 degC', () => {
    const hot = { 'repair.class': 2, 'laminate.glassTransition': '150 degC' };
    expect(said(utility, { ...hot, 'service.designTemperature': '99.9 degC' }).verdict).toBe('needs input');
    const { verdict, why, reasons } = said(utility, { ...hot, 'service.designTemperature': '100 degC' });
    expect(verdict).toBe('not repairable');
    expect(why).toEqual([expect.stringContaining('class 3 is needed')]);
    expect(reasons[0]?.limit?.value).toBe(373.15);
  });

  it('names what the contents are: their hazards, else that they are gas', () => {
    const onGas = { 'service.phase': 'gas' };
    expect(said(utility, onGas).why).toEqual([expect.stringContaining('the contents are gas:')]);
    const onBoth = { ...onGas, 'service.hazards': ['toxic', 'flammable'] };
    expect(said(utility, onBoth).why).toEqual([expect.stringContaining('the contents are toxic and flammable:')]);
  });
});

describe('the bond', () => {
  it.each([
    ['4 MPa', 'designed', true],
    ['4.99 MPa', 'designed', true],
    ['5 MPa', 'designed', false],
    ['3.99 MPa', 'not repairable', false],
  ])('of %s is %s, with both minima named where it lies between them', (strength, verdict, warns) => {
    const at = said(quietLoss, { 'laminate.lapShearStrength': strength });
    expect(at.verdict).toBe(verdict);
    expect(at.warned.some((text) => text.includes('between the two minima'))).toBe(warns);
  });
});

describe('what the resin stands', () => {
  it.each([
    ['treated cooling water', true],
    ['  Treated  COOLING\twater ', true],
    ['treated cooling', false],
    ['unknown', false],
    ['sea water', false],
  ])('counts for the contents that it names, however they are typed: "%s"', (contents, counts) => {
    expect(asksFor(withPaths(leak, { 'laminate.resists.contents': contents }), 'laminate.resists')).toBe(!counts);
  });

  it('is a word about nothing where the contents themselves are not named', () => {
    const nameless = { 'service.contents': 'unknown', 'laminate.resists.contents': 'unknown' };
    expect(asksFor(withPaths(leak, nameless), 'laminate.resists')).toBe(true);
  });

  it('counts up to the temperature that it names, of the contents and of the steel on the day', () => {
    const upTo = (degrees: string, pipe = '18 degC') =>
      asksFor(
        withPaths(leak, { 'laminate.resists.temperature': degrees, 'site.pipeTemperature': pipe }),
        'laminate.resists',
      );
    expect(upTo('35 degC')).toBe(false);
    expect(upTo('34.9 degC')).toBe(true);
    expect(upTo('35 degC', '36 degC')).toBe(true);
  });
});

describe('the expansions of the laminate', () => {
  const steady = withPaths(evenLoss, { 'site.forecast': undefined });
  const unstated = { 'laminate.hoopExpansion': undefined, 'laminate.axialExpansion': undefined };
  const asked = (changes: Paths): boolean[] =>
    ['laminate.hoopExpansion', 'laminate.axialExpansion'].map((field) =>
      asksFor(withPaths(steady, { ...unstated, ...changes }), field),
    );
  const warmWhileCuring = (degrees: string): Paths => ({
    'site.history': [{ duration: '400 h', temperature: degrees }],
  });

  it('are not asked for on steel that is always as warm as on the day, and change nothing there', () => {
    expect(said(steady, unstated).verdict).toBe('designed');
    expect(asked({ 'service.lowestTemperature': '25 degC' })).toEqual([false, false]);
    expect(asked(warmWhileCuring('25 degC'))).toEqual([false, false]);
    const strains = (file: CaseFile) => {
      const { laminate } = designOf(file);
      return [laminate?.hoopStrain, laminate?.axialStrain];
    };
    expect(strains(withPaths(steady, unstated))).toEqual(strains(steady));
  });

  it.each([
    ['in service', { 'service.designTemperature': '26 degC' }],
    ['in service at the other end', { 'service.lowestTemperature': '24 degC' }],
    [
      'in service, but not at its coldest',
      {
        'service.designTemperature': '26 degC',
        'service.lowestTemperature': '25 degC',
      },
    ],
    ['on the day', { 'site.pipeTemperature': '24 degC' }],
    ['while the laminate sets', warmWhileCuring('26 degC')],
    [
      'at any hour of that',
      {
        'site.history': [
          { duration: '20 h', temperature: '25 degC' },
          { duration: '20 h', temperature: '26 degC' },
          { duration: '400 h', temperature: '25 degC' },
        ],
      },
    ],
  ])('are asked for as soon as it is otherwise: %s', (_, changes) => {
    expect(asked(changes)).toEqual([true, true]);
  });
});

describe('a repair that counts as high risk', () => {
  const plain = withPaths(evenLoss, {
    basis: 'ASME PCC-2',
    'repair.class': 3,
    'service.designPressure': '9.99 bar',
    'laminate.lowestTemperature': '-30 degC',
  });
  const leaking = withPaths(emptyLeak, {
    basis: 'ASME PCC-2',
    'repair.class': 3,
    'pipe.size': undefined,
    'pipe.outsideDiameter': '200 mm',
    'pipe.wallThickness': '8 mm',
    'service.designPressure': '1 bar',
    'defect.growth.length': '0 mm/year',
  });
  const risks = (file: CaseFile, changes: Paths = {}): string[] | undefined => {
    const warning = said(file, changes).warned.find((text) => text.includes('counts as high risk'));
    return /\((.*?)\)/u.exec(warning ?? '')?.[1]?.split(', ');
  };

  it('is one with a hole that either row of the screening calls a large one', () => {
    // 0.225 of the diameter, where both rows say 0.25.
    const hole = { 'defect.holeDiameter': '45 mm' };
    const by = (units: string): Paths => ({
      ...hole,
      confirmed: [{ path: `highRisk.${units}.holeOverDiameter`, value: 0.2, by: 'A. Reader', edition: '2022' }],
    });
    for (const units of ['si', 'us']) expect(risks(leaking, by(units))).toContain('size of the hole');
    expect(risks(leaking, hole) ?? []).not.toContain('size of the hole');
  });

  it('is none of low pressure, cool, harmless and with its wall', () => {
    expect(said(plain, {}).verdict).toBe('designed');
    expect(risks(plain)).toBeUndefined();
    expect(risks(leaking, { 'defect.holeDiameter': '40 mm' })).toBeUndefined();
    expect(risks(plain, { basis: 'ISO 24817', 'service.hazards': ['toxic'] })).toBeUndefined();
  });

  it.each([
    ['its pressure', { 'service.designPressure': '10 bar' }, ['design pressure']],
    ['its heat', { 'service.designTemperature': '50 degC' }, ['high design temperature']],
    // 50 degC and -20 degC in SI, which the row in US units calls one of high risk sooner.
    ['its heat in US units', { 'service.designTemperature': '120 degF' }, ['high design temperature']],
    ['its heat in US units, written in SI', { 'service.designTemperature': '49 degC' }, ['high design temperature']],
    ['a little less heat', { 'service.designTemperature': '119.9 degF' }, undefined],
    ['its cold', { 'service.designTemperature': '-20 degC' }, ['low temperature']],
    ['its cold in US units', { 'service.designTemperature': '0 degF' }, ['low temperature']],
    ['a cold that is not that of the design', { 'service.lowestTemperature': '0 degF' }, ['low temperature']],
    ['a little less cold', { 'service.designTemperature': '0.1 degF' }, undefined],
    // 150 psi is 10.3 bar, where the row in SI says 10 bar.
    ['its pressure in US units', { 'service.designPressure': '150 psi' }, ['design pressure']],
    ['a little less pressure', { 'service.designPressure': '145 psi' }, undefined],
    ['its contents', { 'service.hazards': ['toxic'] }, ['hazardous contents']],
    ['what hangs on it', { 'service.safetyCritical': true }, ['safety-critical line']],
    [
      'all of it',
      { 'service.hazards': ['toxic'], 'service.safetyCritical': true, 'service.designPressure': '11 bar' },
      ['hazardous contents', 'safety-critical line', 'design pressure'],
    ],
  ])('is one by %s', (_, changes, expected) => {
    expect(risks(plain, changes)).toEqual(expected);
  });

  it.each([
    ['a quarter of the pipe', '50 mm', '1 bar', undefined],
    ['more than a quarter of it', '50.1 mm', '1 bar', ['size of the hole']],
    ['a hole and a pressure at the limit', '40 mm', '8 bar', undefined],
    ['a hole and a pressure above it', '40 mm', '8.01 bar', ['leak severity']],
  ])('is one by the hole: %s', (_, holeDiameter, pressure, expected) => {
    const hole = { 'defect.holeDiameter': holeDiameter, 'service.designPressure': pressure };
    expect(risks(leaking, hole)).toEqual(expected);
  });
});

describe('cold steel', () => {
  it.each([
    ['0 degC', undefined, 'designed'],
    ['-0.1 degC', undefined, 'needs input'],
    ['-10 degC', '-10 degC', 'designed'],
    ['-10.1 degC', '-10 degC', 'not repairable'],
  ])('down to %s with a qualification down to %s is %s', (lowest, qualified, verdict) => {
    const cold = { 'service.lowestTemperature': lowest, 'laminate.lowestTemperature': qualified };
    expect(said(quietLoss, cold).verdict).toBe(verdict);
  });

  it.each([
    ['on the day', { 'site.pipeTemperature': '11 degC' }],
    ['in the forecast', { 'site.forecast.1.pipeTemperature': '11 degC' }],
    ['in the hours of the cure', { 'site.history': [{ duration: '400 h', temperature: '11 degC' }] }],
    [
      'at any hour of the cure',
      {
        'site.history': [
          { duration: '20 h', temperature: '20 degC' },
          { duration: '20 h', temperature: '11 degC' },
          { duration: '400 h', temperature: '20 degC' },
        ],
      },
    ],
    ['as designed', { 'service.designTemperature': '11 degC' }],
  ])('counts wherever it is: %s', (_, changes) => {
    const qualified = (lowest: string) => said(quietLoss, { ...changes, 'laminate.lowestTemperature': lowest });
    expect(qualified('11 degC').verdict).toBe('designed');
    const { verdict, reasons } = qualified('12 degC');
    expect(verdict).toBe('not repairable');
    expect(reasons.map(({ found }) => found?.value)).toEqual([284.15]);
  });
});

describe('a laminate that leaves no strain', () => {
  it.each(['laminate.hoopExpansion', 'laminate.axialExpansion'])(
    'in one direction is refused for that alone, and nothing is laid: %s',
    (field) => {
      const { verdict, reasons, laminate } = designOf(withPaths(quietLoss, { [field]: '150e-6 1/K' }));
      expect(verdict).toBe('not repairable');
      expect(reasons).toHaveLength(1);
      expect(laminate).toBeUndefined();
    },
  );
});

describe('the transition of the laminate', () => {
  it('may be reached by its margin, by the steel in service and on the day', () => {
    const soft = { 'laminate.glassTransition': '60 degC', 'laminate.transitionCuredAt': '10 degC' };
    const softens = (changes: Paths) =>
      said(evenLoss, { ...soft, ...changes }).why.some((text) => text.includes('soften'));
    expect(softens({ 'service.designTemperature': '40 degC' })).toBe(false);
    expect(softens({ 'service.designTemperature': '40.1 degC' })).toBe(true);
    expect(softens({ 'site.pipeTemperature': '40 degC' })).toBe(false);
    expect(softens({ 'site.pipeTemperature': '40.1 degC' })).toBe(true);
  });

  it('holds for steel that is as cold as the sample was cured, and for none that is colder', () => {
    const cured = { 'site.history': [{ duration: '400 h', temperature: '15 degC' }] };
    const asks = (curedAt: string) =>
      asksFor(withPaths(quietLoss, { ...cured, 'laminate.transitionCuredAt': curedAt }), 'laminate.transitionCuredAt');
    expect(asks('15 degC')).toBe(false);
    expect(asks('15.1 degC')).toBe(true);
  });
});

describe('a load that the case calls', () => {
  it.each([
    ['rare', true],
    ['continuous', false],
    [undefined, false],
  ])('%s is warned of where it counts as rare, and assumed where nothing is said', (loading, warns) => {
    const { warnings, assumed } = designOf(withPaths(quietLoss, { 'repair.loading': loading }));
    expect(warnings.some(({ text }) => text.includes('taken as rare'))).toBe(warns);
    expect(assumed.filter(({ amount }) => 'word' in amount && amount.word === 'continuous')).toHaveLength(
      loading === undefined ? 1 : 0,
    );
  });
});
