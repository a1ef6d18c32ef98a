/** Writes the script of the plan's page, bundled from the library's own timeline: `npm run plan-script`. */
import { realpathSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { buildSync } from 'esbuild';
import { runPlanPage } from '../src/report/page/run-plan-page.js';

const root = fileURLToPath(new URL('..', import.meta.url));
const target = fileURLToPath(new URL('../src/report/page/plan-script.ts', import.meta.url));

/** Of the window only what the page asks for. */
const WINDOW =
  "{ isNarrow: matchMedia('(max-width: 640px)').matches, beforePrint: (call) => addEventListener('beforeprint', call) }";

/** The script as it is inlined: no text in it can end its element. */
export function planScriptText(): string {
  const { outputFiles } = buildSync({
    stdin: {
      contents: `import { ${runPlanPage.name} } from './src/report/page/run-plan-page.ts'; ${runPlanPage.name}(document, () => localStorage, ${WINDOW});`,
      resolveDir: root,
      loader: 'ts',
    },
    bundle: true,
    minify: true,
    format: 'iife',
    target: 'es2020',
    charset: 'ascii',
    write: false,
  });
  const [file] = outputFiles;
  if (file === undefined) throw new Error('esbuild gave no script');
  return file.text.trim().replaceAll('</', '<\\/');
}

/** The file that holds it. */
export function planScriptFile(): string {
  const literal = planScriptText().replaceAll('\\', '\\\\').replaceAll('`', '\\`').replaceAll('${', '\\${');
  return `/** The script of the plan's page, bundled from run-plan-page.ts: written by \`npm run plan-script\`, never by hand. */\nexport const planScript = \`${literal}\`;\n`;
}

if (realpathSync(process.argv[1] ?? '') === fileURLToPath(import.meta.url)) writeFileSync(target, planScriptFile());
