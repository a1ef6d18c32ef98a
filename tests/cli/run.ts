import { posix } from 'node:path';
import type { Io } from '../../src/cli/io.js';
import { main } from '../../src/cli/main.js';

/** What a run of the program left behind. */
export interface Run {
  readonly code: number;
  readonly out: string;
  readonly err: string;
  readonly written: ReadonlyMap<string, string>;
}

/** Runs the program in this process, on files that exist only here. */
export async function run(
  args: readonly string[],
  files: Readonly<Record<string, string>> = {},
  stdin = '',
): Promise<Run> {
  const out: string[] = [];
  const err: string[] = [];
  const written = new Map<string, string>();
  const io: Io = {
    out: (text) => void out.push(text),
    err: (text) => void err.push(text),
    read: async (path) => {
      const text = files[path];
      if (text === undefined) throw Object.assign(new Error(`open ${path}`), { code: 'ENOENT' });
      return text;
    },
    readStandardInput: async () => stdin,
    chunks: async function* (path) {
      const text = path === '-' ? stdin : files[path];
      if (text === undefined) throw Object.assign(new Error(`open ${path}`), { code: 'ENOENT', syscall: 'open' });
      for (let at = 0; at < text.length; at += 1000) yield text.slice(at, at + 1000);
    },
    drained: async () => undefined,
    write: async (path, text) => {
      if (path.startsWith('/closed/')) throw Object.assign(new Error(`open ${path}`), { code: 'EACCES' });
      written.set(path, text);
    },
    at: async (path) => {
      if (Object.hasOwn(files, path) || written.has(path)) return 'file';
      return Object.keys(files).some((each) => each.startsWith(`${path}/`)) ? 'folder' : 'nothing';
    },
    same: async (one, other) => posix.normalize(one) === posix.normalize(other),
  };
  const code = await main(args, io);
  return { code, out: out.join(''), err: err.join(''), written };
}
