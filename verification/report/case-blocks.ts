import {
  type Block,
  caseAnchor,
  code,
  count,
  formulaLink,
  heading,
  link,
  list,
  paragraph,
  type Run,
  strong,
  type Text,
  table,
} from './blocks.js';
import { otherHands } from './lines.js';
import type { FormulaEntry, Report } from './shape.js';

/** Chapters on the cases: how a value is judged, what each room was held against, what does not simply agree, errata. */

export function methodBlocks(): Block[] {
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

export function tagBlocks({ ancestors, summary }: Report): Block[] {
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

export function exceptionBlocks({ exceptions, tolerances }: Report): Block[] {
  const rows = exceptions.map(({ id, formula, class: of, output, printed, computed, verdict, because }): Text[] => [
    [link(id, caseAnchor(id)), ` ${of}`],
    [formulaLink(formula), output === 'result' ? '' : `, ${output}`],
    printed,
    computed,
    [strong(verdict), because === '' ? '' : `: ${because}`],
  ]);
  return [
    heading(2, 'Every value that does not simply agree', 'exceptions'),
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

/** The cases of formulas that differ for a stated reason, each once. */
function differingOf(entries: readonly FormulaEntry[]): string[] {
  const rows = entries.flatMap(({ cases }) => cases.filter(({ verdict }) => verdict === 'explained difference'));
  return [...new Set(rows.map(({ id }) => id))];
}

/** Whose values a room meets, and what of it is left to our own routes or to nothing. */
function foundIn(room: string, entries: readonly FormulaEntry[]): Block[] {
  const cases = new Map(entries.flatMap(({ cases: rows }) => rows.map((row) => [row.id, row] as const)));
  const hands = [...new Set(entries.flatMap(({ lines }) => otherHands(lines).map(({ from }) => from)))].sort();
  const differing = differingOf(entries);
  const bare = entries.filter(({ lines }) => lines.length === 0).length;
  const published = entries.filter(({ lines }) => otherHands(lines).length > 0).length;
  return [
    heading(3, room, `found-${room}`),
    paragraph(
      `${count(entries.length, 'formula')}, ${count(cases.size, 'case')}. ${published} meet what another hand published`,
      hands.length === 0 ? '' : ` (${hands.join(', ')})`,
      `; ${entries.length - published - bare} stand on a second route of our own, ${bare} on neither. `,
      differing.length === 0
        ? 'Nothing differs from print.'
        : `${count(differing.length, 'case')} ${differing.length === 1 ? 'differs' : 'differ'} for a stated reason: `,
      ...differing.flatMap((id, index): Run[] => [index === 0 ? '' : ', ', link(id, caseAnchor(id))]),
      differing.length === 0 ? '' : '.',
    ),
  ];
}

/** What was done and found, room by room. */
export function roomBlocks({ formulas, summary }: Report): Block[] {
  return [
    heading(2, 'What was held against what, room by room', 'rooms'),
    ...summary.byRoom.flatMap(({ room }) =>
      foundIn(
        room,
        formulas.filter(({ id }) => id.startsWith(`${room}/`)),
      ),
    ),
  ];
}

export function errataBlocks({ errata }: Report): Block[] {
  return [
    heading(2, 'Errata found in sources', 'errata'),
    table(
      ['case', 'formula', 'source', 'printed', 'right', 'explanation'],
      errata.map(({ id, formula, source, printed, right, explanation }) => [
        link(id, caseAnchor(id)),
        formulaLink(formula),
        source,
        printed,
        right,
        explanation,
      ]),
      { widths: [10, 18, 18, 12, 12, 30] },
    ),
  ];
}

/** Where values of another hand were looked for, with empty hands too. */
export function lookUpBlocks({ lookUps }: Report): Block[] {
  const sum = (key: 'made' | 'found'): number => lookUps.reduce((all, row) => all + row[key], 0);
  return [
    heading(2, 'Where values of another hand were looked for', 'look-ups'),
    paragraph(
      `${count(sum('made'), 'look-up')}, of which ${sum('found')} led to a case and ${sum('made') - sum('found')} to nothing that could be used; each stands with its words in `,
      code('verification/look-ups.json'),
      '. Those before this list was kept are not in it. Makers’ material was not looked for.',
    ),
    table(
      ['looked for in', 'look-ups', 'with a find', 'cases'],
      lookUps.map(({ corpus, made, found, cases }) => [corpus, String(made), String(found), String(cases)]),
      { align: 'lrrr' },
    ),
  ];
}
