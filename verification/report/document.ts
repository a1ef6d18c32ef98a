import { verdicts } from '../runner/judge.js';
import {
  anchor,
  type Block,
  code,
  count,
  heading,
  link,
  list,
  paragraph,
  type Run,
  strong,
  type Text,
  table,
} from './blocks.js';
import { accuracyPlot, burstPlot, coveragePlot } from './plots.js';
import type { BurstReport, CaseRow, FormulaEntry, Report, SymbolRow } from './shape.js';
import { hazardBlocks, wholeDesignBlocks } from './whole-design-blocks.js';

/** The report as a document: what is said, in which order. It reads the data of the report and nothing else. */

/** Kept in the repository, without what differs from run to run, or built by a run. */
export type Form = 'kept' | 'built';

const formulaLink = (id: string): Run => link(id, anchor(id));

/** The one-line result. */
export function oneLine({ summary }: Report): string {
  const [none, one, two, more] = summary.byLines;
  const { fails } = summary.byVerdict;
  const agreed = summary.byVerdict.agrees + summary.byVerdict['agrees within the rounding of its inputs'];
  return `${count(summary.cases, 'case')} with ${count(summary.values, 'value')}: ${agreed} agree to the printed digits, ${summary.byVerdict['within stated tolerance']} within a stated tolerance, ${summary.byVerdict['explained difference']} differ for a stated reason, ${fails} fail. Of ${count(summary.formulas, 'formula')}, ${more} have three or more independent lines of evidence, ${two} have two, ${one} one and ${none} none.`;
}

export const NO_WORKED_EXAMPLE =
  'No worked example of a repair by the standards, and no burst pressure of a repaired pipe with its inputs, was found: no laminate thickness has been compared with one that a standard prints.';

/** What of the laminate was held against print, counted from the cases, so that it is true of this run. */
export function laminatePrints({ formulas }: Pick<Report, 'formulas'>): string {
  const laminate = formulas.filter(({ id }) => id.startsWith('laminate/'));
  const meet = laminate.filter(({ lines }) => lines.some(({ sort }) => sort === 'print'));
  const differ = laminate.filter(({ cases }) =>
    cases.some(
      ({ class: of, verdict }) => verdict === 'explained difference' && of !== 'derivation' && of !== 'practice',
    ),
  );
  const names = differ.map(({ id }) => id.replace('laminate/', '')).join(', ');
  return ` The mechanics under the equations do meet print: ${meet.length} of ${laminate.length} formulas of the laminate agree with a value from another hand, among them both tubes under one load, the yielded tube, the closed cylinder and the terms of the hole equation. ${differ.length === 0 ? 'None differs.' : `Of the forms that differ from print, each with its reason below (${names}), the sharing form of one direction lies on the unsafe side where the ends are closed: a design takes the thicker of it and of the form of both directions, which agrees.`} The rest stands on derivations by a second route and on recollection.`;
}

const IS_NOT: readonly Text[] = [
  'a validation or qualification of any repair system: that takes tests of the material on pipe, by its maker and under the standard;',
  'a licence to skip the standard: the rule sets follow documents whose body pages were not read, and every such value says so;',
  'a licence to skip the competent engineer, who answers for the design under the local code;',
  'proof that an equation describes a given pipe: agreement shows that the code computes what its source prints.',
];

