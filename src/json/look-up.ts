import { isCalculationError } from '../formula/index.js';
import { allowableStress } from '../pipe/tables/allowable-stress.js';
import { linePipeGrade } from '../pipe/tables/line-pipe-grade.js';
import { pipeSize } from '../pipe/tables/pipe-size.js';
import { type Length, type Stress, type Temperature, writeQuantity } from '../quantity/index.js';
import type { LookedUp, PipeAsBuilt, PipeMaterial, RepairCase } from '../repair/case/case.js';
import { type CaseIssue, shown } from './case-error.js';
import { readConfirmed } from './confirmed.js';
import type { CaseDocument } from './document-table.js';
import type { TypedMap } from './typed.js';

/** How a looked-up allowable stress is called. */
const ALLOWABLE_STRESS = 'allowable stress of the pipe';

/** What a document asked of a table, and what the table answered. */
export interface LookUp {
  /** The fields that name the row, as they stand in the document. */
  readonly asked: readonly LookUpField[];
  /** The fields of the case that were filled from it; quantities in SI. */
  readonly filled: readonly LookUpField[];
}

/** One field of a look-up: where it stands, and what stands there. */
export interface LookUpField {
  /** Path in the document. */
  readonly path: string;
  /** What stands there. */
  readonly value: unknown;
}

/** What the look-ups of one document bring together. */
interface Findings {
  readonly lookUps: LookUp[];
  readonly values: LookedUp[];
  readonly issues: CaseIssue[];
  /** Sentences speak of a quantity as it was typed, where it was. */
  readonly typed: TypedMap;
}

type PipeDocument = CaseDocument['pipe'];
type MaterialDocument = PipeDocument['material'];

/** Fills in what a document takes from tables. Rows are only ever named by the document, none is picked for it. */
export function lookUp(
  document: CaseDocument,
  typed: TypedMap = new Map(),
): { case: RepairCase; lookUps: LookUp[]; issues: CaseIssue[]; typed: TypedMap } {
  const findings: Findings = { lookUps: [], values: [], issues: [], typed };
  const { pipe, service, confirmed, ...rest } = document;
  const { size, material: _, ...measured } = pipe;
  const material = materialOf(pipe.material, service.designTemperature, findings);
  const built: PipeAsBuilt = { ...measured, ...dimensionsOf(pipe, findings), material };
  const lookedUp = findings.values.length > 0 ? { lookedUp: findings.values } : {};
  const read = confirmed === undefined ? undefined : readConfirmed(confirmed);
  findings.issues.push(...(read?.issues ?? []));
  const withConfirmed = read === undefined ? lookedUp : { confirmed: read.confirmed, ...lookedUp };
  return {
    case: { ...rest, pipe: built, service, ...withConfirmed },
    lookUps: findings.lookUps,
    issues: findings.issues,
    typed: read === undefined ? typed : new Map([...typed, ...read.typed]),
  };
}

type Dimensions = Pick<PipeAsBuilt, 'wallThickness' | 'size'> & Partial<Pick<PipeAsBuilt, 'outsideDiameter'>>;

const NO_DIMENSIONS: Dimensions = { wallThickness: Number.NaN as Length };

function dimensionsOf(pipe: PipeDocument, findings: Findings): Dimensions {
  const { outsideDiameter, circumference, wallThickness, size } = pipe;
  const named = typeof size === 'object' ? size : undefined;
  const given = Object.entries({ outsideDiameter, circumference, size: named }).filter(
    ([, value]) => value !== undefined,
  );
  if (given.length !== 1) {
    const names = given.map(([name]) => name).join(' and ');
    const says = names === '' ? 'does not say how wide the pipe is' : `gives ${names}`;
    const expected = 'one of outsideDiameter, circumference and a size with its schedule';
    const example = { size: { nps: '8', schedule: '40' } };
    const message = `pipe ${says}; expected ${expected}, for example ${JSON.stringify(example)}`;
    findings.issues.push({ path: 'pipe', value: names, expected, example, message });
    return NO_DIMENSIONS;
  }
  if (named !== undefined) return dimensionsBySize(named, wallThickness, findings);
  if (wallThickness === undefined) {
    const expected = 'a length above 0 as text with a unit, or a size with its schedule in its place';
    const message = `pipe.wallThickness is missing; expected ${expected}, for example "8.18 mm"`;
    findings.issues.push({ path: 'pipe.wallThickness', value: undefined, expected, example: '8.18 mm', message });
    return NO_DIMENSIONS;
  }
  return { wallThickness, ...(typeof size === 'string' ? { size } : {}) };
}

