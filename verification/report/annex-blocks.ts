import { type Block, code, count, heading, paragraph, strong, table } from './blocks.js';
import type { Report } from './shape.js';

/** Chapters that are tables: known problems, bibliography; and, behind the cards, properties, rule values and units. */

export function knownProblemBlocks({ knownProblems }: Report): Block[] {
  return [
    heading(2, 'Known problems', 'known-problems'),
    table(
      ['no.', 'about', 'problem'],
      knownProblems.map(({ id, about, text }) => [id, about, text]),
      { widths: [8, 20, 72] },
    ),
  ];
}

export function bibliographyBlocks({ bibliography }: Report): Block[] {
  return [
    heading(2, 'Bibliography', 'bibliography'),
    table(
      ['key', 'source', 'reached', 'cases', 'formulas'],
      bibliography.map(({ key, text, reached, cases, formulas }) => [
        code(key),
        text,
        reached,
        cases === 0 ? '–' : String(cases),
        formulas === 0 ? '–' : String(formulas),
      ]),
      { align: 'lllrr', widths: [18, 50, 16, 7, 9] },
    ),
  ];
}

export function ruleBlocks({ rules }: Report): Block[] {
  return [
    heading(2, 'Rule values to confirm', 'rules'),
    paragraph('In SI units. A reader who holds the document confirms each value against its clause.'),
    table(
      ['set', 'value', 'in SI', 'clause', 'tag'],
      rules.map(({ set, path, value, clause, tag, note }) => [
        set,
        path,
        value,
        clause,
        [strong(tag), note === '' ? '' : `: ${note}`],
      ]),
      { widths: [10, 20, 28, 18, 24] },
    ),
  ];
}

export function propertyBlocks({ properties }: Report): Block[] {
  return [
    heading(2, 'Properties', 'properties'),
    paragraph(
      `${count(properties.length, 'property', 'properties')} asserted on random input, with the number of runs and the seed of each. Besides these, every declared equation is evaluated by another program with units and at 64 digits, and every formula in another system of units. None of this counts as evidence that an equation is true.`,
    ),
    table(
      ['sort', 'tests', 'property', 'runs', 'seed'],
      properties.map(({ sort, file, sentence, runs, seed }) => [sort, file, sentence, String(runs), String(seed)]),
      { align: 'lllrr', widths: [12, 26, 44, 7, 11] },
    ),
  ];
}

export function unitBlocks({ units }: Report): Block[] {
  return [
    heading(2, 'Units', 'units'),
    paragraph(
      'The exact ratio of every unit to SI, held as two integers, and whether composing the unit from the definitions of others gives the same ratio.',
    ),
    table(
      ['kind', 'unit', 'ratio to SI', 'shift first', 'in SI', 'composed'],
      units.map(({ kind, unit, ratio, shift, si, composed }) => [kind, code(unit), ratio, shift, si, composed]),
      { align: 'llrrrl', widths: [22, 14, 24, 10, 18, 12] },
    ),
  ];
}
