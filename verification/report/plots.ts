import type { AccuracyRow, BurstReport, CoverageRoom } from './shape.js';

/** Plots as SVG text. Ink on paper: one dark line, one accent, no gradients, so that they print. */

const INK = '#222b33';
const FAINT = '#c9d1d6';
const ACCENT = '#1f5f8b';
const ALARM = '#b5432a';

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

const n = (value: number): string => String(Number(value.toFixed(2)));

function svg(width: number, height: number, title: string, parts: readonly string[]): string {
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${n(width)} ${n(height)}" width="${n(width)}" height="${n(height)}" role="img" aria-label="${escaped(title)}" font-family="inherit" font-size="10" fill="${INK}">`,
    `<title>${escaped(title)}</title>`,
    ...parts,
    '</svg>',
  ].join('\n');
}

interface TextStyle {
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly turn?: number;
  readonly size?: number;
  readonly fill?: string;
  readonly weight?: string;
}

function text(x: number, y: number, words: string, { anchor, turn, size, fill, weight }: TextStyle = {}): string {
  const attributes = [
    anchor === undefined ? '' : ` text-anchor="${anchor}"`,
    turn === undefined ? '' : ` transform="rotate(${turn} ${n(x)} ${n(y)})"`,
    size === undefined ? '' : ` font-size="${size}"`,
    fill === undefined ? '' : ` fill="${fill}"`,
    weight === undefined ? '' : ` font-weight="${weight}"`,
  ].join('');
  return `<text x="${n(x)}" y="${n(y)}"${attributes}>${escaped(words)}</text>`;
}

const line = (x1: number, y1: number, x2: number, y2: number, stroke = FAINT, rest = ''): string =>
  `<line x1="${n(x1)}" y1="${n(y1)}" x2="${n(x2)}" y2="${n(y2)}" stroke="${stroke}"${rest}/>`;

/** Predicted against measured burst pressure, one panel a method. Above the diagonal a prediction is unsafe. */
export function burstPlot({ methods, points, statistics }: BurstReport): string {
  const [side, gap, left, top] = [196, 22, 34, 34];
  const largest = Math.max(...points.flatMap(({ measured, predicted }) => [measured, predicted]));
  const limit = Math.ceil(largest / 10) * 10;
  const panels = methods.map(({ method }, index) => {
    const x0 = left + index * (side + gap);
    const x = (value: number): number => x0 + (value / limit) * side;
    const y = (value: number): number => top + side - (value / limit) * side;
    const ticks = Array.from({ length: limit / 10 + 1 }, (_, i) => i * 10);
    const own = points.filter((point) => point.method === method);
    const overall = statistics.find((row) => row.method === method && row.group === 'all');
    const mean = overall?.mean ?? 1;
    const reach = Math.min(limit, limit / mean);
    return [
      `<polygon points="${n(x0)},${n(top + side)} ${n(x0)},${n(top)} ${n(x0 + side)},${n(top)}" fill="#f6eeea"/>`,
      ...ticks.map((tick) => line(x(tick), top, x(tick), top + side)),
      ...ticks.map((tick) => line(x0, y(tick), x0 + side, y(tick))),
      line(x(0), y(0), x(limit), y(limit), INK),
      line(x(0), y(0), x(reach), y(reach * mean), ACCENT, ' stroke-dasharray="5 3" stroke-width="1.3"'),
      ...own.map(
        ({ measured, predicted, test }) =>
          `<circle cx="${n(x(measured))}" cy="${n(y(predicted))}" r="2.2" fill="${predicted > measured ? ALARM : ACCENT}" fill-opacity="0.75"><title>${escaped(test)}</title></circle>`,
      ),
      ...ticks.map((tick) => text(x(tick), top + side + 12, String(tick), { anchor: 'middle', size: 8 })),
      ...(index === 0 ? ticks.map((tick) => text(x0 - 4, y(tick) + 3, String(tick), { anchor: 'end', size: 8 })) : []),
      text(x0, top - 18, method, { weight: 'bold' }),
      text(x0, top - 6, `n ${overall?.n ?? 0}, mean ${mean.toFixed(3)}, s ${(overall?.deviation ?? 0).toFixed(3)}`, {
        size: 8.5,
      }),
    ];
  });
  const width = left + methods.length * (side + gap);
  return svg(width, top + side + 34, 'Predicted against measured burst pressure', [
    ...panels.flat(),
    text(left + (width - left - gap) / 2, top + side + 28, 'measured burst pressure, MPa', { anchor: 'middle' }),
    text(10, top + side / 2, 'predicted, MPa', { anchor: 'middle', turn: -90 }),
  ]);
}