function firstPage(report: Report): Block[] {
  const { summary, identity } = report;
  const [none, one, two, more] = summary.byLines;
  const head = ['', ...verdicts.map((verdict): Text => verdict), 'cases'];
  const rows = summary.byClass
    .filter(({ cases }) => cases > 0)
    .map((row): Text[] => [
      [strong(row.class), `: ${report.classes[row.class]}`],
      ...verdicts.map((verdict) => (row.byVerdict[verdict] === 0 ? '–' : String(row.byVerdict[verdict]))),
      String(row.cases),
    ]);
  const empty = summary.byClass.filter(({ cases }) => cases === 0).map((row) => row.class);
  return [
    heading(1, `Verification report of ${identity.name} ${identity.version}`, 'top'),
    { sort: 'paragraph', text: oneLine(report), strong: true },
    {
      sort: 'figures',
      items: [
        { value: String(more), label: 'formulas with three or more independent lines of evidence' },
        { value: String(two), label: 'with two' },
        { value: String(one), label: 'with one' },
        { value: String(none), label: 'with none' },
        { value: String(summary.byVerdict.fails), label: 'cases that fail' },
      ],
    },
    paragraph(strong(NO_WORKED_EXAMPLE), laminatePrints(report)),
    paragraph(
      'A line of evidence is a printed value from another hand, a dataset, or a derivation that imports nothing under test. Not counted: the check of the declared text against the code, the accuracy table, properties, refusals, inequalities, recalled or customary values, rows that need a tolerance or an explanation, and a second source with the same ancestor. All derivations of one formula count once, being of one hand.',
    ),
    heading(3, 'What this report is not', 'not'),
    list(...IS_NOT),
    heading(3, 'Cases by class and verdict', 'counts'),
    table(head, rows, { align: `l${'r'.repeat(verdicts.length + 1)}`, widths: [40, 10, 14, 12, 12, 6, 6] }),
    paragraph(
      empty.length === 0 ? '' : `No case has the class ${empty.join(' or ')}. `,
      'A case has the verdict of the worst of its values.',
    ),
  ];
}

function identityBlocks({ identity, volatile }: Report, form: Form): Block[] {
  const run: readonly Text[][] = [
    [
      'made from commit',
      [
        code(volatile.commit),
        volatile.changed.length === 0 ? '' : ` with changes in ${count(volatile.changed.length, 'file')}`,
      ],
    ],
    ['made with', `Node ${volatile.node}, V8 ${volatile.v8}, ${volatile.platform}`],
  ];
  return [
    heading(2, 'Identity', 'identity'),
    table(
      ['', ''],
      [
        ['version', `${identity.name} ${identity.version}, released ${identity.released}, licence ${identity.licence}`],
        ['lock file', [code(`sha256 ${identity.lockHash}`)]],
        ['seed of every random draw', code(String(identity.seed))],
        ...(form === 'built' ? run : []),
      ],
      { widths: [24, 76] },
    ),
    paragraph(
      form === 'built'
        ? 'The last two rows are those of this run.'
        : 'The commit is the one that this file is read at: its verdicts, counts and values equal those of a fresh run at every commit, or the tests fail. Commit, changed files and machine of a run stand in the forms that the run builds.',
      ` Accuracy numbers are compared on Node ${identity.nodeMajor} only.`,
    ),
  ];
}

function exceptionBlocks({ exceptions, tolerances }: Report): Block[] {
  const rows = exceptions.map(({ id, formula, class: of, output, printed, computed, verdict, because }): Text[] => [
    [code(id), ` ${of}`],
    [formulaLink(formula), output === 'result' ? '' : `, ${output}`],
    printed,
    computed,
    [strong(verdict), because === '' ? '' : `: ${because}`],
  ]);
  return [
    heading(3, 'Every value that does not simply agree', 'exceptions'),
    exceptions.length === 0
      ? paragraph('There is none.')
      : table(['case', 'formula', 'printed', 'computed', 'verdict and reason'], rows, {
          marks: exceptions.map(({ verdict }) => verdict),
          widths: [15, 22, 12, 14, 37],
        }),
    heading(3, 'Tolerances other than the printed digits', 'tolerances'),
    tolerances.length === 0
      ? paragraph('There is none.')
      : table(
          ['case', 'value', 'tolerance', 'reason'],
          tolerances.map(({ id, output, tolerance, reason }) => [code(id), output, tolerance, reason]),
          { widths: [14, 14, 14, 58] },
        ),
  ];
}

