import { execFileSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { launchChromium } from '../../tests/browser/chromium.js';
import type { Answer } from './answers.js';
import { engineCalls } from './calls.js';
import { difference } from './compare.js';
import { type EnginesSummary, enginesSummaryPath } from './summary.js';

/**
 * The same calls in every engine: this Node, those of the versions below (each fetched as the package `node`), and Chromium.
 * `npm run engines` writes what differs.
 */

const VERSIONS = [22, 24];

const folder = new URL('../../build/engines/', import.meta.url);
mkdirSync(folder, { recursive: true });
const { outputFiles } = await build({
  entryPoints: [fileURLToPath(new URL('answers.ts', import.meta.url))],
  bundle: true,
  format: 'iife',
  write: false,
  logLevel: 'error',
});
const script = outputFiles[0]?.text ?? '';
const calls = engineCalls();
// As text and back, since that is what each engine reads: what JSON cannot hold, none of them is given.
const given = JSON.stringify(calls);
const file = fileURLToPath(new URL('answers.cjs', folder));
writeFileSync(
  file,
  `${script}\nprocess.stdout.write(JSON.stringify({ v8: process.versions.v8, node: process.version, answers: answersOf(${given}) }));\n`,
);

interface Run {
  readonly engine: string;
  readonly answers: readonly Answer[];
}

function inNode(command: string, args: readonly string[]): Run {
  const text = execFileSync(command, [...args, file], { encoding: 'utf8', maxBuffer: 1e9 });
  const { node, v8, answers } = JSON.parse(text) as { node: string; v8: string; answers: Answer[] };
  return { engine: `Node ${node.slice(1)}, V8 ${v8}`, answers };
}

async function inChromium(): Promise<Run> {
  const browser = await launchChromium();
  const page = await browser.newPage();
  await page.addScriptTag({ content: script });
  const text = await page.evaluate(
    (asked) =>
      JSON.stringify(
        (globalThis as unknown as { answersOf: (calls: unknown) => unknown }).answersOf(JSON.parse(asked)),
      ),
    given,
  );
  const engine = `Chromium ${browser.version()}`;
  await browser.close();
  return { engine, answers: JSON.parse(text) };
}

const here = inNode(process.execPath, []);
const others = [
  ...VERSIONS.map((version) => inNode('npx', ['--yes', '--package', `node@${version}`, 'node'])),
  await inChromium(),
];
const summary: EnginesSummary = {
  calls: calls.length,
  formulas: new Set(calls.map(({ formula }) => formula)).size,
  against: here.engine,
  engines: others.map(({ engine, answers }) => ({ engine, ...difference(calls, here.answers, answers) })),
};
writeFileSync(enginesSummaryPath, `${JSON.stringify(summary, undefined, 2)}\n`);
for (const { engine, numbers, different, otherwise, byFormula } of summary.engines)
  console.log(
    `${engine}: ${different} of ${numbers} numbers differ, at most by ${Math.max(0, ...Object.values(byFormula))} units in the last place; other answers: ${otherwise.join(', ') || 'none'}`,
  );
process.exitCode = summary.engines.some(({ otherwise }) => otherwise.length > 0) ? 1 : 0;