/** Largest error of each formula against the condition number at that input. What is ill-conditioned lies to the right. */
export function accuracyPlot(rows: readonly AccuracyRow[]): string {
  const [width, height, left, top] = [560, 270, 46, 14];
  const [x0, x1] = [-1, Math.max(4, ...rows.map(({ condition }) => Math.ceil(Math.log10(Math.max(condition, 0.1)))))];
  const [y0, y1] = [-1, Math.max(3, ...rows.map(({ maxUlp }) => Math.ceil(Math.log10(Math.max(maxUlp, 0.1)))))];
  const x = (log: number): number => left + ((log - x0) / (x1 - x0)) * width;
  const y = (log: number): number => top + height - ((log - y0) / (y1 - y0)) * height;
  const log = (value: number): number => Math.log10(Math.max(value, 0.1));
  const decades = (from: number, to: number): number[] => Array.from({ length: to - from + 1 }, (_, i) => from + i);
  const name = (power: number): string =>
    power < 0 ? String(10 ** power) : power > 3 ? `1e${power}` : String(10 ** power);
  // One ulp in each input moves the result by up to the condition number in ulp.
  const line1 = decades(0, x1 * 8)
    .map((step) => step / 8 + x0)
    .filter((at) => at <= x1);
  const bound = line1
    .map((at) => [at, Math.log10(10 ** at + 4)] as const)
    .filter(([, value]) => value <= y1)
    .map(([at, value]) => `${n(x(at))},${n(y(value))}`)
    .join(' ');
  return svg(left + width + 16, top + height + 34, 'Largest error against condition number', [
    ...decades(x0, x1).map((power) => line(x(power), top, x(power), top + height)),
    ...decades(y0, y1).map((power) => line(left, y(power), left + width, y(power))),
    `<polyline points="${bound}" fill="none" stroke="${INK}" stroke-dasharray="5 3"/>`,
    ...rows.map(
      ({ id, condition, maxUlp }) =>
        `<circle cx="${n(x(log(condition)))}" cy="${n(y(log(maxUlp)))}" r="2.6" fill="${ACCENT}" fill-opacity="0.6"><title>${escaped(id)}</title></circle>`,
    ),
    ...decades(x0, x1).map((power) => text(x(power), top + height + 12, name(power), { anchor: 'middle', size: 8 })),
    ...decades(y0, y1).map((power) => text(left - 4, y(power) + 3, name(power), { anchor: 'end', size: 8 })),
    text(left + width / 2, top + height + 28, 'condition number at the worst input', { anchor: 'middle' }),
    text(12, top + height / 2, 'largest error, ulp', { anchor: 'middle', turn: -90 }),
  ]);
}

/** Rows of one room against the columns that it uses. A row without any line of evidence is hatched at its left edge. */
export function coveragePlot({ columns, rows }: CoverageRoom, title: string): string {
  const [left, cell, width] = [200, 13, 20];
  // Labels stand at 60 degrees; a letter is about 5 units wide.
  const top = 14 + 4.4 * Math.max(...columns.map((column) => column.length), 5);
  const right = left + columns.length * width;
  const height = top + rows.length * cell;
  const parts = rows.flatMap(({ formula, otherHands, ownRoute, cells }, index) => {
    const y = top + index * cell;
    const hole = otherHands === 0 && !ownRoute;
    const name = formula.split('/')[1] ?? formula;
    return [
      ...(hole ? [`<rect x="0" y="${n(y)}" width="${n(right + 46)}" height="${cell}" fill="#f6e3dc"/>`] : []),
      text(4, y + 9.6, name, { size: 9 }),
      ...columns.flatMap((column, place) => {
        const count = cells[column];
        if (count === undefined) return [];
        const weak = column === 'practice' || column === 'recalled';
        const x = left + place * width;
        return [
          `<rect x="${n(x + 1)}" y="${n(y + 1)}" width="${width - 2}" height="${cell - 2}" fill="${weak ? '#d9dee2' : '#bcd3e3'}"/>`,
          text(x + width / 2, y + 9.6, String(count), { anchor: 'middle', size: 8.5 }),
        ];
      }),
      text(right + 14, y + 9.6, String(otherHands), {
        anchor: 'middle',
        size: 9,
        weight: 'bold',
        fill: hole ? ALARM : INK,
      }),
      text(right + 34, y + 9.6, ownRoute ? 'yes' : 'no', { anchor: 'middle', size: 8.5, fill: hole ? ALARM : INK }),
    ];
  });
  return svg(right + 110, height + 4, title, [
    ...columns.map((_, place) => line(left + place * width, top, left + place * width, height, '#e4e9ec')),
    ...parts,
    ...columns.map((column, place) =>
      text(left + place * width + width / 2 + 3, top - 4, column, { turn: -60, size: 9 }),
    ),
    text(right + 17, top - 4, 'other hands', { turn: -60, size: 9, weight: 'bold' }),
    text(right + 37, top - 4, 'own route', { turn: -60, size: 9, weight: 'bold' }),
    line(0, top, right + 46, top, INK),
  ]);
}
