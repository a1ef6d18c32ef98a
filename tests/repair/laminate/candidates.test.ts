import { describe, expect, it } from 'vitest';
import { laidInCase } from '../../../src/repair/index.js';
import { designOf, laminateOf, refusedFields } from '../../faults/answers.js';
import { type CaseFile, evenLoss, leak, live, type Paths, slot, withPaths, yieldedLoss } from '../../faults/cases.js';
import { designed } from '../by-use.js';
import { leaking, partWall } from '../example-case.js';

/** What the lines of a laminate are made of, and what is said where one of them counts on something or has no answer. */

const warned = (file: CaseFile, words: string): boolean =>
  designOf(file).warnings.some(({ text }) => text.includes(words));

describe('a laminate', () => {
  it('over no leak has no footprint', () => {
    expect(laminateOf(evenLoss)).not.toHaveProperty('footprint');
  });

  it.each([
    ['substrate sharing load', 'counts on the load that the thinned pipe carries'],
    ['long-term strength', 'counts on the long-term strength of the laminate in place of the strains'],
  ])('by %s says to whoever takes the line back what it counts on', (method, words) => {
    const by: Paths = {
      'pipe.material.allowableStress': '200 MPa',
      'laminate.longTermStrength': { strength: '60 MPa', test: '1000 h survival', testTemperature: '65 degC' },
    };
    const counting = withPaths(evenLoss, { ...by, 'repair.method': method });
    const said = designOf(counting).warnings.filter(({ text }) => text.startsWith('The thickness counts on'));
    expect(said).toMatchObject([{ text: expect.stringContaining(words), step: 'return' }]);
    expect(warned(withPaths(evenLoss, by), 'The thickness counts on')).toBe(false);
  });

  it('has no second opinion where no body of three dimensions has the constants of its plies', () => {
    const sharing = (poissonRatio: number) =>
      withPaths(evenLoss, {
        'repair.method': 'substrate sharing load',
        'pipe.material.allowableStress': '200 MPa',
        'laminate.hoopModulus': '14 GPa',
        'laminate.axialModulus': '14 GPa',
        'laminate.poissonRatio': poissonRatio,
      });
    expect(laminateOf(sharing(0.12))).toHaveProperty('thickOverThin');
    expect(laminateOf(sharing(0.95))).not.toHaveProperty('thickOverThin');
  });

  it('under a vacuum alone is not warned of soil', () => {
    expect(warned(slot, 'The soil presses for years')).toBe(false);
  });
});

describe('a sealed slot', () => {
  /** The sheet on it reaches further than either opening grows. */
  const sheet: Paths = { 'seal.sheet.across': '80 mm' };
  const overSlot: Paths = {
    ...sheet,
    'defect.kind': 'through-wall slot',
    'defect.holeDiameter': undefined,
    'defect.slot': { axialLength: '4 mm', circumferentialWidth: '4 mm' },
  };

  it('is held as what lies on it is, like a hole under as large a sheet', () => {
    const over = (changes: Paths) => {
      const { thickness, footprint } = laminateOf(withPaths(leak, changes));
      const at = thickness.candidates.find(({ criterion }) => criterion.startsWith('leak through'));
      return [at?.criterion, at?.value, footprint?.diameter];
    };
    expect(over(overSlot)).toEqual(over(sheet));
    expect(over(sheet)).toEqual(['leak through the hole', expect.any(Number), 0.08]);
  });
});

describe('a line beside the chosen method that has no answer', () => {
  const credit = (file: CaseFile) =>
    designOf(file).laminate?.alternatives.find(({ criterion }) => criterion.includes('with credit'));

  it.each<readonly [string, CaseFile, string]>([
    ['for a leak', leak, 'metal that carries load; the defect goes through the wall'],
    ['in an empty line', evenLoss, 'pressure in the line during the work'],
  ])('says what it lacks: %s', (_, file, needs) => {
    expect(credit(file)).toMatchObject({ needs: { text: needs } });
  });

  it('says why it was refused, with the pressure and what the wall holds', () => {
    // 2 s t/D: 359 MPa, 3.812 mm, 617.6 mm over the filler.
    const held = (2 * 359e6 * 3.812e-3) / 0.6176;
    const beyond = withPaths(yieldedLoss, {
      ...live('48 bar'),
      'repair.method': 'substrate ignored',
      'service.designPressure': '60 bar',
    });
    expect(credit(beyond)).toMatchObject({
      needs: {
        text: expect.stringMatching(
          /live pressure is \{0\}; must be at most what the remaining wall holds at yield, \{1\}/u,
        ),
        amounts: [{ value: 48e5 }, { value: expect.closeTo(held, 3) }],
      },
    });
  });
});

describe('two series of long-term tests', () => {
  const second = 'laminate.longTermStrength.second.testTemperature';
  const at = (testTemperature: string): CaseFile =>
    withPaths(evenLoss, {
      'repair.method': 'long-term strength',
      'laminate.longTermStrength': {
        strength: '60 MPa',
        test: '1000 h survival',
        testTemperature: '25 degC',
        second: { testTemperature, strength: '40 MPa' },
      },
    });

  it('are of two temperatures: at one and the same the higher strength would count as well as the lower', () => {
    expect(['25 degC', '77 degF', '298.15 K'].map((degrees) => refusedFields(at(degrees)))).toEqual([
      [second],
      [second],
      [second],
    ]);
    // Warmth weakens: 60 MPa at 25 degC beside 40 MPa at 24 degC is a slip too, of the first.
    const first = 'laminate.longTermStrength.strength';
    expect(['24 degC', '26 degC'].map((degrees) => refusedFields(at(degrees)))).toEqual([[first], []]);
  });
});

describe('plies that are rated in another case', () => {
  it('resist nothing that is known where their tape would run too steeply', () => {
    const wrap = { ...partWall.wrap, width: 1 as typeof partWall.wrap.width };
    const rated = laidInCase(designed(partWall), { ...partWall, wrap });
    expect(rated).not.toHaveProperty('resistance');
    expect(rated.reasons.map(({ text }) => text)).toEqual([expect.stringContaining('runs so steeply')]);
  });

  it('resist nothing that is known over a leak whose bond nobody knows', () => {
    const { energyReleaseRate: _, ...laminate } = leaking.laminate;
    expect(laidInCase(designed(leaking), { ...leaking, laminate })).not.toHaveProperty('resistance');
  });
});
