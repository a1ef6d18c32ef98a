/**
 * Builds the documentation as a site of static pages that needs no network: `npm run docs` writes it to build/docs.
 *
 * Pages of Markdown are framed, the reference of the formulas is made from their declarations and cases, that of the interface
 * by typedoc. A link that leads nowhere, an equation that cannot be set, a warning of typedoc and a symbol or field without words
 * end the build.
 */
import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { writeSymbols } from './api/write.js';
import { deadLinks } from './links.js';
import { site } from './site.js';

const root = fileURLToPath(new URL('../..', import.meta.url));
const out = join(root, 'build/docs');

const started = Date.now();
rmSync(out, { recursive: true, force: true });
const says = (what: string): void => console.log(`${Math.round((Date.now() - started) / 1000)} s: ${what}`);
says('reading the types and comments of the interface (the longest part)');
const symbols = await writeSymbols(join(out, 'api'));
says('setting the pages and the reference of the formulas');
const worksheet = join(root, 'build/worksheet.html');
const { files, folders } = site(symbols, { hasWorksheet: existsSync(worksheet) });
for (const [place, text] of files) {
  mkdirSync(dirname(join(out, place)), { recursive: true });
  writeFileSync(join(out, place), text);
}
for (const [source, place] of folders) cpSync(join(root, source), join(out, place), { recursive: true });

says(`following the links of ${files.size} pages`);
const written = readdirSync(out, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile())
  .map((entry) => join(entry.parentPath, entry.name).slice(out.length + 1));
const dead = deadLinks(
  new Map(
    written.map((place) => [place, place.endsWith('.html') ? readFileSync(join(out, place), 'utf8') : undefined]),
  ),
);
for (const link of dead) console.error(`Dead link: ${link}`);
for (const problem of symbols.problems) console.error(problem);
if (dead.length + symbols.problems.length > 0) process.exitCode = 1;
else
  console.log(
    `${written.filter((place) => place.endsWith('.html')).length} pages in build/docs, from build/docs/index.html on; ${Math.round((Date.now() - started) / 1000)} s`,
  );
