import type { AnyFormula, InputDeclaration } from '../../formula/index.js';
import { asmePcc2, type ByClass, type DefaultStrainRow, iso24817, type Rule, type RuleSet } from '../../rules/index.js';
import type { InputSlip } from './slips.js';

/** Coefficients of one rule set taken where the calculation is by the other. */

/** Inputs as a rule set gives them to a formula, by where in the set they stand: what stands elsewhere is no slip for it. */
type Given = readonly (readonly [place: string, input: Readonly<Record<string, unknown>>])[];

/** What the formulas take from a rule set, where the two sets differ. */
const taken: readonly { readonly words: string; readonly of: (set: RuleSet) => Given }[] = [
  { words: 'the rule for the overlap', of: ({ overlap }) => [['', { ...overlap.geometry.value }]] },
  {
    words: 'the leak service factor',
    of: ({ leakFactor }) => perClass(leakFactor, ({ value }) => [['', { ...value }]]),
  },
  {
    words: 'the default strain',
    of: (set) =>
      strainTables(set, (rows) =>
        rows.flatMap((row) =>
          (['hoop', 'axial', 'softAxial'] as const).map((column) => [column, { defaultStrain: row[column] }] as const),
        ),
      ),
  },
  { words: 'the table of default strains', of: (set) => strainTables(set, (table) => [['', { table }]]) },
  {
    words: 'the performance factor',
    of: ({ performance }) =>
      Object.entries(performance).flatMap(([test, rules]) =>
        perClass(rules, ({ value }) => value.map(({ factor }) => [test, { performanceFactor: factor }] as const)),
      ),
  },
];

const SETS = [
  [iso24817, asmePcc2],
  [asmePcc2, iso24817],
] as const;

/** Every such slip, for the inputs that a formula was given. */
export function ruleSlips(formula: AnyFormula, input: Readonly<Record<string, unknown>>): InputSlip[] {
  const declared = formula.inputs as Readonly<Record<string, InputDeclaration>>;
  const given = (name: string): unknown => input[name] ?? declared[name]?.default;
  const slips = new Map<string, InputSlip>();
  for (const { words, of } of taken)
    for (const [set, other] of SETS) {
      const theirs = of(other);
      for (const [place, own] of of(set)) {
        if (!Object.entries(own).every(([name, value]) => name in declared && isSame(given(name), value))) continue;
        for (const [there, instead] of theirs)
          if (there === place && !isSame(own, instead))
            slips.set(`${words} ${other.id} ${JSON.stringify(instead)}`, {
              words: `${words} of ${other.id} was taken for that of ${set.id}`,
              rank: 2,
              input: { ...input, ...instead },
            });
      }
    }
  return [...slips.values()];
}

function perClass<T>(rules: ByClass<Rule<T>>, of: (rule: Rule<T>) => Given): Given {
  return Object.entries(rules).flatMap(([name, rule]) =>
    of(rule).map(([place, input]) => [`${name} ${place}`, input] as const),
  );
}

function strainTables({ defaultStrains }: RuleSet, of: (rows: readonly DefaultStrainRow[]) => Given): Given {
  return Object.values(defaultStrains).flatMap((rules) => perClass(rules, ({ value }) => of(value)));
}

const isSame = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);
