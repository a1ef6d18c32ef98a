import { type ParseArgsConfig, parseArgs } from 'node:util';
import { nearMiss } from '../json/near-miss.js';
import { UsageError } from './usage-error.js';

/** The options that every command takes. */
interface CommonOptions {
  readonly format: string;
  readonly units: 'si' | 'us';
  readonly digits: number | undefined;
}

export interface CommandLine extends CommonOptions {
  readonly positionals: readonly string[];
  /** Options of the one command. */
  readonly own: Readonly<Record<string, string | undefined>>;
  /** Whether what looks like a slip is refused. */
  readonly strict: boolean;
  /** Which of the command's own options without a value were given. */
  readonly flags: ReadonlySet<string>;
  /** Which options stand on the line at all. */
  readonly given: ReadonlySet<string>;
}

/** What a command takes: the formats it can print, the first by default, and the names of its own options. */
export interface Takes {
  readonly formats: readonly string[];
  readonly own?: readonly string[];
  /** Whether the command can be told to be strict. */
  readonly strict?: true;
  /** Options of its own that take no value. */
  readonly flags?: readonly string[];
}

/** Reads the arguments of a command. @throws UsageError */
export function readArguments(args: readonly string[], { formats, own = [], strict, flags = [] }: Takes): CommandLine {
  const bare = strict === true ? ['strict', ...flags] : flags;
  const names = ['format', 'units', 'digits', ...own, ...bare];
  const options = Object.fromEntries(
    names.map((name) => [name, { type: bare.includes(name) ? 'boolean' : 'string' }]),
  ) as ParseArgsConfig['options'];
  const { values, positionals } = parsed({ args: [...args], options: options ?? {}, allowPositionals: true }, names);
  return {
    format: oneOf('format', values['format'] ?? formats[0], formats),
    units: oneOf('units', values['units'] ?? 'si', ['si', 'us'] as const),
    digits: values['digits'] === undefined ? undefined : digitsOf(values['digits']),
    positionals,
    own: Object.fromEntries(own.map((name) => [name, values[name]])),
    strict: values['strict'] !== undefined,
    flags: new Set(flags.filter((name) => values[name] !== undefined)),
    given: new Set(names.filter((name) => values[name] !== undefined)),
  };
}

function parsed(config: ParseArgsConfig, names: readonly string[]) {
  try {
    const { values, positionals, tokens } = parseArgs({ ...config, tokens: true });
    refuseRepeated(tokens.flatMap((token) => (token.kind === 'option' ? [token.name] : [])));
    return { values: values as Readonly<Record<string, string | undefined>>, positionals };
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : '';
    if (!(error instanceof Error) || !code.startsWith('ERR_PARSE_ARGS')) throw error;
    const [first = ''] = error.message.split('. ');
    const option = /'--([^'=\s]+)/u.exec(first)?.[1];
    const near = option === undefined || names.includes(option) ? undefined : nearMiss(option, names);
    const hint = near === undefined ? '' : `; did you mean --${near}?`;
    const all = names.map((name) => `--${name}`).join(', ');
    throw new UsageError(`${first.replace(/\.$/u, '')}${hint}; the options are ${all}`);
  }
}

/** Of two values of one option the parser would keep the last in silence. */
function refuseRepeated(given: readonly string[]): void {
  const twice = given.find((name, index) => given.indexOf(name) !== index);
  if (twice !== undefined) throw new UsageError(`--${twice} is given twice; give each option once`);
}

function oneOf<T extends string>(name: string, word: string | undefined, words: readonly T[]): T {
  const found = words.find((each) => each === word);
  if (found !== undefined) return found;
  throw new UsageError(`--${name} is "${word}"; it must be one of ${words.join(', ')}`);
}

function digitsOf(text: string): number {
  const digits = Number(text);
  if (/^\d+$/u.test(text) && digits >= 2 && digits <= 15) return digits;
  throw new UsageError(`--digits is "${text}"; it must be a whole number from 2 to 15`);
}
