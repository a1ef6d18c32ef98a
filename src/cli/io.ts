import { once } from 'node:events';
import { createReadStream, readFileSync } from 'node:fs';
import { exitCode } from './exit-code.js';
import { reasonOf } from './reason-of.js';
import { type At, isSameFile, standsAt, writeWhole } from './write-whole.js';

/** What the commands touch of the world outside; tests put their own in its place. */
export interface Io {
  out(text: string): void;
  err(text: string): void;
  /** Rejects with the error of the file system. */
  read(path: string): Promise<string>;
  readStandardInput(): Promise<string>;
  /** The text of a file piece by piece, of standard input for `-`; the iteration rejects with the error of the file system. */
  chunks(path: string): AsyncIterable<string>;
  /** When what was written has been taken. */
  drained(): Promise<void>;
  /** Writes a file, and the folders above it where they are missing; what stands there is replaced whole or not at all. */
  write(path: string, text: string): Promise<void>;
  at(path: string): Promise<At>;
  /** Whether two paths lead to one file. */
  same(one: string, other: string): Promise<boolean>;
}

/** A reader that has seen enough, such as `head`, closes the pipe; that is no error of anybody's. A full disk is one. */
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit();
  process.stderr.write(`The answer cannot be written: ${reasonOf(error)}\n`);
  process.exit(exitCode.badInput);
});

/** Where nobody can be told, the exit code is left to tell. */
process.stderr.on('error', () => undefined);

/** The process: its streams and its files. */
export const processIo: Io = {
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
  read: async (path) => readFileSync(path, 'utf8'),
  readStandardInput: async () => {
    let text = '';
    process.stdin.setEncoding('utf8');
    for await (const chunk of process.stdin) text += chunk;
    return text;
  },
  chunks: (path) => {
    if (path !== '-') return createReadStream(path, 'utf8');
    return process.stdin.setEncoding('utf8');
  },
  drained: async () => {
    if (process.stdout.writableNeedDrain) await once(process.stdout, 'drain');
  },
  write: writeWhole,
  at: standsAt,
  same: isSameFile,
};
