import { spawnSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { seeded } from '../oracles/random.js';
import { budgets } from './budgets.js';
import { leastInFreshProcesses } from './fresh-process.js';
import type { Row } from './row.js';

const ROWS = 1_000_000;
const ROUNDS = 3;
const root = fileURLToPath(new URL('../../', import.meta.url));
const file = `${root}build/bench-survey.csv`;

const asked = [
  ...['dist/cli.cjs', 'survey', file, 'yieldStrength=359 MPa', 'designPressure=100 bar', 'depthRate=0.1 mm/year'],
  ...['lengthRate=0 mm/year', '--factor', '1.39', '--life', '10 year', '--top', '1000'],
];

/** A file of losses to its ranked list: the command as people run it, its start included, against a loop by hand. */
export function surveyFileRows(say: (what: string) => void): Row[] {
  writeRows();
  let [command, hand] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (let round = 1; round <= ROUNDS; round++) {
    say(`round ${round} of ${ROUNDS}`);
    hand = Math.min(hand, leastInFreshProcesses('survey by hand', file, 1)['time'] ?? Number.NaN);
    command = Math.min(command, commandTime());
  }
  const perRow = (time: number): string => `${(time / ROWS / 1000).toFixed(2)} us a row`;
  const note = `${perRow(command)}; by hand ${perRow(hand)}`;
  return [
    { what: `a survey of ${ROWS} rows, ranked`, measured: command / hand, unit: 'x', budget: budgets.survey, note },
  ];
}

function writeRows(): void {
  const random = seeded('bench survey');
  const rows = ['id,outsideDiameter [mm],wallThickness [mm],defectDepth [mm],defectLength [mm]'];
  for (let row = 0; row < ROWS; row++)
    rows.push(`L${row},323.9,9.53,${(1 + 6 * random()).toFixed(2)},${(20 + 380 * random()).toFixed(0)}`);
  mkdirSync(`${root}build`, { recursive: true });
  writeFileSync(file, `${rows.join('\n')}\n`);
}

function commandTime(): number {
  const start = process.hrtime.bigint();
  const { status, stdout } = spawnSync(process.execPath, asked, { cwd: root, encoding: 'utf8', maxBuffer: 1e8 });
  const lines = stdout.split('\n').length;
  if (status !== 0 || lines < 1000) throw new Error(`the survey ended with ${status} after ${lines} lines`);
  return Number(process.hrtime.bigint() - start);
}
