import { checkHandCalculation, checkSheet, type SheetCheck } from '../evaluate/check/index.js';
import { type CommandLine, readArguments } from './arguments.js';
import { readClaims } from './claims.js';
import { readAssignments } from './evaluate.js';
import { exitCode } from './exit-code.js';
import type { Io } from './io.js';
import { oneCase } from './one-case.js';
import { readInput } from './read-input.js';
import { UsageError } from './usage-error.js';

/**
 * `hoopwright check FORMULA name="value unit" ... --claimed "38.4 MPa"`: whether a hand calculation is right, else which slip;
 * `hoopwright check CASE.json --claims FILE`: which step of a whole sheet departs first.
 */
export async function check(args: readonly string[], io: Io): Promise<number> {
  const line = readArguments(args, { formats: ['text', 'json'], own: ['claimed', 'claims'] });
  const { format, positionals, own } = line;
  if (own['claims'] !== undefined) return checkWholeSheet(line, own['claims'], io);
  const [id, ...assignments] = positionals;
  const claimed = own['claimed'];
  if (id === undefined || id.includes('='))
    throw new UsageError('check needs the id of a formula, such as pipe/hoop-stress; hoopwright formulas lists them');
  if (claimed === undefined) throw new UsageError('check needs the result to be checked: --claimed "38.4 MPa"');
  const found = checkHandCalculation(id, await readAssignments(assignments, io), claimed);
  io.out(format === 'json' ? `${JSON.stringify(found, null, 2)}\n` : `${found.message}\n`);
  return found.agrees ? exitCode.done : exitCode.noDesign;
}

async function checkWholeSheet(
  { format, units, positionals, own }: CommandLine,
  claims: string,
  io: Io,
): Promise<number> {
  if (own['claimed'] !== undefined)
    throw new UsageError(
      '--claimed is the result of one formula and --claims those of a whole sheet; give one of them',
    );
  const text = await oneCase('check', positionals, io);
  const claimed = readClaims(await readInput(claims, io));
  const [{ parseCase }, { designRepair }] = await Promise.all([
    import('../json/decode-case.js'),
    import('../repair/index.js'),
  ]);
  const found = checkSheet(designRepair(parseCase(text).case, { record: true }), claimed, { units });
  io.out(format === 'json' ? `${JSON.stringify(found, null, 2)}\n` : written(found));
  return found.departs === undefined ? exitCode.done : exitCode.noDesign;
}

function written({ agreed, message }: SheetCheck): string {
  const lines = agreed.map(({ step, title, message: each, carried }) => {
    const from = carried.length === 0 ? '' : ` Worked on from the rounded results of ${carried.join(', ')}.`;
    return `${step}  ${title}: ${each}${from}\n`;
  });
  return `${lines.join('')}${message}\n`;
}
