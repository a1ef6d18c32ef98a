import { anchor, type Block, formulaLink, heading, pageOf, paragraph, type Text, table } from './blocks.js';
import { hasOwnRoute, otherHands } from './lines.js';
import type { Report } from './shape.js';

/** Every formula on one line, by name, with what it stands on and where its card is. */
export function indexBlocks({ formulas }: Report): Block[] {
  const rows = formulas
    .toSorted((a, b) => (a.id < b.id ? -1 : 1))
    .map(({ id, lines, tag }): Text[] => [
      formulaLink(id),
      String(otherHands(lines).length || '–'),
      hasOwnRoute(lines) ? 'yes' : '–',
      tag,
      pageOf(anchor(id)),
    ]);
  return [
    heading(2, 'Index of formulas', 'index'),
    paragraph(
      'Others: how many other hands’ values are met. Own: a second route of this project. Tag: the weakest of form and coefficients.',
    ),
    table(['formula', 'others', 'own', 'tag', 'page'], rows, {
      align: 'lrllr',
      widths: [58, 11, 8, 14, 9],
      twofold: true,
    }),
  ];
}
