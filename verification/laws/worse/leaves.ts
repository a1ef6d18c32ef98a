import type { RepairCase } from '../../../src/repair/index.js';
import { withPaths } from '../../../tests/faults/cases.js';

/** Paths of all numbers of a case. */
function leavesOf(value: unknown, path: string): string[] {
  if (typeof value === 'number') return [path];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => leavesOf(inner, path === '' ? key : `${path}.${key}`));
}

/** The case with one of its numbers replaced, picked by the digits of a factor. */
export function inLeaf(base: RepairCase, factor: number, value: number): RepairCase {
  const leaves = leavesOf(base, '');
  const path = leaves[Math.floor(factor * 1e6) % leaves.length] ?? '';
  return withPaths(base, { [path]: value });
}
