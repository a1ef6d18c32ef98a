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