function method(): Block[] {
  return [
    heading(2, 'How a value is judged', 'method'),
    list(
      'A computed value agrees when it lies inside the rounding interval of the printed one: half a unit in its last printed place to both sides, or one unit outward where the print is known to be cut.',
      'Inputs are printed too. Where the value does not agree as it stands, each input is moved within its own rounding interval; if the span of results meets the printed interval, the verdict is “agrees within the rounding of its inputs”, and the report says how far they had to move.',
      'Any other tolerance stands on the record with its reason and is listed above. There is no flat percentage.',
      'A printed zero is met by anything below half a unit of its last place.',
      'Digits agreed are minus the decimal logarithm of the relative error, at most the digits printed.',
      'A published answer that is wrong is an erratum: its record holds the right value, backed by another class, and it must not be what is computed.',
    ),
  ];
}

function evidenceLines({ ancestors, summary }: Report): Block[] {
  return [
    heading(2, 'Evidence tags', 'tags'),
    paragraph(
      'Apart from the lines of evidence, every form and every coefficient carries a tag that says whether its source was seen. A formula has the weakest of its tags: ',
      ...Object.entries(summary.byTag).flatMap(([tag, formulas], index): Run[] => [
        index === 0 ? '' : ', ',
        code(tag),
        ` ${formulas}`,
      ]),
      '. Agreement of two recollections changes no tag.',
    ),
    heading(2, 'Sources that count once', 'ancestors'),
    table(
      ['sources', 'for formulas', 'count as', 'because'],
      ancestors.map(({ sources, formulas, ancestor, why }) => [
        sources.join(', '),
        code(`${formulas}…`),
        code(ancestor),
        why,
      ]),
      { widths: [28, 20, 18, 34] },
    ),
  ];
}

/** Longest plot that a page holds. */
const ROWS = 48;

function coverageBlocks({ coverage }: Report): Block[] {
  const plots = coverage.flatMap((room): Block[] => {
    const pages = Math.ceil(room.rows.length / ROWS);
    const share = Math.ceil(room.rows.length / pages);
    return Array.from({ length: pages }, (_, page): Block => {
      const rows = room.rows.slice(page * share, (page + 1) * share);
      const title = `${room.room}${pages > 1 ? `, ${page + 1} of ${pages}` : ''}`;
      return {
        sort: 'plot',
        title: `Coverage: ${title}`,
        svg: coveragePlot({ ...room, rows }, `Coverage of ${title}`),
      };
    });
  });
  const holes = coverage.flatMap(({ room, rows }) => {
    const bare = rows.filter(({ lines }) => lines === 0);
    return bare.length === 0
      ? []
      : [
          [
            strong(room),
            `${bare.length} of ${rows.length}`,
            bare.map(({ formula }) => formula.split('/')[1]).join(', '),
          ],
        ];
  });
  return [
    heading(2, 'Coverage: formulas against sources', 'coverage'),
    paragraph(
      'Each cell counts the cases of a formula from a source. Grey cells (practice, recalled) are no evidence. The last column counts independent lines; a shaded row is a hole.',
    ),
    ...plots,
    heading(3, 'Formulas without any independent line of evidence', 'holes'),
    table(['room', 'holes', 'formulas'], holes, { widths: [12, 10, 78] }),
  ];
}

function symbolTable(symbols: readonly SymbolRow[]): Block {
  return table(
    ['symbol', 'meaning', 'unit', 'default', 'sampled, SI'],
    symbols.map(({ tex, name, unit, kind, default: fallback, span, result }) => [
      { tex },
      [name, result ? ' (result)' : ''],
      unit || kind,
      fallback,
      span,
    ]),
    { widths: [10, 44, 14, 12, 20] },
  );
}

function digits({ digitsPrinted, digitsAgreed }: CaseRow): string {
  if (digitsPrinted === null) return '';
  return `${digitsAgreed ?? 0} of ${digitsPrinted}`;
}

