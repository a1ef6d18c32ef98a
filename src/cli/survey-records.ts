import { Parser } from 'csv-parse';
import type { Io } from './io.js';
import { reasonOf } from './reason-of.js';
import { type SurveyReader, surveyReader } from './survey-columns.js';
import { UsageError } from './usage-error.js';

/** A record of the file, with the line on which it ends. */
interface CsvRecord {
  readonly cells: readonly string[];
  readonly line: number;
  /** Why it cannot be read. */
  readonly problem?: string | undefined;
}

/** The records that one piece of the file completes, in its order, and how they are read. */
interface CsvRecords {
  readonly reader: SurveyReader;
  readonly records: readonly CsvRecord[];
}

/** The records behind the header, piece by piece of the file; also those that the parser refuses. */
export async function* recordsOf(
  path: string,
  constants: Readonly<Record<string, string>>,
  io: Io,
): AsyncGenerator<CsvRecords> {
  let reader: SurveyReader | undefined;
  try {
    const chunks = io.chunks(path)[Symbol.asyncIterator]();
    const first = await firstLines(chunks);
    const parser = new RecordParser(markOf(first));
    for (let text: string | undefined = first; text !== undefined; text = await nextOf(chunks)) {
      await parser.feed(text);
      reader ??= readerOf(parser, constants, io);
      if (reader !== undefined) yield { reader, records: parser.records.splice(0) };
    }
    await parser.finish();
    reader ??= readerOf(parser, constants, io);
    if (reader !== undefined) yield { reader, records: parser.records.splice(0) };
  } catch (error) {
    if (error instanceof Error && 'syscall' in error)
      throw new UsageError(`${path} cannot be read: ${reasonOf(error)}`);
    if (error instanceof Error && 'code' in error && String(error.code).startsWith('CSV_'))
      throw new UsageError(`${path} is no CSV table: ${error.message}`);
    throw error;
  }
  if (reader === undefined)
    throw new UsageError(`${path} is empty; its first line is a header such as "defectDepth [mm]"`);
}

/** A quote that is not closed swallows the rows behind it: they must not go in silence. */
const SEVERAL_LINES =
  'a cell runs over several lines: a quote is not closed, or rows stand inside it; write each row on one line';

/** Characters of a row. */
const LONGEST = 100_000;
const ENDLESS = `of the file is in a row of more than ${LONGEST} characters: a quote is not closed, or it is no table. Nothing behind it can be read; mend it and screen the whole file again`;

/**
 * Lays records aside as they are read, each with its line. Asked for the line, the parser would describe each record in full,
 * and handing them on one by one costs as much as screening them.
 */
class RecordParser extends Parser {
  readonly records: CsvRecord[] = [];

  constructor(delimiter: string) {
    super({
      bom: true,
      delimiter,
      relax_column_count: true,
      relax_quotes: true,
      skip_empty_lines: true,
      max_record_size: LONGEST,
      skip_records_with_error: true,
      on_skip: (error) => {
        if (error === undefined) return;
        const line = 'lines' in error ? Number(error['lines']) : 0;
        // The parser would go on without what is left of the piece, and of each piece behind it.
        if (error.code === 'CSV_MAX_RECORD_SIZE') throw new UsageError(`line ${line} ${ENDLESS}`);
        this.records.push({ cells: [], line, problem: error.message });
      },
    });
    // Whoever gave the piece is told.
    this.on('error', () => undefined);
  }

  override push(cells: readonly string[] | null): boolean {
    if (cells === null) return super.push(null);
    const problem = cells.some((cell) => /[\r\n]/u.test(cell)) ? SEVERAL_LINES : undefined;
    this.records.push({ cells, line: this.info.lines, problem });
    return true;
  }

  feed(text: string): Promise<void> {
    return new Promise((resolve, reject) => {
      this.write(text, (error) => (error ? reject(error) : resolve()));
    });
  }

  finish(): Promise<void> {
    return new Promise((resolve, reject) => {
      this.end((error?: Error | null) => (error ? reject(error) : resolve()));
    });
  }
}

/** By the first record that has cells: one that the parser refuses has none. */
function readerOf(
  { records }: RecordParser,
  constants: Readonly<Record<string, string>>,
  io: Io,
): SurveyReader | undefined {
  const at = records.findIndex(({ cells }) => cells.length > 0);
  const [header] = at < 0 ? [] : records.splice(at, 1);
  if (header === undefined) return undefined;
  const reader = surveyReader(header.cells, constants);
  if (reader.unused.length > 0) io.err(`Not used: ${reader.unused.join(', ')}\n`);
  return reader;
}

/** The beginning of a file with its first line whole. */
async function firstLines(chunks: AsyncIterator<string>): Promise<string> {
  let text = '';
  while (!text.includes('\n') && text.length < 100_000) {
    const next = await nextOf(chunks);
    if (next === undefined) break;
    text += next;
  }
  return text;
}

async function nextOf(chunks: AsyncIterator<string>): Promise<string | undefined> {
  const { value, done } = await chunks.next();
  return done === true ? undefined : value;
}

/** The mark of the header divides the whole file. */
function markOf(text: string): string {
  const header = text.split('\n', 1)[0] ?? '';
  return [';', '\t'].find((mark) => header.includes(mark)) ?? ',';
}
