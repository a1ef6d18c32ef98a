/** A chart of lines over one input, as the pages of the documentation show them: black on white, lines told apart by their dashes. */

export interface Curve {
  readonly label: string;
  readonly points: readonly (readonly [x: number, y: number])[];
}

export interface Chart {
  readonly title: string;
  readonly x: string;
  readonly y: string;
  readonly curves: readonly Curve[];
}

const [WIDTH, HEIGHT] = [640, 380];
const SIDES = { left: 62, right: 20, bottom: 52 };
const LINE = 20;
const DASHES = ['', '8 4', '2 3', '10 3 2 3'];
const COLOURS = ['#0a5a72', '#a5480f', '#3c4a12', '#5b3a7a'];

/** A step of 1, 2 or 5 that divides a span into some five parts. */
function stepOf(span: number): number {
  const power = 10 ** Math.floor(Math.log10(span / 5));
  return power * ([1, 2, 5, 10].find((each) => each * power >= span / 5) ?? 10);
}

const short = (value: number): string => String(Number(value.toPrecision(6)));

export function chartSvg({ title, x, y, curves }: Chart): string {
  // The legend stands above, two curves a line, where it hides nothing.
  const BOX = { ...SIDES, top: 16 + LINE * Math.ceil(curves.length / 2) };
  const all = curves.flatMap(({ points }) => points);
  const [left, right] = [Math.min(...all.map(([each]) => each)), Math.max(...all.map(([each]) => each))];
  const lowest = Math.min(0, ...all.map(([, each]) => each));
  const step = { x: stepOf(right - left), y: stepOf(Math.max(...all.map(([, each]) => each)) - lowest) };
  const bottom = Math.floor(lowest / step.y) * step.y;
  const top = Math.ceil(Math.max(...all.map(([, each]) => each)) / step.y) * step.y;
  const [width, height] = [WIDTH - BOX.left - BOX.right, HEIGHT - BOX.top - BOX.bottom];
  const at = (px: number, py: number): string =>
    `${(BOX.left + ((px - left) / (right - left)) * width).toFixed(1)},${(BOX.top + ((top - py) / (top - bottom)) * height).toFixed(1)}`;
  const ticks = (from: number, to: number, by: number): number[] =>
    Array.from(
      { length: Math.floor((to - Math.ceil(from / by) * by) / by + 1e-9) + 1 },
      (_, index) => (Math.ceil(from / by) + index) * by,
    );
  const grid = [
    ...ticks(left, right, step.x).map((value) => {
      const [px] = at(value, bottom).split(',');
      return `<path d="M${at(value, bottom)}L${at(value, top)}" stroke="#ddd"/><text x="${px}" y="${HEIGHT - BOX.bottom + 18}" text-anchor="middle">${short(value)}</text>`;
    }),
    ...ticks(bottom, top, step.y).map((value) => {
      const [, py = '0'] = at(left, value).split(',');
      return `<path d="M${at(left, value)}L${at(right, value)}" stroke="#ddd"/><text x="${BOX.left - 8}" y="${Number(py) + 4}" text-anchor="end">${short(value)}</text>`;
    }),
  ];
  const lines = curves.map(
    ({ points }, index) =>
      `<path d="M${points.map(([px, py]) => at(px, py)).join('L')}" fill="none" stroke="${COLOURS[index]}" stroke-width="2.4" stroke-dasharray="${DASHES[index]}"/>`,
  );
  const legend = curves.map(({ label }, index) => {
    const py = LINE * (1 + Math.floor(index / 2));
    const px = BOX.left + (index % 2) * (width / 2);
    return `<path d="M${px} ${py - 4}h34" stroke="${COLOURS[index]}" stroke-width="2.4" stroke-dasharray="${DASHES[index]}"/><text x="${px + 42}" y="${py}">${label}</text>`;
  });
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${HEIGHT}" width="${WIDTH}" height="${HEIGHT}" role="img" font-family="DejaVu Sans, Helvetica, Arial, sans-serif" font-size="13" fill="#161616">
<title>${title}</title>
<rect width="100%" height="100%" fill="#fff"/>
${[...grid, ...lines].join('\n')}
<path d="M${at(left, top)}L${at(left, bottom)}L${at(right, bottom)}" fill="none" stroke="#161616"/>
${legend.join('\n')}
<text x="${BOX.left + width / 2}" y="${HEIGHT - 12}" text-anchor="middle">${x}</text>
<text transform="translate(16 ${BOX.top + height / 2}) rotate(-90)" text-anchor="middle">${y}</text>
</svg>
`;
}
