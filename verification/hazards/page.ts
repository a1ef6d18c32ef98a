import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { Hazard } from './hazard.js';
import { hazardLog } from './log.js';

/** The hazard log as a page of the documentation. */

const cell = (text: string): string =>
  text.replaceAll('|', '\\|').replaceAll('<', '&lt;').replaceAll('*', '\\*').replaceAll('_', '\\_');

/** Where the guards stand, a file once. */
function guardsOf({ guards }: Hazard): string {
  const files = [...new Set(guards.map((key) => key.slice(0, key.indexOf(': '))))];
  const inFile = (file: string): string => {
    const { length } = guards.filter((key) => key.startsWith(`${file}: `));
    return length === 1 ? `\`${file}\`` : `\`${file}\` (${length})`;
  };
  return files.map(inFile).join(', ');
}

/** The tests by their names, without their files. */
function testsOf({ tests }: Hazard): string {
  return tests.map((test) => cell(test.slice(test.indexOf(': ') + 2))).join('; ');
}

export function hazardPage(): string {
  const rows = hazardLog.reduce((sum, { hazards }) => sum + hazards.length, 0);
  const guards = hazardLog.flatMap(({ hazards }) => hazards.flatMap((hazard) => hazard.guards)).length;
  const parts = hazardLog.map(({ part, hazards }) =>
    [
      `## ${part}`,
      '',
      '| what could go wrong | what it would do | guards, in `src/repair` | shown by |',
      '| --- | --- | --- | --- |',
      ...hazards.map(
        (hazard) => `| ${[cell(hazard.could), cell(hazard.would), guardsOf(hazard), testsOf(hazard)].join(' | ')} |`,
      ),
      '',
    ].join('\n'),
  );
  const text = `# Hazard log

What could go wrong with a repair that this library designs, what it would do, the guard against it, and the test that shows
the guard: ${rows} hazards, ${guards} guards. A guard is a place in the job that refuses, asks, warns, stops or fails a
record, or one half of a condition that such a place hangs on. Guards are found in the syntax tree of the job, so that none is
left out; each stands in one row. The log is executed with the tests: every guard is switched off in turn, and a test of its
row goes red.

It covers what a case can state. What no case can state (a crew that skips a step, a gauge that lies) is in the plan of the
work as hold points, each with a blank and a stop.

${parts.join('\n')}`;
  // biome sets the columns of a table as it does everywhere else.
  return execFileSync('node_modules/.bin/biome', ['format', '--stdin-file-path=docs/hazards.md'], {
    input: text,
    cwd: fileURLToPath(new URL('../..', import.meta.url)),
    encoding: 'utf8',
  });
}
