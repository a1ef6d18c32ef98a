import { outcomeNames } from '../compare/index.js';
import type {
  Corner,
  DesignInterval,
  NumericInput,
  OutcomeCourse,
  Sensitivities,
  Sensitivity,
} from '../doubt/index.js';
import { formatNumber } from '../quantity/format.js';
import { outcomeText } from './compared.js';
import type { Block } from './document.js';
import { outcomeCourse } from './drawing/outcome-course.js';
import { sensitivityBars } from './drawing/sensitivity-bars.js';
import { type ChosenOptions, chosen, type SheetOptions } from './options.js';
import { render } from './render.js';
import { shownValue } from './shown-value.js';

/** An input as the sheet writes it. */
export function inputText({ path, kind }: NumericInput, value: number, options: ChosenOptions): string {
  return shownValue(kind, path.split('.').at(-1) ?? path, value, options, true);
}

/** How a sheet of sensitivities is written. */
export interface SensitivitySheetOptions extends SheetOptions {
  /** An outcome against the input that moves it most, to be drawn on a page. */
  readonly course?: OutcomeCourse | undefined;
}

/** Outcomes whose ranking a page draws: how much is laid, what it bears, how long it takes. */
const DRAWN = ['thickness', 'axial length', 'resistance', 'return to service, not before'] as const;

function figures(found: Sensitivities, course: OutcomeCourse | undefined, options: ChosenOptions): Block[] {
  const svgs = [
    ...(course === undefined ? [] : [outcomeCourse(course, options)]),
    ...DRAWN.map((name) => sensitivityBars(found, name)),
  ].filter((svg) => svg !== undefined);
  return svgs.length === 0 ? [] : [{ sort: 'figures', svgs }];
}

/**
 * How each result of a design moves with each input, the strongest first, as a sheet; a page has it in pictures too.
 *
 * @param found of `sensitivities`
 * @param options how the sheet is written
 */
export function sensitivitySheet(found: Sensitivities, options: SensitivitySheetOptions = {}): string {
  const all = chosen(options);
  const { at, share, temperature, inputs, atNought, ranked } = found;
  const moving = new Set(Object.values(ranked).flatMap((list) => list.map(({ path }) => path)));
  const still = inputs.filter(({ path, verdicts }) => !moving.has(path) && isDesigned(verdicts));
  const turned = inputs.filter(({ verdicts: { below, above } }) => below !== at.verdict || above !== at.verdict);
  const blocks: Block[] = [
    { sort: 'title', text: 'What the results hang on' },
    {
      sort: 'paragraph',
      text: `Verdict: ${at.verdict}. Each number of the case is moved by ${formatNumber(100 * share, 3)} % of itself, a temperature by ${temperature} K, a count by 1, down and up, and the whole job designed again.`,
    },
    ...figures(found, options.course, all),
    ...outcomeNames.flatMap((name): Block[] => {
      const list = ranked[name];
      if (list === undefined) return [];
      const heading = { sort: 'heading', level: 2, text: `${name}: ${resultText(at, name, all)}` } as const;
      return [heading, rankedTable(list, name, inputs, all)];
    }),
    ...listed(
      'The verdict turns with',
      turned.map((each) => turnedText(each)),
    ),
    ...listed(
      'These move nothing by such a step',
      still.length === 0 ? [] : [still.map(({ path }) => path).join(', ')],
    ),
    ...listed(
      'These are nought, so that a share of them is nothing',
      atNought.length === 0 ? [] : [atNought.map(({ path }) => path).join(', ')],
    ),
  ];
  return render(blocks, options);
}

function rankedTable(
  list: readonly { readonly path: string }[],
  name: string,
  inputs: readonly Sensitivity[],
  options: ChosenOptions,
): Block {
  const rows = list.map(({ path }) => row(path, name, inputs, options));
  const head = ['input', 'value', 'below', 'above', 'change', 'governing'];
  // Where no other criterion governs on any side, there is nothing to name.
  const columns = rows.every((each) => each[5] === '') ? 5 : 6;
  return { sort: 'table', head: head.slice(0, columns), rows: rows.map((each) => each.slice(0, columns)) };
}

