import { checkHandCalculation } from '../evaluate/check/index.js';
import { readArguments } from './arguments.js';
import { readAssignments } from './evaluate.js';
import { exitCode } from './exit-code.js';
import type { Io } from './io.js';
import { UsageError } from './usage-error.js';

/** `hoopwright check FORMULA name="value unit" ... --claimed "38.4 MPa"`: whether a hand calculation is right, else which slip. */
export async function check(args: readonly string[], io: Io): Promise<number> {
  const { format, positionals, own } = readArguments(args, { formats: ['text', 'json'], own: ['claimed'] });
  const [id, ...assignments] = positionals;
  const claimed = own['claimed'];
  if (id === undefined || id.includes('='))
    throw new UsageError('check needs the id of a formula, such as pipe/hoop-stress; hoopwright formulas lists them');
  if (claimed === undefined) throw new UsageError('check needs the result to be checked: --claimed "38.4 MPa"');
  const found = checkHandCalculation(id, await readAssignments(assignments, io), claimed);
  io.out(format === 'json' ? `${JSON.stringify(found, null, 2)}\n` : `${found.message}\n`);
  return found.agrees ? exitCode.done : exitCode.noDesign;
}
