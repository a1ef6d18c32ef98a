import type { AnyFormula, InputDeclaration } from '../../src/formula/index.js';
import { formulas } from '../../src/registry/index.js';
import { formulaBlocks } from '../../src/report/formula-sheet.js';
import { toHtmlFragment } from '../../src/report/html.js';
import { escapedHtml } from '../../src/report/html-text.js';
import { symbolMath } from '../../src/report/mathml.js';
import { chosen } from '../../src/report/options.js';
import { shownValue } from '../../src/report/shown-value.js';
import { formulaEntry } from '../../verification/report/formula-entry.js';
import type { CaseRow, FormulaEntry, SymbolRow } from '../../verification/report/shape.js';
import { runCases } from '../../verification/runner/run.js';
import { rooms } from '../contents.js';
import { type Example, exampleOf } from './formula-example.js';
import { fromPlace } from './frame.js';
import { scrolling } from './markdown.js';

/** The reference of the formulas: a page each, and a page that lists them room by room. */

export interface WrittenPage {
  readonly place: string;
  readonly title: string;
  readonly body: string;
}

export const formulaPlace = (id: string): string => `formulas/${id}.html`;

/** What a tag of evidence means, beside it on every page. */
const TAGS: Readonly<Record<string, string>> = {
  published: "read in the source's own open text",
  secondary: 'read in a copy, a program or a web page',
  recalled: 'written down from memory of the named document, not seen',
  practice: 'common practice of the trade, no source',
  chosen: "this library's own value or form",
};

/** Ranges are shown in the units that a drawing uses. */
const UNITS = chosen({});

/** Every page of the reference of formulas; `symbolPlace` says where the page of a function stands. */
export function formulaPages(symbolPlace: (room: string, name: string) => string | undefined): WrittenPage[] {
  const results = runCases();
  const entries = formulas.map((formula) => ({
    formula,
    entry: formulaEntry(formula, results, { lines: [], routes: [], called: false }),
  }));
  const pages = entries.map(({ formula, entry }) => {
    const records = results.flatMap(({ record }) => (record.formula === formula.id ? [record] : []));
    return formulaPage(formula, entry, exampleOf(formula, records), symbolPlace);
  });
  return [formulaIndex(entries.map(({ entry }) => entry)), ...pages];
}

