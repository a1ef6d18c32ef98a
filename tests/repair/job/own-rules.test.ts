import { describe, expect, it } from 'vitest';
import { length } from '../../../src/quantity/index.js';
import { designRepair } from '../../../src/repair/index.js';
import { asmePcc2, iso24817, type RuleSet } from '../../../src/rules/index.js';
import { partWall } from '../example-case.js';

/** A rule set of the user's own: how a design names it, what it warns of, and which of its rules it lists. */

const { classes, overlap, defaultStrains, longestLife } = iso24817;
const own = (changes: object): RuleSet => ({ ...iso24817, ...changes }) as RuleSet;
const inClass1 = (changes: object): RuleSet =>
  own({ classes: { ...classes, 1: { ...classes[1], value: { ...classes[1].value, ...changes } } } });
const minimum = (value: number): object => ({ overlap: { ...overlap, minimum: { ...overlap.minimum, value } } });
const shortLife = { longestLife: { ...longestLife, value: longestLife.value - 1 } };

describe('the rules of a design', () => {
  it.each([
    ['ISO 24817', iso24817.heading],
    ['ASME PCC-2', asmePcc2.heading],
  ] as const)('by %s are named by their heading', (basis, heading) => {
    expect(designRepair({ ...partWall, basis }).ruleSet).toBe(heading);
  });

  it.each([
    ['a copy', own({}), 'own rule set: no value differs'],
    ['one value', own({ heading: 'site rules', ...minimum(0.06) }), 'own rule set "site rules": 1 value differs'],
    ['two values', own({ ...minimum(0.06), ...shortLife }), 'own rule set: 2 values differ'],
  ])('of the user are named as such: %s', (_, rules, said) => {
    expect(designRepair(partWall, { rules }).ruleSet).toBe(`${said} from the set ${iso24817.heading}`);
    const from = said.replace(':', ', own.json:');
    expect(designRepair(partWall, { rules, rulesFrom: 'own.json' }).ruleSet).toBe(
      `${from} from the set ${iso24817.heading}`,
    );
  });

  it('of the user are held against the set whose id they have, else against that of the case', () => {
    const byAsme = { ...partWall, basis: 'ASME PCC-2' } as const;
    const heldAgainst = (rules: RuleSet) => designRepair(byAsme, { rules }).ruleSet.replace(/^.*from the set /u, '');
    expect(heldAgainst(own({}))).toBe(iso24817.heading);
    expect(heldAgainst({ ...asmePcc2, id: 'site rules' })).toBe(asmePcc2.heading);
  });

  it('of the user are refused where they have not the shape of rules', () => {
    expect(() => designRepair(partWall, { rules: own(minimum(-1)) })).toThrow('rules.overlap.minimum is -1');
  });
});

describe('a value of an own rule set that is less conservative', () => {
  const rows = defaultStrains.continuous[3];
  const cut = { ...defaultStrains.continuous, 3: { ...rows, value: rows.value.slice(0, 2) } };

  it.each([
    ['classes.1.gasOrHazard', 'yes', 'no', inClass1({ gasOrHazard: true }), classes[1].clause],
    ['classes.1.highestPressure', 'none', 'a number', inClass1({ highestPressure: null }), classes[1].clause],
    [
      'overlap.hole',
      'none',
      'yes',
      own({ overlap: { ...overlap, hole: { ...overlap.hole, value: null } } }),
      overlap.hole.clause,
    ],
  ])('is warned of with both: %s', (path, value, instead, rules, clause) => {
    expect(designRepair(partWall, { rules }).warnings).toContainEqual({
      text: `The own rule set has ${path} as ${value}, where that of this library has ${instead}: less conservative, or so in some cases, on the word of whoever wrote it.`,
      amounts: [],
      clause,
    });
  });

  it.each([
    [
      'a length',
      own(minimum(0.04)),
      '{0}, where that of this library has {1}:',
      'length',
      length.mm(40),
      length.mm(50),
    ],
    [
      'a table with fewer rows',
      own({ defaultStrains: { ...defaultStrains, continuous: cut } }),
      '{0} rows, where that of this library has {1} rows:',
      'count',
      2,
      3,
    ],
  ])('is warned of with both numbers: %s', (_, rules, said, kind, value, instead) => {
    const warned = designRepair(partWall, { rules }).warnings.filter(({ text }) => text.includes('The own rule set'));
    expect(warned).toHaveLength(1);
    expect(warned[0]?.text).toContain(said);
    expect(warned[0]?.amounts).toEqual([
      { name: 'own value', kind, value },
      { name: 'value of this library', kind, value: instead },
    ]);
  });
});
