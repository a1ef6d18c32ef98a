import {
  anchor,
  type Block,
  caseAnchor,
  code,
  heading,
  link,
  list,
  paragraph,
  strong,
  type Text,
  table,
} from './blocks.js';
import { otherHands } from './lines.js';
import type { CaseRow, FormulaEntry, Report, SymbolRow } from './shape.js';

/** A card for each formula: equation, symbols, limits, sources, what it stands on, and each case so that it can be done again. */

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

/** A case has several rows where it has several values: its source and what goes in stand on the first. */
function caseTable(cases: readonly CaseRow[]): Block {
  const isFirst = (place: number): boolean => cases[place]?.id !== cases[place - 1]?.id;
  return table(
    ['case', 'source', 'what goes in, as printed', 'value', 'printed', 'computed', 'digits', 'verdict'],
    cases.map((row, place) => [
      isFirst(place) ? [code(row.id), ` ${row.class}`] : '',
      isFirst(place) ? row.source : '',
      isFirst(place) ? row.inputs : '',
      row.output,
      row.printed,
      row.computed,
      digits(row),
      [row.verdict, row.because === '' ? '' : ` (${row.because})`],
    ]),
    {
      marks: cases.map(({ verdict }) => verdict),
      ids: cases.map(({ id }, place) => (isFirst(place) ? caseAnchor(id) : '')),
      widths: [11, 17, 28, 8, 10, 10, 5, 11],
    },
  );
}

function card(entry: FormulaEntry, report: Report): Block[] {
  const accuracy = report.accuracy.find(({ id }) => id === entry.id);
  const published = otherHands(entry.lines);
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
      strong('Independently published: '),
      published.length === 0
        ? 'nothing'
        : `${published.length}: ${published.map(({ sort, from, by }) => `${sort} ${from} (${by})`).join('; ')}`,
    ],
    [
      strong('Own second route: '),
      entry.lines
        .filter(({ sort }) => sort === 'derivation')
        .map(({ by, arithmeticOnly }) => `${by}${arithmeticOnly === true ? ' (shows the arithmetic only)' : ''}`)
        .join('; ') || 'none',
    ],
    ...entry.routes.map(({ shows, how }): Text => [strong('Route: '), `${how} (${shows})`]),
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

/** All cards, by room. */
export function cardBlocks(report: Report): Block[] {
  return report.summary.byRoom.flatMap(({ room }) => [
    heading(2, `Formulas: ${room}`, `room-${room}`),
    paragraph(
      'Each row of a case repeats by ',
      code('npm run case -- ID'),
      ', which prints its source, what goes in, what was printed, what is computed and every step between.',
    ),
    ...report.formulas.filter(({ id }) => id.startsWith(`${room}/`)).flatMap((entry) => card(entry, report)),
  ]);
}
