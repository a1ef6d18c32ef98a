import * as z from 'zod';
import { echoes, encodeDesign, parseCase } from '../json/index.js';
import type { Kind } from '../quantity/index.js';
import { designRepair } from '../repair/index.js';
import { calculationSheet } from '../report/index.js';
import { preferredUnit } from '../report/units.js';
import { readArguments } from './arguments.js';
import { exitCode } from './exit-code.js';
import type { Io } from './io.js';
import { readInput, reasonOf } from './read-input.js';
import { UsageError } from './usage-error.js';

// One case is read and the process ends: compiling the schema costs more than it saves.
z.config({ jitless: true });

const FORMATS = ['text', 'markdown', 'json'];

/** `hoopwright design CASE.json`: the whole design of a repair. */
export async function design(args: readonly string[], io: Io): Promise<number> {
  const { format, units, digits, positionals, own } = readArguments(args, { formats: FORMATS, own: ['out'] });
  const [path, ...others] = positionals;
  if (path === undefined || others.length > 0) {
    throw new UsageError('design needs one case file; hoopwright design - reads standard input');
  }
  const { case: repairCase, typed, lookUps } = parseCase(await readInput(path, io));
  const found = designRepair(repairCase, { record: true });
  const written = (as: string): string => {
    if (as === 'json') {
      const unit = (kind: Kind, name: string) => preferredUnit(kind, name, { system: units });
      return `${JSON.stringify(encodeDesign(found, { typed, lookUps, unit, digits }), null, 2)}\n`;
    }
    return calculationSheet(found, {
      format: as === 'markdown' ? 'markdown' : 'text',
      units,
      digits,
      typed: echoes(typed),
    });
  };
  if (own['out'] !== undefined) await save(own['out'], written(formatOf(own['out'], format)), io);
  io.out(written(format));
  return found.verdict === 'designed' ? exitCode.done : exitCode.noDesign;
}

/** The format that the name of a file asks for. */
function formatOf(path: string, otherwise: string): string {
  const formats: Readonly<Record<string, string>> = { md: 'markdown', markdown: 'markdown', json: 'json', txt: 'text' };
  return formats[/\.([a-z]+)$/iu.exec(path)?.[1]?.toLowerCase() ?? ''] ?? otherwise;
}

async function save(path: string, text: string, io: Io): Promise<void> {
  try {
    await io.write(path, text);
  } catch (error) {
    throw new UsageError(`${path} cannot be written: ${reasonOf(error)}`);
  }
}