function caseTable(cases: readonly CaseRow[]): Block {
  return table(
    ['case', 'class', 'source', 'value', 'printed', 'computed', 'digits', 'verdict'],
    cases.map((row) => [
      code(row.id),
      row.class,
      row.source,
      row.output,
      row.printed,
      row.computed,
      digits(row),
      [row.verdict, row.because === '' ? '' : ` (${row.because})`],
    ]),
    {
      marks: cases.map(({ verdict }) => verdict),
      widths: [12, 9, 25, 9, 11, 12, 7, 15],
    },
  );
}

function formulaBlocks(entry: FormulaEntry, report: Report): Block[] {
  const accuracy = report.accuracy.find(({ id }) => id === entry.id);
  const facts: Text[] = [
    ...entry.limits.map(
      ({ sort, text, source }): Text => [
        strong(sort === 'stop' ? 'Limit: ' : 'Note: '),
        text,
        source === '' ? '' : ` [${source}]`,
      ],
    ),
    ...(entry.inhomogeneous === '' ? [] : [[strong('Tied to a unit: '), entry.inhomogeneous]]),
    ...(entry.sources.length === 0
      ? []
      : [[strong('Source: '), entry.sources.map(({ text }) => text).join('; ')] as Text]),
    [
      strong('Evidence: '),
      entry.evidence
        .map(({ of, tag, derived, note }) =>
          [`${of} ${tag}`, derived === '' ? '' : `, derived by ${derived}`, note === '' ? '' : ` (${note})`].join(''),
        )
        .join('; '),
    ],
    [
      strong('Independent lines: '),
      entry.lines.length === 0
        ? 'none'
        : `${entry.lines.length}: ${entry.lines.map(({ sort, from, by }) => `${sort} ${sort === 'derivation' ? '' : `${from} `}(${by})`).join('; ')}`,
    ],
    ...(accuracy === undefined
      ? []
      : [
          [
            strong('Accuracy: '),
            link(`largest error ${accuracy.maxUlp} ulp`, 'accuracy'),
            `, at ${accuracy.worst}`,
          ] as Text,
        ]),
  ];
  return [
    heading(3, `${entry.title} (${entry.id})`, anchor(entry.id)),
    ...(entry.algorithm === '' ? [] : [paragraph(strong('Algorithm: '), entry.algorithm)]),
    ...entry.equation.map(({ tex, text, note }): Block => ({ sort: 'equation', tex, text, note })),
    symbolTable(entry.symbols),
    list(...facts),
    ...(entry.cases.length === 0 ? [paragraph('No case record.')] : [caseTable(entry.cases)]),
  ];
}

function burstBlocks(burst: BurstReport): Block[] {
  const row = (method: string, group: string): Text => {
    const found = burst.statistics.find((each) => each.method === method && each.group === group);
    if (found === undefined) return '–';
    const deviation = found.deviation === null ? '' : ` ± ${found.deviation.toFixed(3)}`;
    return `${found.mean.toFixed(3)}${deviation} (${found.n})`;
  };
  const groups = [...new Set(burst.statistics.map(({ group }) => group))];
  const publicationOf = new Map(burst.publications.map(({ group, publication }) => [group, publication]));
  return [
    heading(2, 'Burst tests of corroded pipe', 'burst'),
    paragraph(
      `${count(burst.tests, 'test')} as listed in two open compilations. Predicted over measured pressure; below 1 is safe. Methods: ${burst.methods.map(({ method, how }) => `${method}, ${how}`).join('; ')}.`,
    ),
    {
      sort: 'plot',
      title:
        'Predicted against measured burst pressure, MPa. Above the diagonal a prediction is unsafe; the dashed line is the mean ratio.',
      svg: burstPlot(burst),
    },
    table(
      ['primary publication', ...burst.methods.map(({ method }) => `${method}: mean ± s (n)`)],
      groups.map((group) => [
        group === 'all' ? strong('all') : [strong(group), ` ${publicationOf.get(group) ?? ''}`],
        ...burst.methods.map(({ method }) => row(method, group)),
      ]),
      { align: 'lrrr', widths: [46, 18, 18, 18] },
    ),
    paragraph(
      'A published comparison (Zhou and Huang 2012, 149 tests) gives the mean of measured over predicted; its inverse is only roughly comparable with a mean of predicted over measured, and its tests are others.',
    ),
    table(
      ['method', 'published, measured/predicted', 'inverted', 'here, predicted/measured'],
      burst.methods
        .filter(({ published }) => published !== null)
        .map(({ method, published }) => [
          method,
          (published ?? 1).toFixed(3),
          (1 / (published ?? 1)).toFixed(3),
          row(method, 'all'),
        ]),
      { align: 'lrrr' },
    ),
  ];
}

