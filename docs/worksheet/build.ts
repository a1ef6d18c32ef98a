/** Writes the worksheet page, one file that needs nothing else: `npm run worksheet`. */
import { mkdirSync, readFileSync, realpathSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { buildSync } from 'esbuild';
import { pagePolicy } from '../../src/report/page-policy.js';
import { mathFonts } from '../../src/report/sheet-style.js';

const target = new URL('../../build/worksheet.html', import.meta.url);

/** The script of the page with the whole library in it. No text in it can end its element. */
function script(): string {
  const { outputFiles } = buildSync({
    entryPoints: [fileURLToPath(new URL('./page.ts', import.meta.url))],
    bundle: true,
    minify: true,
    format: 'iife',
    target: 'es2022',
    charset: 'ascii',
    legalComments: 'none',
    write: false,
  });
  const [file] = outputFiles;
  if (file === undefined) throw new Error('esbuild gave no script');
  return file.text.trim().replaceAll('</', '<\\/').replaceAll('<!--', '<\\!--');
}

/** The page as text: its policy lets only its own script run, and nothing be fetched or sent. */
export function worksheetPage(): string {
  const text = script();
  const inserted: Readonly<Record<string, string>> = {
    '<!-- policy -->': pagePolicy(text),
    '/* style */': `${read('worksheet.css')}${mathFonts}\n`,
    '/* script */': text,
  };
  return read('worksheet.html').replaceAll(
    /<!-- policy -->|\/\* style \*\/|\/\* script \*\//gu,
    (mark) => inserted[mark] ?? '',
  );
}

function read(name: string): string {
  return readFileSync(new URL(name, import.meta.url), 'utf8');
}

if (realpathSync(process.argv[1] ?? '') === fileURLToPath(import.meta.url)) {
  mkdirSync(new URL('.', target), { recursive: true });
  writeFileSync(target, worksheetPage());
}
