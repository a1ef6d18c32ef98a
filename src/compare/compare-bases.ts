import type { Basis, DesignOptions, RepairCase, RepairDesign } from '../repair/index.js';
import { designRepair } from '../repair/index.js';
import { ruleSetOf } from '../repair/job/rule-set.js';
import {
  type Coefficient,
  coefficientsOf,
  differingGroups,
  groupOf,
  type RuleSet,
  rulesOf,
  withGroups,
} from '../rules/index.js';
import { type Outcome, type OutcomeName, outcomesOf } from './outcome.js';

/** A number of one set beside that of the other; absent where a set has none at its place. */
export interface ComparedNumber {
  /** Path of the number in the rule set. */
  readonly path: string;
  /** Kind of quantity that it is. */
  readonly kind: Coefficient['shape']['kind'];
  /** In SI, by the first rule set; nothing where it has none. */
  readonly first: number | undefined;
  /** In SI, by the second rule set. */
  readonly second: number | undefined;
}

/** A group of rules in which the sets differ, and what each design of the first set comes to with it from the second. */
export interface GroupSwap {
  /** Group of rules that was exchanged. */
  readonly group: string;
  /** Where the group stands in either set. */
  readonly clauses: readonly [first: string, second: string];
  /** The numbers of the group that differ. */
  readonly numbers: readonly ComparedNumber[];
  /** Verdict with this group of the other set. */
  readonly verdict: RepairDesign['verdict'];
  /** Outcomes with this group of the other set. */
  readonly outcomes: readonly Outcome[];
}

/** One outcome by both sets, and which groups of rules make the difference. */
export interface ComparedOutcome {
  /** What is compared. */
  readonly name: OutcomeName | 'verdict';
  /** Kind of quantity, or the word that it is one. */
  readonly kind: Outcome['kind'] | 'word';
  /** By the first rule set, in SI. */
  readonly first: number | string | undefined;
  /** By the second rule set, in SI. */
  readonly second: number | string | undefined;
  /** The criterion that governs by either set. */
  readonly governing: readonly [first: string | undefined, second: string | undefined];
  /** Groups that move it alone, each with what the first design comes to with that group from the second set. */
  readonly movedBy: readonly {
    /** Group of rules. */
    readonly group: string;
    /** What the outcome then is, in SI. */
    readonly to: number | string | undefined;
  }[];
  /** A smallest choice of groups that together make all of the difference; empty where there is none. */
  readonly madeBy: readonly string[];
}

/** One case by both rule sets, with each difference by the rules that make it. */
export interface ComparedBases {
  /** The two rule sets, that of the case first. */
  readonly bases: readonly [first: Basis, second: Basis];
  /** The design by either. */
  readonly designs: readonly [first: RepairDesign, second: RepairDesign];
  /** Each outcome by either, with the rules that move it. */
  readonly outcomes: readonly ComparedOutcome[];
  /** The design with one group of rules exchanged at a time. */
  readonly groups: readonly GroupSwap[];
  /** Numbers that the case confirms count for its own set alone: they were read in that document. */
  readonly confirmedFor: Basis | 'neither';
}

/**
 * The design of a case by its own rule set and by the other one, with each difference named by the rules that make it: over
 * the real design one group of rules at a time is taken from the other set.
 *
 * @param repairCase as for `designRepair`; its basis stands first
 * @param options    as for `designRepair`; a rule set of the user's own stands in place of that of the case
 * @throws CalculationError as `designRepair`
 */