function dewPointBlocks({ dewPoint }: Report): Block[] {
  const { rows, parts, leftOut, program } = dewPoint;
  return [
    heading(2, 'Dew-point table', 'dew-point'),
    paragraph(
      `A printed table of ${rows} dew points, in tenths of a degree; below 0 °C it gives frost points. Its own equation is not named, and its values scatter about every Magnus form far more than those differ among themselves; the tests hold dew points to 0.2 K and frost points to 0.25 K. Left out: ${leftOut.map(({ status, rows: number }) => `${number} ${status}`).join(', ')}. Against PsychroLib, which computes by other equations, ${program.points} drawn dew points from 0 to 50 °C differ by at most ${program.largest} K.`,
    ),
    table(
      ['formula', 'rows', 'mean difference, K', 'largest, K'],
      parts.map(({ formula, rows: number, mean, largest }) => [
        formulaLink(formula),
        String(number),
        mean.toFixed(3),
        largest.toFixed(3),
      ]),
      { align: 'lrrr' },
    ),
  ];
}

function accuracyBlocks({ accuracy }: Report): Block[] {
  const sorted = [...accuracy].sort((a, b) => b.maxUlp - a.maxUlp);
  return [
    heading(2, 'Numeric accuracy', 'accuracy'),
    paragraph(
      `The error of every closed-form formula in ulp (units in the last place of the result) against the declared equation at 64 digits, over a seeded sample of its stated validity. The condition number says by how many ulp the result may move when each input moves by one: a large error beside a large condition number is a property of the equation (a difference near its zero), not of the code. Below the dashed line, condition number plus 4, nothing is lost.`,
    ),
    {
      sort: 'plot',
      title: 'Largest error of each formula against the condition number at that input.',
      svg: accuracyPlot(accuracy),
    },
    table(
      ['formula', 'draws', 'largest, ulp', 'root mean square, ulp', 'condition number there'],
      sorted.map(({ id, draws, maxUlp, rmsUlp, condition }) => [
        formulaLink(id),
        String(draws),
        String(maxUlp),
        String(rmsUlp),
        String(condition),
      ]),
      { align: 'lrrrr', widths: [44, 10, 14, 16, 16] },
    ),
  ];
}