function formulaIndex(entries: readonly FormulaEntry[]): WrittenPage {
  const place = 'formulas/index.html';
  const byRoom = Object.entries(rooms).flatMap(([room, words]) => {
    const own = entries.filter(({ id }) => id.startsWith(`${room}/`));
    if (own.length === 0) return [];
    const items = own.map(
      ({ id, title, tag }) =>
        `<li><a href="${fromPlace(place, formulaPlace(id))}">${escapedHtml(title)}</a> <span class="tag ${tag}">${tag}</span></li>`,
    );
    return [
      `<h2 id="${room}">${capital(room)}: ${escapedHtml(words)}</h2>\n<ul class="formulas">${items.join('\n')}</ul>`,
    ];
  });
  const body = `<h1>Formulas</h1>
<p>Every equation of the library, ${entries.length} in all: typeset, with its symbols, range, clauses, evidence and the published or derived values that it was checked against. The word behind each is the weakest evidence in it: ${Object.entries(
    TAGS,
  )
    .map(([tag, means]) => `<span class="tag ${tag}">${tag}</span> ${escapedHtml(means)}`)
    .join('; ')}.</p>
${byRoom.join('\n')}`;
  return { place, title: 'Formulas', body };
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function formulaPage(
  formula: AnyFormula,
  entry: FormulaEntry,
  example: Example | undefined,
  symbolPlace: (room: string, name: string) => string | undefined,
): WrittenPage {
  const { id, title, tag } = entry;
  const place = formulaPlace(id);
  const [room = ''] = id.split('/');
  const name = formula.compute.name;
  const symbol = symbolPlace(room, name);
  const link = symbol === undefined ? '' : ` (<a href="${fromPlace(place, symbol)}">types and errors</a>)`;
  const equation = formulaBlocks(formula).filter(({ sort }) => sort === 'equation' || sort === 'paragraph');
  const terms = formula.search ?? [];
  const sections = [
    `<p class="trail"><a href="${fromPlace(place, `formulas/index.html#${room}`)}">Formulas: ${room}</a></p>`,
    `<h1>${escapedHtml(title)} <span class="tag ${tag}">${tag}</span></h1>`,
    `<p><code>${id}</code>; <code>${name}</code> of <code>hoopwright/${room}</code>${link}${terms.length === 0 ? '' : `. Also found as: ${escapedHtml(terms.join(', '))}`}.</p>`,
    `<h2 id="equation">Equation</h2>\n${toHtmlFragment(equation)}`,
    `<h2 id="symbols">Symbols</h2>\n${symbolTable(formula, entry.symbols)}`,
    limits(entry),
    `<h2 id="evidence">Evidence and clauses</h2>\n${evidence(entry)}`,
    example === undefined ? '' : exampleSection(example),
    cases(entry.cases),
  ];
  return { place, title, body: sections.filter((section) => section !== '').join('\n') };
}

function symbolTable(formula: AnyFormula, symbols: readonly SymbolRow[]): string {
  const inputs = Object.entries(formula.inputs as Readonly<Record<string, InputDeclaration>>);
  const rows = symbols.map(({ symbol, name, kind, unit, span, result }, index) => {
    const [field = '', input] = inputs[index] ?? [];
    const shown = (value: unknown): string => shownValue(kind, field, value, UNITS, false, name);
    const ends = input?.sample?.map(shown) ?? [];
    const cells = [
      escapedHtml(name),
      result ? 'the result' : `<code>${field}</code>`,
      unit === '' || unit === kind ? escapedHtml(kind) : `${escapedHtml(kind)} [${escapedHtml(unit)}]`,
      escapedHtml(ends.length === 0 ? span : ends.join(' to ')),
      input?.default === undefined
        ? input?.optional === true
          ? 'may be left out'
          : ''
        : escapedHtml(shown(input.default)),
    ];
    return `<tr${result ? ' class="result"' : ''}><th scope="row"><math>${symbolMath(symbol)}</math></th>${cells.map((cell) => `<td>${cell}</td>`).join('')}</tr>`;
  });
  return scrolling(
    `<table><thead><tr><th scope="col">symbol</th><th scope="col">what it is</th><th scope="col">field</th><th scope="col">kind</th><th scope="col">range tested</th><th scope="col">unless given</th></tr></thead><tbody>${rows.join('\n')}</tbody></table>`,
  );
}

function limits({ limits: listed, inhomogeneous }: FormulaEntry): string {
  const items = listed.map(
    ({ sort, text, source }) =>
      `<li><strong>${sort === 'stop' ? 'Refused beyond' : 'Warned of'}:</strong> ${escapedHtml(text)}${source === '' ? '' : ` <cite>${escapedHtml(source)}</cite>`}</li>`,
  );
  if (inhomogeneous !== '') items.push(`<li><strong>Tied to its units:</strong> ${escapedHtml(inhomogeneous)}</li>`);
  return items.length === 0 ? '' : `<h2 id="limits">Range and limits</h2>\n<ul>${items.join('')}</ul>`;
}

function evidence({ evidence: parts, sources }: FormulaEntry): string {
  const rows = parts.map(({ of, tag, derived, note }) => {
    const more = [derived === '' ? '' : `reproduced by: ${derived}`, note].filter((text) => text !== '');
    return `<tr><th scope="row">${escapedHtml(of)}</th><td><span class="tag ${tag}">${tag}</span></td><td>${escapedHtml([TAGS[tag] ?? '', ...more].join('; '))}</td></tr>`;
  });
  const clauses = sources.map(({ text }) => `<li><cite>${escapedHtml(text)}</cite></li>`);
  const listed = clauses.length === 0 ? '<p>No source.</p>' : `<ul>${clauses.join('')}</ul>`;
  return `${scrolling(`<table><thead><tr><th scope="col">part</th><th scope="col">evidence</th><th scope="col">what stands behind it</th></tr></thead><tbody>${rows.join('\n')}</tbody></table>`)}${listed}`;
}

function exampleSection({ command, mathml, from }: Example): string {
  return `<h2 id="example">Example</h2>
<pre class="sh" tabindex="0"><code>${escapedHtml(command)}</code></pre>
<div class="displayed">${mathml}</div>
<p>With the numbers of the case <code>${escapedHtml(from)}</code> below.</p>`;
}

function cases(rows: readonly CaseRow[]): string {
  if (rows.length === 0)
    return '<h2 id="cases">Cases</h2>\n<p>No case of its own; the properties and the independent evaluation of its text hold it (<a href="../../verification/report.html">report</a>).</p>';
  const lines = rows.map(
    ({ id, class: sort, source, inputs, output, printed, computed, verdict, because }) =>
      `<tr><th scope="row">${escapedHtml(id)}</th><td>${escapedHtml(sort)}</td><td>${escapedHtml(source)}</td><td>${escapedHtml(inputs)}</td><td>${escapedHtml(`${output === 'result' ? '' : `${output}: `}${printed}`)}</td><td>${escapedHtml(computed)}</td><td>${escapedHtml(verdict)}${because === '' ? '' : `: ${escapedHtml(because)}`}</td></tr>`,
  );
  return `<h2 id="cases">Cases that it was checked against</h2>\n${scrolling(
    `<table class="cases"><thead><tr><th scope="col">case</th><th scope="col">class</th><th scope="col">source</th><th scope="col">inputs</th><th scope="col">printed</th><th scope="col">computed</th><th scope="col">verdict</th></tr></thead><tbody>${lines.join('\n')}</tbody></table>`,
  )}`;
}
