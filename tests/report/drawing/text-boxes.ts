/** The box of a text of a drawing, or of the drawing itself. */
export interface TextBox {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Letters that are narrower or wider than most, as shares of the size: no letter of the fonts asked for is wider. */
const NARROW = /[iljtfrI.,:;'|()[\] ]/u;
const WIDE = /[mwMWA-Z%@]/u;

function widthOf(text: string, size: number): number {
  return [...text].reduce(
    (sum, letter) => sum + size * (NARROW.test(letter) ? 0.42 : WIDE.test(letter) ? 0.86 : 0.62),
    0,
  );
}

/** Boxes of all texts of an SVG of ours, by their place, anchor and size; and that of the drawing. */
export function textBoxes(svg: string): { readonly sheet: TextBox; readonly texts: readonly TextBox[] } {
  const [, width, height] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/u.exec(svg) ?? [];
  const common = Number(/<svg [^>]*font-size="([\d.]+)"/u.exec(svg)?.[1]);
  const texts = [...svg.matchAll(/<text ([^>]*)>(.*?)<\/text>/gu)].map(([, attributes = '', escaped = '']) => {
    const value = (name: string): string | undefined =>
      new RegExp(`(?:^| )${name}="([^"]*)"`, 'u').exec(attributes)?.[1];
    const text = escaped.replaceAll(/&(?:amp|lt|gt|quot);/gu, '&');
    const size = Number(value('font-size') ?? common);
    const [x, y, wide] = [Number(value('x')), Number(value('y')), widthOf(text, size)];
    const anchor = value('text-anchor');
    const left = anchor === 'end' ? x - wide : anchor === 'middle' ? x - wide / 2 : x;
    return { text, left, right: left + wide, top: y - size * 0.78, bottom: y + size * 0.22 };
  });
  return { sheet: { text: '', left: 0, top: 0, right: Number(width), bottom: Number(height) }, texts };
}

export function overlaps(a: TextBox, b: TextBox): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

export function isInside(inner: TextBox, outer: TextBox): boolean {
  return (
    inner.left >= outer.left && inner.right <= outer.right && inner.top >= outer.top && inner.bottom <= outer.bottom
  );
}
