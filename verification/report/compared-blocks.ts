import { type Block, code, count, formulaLink, heading, paragraph, strong, type Text, table } from './blocks.js';
import { burstPlot } from './plots.js';
import type { BurstReport, Report } from './shape.js';

/** Chapters on what is compared without case records: burst tests, the table of dew points, pipe sizes. */

export function burstBlocks(burst: BurstReport): Block[] {
  const row = (method: string, group: string): Text => {
    const found = burst.statistics.find((each) => each.method === method && each.group === group);
    if (found === undefined) return '–';
    const deviation = found.deviation === null ? '' : ` ± ${found.deviation.toFixed(3)}`;
    return `${found.mean.toFixed(3)}${deviation} (${found.n})`;
  };
  const groups = [...new Set(burst.statistics.map(({ group }) => group))];
  const publicationOf = new Map(burst.publications.map(({ group, publication }) => [group, publication]));
  return [
    heading(2, 'Burst tests of corroded pipe', 'burst'),
    paragraph(
      `${count(burst.tests, 'test')} as listed in two open compilations. Predicted over measured pressure; below 1 is safe. Methods: ${burst.methods.map(({ method, how }) => `${method}, ${how}`).join('; ')}.`,
    ),
    {
      sort: 'plot',
      name: 'burst-tests',
      title:
        'Predicted against measured burst pressure, MPa. Above the diagonal a prediction is unsafe; the dashed line is the mean ratio.',
      svg: burstPlot(burst),
    },
    table(
      ['primary publication', ...burst.methods.map(({ method }) => `${method}: mean ± s (n)`)],
      groups.map((group) => [
        group === 'all' ? strong('all') : [strong(group), ` ${publicationOf.get(group) ?? ''}`],
        ...burst.methods.map(({ method }) => row(method, group)),
      ]),
      { align: 'lrrr', widths: [46, 18, 18, 18] },
    ),
    paragraph(
      'A published comparison (Zhou and Huang 2012, 149 tests) gives the mean of measured over predicted; its inverse is only roughly comparable with a mean of predicted over measured, and its tests are others.',
    ),
    table(
      ['method', 'published, measured/predicted', 'inverted', 'here, predicted/measured'],
      burst.methods
        .filter(({ published }) => published !== null)
        .map(({ method, published }) => [
          method,
          (published ?? 1).toFixed(3),
          (1 / (published ?? 1)).toFixed(3),
          row(method, 'all'),
        ]),
      { align: 'lrrr' },
    ),
  ];
}

export function dewPointBlocks({ dewPoint }: Report): Block[] {
  const { rows, parts, leftOut, program } = dewPoint;
  return [
    heading(2, 'Dew-point table', 'dew-point'),
    paragraph(
      `A printed table of ${rows} dew points, in tenths of a degree; below 0 °C it gives frost points. Its own equation is not named, and its values scatter about every Magnus form far more than those differ among themselves; the tests hold dew points to 0.2 K and frost points to 0.25 K. Left out: ${leftOut.map(({ status, rows: number }) => `${number} ${status}`).join(', ')}. Against PsychroLib, which computes by other equations, ${program.points} drawn dew points from 0 to 50 °C differ by at most ${program.largest} K.`,
    ),
    table(
      ['formula', 'rows', 'mean difference, K', 'largest, K'],
      parts.map(({ formula, rows: number, mean, largest }) => [
        formulaLink(formula),
        String(number),
        mean.toFixed(3),
        largest.toFixed(3),
      ]),
      { align: 'lrrr' },
    ),
  ];
}

export function pipeSizeBlocks({ pipeSizes }: Report): Block[] {
  return [
    heading(2, 'Pipe sizes', 'pipe-sizes'),
    paragraph(
      `${pipeSizes.equal} of ${pipeSizes.rows} walls of ${pipeSizes.program}, are equal to the digit here${pipeSizes.different.length === 0 ? '.' : `; different: ${pipeSizes.different.join('; ')}.`} The generator script stands beside the frozen output in `,
      code('verification/oracles/'),
      '.',
    ),
  ];
}
