import { describe, expect, it } from 'vitest';
import type { Length } from '../../../src/quantity/index.js';
import { designRepair } from '../../../src/repair/index.js';
import { asmePcc2 } from '../../../src/rules/index.js';
import { caseOf, designOf } from '../../../tests/faults/answers.js';
import { type CaseFile, emptyLeak, leak, loss, quietLoss, withPaths } from '../../../tests/faults/cases.js';
import { show } from './judged.js';

/** What the repair system, the class and the rule set stay below. */

const utility: CaseFile = withPaths(quietLoss, {
  'repair.class': 1,
  'service.designPressure': '8 bar',
  basis: 'ISO 24817',
});

const lowRisk: CaseFile = withPaths(utility, {
  basis: 'ASME PCC-2',
  'repair.class': 3,
  'service.designTemperature': '35 degC',
});
const lowLeak: CaseFile = withPaths(emptyLeak, {
  basis: 'ASME PCC-2',
  'repair.class': 3,
  'service.designPressure': '1 bar',
});

describe('the class of a repair', () => {
  const ISO_CLASS_1 = 1e6;
  show('pressure above it', {
    from: utility,
    with: { 'service.designPressure': '15 bar' },
    verdict: 'not repairable',
    limit: ISO_CLASS_1,
  });
  show('heat above it', {
    from: utility,
    with: { 'service.designTemperature': '45 degC' },
    verdict: 'not repairable',
    limit: 313.15,
  });
  show('a safety-critical line in class 1', {
    from: utility,
    with: { 'service.safetyCritical': true },
    verdict: 'not repairable',
    says: /safety-critical/,
  });
  show('a hazard in class 1', {
    from: utility,
    with: { 'service.hazards': ['flammable'] },
    verdict: 'not repairable',
    says: /class 3/,
  });
  show('gas in class 1', {
    from: utility,
    with: { 'service.phase': 'gas' },
    verdict: 'not repairable',
    says: /class 3/,
  });
  show('a life beyond the rule set', {
    from: quietLoss,
    with: { 'repair.life': '21 year' },
    verdict: 'not covered',
    limit: 20 * 365.25 * 86_400,
  });
  show('a high risk by its contents', {
    from: lowRisk,
    with: { 'service.hazards': ['toxic'] },
    verdict: 'designed',
    says: /hazardous contents/,
  });
  show('a high risk by what depends on it', {
    from: lowRisk,
    with: { 'service.safetyCritical': true },
    verdict: 'designed',
    says: /safety-critical line/,
  });
  show('a high risk by its pressure', {
    from: lowRisk,
    with: { 'service.designPressure': '10 bar' },
    verdict: 'designed',
    says: /design pressure/,
  });
  show('a high risk by its heat', {
    from: lowRisk,
    with: { 'service.designTemperature': '50 degC' },
    verdict: 'designed',
    says: /high design temperature/,
  });
  show('a high risk by the size of its hole', {
    from: lowLeak,
    with: { 'defect.holeDiameter': '58 mm' },
    verdict: 'designed',
    says: /size of the hole/,
  });
  show('a high risk by pressure and hole', {
    from: lowLeak,
    with: { 'defect.holeDiameter': '45 mm', 'service.designPressure': '8 bar' },
    verdict: 'designed',
    says: /leak severity/,
  });
});

describe('the bond', () => {
  show('of no stated strength', {
    from: quietLoss,
    with: { 'laminate.lapShearStrength': undefined },
    verdict: 'needs input',
    asks: 'laminate.lapShearStrength',
  });
  show('below the least', {
    from: quietLoss,
    with: { 'laminate.lapShearStrength': '3.9 MPa' },
    verdict: 'not repairable',
    limit: 4e6,
  });
  show('between the two minima', {
    from: quietLoss,
    with: { 'laminate.lapShearStrength': '4.5 MPa' },
    verdict: 'designed',
    says: /between the two minima/,
  });
  show('hotter than it was tested', {
    from: withPaths(quietLoss, { 'service.designTemperature': '40 degC' }),
    with: { 'service.designTemperature': '40.1 degC' },
    verdict: 'designed',
    says: /bond counts with its lap shear strength as it is stated/,
    step: 'return',
  });
});

describe('what the contents reach', () => {
  show('resin of no stated resistance', {
    from: leak,
    with: { 'laminate.resists': undefined },
    verdict: 'needs input',
    asks: 'laminate.resists',
  });
  show('putty of no stated resistance', {
    from: leak,
    with: { 'seal.putty.resists': undefined },
    verdict: 'needs input',
    asks: 'seal.putty.resists',
  });
});

