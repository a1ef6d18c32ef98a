import type { SourceTag } from '../../src/formula/index.js';
import type { CaseClass } from '../case.js';
import type { EnginesSummary } from '../engines/summary.js';
import type { HandCheckCount } from '../hand-check/measure.js';
import type { LawsSummary } from '../laws/summary.js';
import type { MutantsSummary } from '../mutants/summary.js';
import type { Verdict } from '../runner/judge.js';
import type { WholeJobSummary } from '../whole-job/summary.js';
import type { OwnRoute } from './own-routes.js';

/** The data of the report, as report.json holds it. Both readable forms are rendered from this and from nothing else. */
export interface Report {
  /** Differs from machine to machine and from commit to commit; left out of the form that is kept. */
  readonly volatile: {
    readonly commit: string;
    /** Files under version control that differed from that commit, outside the report itself. */
    readonly changed: readonly string[];
    readonly node: string;
    readonly v8: string;
    readonly platform: string;
  };
  readonly identity: {
    readonly name: string;
    readonly title: string;
    readonly version: string;
    readonly licence: string;
    readonly authors: readonly string[];
    readonly lockHash: string;
    readonly seed: number;
    /** Major version of Node on which the accuracy numbers hold to the digit. */
    readonly nodeMajor: number;
  };
  readonly summary: {
    readonly cases: number;
    readonly values: number;
    readonly byVerdict: Readonly<Record<Verdict, number>>;
    readonly byClass: readonly ClassRow[];
    readonly formulas: number;
    readonly evidence: EvidenceCount;
    /** Rooms in the order of the registry. */
    readonly byRoom: readonly RoomRow[];
    readonly byTag: Readonly<Record<SourceTag, number>>;
  };
  readonly classes: Readonly<Record<CaseClass, string>>;
  /** Values that do not simply agree, in the order of the worst verdict. */
  readonly exceptions: readonly ExceptionRow[];
  readonly tolerances: readonly ToleranceRow[];
  readonly errata: readonly ErratumRow[];
  readonly lookUps: readonly LookUpRow[];
  readonly ancestors: readonly AncestorRow[];
  readonly coverage: readonly CoverageRoom[];
  readonly formulas: readonly FormulaEntry[];
  readonly accuracy: readonly AccuracyRow[];
  readonly engines: EnginesSummary | undefined;
  readonly handChecks: readonly HandCheckCount[];
  readonly perturbation: PerturbationReport;
  readonly wholeDesigns: WholeDesignsReport;
  readonly units: readonly UnitRow[];
  readonly burst: BurstReport;
  readonly dewPoint: DewPointReport;
  readonly pipeSizes: PipeSizeReport;
  readonly rules: readonly RuleRow[];
  readonly properties: readonly PropertyRow[];
  readonly knownProblems: readonly KnownProblem[];
  readonly bibliography: readonly BibliographyEntry[];
  readonly bibtex: string;
}

export interface ClassRow {
  readonly class: CaseClass;
  readonly cases: number;
  readonly byVerdict: Readonly<Record<Verdict, number>>;
}

/** How many formulas stand on what: a formula is counted once, by the best that it has. */
export interface EvidenceCount {
  readonly formulas: number;
  /** A printed value, a dataset or a program, independently published. */
  readonly otherHand: number;
  /** No value from another hand, but a derivation of this project by a second route. */
  readonly ownRoute: number;
  /** Of these the ones whose every route says that it shows the arithmetic only. */
  readonly arithmeticOnly: number;
  readonly neither: number;
}

export interface RoomRow extends EvidenceCount {
  readonly room: string;
  /** Of the formulas that a design calls, and of these those without a value from another hand. */
  readonly called: number;
  readonly calledBare: number;
}

export interface ExceptionRow {
  readonly id: string;
  readonly formula: string;
  readonly class: CaseClass;
  readonly output: string;
  readonly printed: string;
  readonly computed: string;
  readonly verdict: Verdict;
  readonly because: string;
}

export interface ToleranceRow {
  readonly id: string;
  readonly output: string;
  readonly tolerance: string;
  readonly reason: string;
}

export interface ErratumRow {
  readonly id: string;
  readonly formula: string;
  readonly source: string;
  readonly printed: string;
  readonly right: string;
  readonly explanation: string;
}

/** Sources that count once, because what they print comes from one hand. */
export interface AncestorRow {
  readonly sources: readonly string[];
  /** Only for formulas whose id begins so. */
  readonly formulas: string;
  readonly ancestor: string;
  readonly why: string;
}

/** Look-ups for values of another hand, by what was asked. */
export interface LookUpRow {
  readonly corpus: string;
  readonly made: number;
  readonly found: number;
  readonly cases: number;
}

export interface CoverageRoom {
  readonly room: string;
  readonly columns: readonly string[];
  readonly rows: readonly {
    readonly formula: string;
    /** Independently published. */
    readonly otherHands: number;
    readonly ownRoute: boolean;
    /** Cases by column. */
    readonly cells: Readonly<Record<string, number>>;
  }[];
}

export interface EquationLine {
  readonly tex: string;
  readonly text: string;
  readonly note: string;
}

export interface SymbolRow {
  readonly symbol: string;
  readonly tex: string;
  readonly name: string;
  readonly kind: string;
  readonly unit: string;
  readonly default: string;
  /** The span that is sampled, in SI. */
  readonly span: string;
  readonly result: boolean;
}

