import { type Block, code, formulaLink, heading, link, paragraph, type Text, table } from './blocks.js';
import { accuracyPlot } from './plots.js';
import type { AccuracyRow, Report } from './shape.js';

/** Chapters on the arithmetic: how near each formula comes to its equation, and what would notice a wrong constant. */

/** Rows of the table in the body; the annex holds all. */
const LARGEST = 12;

function accuracyTable(rows: readonly AccuracyRow[]): Block {
  return table(
    ['formula', 'draws', 'largest, ulp', 'root mean square, ulp', 'condition number there'],
    rows.map(({ id, draws, maxUlp, rmsUlp, condition }): Text[] => [
      formulaLink(id),
      String(draws),
      String(maxUlp),
      String(rmsUlp),
      String(condition),
    ]),
    { align: 'lrrrr', widths: [44, 10, 14, 16, 16] },
  );
}

const largestFirst = ({ accuracy }: Report): AccuracyRow[] => [...accuracy].sort((a, b) => b.maxUlp - a.maxUlp);

export function accuracyBlocks(report: Report): Block[] {
  return [
    heading(2, 'Numeric accuracy', 'accuracy'),
    paragraph(
      `The error of every closed-form formula in ulp (units in the last place of the result) against the declared equation at 64 digits, over a seeded sample of its stated validity. The condition number says by how many ulp the result may move when each input moves by one: a large error beside a large condition number is a property of the equation (a difference near its zero), not of the code. Below the dashed line, condition number plus 4, nothing is lost. The ${LARGEST} largest stand here, `,
      link('all of them in an annex', 'accuracy-all'),
      '.',
    ),
    {
      sort: 'plot',
      name: 'accuracy',
      title: 'Largest error of each formula against the condition number at that input.',
      svg: accuracyPlot(report.accuracy),
    },
    accuracyTable(largestFirst(report).slice(0, LARGEST)),
  ];
}

export function accuracyAnnex(report: Report): Block[] {
  return [heading(2, 'Numeric accuracy of every formula', 'accuracy-all'), accuracyTable(largestFirst(report))];
}

/** Formulas of the table in the body: the largest differences of any engine. */
const MOST_DIFFERENT = 15;

export function engineBlocks({ engines: summary }: Report): Block[] {
  if (summary === undefined) return [];
  const { calls, formulas, against, engines } = summary;
  const largest = new Map<string, number>();
  for (const { byFormula } of engines)
    for (const [id, most] of Object.entries(byFormula)) largest.set(id, Math.max(largest.get(id) ?? 0, most));
  const rows = [...largest].sort(([a, most], [b, more]) => more - most || (a < b ? -1 : 1));
  return [
    heading(2, 'The same calls in other engines', 'engines'),
    paragraph(
      `${calls} calls of ${formulas} formulas, those of the cases and drawn ones, in ${against} and in the engines below. The language leaves the last bits of exp, log, powers and the like to the engine; every word, count and refusal is the same everywhere. Differences are in units in the last place of a double; `,
      code('npm run engines'),
      ' repeats it.',
    ),
    table(
      ['engine', 'numbers compared', 'not the same double', 'largest difference, ulp'],
      engines.map(({ engine, numbers, different, byFormula }) => [
        engine,
        String(numbers),
        String(different),
        String(Math.max(0, ...Object.values(byFormula))),
      ]),
      { align: 'lrrr' },
    ),
    table(
      ['formula', ...engines.map(({ engine }) => `${engine.split(',')[0]}, ulp`)],
      rows
        .slice(0, MOST_DIFFERENT)
        .map(([id]): Text[] => [formulaLink(id), ...engines.map(({ byFormula }) => String(byFormula[id] ?? '–'))]),
      { align: `l${'r'.repeat(engines.length)}` },
    ),
    paragraph(
      rows.length <= MOST_DIFFERENT
        ? 'No other formula differs.'
        : `${rows.length - MOST_DIFFERENT} more formulas differ by ${rows[MOST_DIFFERENT]?.[1]} ulp or less; `,
      rows.length <= MOST_DIFFERENT ? '' : code('verification/engines/summary.json'),
      rows.length <= MOST_DIFFERENT ? '' : ' lists them.',
    ),
  ];
}

export function perturbationBlocks({ perturbation }: Report): Block[] {
  const { change, constants, catchers, bySort, survivors, since } = perturbation;
  return [
    heading(2, 'What would notice a wrong constant', 'perturbation'),
    paragraph(
      `Each of ${constants} numeric constants of the formulas, rule sets and units was changed by ${change * 100} per cent, up and down, a default together with its declaration, and all cases, datasets and derivations were run again, without the check of the declared text, which holds a copy of every constant. Counted is the strongest kind of check that turned red. “Own tests only” are properties and examples of this project: they show that a change would be noticed, not that the value is right. “No effect”: no drawn call gives a result that differs by more than 1e-9, as with the steps of a march. The whole list, with the smallest change that would be seen, is what `,
      code('npm run perturb'),
      ' writes to ',
      code('build/perturbation/survivors.md'),
      '.',
    ),
    table(
      ['constant', ...catchers],
      bySort.map(({ sort, counts }) => [sort, ...counts.map((number) => (number === 0 ? '–' : String(number)))]),
      { align: `l${'r'.repeat(catchers.length)}` },
    ),
    ...(since.length === 0
      ? []
      : [
          paragraph(
            `The run is not of today: the constants of ${since.length} formulas and files were changed, added or taken away after it, and of them it says nothing: ${since.join(', ')}.`,
          ),
        ]),
    ...(survivors.length === 0
      ? [paragraph('No constant other than a limit goes unnoticed.')]
      : [
          paragraph('Constants other than limits of which nothing notices such a change:'),
          table(
            ['file', 'constant', 'code', 'smallest change seen'],
            survivors.map(({ file, constant, code: text, smallest }) => [file, constant, code(text), smallest]),
            { widths: [28, 12, 38, 22] },
          ),
        ]),
  ];
}

/** How often the check of a hand calculation names the slip that was made. */
export function handCheckBlocks({ handChecks }: Report): Block[] {
  if (handChecks.length === 0) return [];
  return [
    heading(2, 'The check of hand calculations', 'hand-check'),
    paragraph(
      'Results of every closed form over drawn inputs, written to so many digits, with one slip planted by other code than the one that looks for it; and results multiplied by a random factor from 0.1 to 10, which no slip made. A slip that does not show in the digits written is not counted. ',
      code('npm run hand-check'),
      ' repeats it.',
    ),
    table(
      [
        'digits',
        'with a slip',
        'it is named',
        'only others are',
        'none is',
        'taken for right',
        'without',
        'one is named',
      ],
      handChecks.map(({ digits, planted, named, otherwise, taken, unexplained, namedWrongly }) => [
        String(digits),
        String(planted),
        `${named} (${((named / planted) * 100).toFixed(1)} %)`,
        String(otherwise),
        String(planted - named - otherwise - taken),
        String(taken),
        String(unexplained),
        `${namedWrongly} (${((namedWrongly / unexplained) * 100).toFixed(1)} %)`,
      ]),
      { align: 'rrrrrrrr' },
    ),
  ];
}
