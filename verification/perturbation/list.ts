import { leftOut } from './constants.js';

/** The list that `npm run perturb` makes: what notices a change of each constant, and of each result. */

export interface PerturbedConstant {
  readonly file: string;
  readonly constant: string;
  /** The line of code that it stands in. */
  readonly code: string;
  readonly sort: string;
  /** The strongest kind of check that turned red, or nothing. */
  readonly caughtBy: string;
  /** The first check of that kind that did. */
  readonly by: string;
  /** Noticed when it was changed one way and not the other. */
  readonly oneWay: boolean;
  /** The smallest change of a ladder that would be seen. */
  readonly smallest: string;
}

export interface PerturbedResult {
  readonly caughtBy: string;
  readonly by: string;
  /** Test files of verification/derivations that notice. */
  readonly derivations: readonly string[];
}

export interface PerturbationList {
  readonly change: number;
  readonly constants: readonly PerturbedConstant[];
  readonly results: Readonly<Record<string, PerturbedResult>>;
}

/** The kinds of check in the order of their strength, with nothing last. */
export const caughtBy: readonly string[] = [
  'outside print',
  'dataset',
  'derivation',
  'recalled or practice',
  'own tests only',
  'no effect',
  'nothing',
];

const cell = (text: string): string => text.replaceAll('|', '\\|').replaceAll('\n', ' ');
const row = (...cells: readonly string[]): string => `| ${cells.map(cell).join(' | ')} |`;
const code = (text: string): string => `\`${text.replaceAll('`', "'")}\``;

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  return [row(...head), row(...head.map(() => '---')), ...rows.map((cells) => row(...cells))].join('\n');
}

/** Counts by what a constant is for and by what noticed it. */
export function countsBySort({ constants }: PerturbationList): (readonly [sort: string, ...counts: number[]])[] {
  const sorts = [...new Set(constants.map(({ sort }) => sort))].sort();
  return sorts.map((sort) => [
    sort,
    ...caughtBy.map((name) => constants.filter((each) => each.sort === sort && each.caughtBy === name).length),
  ]);
}

export function perturbationText(list: PerturbationList): string {
  const { constants, results } = list;
  const counts = countsBySort(list).map(([sort, ...numbers]) => [
    sort,
    ...numbers.map(String),
    String(numbers.reduce((sum, number) => sum + number, 0)),
  ]);
  const of = (...names: readonly string[]) => constants.filter((each) => names.includes(each.caughtBy));
  const unseen = Object.entries(results).filter(([, { caughtBy: by }]) => by === 'nothing' || by === 'own tests only');
  const rows = (from: readonly PerturbedConstant[]): string[][] =>
    from.map((each) => [
      each.file,
      each.constant,
      code(each.code),
      each.sort,
      each.by === '' ? '' : each.by + (each.oneWay ? ' (one way only)' : ''),
      each.smallest,
    ]);
  const head = ['file', 'constant', 'code', 'sort', 'noticed by', 'smallest change seen'];
  return [
    '# What would notice a wrong constant',
    `Each numeric constant of the formulas, rule sets and units was changed by ${list.change * 100} % up and down, a default together with its declaration, and all cases, datasets and derivations were run again; then, for what none of these noticed, the project's own tests. The check of the declared text against the code was left out: it compares two copies of one constant, and running it would make this list empty.`,
    `Left out by rule: ${leftOut.join('; ')}.`,
    'A case notices when the verdict of one of its values becomes worse: what agreed as it stands no longer does. “No effect”: no drawn call of a formula over the constant gives a result that differs by more than 1e-9, as with the first step of a march or the parts of an interval.',
    table(['constant', ...caughtBy, 'all'], counts),
    '## Noticed by nothing',
    table(head, rows(of('nothing'))),
    "## Noticed only by the project's own tests",
    table(head, rows(of('own tests only'))),
    '## Formulas whose result may be off by the same part unnoticed',
    unseen.length === 0
      ? 'None.'
      : table(
          ['formula', 'noticed by'],
          unseen.map(([id, { caughtBy: by, by: name }]) => [id, by === 'nothing' ? 'nothing' : `${by}: ${name}`]),
        ),
    '## Without effect',
    table(head, rows(of('no effect'))),
    '## Noticed',
    table(head, rows(of('outside print', 'dataset', 'derivation', 'recalled or practice'))),
    '',
  ].join('\n\n');
}
