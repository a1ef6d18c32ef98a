import { describe, expect, it } from 'vitest';
import type { InputDeclaration } from '../../src/formula/index.js';
import { unusualInputs } from '../../src/json/unusual-inputs.js';
import { formulas } from '../../src/registry/index.js';
import { inputSpans, withinOwnSpans } from '../../src/registry/input-spans.js';

const spanOf = inputSpans(formulas);
const inputsOf = ({ inputs }: (typeof formulas)[number]) => Object.entries(inputs as Record<string, InputDeclaration>);

describe('an input of a formula', () => {
  it('is usual at both ends of its sample, for every formula', () => {
    for (const formula of formulas) {
      for (const end of [0, 1]) {
        const input = Object.fromEntries(inputsOf(formula).map(([name, { sample }]) => [name, sample?.[end]]));
        expect(unusualInputs(formula, { input, typed: {} }), formula.id).toEqual([]);
      }
    }
  });

  it('is named beyond the samples of every formula that has an input of its name, and no other with it', () => {
    let named = 0;
    for (const formula of formulas) {
      for (const [name, { kind }] of inputsOf(formula)) {
        const span = spanOf(name, kind);
        if (span === undefined) continue;
        const [least, most] = span;
        for (const value of [least - (most - least) / 1000, most + (most - least) / 1000]) {
          expect(unusualInputs(formula, { input: { [name]: value }, typed: {} }).map(({ path }) => path)).toEqual([
            name,
          ]);
          named += 1;
        }
      }
    }
    expect(named).toBeGreaterThan(2000);
  });

  it('that is a list or a word is never strange', () => {
    const lists = formulas.filter((formula) => inputsOf(formula).some(([, { kind }]) => (kind as string) === 'list'));
    expect(lists.length).toBeGreaterThan(0);
    for (const formula of lists) {
      const input = Object.fromEntries(
        inputsOf(formula).flatMap(([name, { kind }]) => ((kind as string) === 'list' ? [[name, [{}]]] : [])),
      );
      expect(unusualInputs(formula, { input, typed: {} })).toEqual([]);
    }
  });

  it('that lies within what its own formula declares is named by no other, and beyond that the others are asked', () => {
    let within = 0;
    for (const formula of formulas) {
      for (const [name, { sample, usual = sample }] of inputsOf(formula)) {
        if (usual === undefined) continue;
        const [least, most] = usual;
        for (const value of [least, (least + most) / 2, most]) {
          expect(withinOwnSpans(formula, { [name]: value })).toBe(true);
          expect(unusualInputs(formula, { input: { [name]: value }, typed: {} })).toEqual([]);
          within += 1;
        }
        for (const value of [least - (most - least) / 1000, most + (most - least) / 1000])
          expect(withinOwnSpans(formula, { [name]: value })).toBe(false);
      }
    }
    expect(within).toBeGreaterThan(2000);
  });
});
