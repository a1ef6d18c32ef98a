import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Control } from '../../docs/worksheet/case/control.js';
import { controlsOf } from '../../docs/worksheet/case/controls.js';
import { parts } from '../../docs/worksheet/case/parts.js';
import { put } from '../../docs/worksheet/case/places.js';
import { writtenAmount, writtenChoice, writtenText, writtenTicks } from '../../docs/worksheet/case/written.js';
import { documentTable } from '../../src/json/document-table.js';
import { caseFields } from '../../src/json/index.js';
import { valueAt } from '../../src/repair/case/place.js';
import type { Fields } from '../../src/repair/case/table-field.js';
import { exampleDocument, exampleNames } from '../json/examples.js';

const table: Fields = documentTable;

/** Every control of a form, those inside others too. */
function allOf(controls: readonly Control[]): Control[] {
  return controls.flatMap((control) => {
    if (control.sort === 'ways' || control.sort === 'group') return [control, ...allOf(control.inside)];
    if (control.sort === 'rows') return [control, ...control.rows.flatMap(allOf)];
    return [control];
  });
}

/** What a control writes when what it shows is entered again. */
function writtenAgain(control: Control): unknown {
  switch (control.sort) {
    case 'amount':
      return writtenAmount(control, control.number, control.unit);
    case 'choice':
      return writtenChoice(control, control.text);
    case 'number':
    case 'text':
    case 'name':
    case 'clock':
      return writtenText(control, control.text);
    default:
      return undefined;
  }
}

const isLeaf = (control: Control): boolean => 'keepsPlace' in control;

describe.each(exampleNames)('the form of %s', (name) => {
  const document = exampleDocument(name);
  const controls = allOf(controlsOf(table, document));

  it('shows every value of the case, and writes each back as it stood', () => {
    const leaves = controls.filter(isLeaf);
    expect(leaves.length).toBeGreaterThan(100);
    for (const leaf of leaves) {
      const held = valueAt(document, leaf.path);
      // A name may be a number or a text that reads as one; the door takes both alike.
      if (leaf.sort === 'name') expect(String(writtenAgain(leaf) ?? ''), leaf.path).toBe(String(held ?? ''));
      else expect(writtenAgain(leaf), leaf.path).toEqual(held);
    }
  });

  it('leaves no value of the case off the form', () => {
    const shown = new Set(controls.map(({ path }) => path));
    const words = new Set(controls.flatMap((each) => (each.sort === 'ways' ? [each.path] : [])));
    const ticks = new Set(controls.flatMap((each) => (each.sort === 'ticks' ? [each.path] : [])));
    for (const path of placesOf(document)) {
      const holder = path.replace(/(?:\.[^.[\]]+|\[\d+\])$/u, '');
      const isWord = words.has(holder) && typeof valueAt(document, path) === 'string';
      const isRow = /\]$/u.test(path) && (shown.has(holder) || ticks.has(holder));
      expect(shown.has(path) || isWord || isRow, path).toBe(true);
    }
  });

  it('knows the way in which every block is given', () => {
    for (const control of controls) {
      if (control.sort !== 'ways') continue;
      expect(
        control.ways.map((way) => way.name),
        control.path,
      ).toContain(control.chosen);
    }
  });
});

function placesOf(value: unknown, path = ''): string[] {
  if (typeof value !== 'object' || value === null) return [];
  const isList = Array.isArray(value);
  return Object.entries(value).flatMap(([key, inner]) => {
    const at = isList ? `${path}[${key}]` : path === '' ? key : `${path}.${key}`;
    return [at, ...placesOf(inner, at)];
  });
}

describe('the parts of the form', () => {
  it('hold each field of a case once', () => {
    const keys = parts.flatMap((part) => part.keys);
    expect(keys.toSorted()).toEqual(Object.keys(table).toSorted());
    expect(new Set(parts.map(({ id }) => id)).size).toBe(parts.length);
  });
});

describe('an empty form', () => {
  const controls = allOf(controlsOf(table, {}));

  it('has a control for every field of the first level', () => {
    expect(controlsOf(table, {}).map(({ path }) => path)).toEqual(Object.keys(table));
  });

  it('asks for what the table asks for', () => {
    const asked = new Map(
      caseFields().map(({ path, required, needed }) => [path, needed ?? (required ? 'required' : 'optional')]),
    );
    for (const { path, must } of controls) expect(must, path).toBe(asked.get(path));
  });

  it('has no unit chosen anywhere', () => {
    for (const each of controls)
      if (each.sort === 'amount') expect([each.number, each.unit], each.path).toEqual(['', '']);
  });
});

describe('every way of every field', () => {
  it('is known again from what it puts into the case at first', () => {
    const seen = new Set<string>();
    const follow = (document: unknown): void => {
      for (const control of allOf(controlsOf(table, document))) {
        if (control.sort !== 'ways') continue;
        for (const { name, start } of control.ways) {
          if (seen.has(`${control.path} ${name}`)) continue;
          seen.add(`${control.path} ${name}`);
          const next = put(document, control.path, structuredClone(start));
          const again = allOf(controlsOf(table, next)).find(
            ({ path, sort }) => path === control.path && sort === 'ways',
          );
          expect(again?.sort === 'ways' && again.chosen, `${control.path}: ${name}`).toBe(name);
          follow(next);
        }
      }
    };
    follow({});
    expect(seen.size).toBeGreaterThan(80);
    for (const way of ['service.surge as a pressure', 'defect.growth.depth as a rate', 'wrap sheet', 'resin none'])
      expect(seen).toContain(way);
  });
});

describe('ticked words', () => {
  const ticks = (hazards: unknown) => {
    const found = allOf(controlsOf(table, { service: { hazards } })).find(({ path }) => path === 'service.hazards');
    if (found?.sort !== 'ticks') throw new Error('hazards are ticked');
    return found;
  };

  it('stand in the order of the table, and the last one taken away leaves the question open', () => {
    expect(writtenTicks(ticks(['toxic']), 'flammable', true)).toEqual(['flammable', 'toxic']);
    expect(writtenTicks(ticks(['toxic']), 'toxic', false)).toBeUndefined();
  });

  it('tell none found from not stated', () => {
    expect(ticks([]).isNone).toBe(true);
    expect(ticks(undefined).isNone).toBe(false);
  });
});

describe('a place of a document', () => {
  it('holds what was put there, and the rest of the document stays as it was', () => {
    const paths = fc.constantFrom(
      'title',
      'pipe.material.grade',
      'site.history[1].duration',
      'defect.profile[0].depth',
    );
    fc.assert(
      fc.property(fc.constantFrom(...exampleNames), paths, fc.string(), (name, path, value) => {
        const document = exampleDocument(name);
        const before = JSON.stringify(document);
        expect(valueAt(put(document, path, value), path)).toBe(value);
        expect(JSON.stringify(document)).toBe(before);
      }),
      { seed: 20261125, numRuns: 100 },
    );
  });

  it('is gone when nothing is put there', () => {
    expect(put({ a: { b: 1, c: 2 } }, 'a.b', undefined)).toEqual({ a: { c: 2 } });
  });

  it('reaches no prototype', () => {
    const document = put({}, '__proto__.polluted', 'yes');
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
    expect(Object.keys(document as object)).toEqual(['__proto__']);
  });
});
