import { type Block, heading, paragraph, strong, table } from './blocks.js';
import { coveragePlot } from './plots.js';
import type { Report } from './shape.js';

/** Longest plot that a page holds. */
const ROWS = 48;

/** Formulas against sources, drawn, and the holes by name. */
export function coverageBlocks({ coverage }: Report): Block[] {
  const plots = coverage.flatMap((room): Block[] => {
    const pages = Math.ceil(room.rows.length / ROWS);
    const share = Math.ceil(room.rows.length / pages);
    return Array.from({ length: pages }, (_, page): Block => {
      const rows = room.rows.slice(page * share, (page + 1) * share);
      const title = `${room.room}${pages > 1 ? `, ${page + 1} of ${pages}` : ''}`;
      return {
        sort: 'plot',
        name: `coverage-${title.replaceAll(/[^a-z0-9]+/gu, '-')}`,
        title: `Coverage: ${title}`,
        svg: coveragePlot({ ...room, rows }, `Coverage of ${title}`),
      };
    });
  });
  const holes = coverage.flatMap(({ room, rows }) => {
    const bare = rows.filter(({ otherHands, ownRoute }) => otherHands === 0 && !ownRoute);
    return bare.length === 0
      ? []
      : [
          [
            strong(room),
            `${bare.length} of ${rows.length}`,
            bare.map(({ formula }) => formula.split('/')[1]).join(', '),
          ],
        ];
  });
  return [
    heading(2, 'Coverage: formulas against sources', 'coverage'),
    paragraph(
      'Each cell counts the cases of a formula from a source. Grey cells (practice, recalled) are no evidence. The two last columns count the other hands whose value is met, and say whether this project has a second route of its own; a shaded row has neither.',
    ),
    ...plots,
    heading(3, 'Formulas with neither', 'holes'),
    holes.length === 0
      ? paragraph('There is none.')
      : table(['room', 'formulas', 'names'], holes, { widths: [12, 10, 78] }),
  ];
}
