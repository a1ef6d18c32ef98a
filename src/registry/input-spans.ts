import type { AnyFormula, InputKind } from '../formula/index.js';

type Span = readonly [least: number, most: number];

/**
 * Where the inputs of formulas lie: by name and kind the span of all samples that declarations give. A sample alone is
 * often cut short by another input of its formula, an outer radius by the inner one. They are gathered when one is asked for.
 */
export function inputSpans(formulas: readonly AnyFormula[]): (name: string, kind: InputKind) => Span | undefined {
  let spans: ReadonlyMap<string, Span> | undefined;
  return (name, kind) => {
    spans ??= gathered(formulas);
    return spans.get(`${name} ${kind}`);
  };
}

/**
 * Whether each number that a formula is given lies where the formula itself declares it: then it lies in the spans of all
 * formulas too, and none of the others is needed to say so.
 */
export function withinOwnSpans(formula: AnyFormula, input: Readonly<Record<string, unknown>>): boolean {
  return Object.entries(formula.inputs as Readonly<Record<string, Declared>>).every(([name, declared]) => {
    const { sample, usual = sample } = declared;
    const value = input[name];
    return typeof value !== 'number' || (usual !== undefined && value >= usual[0] && value <= usual[1]);
  });
}

function gathered(formulas: readonly AnyFormula[]): ReadonlyMap<string, Span> {
  const spans = new Map<string, Span>();
  for (const { inputs } of formulas) {
    for (const [name, { kind, sample, usual = sample }] of Object.entries(
      inputs as Readonly<Record<string, Declared>>,
    )) {
      if (usual === undefined) continue;
      const [least, most] = spans.get(`${name} ${kind}`) ?? usual;
      spans.set(`${name} ${kind}`, [Math.min(least, usual[0]), Math.max(most, usual[1])]);
    }
  }
  return spans;
}

interface Declared {
  readonly kind: InputKind;
  readonly sample?: Span;
  readonly usual?: Span;
}