function perturbationBlocks({ perturbation }: Report): Block[] {
  const { change, constants, catchers, bySort, survivors } = perturbation;
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

function tableBlocks(report: Report): Block[] {
  const { pipeSizes, units, rules, properties, errata, knownProblems, bibliography } = report;
  return [
    heading(2, 'Pipe sizes', 'pipe-sizes'),
    paragraph(
      `${pipeSizes.equal} of ${pipeSizes.rows} walls of ${pipeSizes.program}, are equal to the digit here${pipeSizes.different.length === 0 ? '.' : `; different: ${pipeSizes.different.join('; ')}.`} The generator script stands beside the frozen output in `,
      code('verification/oracles/'),
      '.',
    ),
    heading(2, 'Errata found in sources', 'errata'),
    table(
      ['case', 'formula', 'source', 'printed', 'right', 'explanation'],
      errata.map(({ id, formula, source, printed, right, explanation }) => [
        code(id),
        formulaLink(formula),
        source,
        printed,
        right,
        explanation,
      ]),
      { widths: [10, 18, 18, 12, 12, 30] },
    ),
    heading(2, 'Known problems', 'known-problems'),
    table(
      ['no.', 'about', 'problem'],
      knownProblems.map(({ id, about, text }) => [id, about, text]),
      { widths: [8, 20, 72] },
    ),
    heading(2, 'Properties', 'properties'),
    paragraph(
      `${count(properties.length, 'property', 'properties')} asserted on random input, with the number of runs and the seed of each. Besides these, every declared equation is evaluated by another program with units and at 64 digits, and every formula in another system of units. None of this counts as evidence that an equation is true.`,
    ),
    table(
      ['sort', 'tests', 'property', 'runs', 'seed'],
      properties.map(({ sort, file, sentence, runs, seed }) => [sort, file, sentence, String(runs), String(seed)]),
      { align: 'lllrr', widths: [12, 26, 44, 7, 11] },
    ),
    heading(2, 'Rule values to confirm', 'rules'),
    paragraph('In SI units. A reader who holds the document confirms each value against its clause.'),
    table(
      ['set', 'value', 'in SI', 'clause', 'tag'],
      rules.map(({ set, path, value, clause, tag, note }) => [
        set,
        path,
        value,
        clause,
        [strong(tag), note === '' ? '' : `: ${note}`],
      ]),
      { widths: [10, 20, 28, 18, 24] },
    ),
    heading(2, 'Units', 'units'),
    paragraph(
      'The exact ratio of every unit to SI, held as two integers, and whether composing the unit from the definitions of others gives the same ratio.',
    ),
    table(
      ['kind', 'unit', 'ratio to SI', 'shift first', 'in SI', 'composed'],
      units.map(({ kind, unit, ratio, shift, si, composed }) => [kind, code(unit), ratio, shift, si, composed]),
      { align: 'llrrrl', widths: [22, 14, 24, 10, 18, 12] },
    ),
    heading(2, 'Bibliography', 'bibliography'),
    table(
      ['key', 'source', 'reached', 'cases', 'formulas'],
      bibliography.map(({ key, text, reached, cases, formulas }) => [
        code(key),
        text,
        reached,
        cases === 0 ? '–' : String(cases),
        formulas === 0 ? '–' : String(formulas),
      ]),
      { align: 'lllrr', widths: [18, 50, 16, 7, 9] },
    ),
  ];
}

function ending({ bibtex, identity }: Report): Block[] {
  return [
    heading(2, 'How to reproduce', 'reproduce'),
    paragraph(`On a clean clone with Node ${identity.nodeMajor}:`),
    {
      sort: 'code',
      text: 'npm ci\nnpm run verify    # writes report.md, and report.html and report.json under build/report/; fails if a case fails\nnpm test          # holds the verdicts, counts and values of report.md to a fresh run\nnpm run perturb   # what would notice a wrong constant, in minutes',
    },
    heading(2, 'How to cite', 'cite'),
    { sort: 'code', text: bibtex },
    paragraph('Give the version and the commit of the report, and the id of the case or formula that you rely on.'),
  ];
}

/** The whole report in blocks. */
export function documentBlocks(report: Report, form: Form): Block[] {
  const rooms = [...new Set(report.formulas.map(({ id }) => id.split('/')[0] ?? ''))];
  return [
    ...firstPage(report),
    ...exceptionBlocks(report),
    ...identityBlocks(report, form),
    { sort: 'contents' },
    ...method(),
    ...evidenceLines(report),
    ...coverageBlocks(report),
    ...burstBlocks(report.burst),
    ...dewPointBlocks(report),
    ...accuracyBlocks(report),
    ...perturbationBlocks(report),
    ...wholeDesignBlocks(report),
    ...tableBlocks(report),
    ...ending(report),
    ...hazardBlocks(report),
    ...rooms.flatMap((room) => [
      heading(2, `Formulas: ${room}`, `room-${room}`),
      ...report.formulas.filter(({ id }) => id.startsWith(`${room}/`)).flatMap((entry) => formulaBlocks(entry, report)),
    ]),
  ];
}
