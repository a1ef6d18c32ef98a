import type { HandCheck } from '../evaluate/check/index.js';
import { computed } from '../evaluate/computed.js';
import type { AnyFormula } from '../formula/index.js';
import { mainOutput } from '../formula/outputs.js';
import { CaseError, type CaseIssue } from '../json/case-error.js';
import { decodeFormulaInput, type FormulaInput } from '../json/formula-input.js';
import { parseRows } from '../json/rows.js';
import { echo, isAmbiguous } from '../json/typed.js';
import { type UnitPreferences, unitOf, units as unitTables } from '../quantity/index.js';
import { isKind } from '../quantity/units/index.js';
import { withinOwnSpans } from '../registry/input-spans.js';
import { stepBlocks } from '../report/step.js';
import { toText } from '../report/text.js';
import { readArguments } from './arguments.js';
import { assignmentsOf } from './assignments.js';
import { exitCode } from './exit-code.js';
import type { Io } from './io.js';
import { loadFormula } from './load-formula.js';
import { readInput } from './read-input.js';
import { UsageError } from './usage-error.js';

/** `hoopwright evaluate FORMULA name="value unit" ...`: one formula with its substituted step. */
export async function evaluate(args: readonly string[], io: Io): Promise<number> {
  const { format, units, digits, positionals, own, strict } = readArguments(args, {
    formats: ['text', 'json'],
    own: ['unit', 'compare'],
    strict: true,
  });
  const [id, ...assignments] = positionals;
  const formula = await formulaOf(id);
  const texts = await readAssignments(assignments, io);
  const given = decodeFormulaInput(formula, texts);
  const unusual = await unusualIn(formula, given);
  if (strict && unusual.length > 0) throw new CaseError(unusual);
  const preferences = { system: units, names: wantedUnit(formula, own['unit']) };
  const result = computed(formula, given);
  const recorded = { sort: 'step', formula: formula.id, input: given.input, result } as const;
  const step = toText(stepBlocks(formula, recorded, { typed: given.typed, units: preferences, digits }));
  const compared = await comparedWith(formula.id, texts, own['compare']);
  if (format === 'json') {
    const { encodeEvaluation } = await import('../json/encode-evaluation.js');
    const answer = encodeEvaluation(formula, given, result, step, { units: preferences, digits });
    io.out(`${JSON.stringify(compared === undefined ? answer : { ...answer, compared }, null, 2)}\n`);
  } else {
    io.out(step + readAs(given) + unusual.map(({ message }) => `\nWarning: ${message}\n`).join('') + saidOf(compared));
  }
  return compared?.agrees === false ? exitCode.noDesign : exitCode.done;
}

/** What looks like a slip; the other formulas are loaded where this one does not say that all is usual. */
async function unusualIn(formula: AnyFormula, given: FormulaInput): Promise<CaseIssue[]> {
  if (withinOwnSpans(formula, given.input)) return [];
  const { unusualInputs } = await import('../json/unusual-inputs.js');
  return unusualInputs(formula, given);
}

/** Whether a claim agrees; what it takes to say so is loaded for those who claim something. */
async function comparedWith(
  id: string,
  texts: Readonly<Record<string, unknown>>,
  claimed: string | undefined,
): Promise<HandCheck | undefined> {
  if (claimed === undefined) return undefined;
  const { checkHandCalculation } = await import('../evaluate/check/index.js');
  return checkHandCalculation(id, texts, claimed);
}

function saidOf(compared: HandCheck | undefined): string {
  return compared === undefined ? '' : `\nCompared: ${compared.message}\n`;
}

function formulaOf(id: string | undefined): Promise<AnyFormula> {
  if (id === undefined || id.includes('=')) {
    throw new UsageError(
      'evaluate needs the id of a formula, such as pipe/hoop-stress; hoopwright formulas lists them',
    );
  }
  return loadFormula(id);
}

/** `name=text` pairs; `name=@FILE` is the rows of a file. */
export async function readAssignments(assignments: readonly string[], io: Io): Promise<Record<string, unknown>> {
  const given: Record<string, unknown> = Object.create(null);
  for (const [name, text] of Object.entries(assignmentsOf(assignments)))
    given[name] = await valueOfText(name, text, io);
  return given;
}

async function valueOfText(name: string, text: string, io: Io): Promise<unknown> {
  if (text.startsWith('@')) return parseRows(await readInput(text.slice(1), io), name);
  return text.trimStart().startsWith('[') ? parseRows(text, name) : text;
}

/** The unit of the main result, checked against its kind. */
function wantedUnit(formula: AnyFormula, unit: string | undefined): UnitPreferences['names'] {
  if (unit === undefined) return undefined;
  const {
    member: name = 'result',
    declared: { kind },
  } = mainOutput(formula);
  if (!isKind(kind))
    throw new UsageError(`--unit is "${unit}"; the result of ${formula.id} is a ${kind} without a unit`);
  if (unitOf(kind, unit) !== undefined) return { [name]: unit };
  const symbols = Object.keys(unitTables[kind]).join(', ');
  throw new UsageError(`--unit is "${unit}"; the result of ${formula.id} is a ${kind}, which is written in ${symbols}`);
}

/** What a bare psi or bar was taken for. */
function readAs({ typed }: FormulaInput): string {
  const entries = Object.entries(typed).filter(([, entry]) => isAmbiguous(entry));
  if (entries.length === 0) return '';
  return `\nRead as: ${entries.map(([name, entry]) => `${name} ${echo(entry)}`).join(', ')}\n`;
}
