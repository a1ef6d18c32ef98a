import { type AnyFormula, type Evidence, type SourceTag, sourceTags, weakest } from '../formula/index.js';
import type { RepairDesign } from '../repair/design/design.js';
import { confirmedBlocks, isConfirmed } from './confirmed.js';
import type { Block } from './document.js';
import type { ChosenOptions } from './options.js';
import { tagOf } from './step.js';

const MEANING: Readonly<Record<SourceTag, string>> = {
  published: "read in the source's own open text",
  secondary: 'read in a copy, a program or a web page',
  recalled: 'written down from memory of the named document',
  practice: 'common practice of the trade, no source',
  chosen: "this library's own value or form",
};

interface Part {
  readonly text: string;
  readonly tag: SourceTag;
}

/** What in the formulas of a design rests on memory: form and coefficients, each formula once. */
function recalledParts(formulas: readonly AnyFormula[]): Part[] {
  return [...new Set(formulas)].flatMap(({ title, evidence }) => {
    const parts = Object.entries(evidence as Readonly<Record<string, Evidence>>)
      .filter(([, { tag }]) => tag === 'recalled')
      .map(([part, { derived }]) => `${part}${derived === undefined ? '' : ' (derived too)'}`);
    return parts.length === 0 ? [] : [{ text: `${title}: ${parts.join(', ')}`, tag: 'recalled' as const }];
  });
}

/** Values that the library supplied: assumed, or looked up in a table for a row that the case names. */
function suppliedParts({ assumed }: RepairDesign): Part[] {
  return assumed.map(({ amount, tag }) => ({ text: amount.name, tag }));
}

/** How much of this very design stands on what: counts by tag, and what rests on memory, with each rule and supplied value weaker than a copy of its source. */
export function evidenceBlocks(design: RepairDesign, formulas: readonly AnyFormula[], options: ChosenOptions): Block[] {
  const unconfirmed = design.rules.filter((rule) => !isConfirmed(rule));
  const rules: Part[] = unconfirmed.map(({ name, clause, tag, derived, confirmed }) => ({
    text: `${name} [${clause}]${derived === undefined ? '' : ' (derived too)'}${confirmed === undefined ? '' : `, ${confirmed.values.length} of ${confirmed.of} numbers confirmed`}`,
    tag,
  }));
  const confirmedRules = design.rules.length - unconfirmed.length;
  const supplied = suppliedParts(design);
  const steps = formulas.map((formula) => tagOf(formula));
  const count = (tags: readonly SourceTag[], tag: SourceTag): string =>
    String(tags.filter((each) => each === tag).length);
  const tagsOf = (parts: readonly Part[]): SourceTag[] => parts.map(({ tag }) => tag);
  const all = [...steps, ...tagsOf(rules), ...tagsOf(supplied)];
  const weak = [...rules, ...supplied, ...recalledParts(formulas)].filter(
    ({ tag }) => tag !== 'published' && tag !== 'secondary',
  );
  const lists = sourceTags.flatMap((tag): Block[] => {
    const items = weak.filter((part) => part.tag === tag).map(({ text }) => text);
    if (items.length === 0) return [];
    return [
      { sort: 'paragraph', text: `${tag.charAt(0).toUpperCase()}${tag.slice(1)} in this design (${MEANING[tag]}):` },
      { sort: 'list', items: [...new Set(items)] },
    ];
  });
  return [
    { sort: 'heading', level: 1, text: 'EVIDENCE' },
    {
      sort: 'paragraph',
      text: all.length === 0 ? 'Nothing was computed.' : `Lowest grade of evidence in this design: ${weakest(all)}.`,
    },
    {
      sort: 'table',
      head: ['tag', 'steps', 'rule values', 'supplied values', 'meaning'],
      rows: [
        ...sourceTags.map((tag) => [
          tag,
          count(steps, tag),
          count(tagsOf(rules), tag),
          count(tagsOf(supplied), tag),
          MEANING[tag],
        ]),
        ...(confirmedRules === 0
          ? []
          : [['confirmed', '0', String(confirmedRules), '0', 'read in the document by whom the case names']]),
      ],
    },
    ...confirmedBlocks(design, options),
    ...lists,
    {
      sort: 'paragraph',
      text: 'The forms and numbers of the formulas that are common practice or chosen stand at their steps, each with its tag.',
    },
  ];
}