function isDesigned({ below, above }: Sensitivity['verdicts']): boolean {
  return below === 'designed' && above === 'designed';
}

function resultText({ outcomes }: Sensitivities['at'], name: string, options: ChosenOptions): string {
  const outcome = outcomes.find((each) => each.name === name);
  return outcome === undefined ? '-' : outcomeText(outcome.kind, name, outcome.value, options);
}

function row(path: string, name: string, inputs: readonly Sensitivity[], options: ChosenOptions): string[] {
  const input = inputs.find((each) => each.path === path);
  const move = input?.moves.find((each) => each.name === name);
  if (input === undefined || move === undefined) return [path, '', '', '', '', ''];
  const { kind, below, above, change, governing, governingChanges } = move;
  const turned = governingChanges
    ? [...new Set([governing.below, governing.at, governing.above])].map((each) => each ?? '-').join(', then ')
    : '';
  return [
    path,
    inputText(input, input.value, options),
    outcomeText(kind, name, below, options),
    outcomeText(kind, name, above, options),
    `${change > 0 ? '+' : ''}${formatNumber(100 * change, 3)} %`,
    turned,
  ];
}

function turnedText({ path, verdicts, because }: Sensitivity): string {
  const side = (name: 'below' | 'above'): string => {
    const why = because[name];
    return `${name}: ${verdicts[name]}${why === undefined ? '' : ` (${why})`}`;
  };
  return `${path}: ${side('below')}; ${side('above')}`;
}

function listed(text: string, items: readonly string[]): Block[] {
  return items.length === 0
    ? []
    : [
        { sort: 'paragraph', text: `${text}:` },
        { sort: 'list', items },
      ];
}

/**
 * The intervals of the results over the tolerances of some inputs, with the corners that make their ends, as a sheet.
 *
 * @param found of `interval`
 * @param options how the sheet is written
 */
export function intervalSheet(found: DesignInterval, options: SheetOptions = {}): string {
  const all = chosen(options);
  const { nominal, inputs, corners, outcomes, without } = found;
  const cornerText = (corner: Corner): string =>
    inputs.map((input) => `${input.path} ${inputText(input, corner[input.path] ?? input.value, all)}`).join(', ');
  const blocks: Block[] = [
    { sort: 'title', text: 'What the tolerances leave' },
    {
      sort: 'table',
      head: ['input', 'least', 'as stated', 'most'],
      rows: inputs.map((input) => [
        input.path,
        ...[input.least, input.value, input.most].map((value) => inputText(input, value, all)),
      ]),
    },
    {
      sort: 'paragraph',
      text: `Verdict as stated: ${nominal.verdict}. Of ${corners} corners ${corners - without.length} are designed${without.length === 0 ? '.' : `, ${without.length} not: the intervals say nothing of those.`}`,
    },
    outcomes.length === 0
      ? { sort: 'paragraph', text: 'No corner is designed: nothing is known of any result within the tolerances.' }
      : {
          sort: 'table',
          head: ['result', 'least', 'as stated', 'most'],
          rows: outcomes.map(({ name, kind, least, nominal: stated, most }) => [
            name,
            ...[least, stated, most].map((value) => outcomeText(kind, name, value, all)),
          ]),
        },
    ...listed(
      'Another criterion governs at an end',
      outcomes.flatMap(({ name, governing }) => {
        const names = [...new Set([governing.least, governing.nominal, governing.most])];
        return names.length < 2
          ? []
          : [
              `${name}: least by ${governing.least ?? '-'}, as stated by ${governing.nominal ?? '-'}, most by ${governing.most ?? '-'}`,
            ];
      }),
    ),
    ...listed(
      'The ends lie at',
      outcomes
        .filter(({ least, most }) => least !== most)
        .flatMap(({ name, at }) => [
          `${name}, least: ${cornerText(at.least)}`,
          `${name}, most: ${cornerText(at.most)}`,
        ]),
    ),
    ...listed(
      'Corners without a design',
      without.map(({ corner, verdict, because }) => `${cornerText(corner)}: ${verdict} (${because})`),
    ),
  ];
  return render(blocks, options);
}
