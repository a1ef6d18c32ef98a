import { type Kind, type Quantity, readQuantity } from '../quantity/index.js';
import {
  lessConservative,
  rankOf,
  type ScreeningOptions,
  type SurveyRow,
  screenRow,
  WorstRows,
} from '../survey/index.js';
import { readArguments } from './arguments.js';
import { assignmentsOf } from './assignments.js';
import { exitCode } from './exit-code.js';
import type { Io } from './io.js';
import { mayWrite, save } from './save.js';
import { type AnswerRow, rowWriter } from './survey-output.js';
import { pathsIn, surveyPictures } from './survey-pictures.js';
import { recordsOf } from './survey-records.js';
import { UsageError } from './usage-error.js';

/** Rows between two words of progress, and characters of the answer that are written in one go. */
const PROGRESS = 250_000;
const CHUNK = 65_536;

/** `hoopwright survey FILE.csv`: every row of a survey screened as it is read, so that memory does not grow with the file. */
export async function survey(args: readonly string[], io: Io): Promise<number> {
  const line = readArguments(args, {
    formats: ['csv', 'json'],
    own: ['factor', 'life', 'method', 'flow-stress', 'top', 'out'],
    flags: ['force'],
    strict: true,
  });
  const [path, ...assignments] = line.positionals;
  if (path === undefined || path.includes('='))
    throw new UsageError('survey needs one CSV file; hoopwright survey - reads standard input');
  const options = { ...optionsOf(line.own), strict: line.strict };
  const constants = assignmentsOf(assignments);
  const top = line.own['top'] === undefined ? undefined : topOf(line.own['top']);
  const { out } = line.own;
  if (line.flags.has('force') && out === undefined)
    throw new UsageError('--force replaces files that --out names; without --out it has no use');
  if (out !== undefined)
    await mayWrite(Object.values(pathsIn(out)), { input: path, force: line.flags.has('force') }, io);
  const pictures = out === undefined ? undefined : surveyPictures(out);
  const writer = rowWriter(line.format, line.units, line.digits ?? 4);
  const counts = { sound: 0, 'to check': 0, repair: 0, 'too deep': 0, refused: 0 };
  let unusual = 0;
  const worst = top === undefined ? undefined : new WorstRows<AnswerRow>(top);
  let text = writer.head;
  let rows = 0;
  const flush = async (): Promise<void> => {
    io.out(text);
    text = '';
    await io.drained();
  };
  const answer = (row: AnswerRow, given?: SurveyRow): void => {
    counts[row.found.status]++;
    if (row.found.unusual !== undefined) unusual++;
    rows++;
    pictures?.add(row, given);
    if (worst === undefined || given === undefined || row.found.status === 'refused') text += writer.write(row);
    else worst.add(rankOf(row.found, given.designPressure), row);
    if (rows % PROGRESS === 0) io.err(`${rows} rows\n`);
  };
  for await (const { reader, records } of recordsOf(path, constants, io)) {
    for (const { cells, line: at, problem } of records) {
      const id = reader.idOf(cells);
      const read = problem === undefined ? reader.read(cells) : { ok: false as const, because: problem };
      if (read.ok) answer({ line: at, id, found: screenRow(read.row, options) }, read.row);
      else answer({ line: at, id, found: { status: 'refused', because: read.because } });
      if (text.length > CHUNK) await flush();
    }
  }
  for (const row of worst?.inOrder() ?? []) {
    text += writer.write(row);
    if (text.length > CHUNK) await flush();
  }
  await flush();
  const { sound, repair, refused, 'too deep': deep, 'to check': check } = counts;
  io.err(
    `${rows} rows: ${sound} sound, ${check} to check, ${repair} to repair, ${deep} too deep for the methods, ${refused} refused\n`,
  );
  const warnings = warningsOf(unusual, options);
  for (const warning of warnings) io.err(`Warning: ${warning}\n`);
  if (pictures !== undefined) await save(pictures.files(counts, warnings, line), io);
  return refused > 0 ? exitCode.badInput : exitCode.done;
}

function warningsOf(unusual: number, options: ScreeningOptions): string[] {
  const rows =
    unusual === 1
      ? '1 row holds a value outside its usual span'
      : `${unusual} rows hold values outside their usual spans`;
  const said = unusual === 0 ? [] : [`${rows}, more often a slip of unit or factor than right; each says which.`];
  return [...said, ...lessConservative(options)];
}

function optionsOf(own: Readonly<Record<string, string | undefined>>): ScreeningOptions {
  const { factor, life, method } = own;
  const safetyFactor = Number(factor);
  if (factor === undefined || factor.trim() === '' || !(safetyFactor >= 1 && Number.isFinite(safetyFactor)))
    throw new UsageError(
      `--factor is ${given(factor)}; it is the failure pressure over the safe one, 1 or above, such as 1.39`,
    );
  if (life === undefined)
    throw new UsageError('--life is missing; it is how long the pipe shall serve, such as "10 year"');
  const flowStress = own['flow-stress'];
  return {
    safetyFactor,
    life: quantityOf('time', '--life', life),
    method: oneOf('method', method, ['lowest', 'original B31G', 'modified B31G']),
    flowStress: oneOf('flow-stress', flowStress, ['1.1 SMYS', 'SMYS + 69 MPa']),
  };
}

function oneOf<T extends string>(name: string, word: string | undefined, words: readonly T[]): T | undefined {
  const found = words.find((each) => each === word);
  if (word === undefined || found !== undefined) return found;
  throw new UsageError(`--${name} is "${word}"; it must be one of ${words.join(', ')}`);
}

function quantityOf<K extends Kind>(kind: K, name: string, text: string): Quantity<K> {
  const reading = readQuantity(kind, text);
  if (reading.ok) return reading.quantity;
  throw new UsageError(`${name}: ${reading.problem}`);
}

function topOf(text: string): number {
  if (/^[1-9]\d{0,6}$/u.test(text)) return Number(text);
  throw new UsageError(`--top is "${text}"; it must be a whole number from 1 to 9999999`);
}

function given(text: string | undefined): string {
  return text === undefined ? 'missing' : JSON.stringify(text);
}