export function compareBases(repairCase: RepairCase, options: DesignOptions = {}): ComparedBases {
  const bases = [repairCase.basis, repairCase.basis === 'ISO 24817' ? 'ASME PCC-2' : 'ISO 24817'] as const;
  const first = ruleSetOf(repairCase, options);
  const bare: RepairCase = { ...repairCase, confirmed: undefined };
  const second = ruleSetOf({ ...bare, basis: bases[1] }, {});
  const design = designsBy(bare, first, second, options);
  const groups = differingGroups(first, second);
  const all = new Set(groups);
  // As the caller gets them: the first with its case whole, the second under its own name.
  const designs = [
    designRepair(repairCase, options),
    designRepair({ ...bare, basis: bases[1] }, { record: options.record, strict: options.strict }),
  ] as const;
  const swaps = groups.map((group) => ({ group, design: design(new Set([group])) }));
  return {
    bases,
    designs,
    outcomes: rowsOf(design(NONE)).map((row, index) => {
      const to = rowsOf(design(all))[index] as Row;
      return compared(row, to, index, swaps, design, groups);
    }),
    groups: swaps.map((swap) => groupSwap(swap, first, second, repairCase.repair.class)),
    confirmedFor: repairCase.confirmed === undefined ? 'neither' : repairCase.basis,
  };
}

const NONE: ReadonlySet<string> = new Set();

type DesignBy = (groups: ReadonlySet<string>) => RepairDesign;

/** The design with some groups of rules from the second set; each is made once. */
function designsBy(repairCase: RepairCase, first: RuleSet, second: RuleSet, options: DesignOptions): DesignBy {
  const made = new Map<string, RepairDesign>();
  return (groups) => {
    const key = [...groups].sort().join(' ');
    const before = made.get(key);
    if (before !== undefined) return before;
    const design = designRepair(repairCase, { strict: options.strict, rules: withGroups(first, second, groups) });
    made.set(key, design);
    return design;
  };
}

type Row = Pick<ComparedOutcome, 'name' | 'kind'> & {
  readonly value: number | string | undefined;
  readonly governing?: string | undefined;
};

function rowsOf(design: RepairDesign): readonly Row[] {
  return [{ name: 'verdict', kind: 'word', value: design.verdict }, ...outcomesOf(design)];
}

function compared(
  { name, kind, value, governing }: Row,
  to: Row,
  index: number,
  swaps: readonly { readonly group: string; readonly design: RepairDesign }[],
  design: DesignBy,
  groups: readonly string[],
): ComparedOutcome {
  const valueBy = (by: RepairDesign) => rowsOf(by)[index]?.value;
  const movedBy = swaps.flatMap(({ group, design: swapped }) => {
    const moved = valueBy(swapped);
    return moved === value ? [] : [{ group, to: moved }];
  });
  return {
    name,
    kind,
    first: value,
    second: to.value,
    governing: [governing, to.governing],
    movedBy,
    madeBy: value === to.value ? [] : smallest(groups, (some) => valueBy(design(some)) === to.value),
  };
}

/** Of groups that together do it, those that none can be left out of: each in turn is left out where it is not missed. */
function smallest(groups: readonly string[], does: (some: ReadonlySet<string>) => boolean): string[] {
  const kept = new Set(groups);
  for (const group of groups) {
    kept.delete(group);
    if (!does(kept)) kept.add(group);
  }
  return [...kept];
}

function groupSwap(
  { group, design }: { readonly group: string; readonly design: RepairDesign },
  first: RuleSet,
  second: RuleSet,
  repairClass: number,
): GroupSwap {
  const clauseIn = (set: RuleSet): string => {
    const rules = rulesOf(set).filter(({ path }) => groupOf(path) === group);
    return (rules.find(({ path }) => path.endsWith(`.${repairClass}`)) ?? rules[0])?.rule.clause ?? '';
  };
  return {
    group,
    clauses: [clauseIn(first), clauseIn(second)],
    numbers: numbersOf(group, first, second),
    verdict: design.verdict,
    outcomes: outcomesOf(design),
  };
}

/** The numbers of a group that are not the same in both sets. */
function numbersOf(group: string, first: RuleSet, second: RuleSet): ComparedNumber[] {
  const [one, other] = [coefficientsOf(first), coefficientsOf(second)];
  return [...new Set([...one.keys(), ...other.keys()])].flatMap((path) => {
    const [here, there] = [one.get(path), other.get(path)];
    const rulePath = (here ?? there)?.rulePath ?? '';
    if (groupOf(rulePath) !== group || here?.value === there?.value) return [];
    return [{ path, kind: (here ?? there)?.shape.kind ?? 'number', first: here?.value, second: there?.value }];
  });
}
