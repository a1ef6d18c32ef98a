import type { ComparedBases, ComparedNumber, ComparedOutcome } from '../compare/index.js';
import { formatNumber } from '../quantity/format.js';
import type { Amount } from '../quantity/index.js';
import type { Block } from './document.js';
import { type ChosenOptions, chosen, type SheetOptions } from './options.js';
import { render } from './render.js';
import { showSafely } from './safe-side.js';
import { shownValue } from './shown-value.js';

/** A value of an outcome, or a word of the verdict, as the sheet writes it. */
export function outcomeText(
  kind: string,
  name: string,
  value: number | string | undefined,
  options: ChosenOptions,
): string {
  if (value === undefined) return '-';
  return typeof value === 'string' ? value : showSafely(options)(kind as Amount['kind'], name, value);
}

/**
 * The designs of one case by both rule sets as a sheet: each outcome by the first and by the second set, and the rules that
 * make the difference, with their numbers and clauses.
 *
 * @param compared of `compareBases`
 * @param options how the sheet is written
 */
export function comparisonSheet(compared: ComparedBases, options: SheetOptions = {}): string {
  const all = chosen(options);
  const { bases, designs, outcomes, groups, confirmedFor } = compared;
  const [first, second] = designs;
  const making = new Set(outcomes.flatMap(({ movedBy, madeBy }) => [...movedBy.map(({ group }) => group), ...madeBy]));
  const blocks: Block[] = [
    { sort: 'title', text: first.case.title },
    { sort: 'paragraph', text: 'One case by two rule sets' },
    {
      sort: 'rows',
      rows: [
        ['First', first.ruleSet],
        ['Second', second.ruleSet],
        ['Library', `hoopwright ${first.libraryVersion}`],
      ],
    },
    {
      sort: 'table',
      head: ['outcome', bases[0], bases[1], 'difference made by'],
      rows: outcomes.map((outcome) => [outcome.name, ...sides(outcome, all), madeText(outcome)]),
    },
    ...governingBlocks(outcomes),
    { sort: 'heading', level: 1, text: 'RULES THAT MAKE A DIFFERENCE' },
    ...(making.size === 0
      ? [{ sort: 'paragraph' as const, text: 'None: both sets come to the same design of this case.' }]
      : groups
          .filter(({ group }) => making.has(group))
          .flatMap((swap): Block[] => [
            { sort: 'heading', level: 2, text: groupText(swap.group) },
            { sort: 'paragraph', text: `${bases[0]}: ${swap.clauses[0]}. ${bases[1]}: ${swap.clauses[1]}.` },
            numbersTable(ofClass(swap.numbers, first.case.repair.class), bases, all),
            { sort: 'list', items: movedItems(swap.group, outcomes, all) },
          ])),
    { sort: 'heading', level: 1, text: 'RULES THAT DIFFER WITHOUT EFFECT HERE' },
    {
      sort: 'paragraph',
      text:
        groups
          .filter(({ group }) => !making.has(group))
          .map(({ group }) => groupText(group))
          .join('; ') || 'None.',
    },
    { sort: 'paragraph', text: CONFIRMED[confirmedFor === 'neither' ? 'neither' : 'one'] },
  ];
  return render(blocks, options);
}

const CONFIRMED = {
  neither: 'The case confirms no number of either set: both stand as recalled.',
  one: 'What the case confirms counts for its own set alone: it was read in that document.',
} as const;

function sides({ kind, name, first, second }: ComparedOutcome, options: ChosenOptions): string[] {
  return [first, second].map((value) => outcomeText(kind, name, value, options));
}

function madeText({ first, second, madeBy }: ComparedOutcome): string {
  if (madeBy.length > 0) return madeBy.map(groupText).join(' with ');
  return first === second ? 'no difference' : 'no rule alone';
}

/** `defaultStrains.continuous` in words. */
function groupText(group: string): string {
  return group.replaceAll('.', ', ').replaceAll(/[A-Z]/gu, (letter) => ` ${letter.toLowerCase()}`);
}

/** The numbers that bear on the class of the case: those of the others make no difference to it. */
function ofClass(numbers: readonly ComparedNumber[], repairClass: number): ComparedNumber[] {
  return numbers.filter(({ path }) => {
    const named = /\.(\d)(?=[.[]|$)/u.exec(path)?.[1];
    return named === undefined || Number(named) === repairClass;
  });
}

function governingBlocks(outcomes: readonly ComparedOutcome[]): Block[] {
  const changed = outcomes.filter(({ governing: [first, second] }) => first !== second);
  if (changed.length === 0) return [];
  const items = changed.map(
    ({ name, governing: [first, second] }) => `${name}: ${first ?? '-'}, then ${second ?? '-'}`,
  );
  return [
    { sort: 'paragraph', text: 'Another criterion governs:' },
    { sort: 'list', items },
  ];
}

function numbersTable(
  numbers: readonly ComparedNumber[],
  bases: ComparedBases['bases'],
  options: ChosenOptions,
): Block {
  return {
    sort: 'table',
    head: ['number', ...bases],
    rows: numbers.map(({ path, kind, first, second }) => {
      const show = (value: number | undefined): string => {
        if (value === undefined) return 'none';
        return shownValue(kind, path.split('.').at(-1) ?? path, value, options, false);
      };
      return [path, show(first), show(second)];
    }),
  };
}

function movedItems(group: string, outcomes: readonly ComparedOutcome[], options: ChosenOptions): string[] {
  return outcomes.flatMap(({ name, kind, first, movedBy, madeBy }) => {
    const moved = movedBy.find((each) => each.group === group);
    if (moved === undefined)
      return madeBy.includes(group)
        ? [
            `${name}: together with ${madeBy
              .filter((each) => each !== group)
              .map(groupText)
              .join('; ')} only`,
          ]
        : [];
    const share =
      typeof moved.to === 'number' && typeof first === 'number' && first !== 0 ? moved.to / first - 1 : undefined;
    const percent = share === undefined ? '' : ` (${share > 0 ? '+' : ''}${formatNumber(100 * share, 3)} %)`;
    return [
      `${name}: ${outcomeText(kind, name, first, options)} becomes ${outcomeText(kind, name, moved.to, options)}${percent}`,
    ];
  });
}