describe('the temperature', () => {
  show('above what the laminate keeps', {
    from: quietLoss,
    with: { 'service.designTemperature': '95 degC' },
    verdict: 'not repairable',
    limit: 273.15 + 90,
  });
  show('above what its heat distortion keeps', {
    from: quietLoss,
    with: { 'laminate.heatDistortion': '70 degC', 'service.designTemperature': '65 degC' },
    verdict: 'not repairable',
    says: /would soften/,
  });
  show('above what its glass transition keeps', {
    from: withPaths(quietLoss, { 'laminate.heatDistortion': '200 degC' }),
    with: { 'laminate.glassTransition': '75 degC' },
    verdict: 'not repairable',
    says: /would soften/,
  });
  show('judged by the heat distortion alone', {
    from: quietLoss,
    with: { 'laminate.glassTransition': undefined, 'laminate.heatDistortion': '110 degC' },
    verdict: 'designed',
  });
  show('of a transition that nobody measured', {
    from: quietLoss,
    with: { 'laminate.glassTransition': undefined },
    verdict: 'needs input',
    asks: 'laminate.glassTransition',
  });
  show('of steel below freezing, without a word about it', {
    from: quietLoss,
    with: { 'service.lowestTemperature': '-1 degC' },
    verdict: 'needs input',
    asks: 'laminate.lowestTemperature',
  });
  show('of steel on which water freezes', {
    from: withPaths(quietLoss, { 'laminate.lowestTemperature': '-10 degC' }),
    with: { 'service.lowestTemperature': '-1 degC' },
    verdict: 'designed',
    says: /water that freezes/,
    step: 'return',
  });
  show('of steel below the qualification', {
    from: withPaths(quietLoss, { 'laminate.lowestTemperature': '-10 degC' }),
    with: { 'service.lowestTemperature': '-11 degC' },
    verdict: 'not repairable',
    limit: 263.15,
  });
  show('with an expansion that nobody stated, round the pipe', {
    from: quietLoss,
    with: { 'laminate.hoopExpansion': undefined },
    verdict: 'needs input',
    asks: 'laminate.hoopExpansion',
  });
  show('with an expansion that nobody stated, along the pipe', {
    from: quietLoss,
    with: { 'laminate.axialExpansion': undefined },
    verdict: 'needs input',
    asks: 'laminate.axialExpansion',
  });
});

describe('the strain of the laminate', () => {
  show('at failure is not stated', {
    from: quietLoss,
    with: { 'laminate.strainToFailure': undefined },
    verdict: 'needs input',
    asks: 'laminate.strainToFailure',
  });
  show('under a load that counts as rare', {
    from: quietLoss,
    with: { 'repair.loading': 'rare' },
    verdict: 'designed',
    says: /less conservative/,
  });
  show('at the step of the soft column', {
    from: quietLoss,
    with: { 'laminate.axialModulus': '12.2 GPa' },
    verdict: 'designed',
    says: /within 5 per cent/,
  });
});

describe('what this version does not design for', () => {
  for (const kind of ['crack', 'dent', 'gouge', 'lamination', 'bulge', 'seam defect'])
    show(`a ${kind}`, {
      from: quietLoss,
      with: { 'defect.kind': kind },
      verdict: 'not covered',
      says: new RegExp(`the defect is a ${kind}`),
    });
  for (const kind of ['tee', 'reducer', 'nozzle', 'weld'])
    show(`a ${kind}`, {
      from: quietLoss,
      with: { fitting: { kind } },
      verdict: 'not covered',
      says: new RegExp(`lie on a ${kind}`),
    });
  show('filler under the whole wrap', {
    from: emptyLeak,
    with: { 'filler.underWholeWrap': true },
    verdict: 'not covered',
    says: /under the whole wrap/,
  });
});

describe('the rule set', () => {
  it('a confirmed number that is less conservative', () => {
    const by = { by: 'A. Reader', edition: '2017' };
    const confirming = (value: string) =>
      designOf(withPaths(loss, { confirmed: [{ path: 'overlap.minimum', value, ...by }] }));
    const said = (value: string) => confirming(value).warnings.filter(({ text }) => text.includes('overlap.minimum'));
    expect(said('40 mm').map(({ amounts }) => amounts?.map((each) => each.value))).toEqual([[0.04, 0.05]]);
    expect(said('60 mm')).toEqual([]);
  });

  it('an own set of a name that people know, with a less conservative value', () => {
    const read = caseOf(loss);
    const by = (value: number) => {
      const { overlap } = asmePcc2;
      const minimum = { ...overlap.minimum, value: value as Length };
      return designRepair(read, { rules: { ...asmePcc2, overlap: { ...overlap, minimum } }, rulesFrom: 'own.json' });
    };
    const said = (value: number) => by(value).warnings.filter(({ text }) => text.includes('overlap.minimum'));
    expect(said(0.04).map(({ amounts }) => amounts?.map((each) => each.value))).toEqual([[0.04, 0.05]]);
    expect(said(0.06)).toEqual([]);
    expect(by(0.06).ruleSet).toMatch(/^own rule set, own\.json: 1 value differs from the set after ASME/u);
  });
});