export interface CaseRow {
  readonly id: string;
  readonly class: CaseClass;
  readonly source: string;
  /** What goes in, as printed. */
  readonly inputs: string;
  readonly output: string;
  readonly printed: string;
  readonly computed: string;
  readonly digitsPrinted: number | null;
  readonly digitsAgreed: number | null;
  readonly verdict: Verdict;
  readonly because: string;
}

/** A line of evidence: who printed the value; or, of this project's own hand, by which route it was found again. */
export interface Line {
  readonly sort: 'print' | 'dataset' | 'program' | 'derivation';
  readonly from: string;
  readonly by: string;
  /** A route that shows no more than that the arithmetic of a definition is done right. */
  readonly arithmeticOnly?: boolean;
}

export interface FormulaEntry {
  readonly id: string;
  /** Whether the job calls it on the way to a design. */
  readonly called: boolean;
  readonly title: string;
  readonly equation: readonly EquationLine[];
  readonly algorithm: string;
  readonly symbols: readonly SymbolRow[];
  readonly limits: readonly { readonly sort: string; readonly text: string; readonly source: string }[];
  readonly inhomogeneous: string;
  readonly sources: readonly { readonly key: string; readonly text: string }[];
  readonly evidence: readonly {
    readonly of: string;
    readonly tag: SourceTag;
    readonly derived: string;
    readonly note: string;
  }[];
  readonly tag: SourceTag;
  readonly lines: readonly Line[];
  /** Second routes in code that say what they show. */
  readonly routes: readonly Pick<OwnRoute, 'shows' | 'how'>[];
  readonly cases: readonly CaseRow[];
}

export interface AccuracyRow {
  readonly id: string;
  readonly draws: number;
  readonly maxUlp: number;
  readonly rmsUlp: number;
  readonly condition: number;
  readonly worst: string;
}

export interface PerturbationReport {
  readonly change: number;
  readonly constants: number;
  /** The kinds of check, the strongest first; the last is nothing. */
  readonly catchers: readonly string[];
  readonly bySort: readonly { readonly sort: string; readonly counts: readonly number[] }[];
  /** Formulas and files whose constants were changed, added or taken away after the run. */
  readonly since: readonly string[];
  /** Constants other than limits that nothing notices. */
  readonly survivors: readonly {
    readonly file: string;
    readonly constant: string;
    readonly code: string;
    readonly smallest: string;
  }[];
}

/** What holds a design as a whole, beside the formulas it is made of. */
export interface WholeDesignsReport {
  readonly hazards: readonly {
    readonly part: string;
    readonly rows: readonly {
      readonly could: string;
      readonly would: string;
      readonly guards: number;
      readonly tests: readonly string[];
    }[];
  }[];
  readonly laws: LawsSummary | undefined;
  /** Old faults that were put back one by one, and those that no law noticed, each with its reason. */
  readonly putBack: {
    readonly noticed: number;
    readonly unseen: readonly { readonly fault: string; readonly because: string; readonly shownBy: string }[];
  };
  readonly secondRoute: WholeJobSummary | undefined;
  readonly mutants: MutantsSummary;
}

export interface UnitRow {
  readonly kind: string;
  readonly unit: string;
  readonly ratio: string;
  readonly shift: string;
  readonly si: string;
  readonly composed: string;
}

export interface BurstReport {
  readonly tests: number;
  readonly statistics: readonly {
    readonly method: string;
    readonly group: string;
    readonly n: number;
    readonly mean: number;
    readonly deviation: number | null;
  }[];
  readonly methods: readonly { readonly method: string; readonly how: string; readonly published: number | null }[];
  readonly publications: readonly { readonly group: string; readonly publication: string }[];
  /** Pressures in MPa. */
  readonly points: readonly {
    readonly method: string;
    readonly test: string;
    readonly measured: number;
    readonly predicted: number;
  }[];
}

/** Differences in kelvin. */
export interface DewPointReport {
  readonly rows: number;
  readonly parts: readonly {
    readonly status: string;
    readonly formula: string;
    readonly rows: number;
    readonly mean: number;
    readonly largest: number;
  }[];
  readonly leftOut: readonly { readonly status: string; readonly rows: number }[];
  /** Another program with other equations, over a seeded sample. */
  readonly program: { readonly points: number; readonly largest: number };
}

export interface PipeSizeReport {
  readonly program: string;
  readonly rows: number;
  readonly equal: number;
  readonly different: readonly string[];
}

export interface RuleRow {
  readonly set: string;
  readonly path: string;
  readonly value: string;
  readonly clause: string;
  readonly tag: string;
  readonly note: string;
}

export interface PropertyRow {
  /** Homogeneity, round trip, limit, monotonicity, refusal; other where the list of properties does not say. */
  readonly sort: string;
  readonly file: string;
  readonly sentence: string;
  readonly runs: number;
  /** A number, or the text that a formula's own seed is made of. */
  readonly seed: number | string;
}

interface KnownProblem {
  readonly id: string;
  readonly about: string;
  readonly text: string;
}

export interface BibliographyEntry {
  readonly key: string;
  readonly text: string;
  readonly reached: string;
  readonly cases: number;
  readonly formulas: number;
}
