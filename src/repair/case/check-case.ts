import { refuse } from '../../formula/index.js';
import { type Amount, siSymbol } from '../../quantity/index.js';
import { seen } from '../../quantity/plain-text.js';
import { admitWhole, type Door, type Problem } from './admit.js';
import type { RepairCase } from './case.js';
import type { Contradiction } from './contradiction.js';
import { contradictions } from './contradictions.js';
import { boundsInWords, expectedOf } from './expected.js';
import { valueAt, writtenPlace } from './place.js';
import { caseTable } from './table.js';
import type { AmountField, Field, Span } from './table-field.js';

/** A number of a case that lies outside the usual span of its field. */
export interface Unusual {
  readonly path: string;
  readonly kind: AmountField['kind'];
  readonly value: number;
  readonly usual: Span;
}

/**
 * The typed door: a copy of a case that holds only what a case may hold. What is missing, unknown, of another kind or
 * outside its bounds is refused, and so are fields that contradict each other. The copy shares nothing with what came in,
 * so later edits of it change nothing.
 *
 * @param unusual is told each number that may be right and lies outside the usual span of its field
 * @throws CalculationError `invalid-input`, which names the field by its path in the case
 */
export function checkCase(given: RepairCase, unusual: Unusual[] = []): RepairCase {
  const typedDoor: Door = {
    read: (_, value) => value,
    report: refuseField,
    unusual: (kind, usual, value, place) => unusual.push({ path: writtenPlace(place), kind, value, usual }),
  };
  const repairCase = admitWhole(typedDoor, caseTable, given) as RepairCase;
  contradictions(repairCase, (found) => refuseContradiction(found, repairCase));
  return repairCase;
}

function refuseField(problem: Problem): never {
  const parameter = writtenPlace(problem.place) || 'the case';
  switch (problem.sort) {
    case 'missing':
      return invalid(parameter, undefined, '', `must be ${inWords(problem.field)}`);
    case 'unknown': {
      const names = Object.keys(problem.fields).join(', ') || 'nothing more';
      return invalid(
        parameter,
        problem.value,
        '',
        `must be left out: no such field is known there, which holds ${names}`,
      );
    }
    case 'unfit':
      return invalid(parameter, problem.value, '', `must be ${inWords(problem.field)}`);
    case 'outside':
      return invalid(parameter, problem.value, siUnitOf(problem.field.kind), `must be ${boundsInWords(problem.field)}`);
  }
}

function refuseContradiction({ path, must: { text, amounts = [] } }: Contradiction, repairCase: RepairCase): never {
  const must = text.replaceAll(/\{(\d)\}/gu, (_, index: string) => {
    const { kind, value } = amounts[Number(index)] as Amount;
    return `${value} ${siUnitOf(kind)}`.trimEnd();
  });
  const [limit] = amounts;
  invalid(path, valueAt(repairCase, path), limit === undefined ? '' : siUnitOf(limit.kind), `must ${must}`);
}

function inWords(field: Field): string {
  return expectedOf(field, (kind) => `in ${siSymbol(kind)}`);
}

/** The unit in which refusals speak of a number of the case; none of a plain number. */
export function siUnitOf(kind: Amount['kind']): string {
  return kind === 'number' || kind === 'count' ? '' : siSymbol(kind);
}

function invalid(parameter: string, value: unknown, unit: string, constraint: string): never {
  refuse({ code: 'invalid-input', parameter, value: shown(value), unit, constraint });
}

/** Text in quotes; objects and the like have no text of their own to show in a sentence. */
function shown(value: unknown): unknown {
  if (value === undefined) return 'missing';
  if (typeof value === 'string') return seen(JSON.stringify(value));
  if (typeof value === 'number' || typeof value === 'boolean' || value === null) return value;
  return Array.isArray(value) ? 'a list' : `of type ${typeof value}`;
}
