import { describe, expect, it } from 'vitest';
import { type CaseField, caseFields } from '../../src/json/index.js';
import type { RepairDesign } from '../../src/repair/index.js';
import { designOf } from '../faults/answers.js';
import { type CaseFile, leak, loss, type Paths, withPaths } from '../faults/cases.js';

const PARTS = [
  'found',
  'line',
  'seal',
  'laminate',
  'extent',
  'wrap',
  'cures',
  'mixes',
  'rolls',
  'acceptance',
  'timeline',
  'site',
] as const;

const partsOf = (design: RepairDesign) => PARTS.map((part) => design[part]);

const examples = [
  ['the leak', leak],
  ['the loss', loss],
] as const;

const fields = caseFields();

function stands(file: CaseFile, path: string): boolean {
  let held: unknown = file;
  for (const key of path.split('.')) held = (held as Record<string, unknown> | undefined)?.[key];
  return held !== undefined;
}

/** Optional fields of a case that have no field of their own below them, and those that the list marks. */
function optionalIn(file: CaseFile): CaseField[] {
  return fields.filter(
    ({ path, required, needed }) =>
      !required &&
      !path.includes('[]') &&
      stands(file, path) &&
      (needed !== undefined ||
        !fields.some((other) => other.needed !== undefined && other.path.startsWith(`${path}.`))),
  );
}

/** What waits for a field: nothing, the verdict alone, or a part of the design too. */
function waitingFor(file: CaseFile, path: string): CaseField['needed'] {
  const design = designOf(withPaths(file, { [path]: undefined }));
  if (design.verdict === 'designed') return undefined;
  expect([path, design.verdict]).toEqual([path, 'needs input']);
  return partsOf(design).includes(undefined) ? 'for numbers' : 'to sign';
}

/** All that a case holds and that only its signing waits for, taken away. */
function toScreen(file: CaseFile): CaseFile {
  const later = fields.filter(({ path, needed }) => needed === 'to sign' && stands(file, path));
  const none: Paths = Object.fromEntries(later.map(({ path }) => [path, undefined]));
  return withPaths(file, none);
}

describe('the fields that a case may leave out', () => {
  // A pipe is always given in one way or another; the doors hold that.
  const givenOnce = /^pipe\.(?:size|outsideDiameter|circumference|wallThickness|material\.name)$/u;

  it('are marked for what waits for them, and the others hold up nothing', () => {
    const found = new Map<string, Set<CaseField['needed']>>();
    for (const [, file] of examples) {
      for (const { path } of optionalIn(file)) {
        if (givenOnce.test(path)) continue;
        found.set(path, (found.get(path) ?? new Set()).add(waitingFor(file, path)));
      }
    }
    expect(found.size).toBeGreaterThan(40);
    for (const [path, waiting] of found) {
      // A case that has no use for a field does not wait for it.
      const needed = [...waiting].filter((each) => each !== undefined);
      const marked = fields.find((field) => field.path === path)?.needed;
      expect([path, needed]).toEqual([path, marked === undefined ? [] : [marked]]);
    }
    const unseen = fields.filter(({ path, needed }) => needed !== undefined && !found.has(path));
    expect(unseen.map(({ path }) => path)).toEqual([
      'pipe.cathodicProtection',
      'service.hazardsStatedBy',
      'service.cracking.test',
      'loads.freeSpan',
      'laminate.isolatingLayer',
      'laminate.lowestTemperature',
    ]);
  });

  it.each([
    ['service.hazardsStatedBy', { 'service.contents': 'hydrogen peroxide' }],
    ['service.cracking.test', { 'service.cracking': { environment: 'stress corrosion' } }],
    [
      'service.cracking.test',
      {
        'service.cracking': {
          environment: 'sour',
          test: { method: 'to follow', result: 'no crack found', date: '2026-03-12' },
        },
      },
    ],
    ['laminate.isolatingLayer', { 'laminate.fibre': 'carbon' }],
    ['laminate.isolatingLayer', { 'laminate.fibre': 'carbon', 'laminate.isolatingLayer': 'none' }],
    ['loads.freeSpan', { 'loads.axialForce': '-5 kN' }],
    ['laminate.lowestTemperature', { 'service.lowestTemperature': '-10 degC' }],
  ])('keep the numbers without %s where the case asks for it: %j', (field, changes) => {
    const design = designOf(withPaths(loss, changes));
    expect([design.verdict, design.missing.map((each) => each.field)]).toEqual(['needs input', [field]]);
    expect(partsOf(design)).not.toContain(undefined);
  });
});

describe('a first screening', () => {
  it.each(examples)('of %s has every number of the design to sign, and the list of what is open', (_, file) => {
    const whole = designOf(file);
    const screened = designOf(toScreen(file));
    expect([whole.verdict, screened.verdict]).toEqual(['designed', 'needs input']);
    expect(screened.missing.length).toBeGreaterThan(6);
    for (const { why, askWhom } of screened.missing) expect([why, askWhom]).not.toContain('');
    // The site gate and the plan read nothing of it either.
    expect(partsOf(screened)).toEqual(partsOf(whole));
  });
});
