import { type Kind, siSymbol, units } from '../../src/quantity/index.js';
import { escapedHtml } from '../../src/report/html-text.js';
import { scrolling } from './markdown.js';

/** Every kind of quantity with the units in which it is written, each with what one of it is in SI, from the tables that read them. */
export function unitsPage(): string {
  const kinds = (Object.keys(units) as Kind[]).sort();
  const rows = kinds.map((kind) => {
    const si = siSymbol(kind);
    const written = Object.entries(units[kind] as Readonly<Record<string, readonly number[]>>).map(
      ([symbol, ratio]) => {
        const [over = 1, under = 1] = ratio;
        const offset = ratio.length > 2 ? ', with an offset' : '';
        return symbol === si
          ? `<code>${escapedHtml(symbol)}</code>`
          : `<code>${escapedHtml(symbol)}</code> (${Number((over / under).toPrecision(10))}${offset})`;
      },
    );
    return `<tr><th scope="row">${escapedHtml(kind)}</th><td>${escapedHtml(si)}</td><td>${written.join(', ')}</td></tr>`;
  });
  return `<h1>Units</h1>
<p>A number is followed by its unit: <code>"8.18 mm"</code>, <code>"1 1/2 in"</code>, <code>"150 psig"</code>. Behind each unit stands how many coherent SI units one of it is; inside, each factor is a ratio of whole numbers. Units of one spelling that serve several kinds take the kind that the field asks for.</p>
${scrolling(`<table><thead><tr><th scope="col">kind</th><th scope="col">coherent SI unit</th><th scope="col">written in</th></tr></thead><tbody>${rows.join('\n')}</tbody></table>`)}`;
}