function dimensionsBySize(
  asked: Exclude<PipeDocument['size'], string | undefined>,
  wallThickness: unknown,
  findings: Findings,
): Dimensions {
  if (wallThickness !== undefined) {
    const message = `pipe.wallThickness is given beside pipe.size (${shown(asked)}), which names the wall by its schedule; leave one of the two out`;
    findings.issues.push({ path: 'pipe.wallThickness', value: wallThickness, expected: 'the wall once', message });
    return NO_DIMENSIONS;
  }
  const found = attempt(findings, { nps: 'pipe.size.nps', dn: 'pipe.size.dn', schedule: 'pipe.size.schedule' }, () =>
    pipeSize(asked),
  );
  if (found === undefined) return NO_DIMENSIONS;
  const { nps, dn, schedule, standard, tag, outsideDiameter } = found;
  const label = `NPS ${nps} (DN ${dn}) schedule ${schedule}, ${standard}`;
  findings.lookUps.push({
    asked: [{ path: 'pipe.size', value: asked }],
    filled: [
      { path: 'pipe.outsideDiameter', value: outsideDiameter },
      { path: 'pipe.wallThickness', value: found.wallThickness },
      { path: 'pipe.size', value: label },
    ],
  });
  const because = `the case names ${label}`;
  findings.values.push(
    { name: 'outside diameter', kind: 'length', value: outsideDiameter, tag, because },
    { name: 'nominal wall', kind: 'length', value: found.wallThickness, tag, because },
  );
  return { outsideDiameter, wallThickness: found.wallThickness, size: label };
}

function materialOf(material: MaterialDocument, temperature: Temperature, findings: Findings): PipeMaterial {
  const { allowableStress: allowable, ...rest } = material;
  const strengths = 'grade' in rest ? strengthsByGrade(rest, findings) : rest;
  if (allowable === undefined) return strengths;
  if (typeof allowable === 'number') return { ...strengths, allowableStress: allowable };
  const found = allowableByRow(allowable, temperature, findings);
  return found === undefined ? strengths : { ...strengths, allowableStress: found };
}

type GradeDocument = Extract<MaterialDocument, { grade: string }>;

function strengthsByGrade(material: Omit<GradeDocument, 'allowableStress'>, findings: Findings): PipeMaterial {
  const { grade, edition, ...rest } = material;
  const found = attempt(findings, { grade: 'pipe.material.grade' }, () =>
    linePipeGrade(grade.replace(/^API\s*5L\s*/iu, ''), edition),
  );
  if (found === undefined) return { name: grade, yieldStrength: Number.NaN as Stress };
  const { yieldStrength, tensileStrength, tag } = found;
  const name = rest.name ?? `API 5L ${found.grade}, edition ${edition}`;
  findings.lookUps.push({
    asked: [
      { path: 'pipe.material.grade', value: grade },
      { path: 'pipe.material.edition', value: edition },
      ...(rest.name === undefined ? [] : [{ path: 'pipe.material.name', value: rest.name }]),
    ],
    filled: [
      { path: 'pipe.material.name', value: name },
      { path: 'pipe.material.yieldStrength', value: yieldStrength },
      { path: 'pipe.material.tensileStrength', value: tensileStrength },
    ],
  });
  const because = `the case names grade ${found.grade} of API 5L, edition ${edition}`;
  findings.values.push(
    { name: 'specified minimum yield strength', kind: 'stress', value: yieldStrength, tag, because },
    { name: 'specified minimum tensile strength', kind: 'stress', value: tensileStrength, tag, because },
  );
  return { ...rest, name, yieldStrength, tensileStrength };
}

interface AllowableRow {
  readonly row: string;
  readonly at?: Temperature | undefined;
}

function allowableByRow(asked: AllowableRow, design: Temperature, findings: Findings): Stress | undefined {
  const path = 'pipe.material.allowableStress';
  const at = asked.at ?? design;
  const designText = temperatureText(design, 'service.designTemperature', findings);
  const text = asked.at === undefined ? designText : temperatureText(asked.at, `${path}.at`, findings);
  if (at < design) {
    const expected = `at least the design temperature, ${designText}`;
    const message = `${path}.at is ${shown(text)}; it must be ${expected}, for example ${JSON.stringify(designText)}`;
    findings.issues.push({ path: `${path}.at`, value: text, expected, example: designText, message });
    return undefined;
  }
  const found = attempt(
    findings,
    { row: `${path}.row`, temperature: `${path}.at` },
    () => allowableStress(asked.row, at),
    text,
  );
  if (found === undefined) return undefined;
  findings.lookUps.push({ asked: [{ path, value: asked }], filled: [{ path, value: found.value }] });
  const note = found.note === undefined ? '' : ` ${found.note}`;
  findings.values.push({
    name: ALLOWABLE_STRESS,
    kind: 'stress',
    value: found.value,
    tag: found.tag,
    because: `the case names the row ${found.row} at ${text}.${note}`,
  });
  return found.value;
}

function temperatureText(temperature: Temperature, path: string, { typed }: Findings): string {
  return typed.get(path)?.text.trim() ?? writeQuantity('temperature', temperature, 'degC');
}

/** Asks a table; its refusal becomes an issue at the field that the refused parameter came from. */
function attempt<T>(
  findings: Findings,
  paths: Readonly<Record<string, string>>,
  ask: () => T,
  temperature?: string,
): T | undefined {
  try {
    return ask();
  } catch (error) {
    if (!isCalculationError(error)) throw error;
    const path = paths[error.parameter] ?? 'pipe';
    const typed = error.parameter === 'temperature' ? temperature : undefined;
    const value = typed ?? error.value;
    const source = typed === undefined ? '' : ', the design temperature where it is left out';
    const message = `${path} is ${shown(value)}${source}; ${error.constraint}`;
    findings.issues.push({ path, value, expected: error.constraint, message });
    return undefined;
  }
}
