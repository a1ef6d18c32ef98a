/**
 * The page of each anchor in a PDF that Chromium has printed. Its objects, the streams apart, are plain text: a dictionary of
 * destinations `/name [page 0 R /XYZ …]` and a tree of pages by their `/Kids`.
 */
export function pagesOfAnchors(pdf: string): ReadonlyMap<string, number> {
  const order = pageOrder(pdf);
  const destinations = pdf.matchAll(/\/(?<name>[^\s/[\]<>()]+) \[(?<page>\d+) 0 R \/XYZ/gu);
  return new Map([...destinations].map(([, name = '', page = '']) => [unescaped(name), order.indexOf(page) + 1]));
}

/** The pages in the order in which they are read, each by the number of its object. */
function pageOrder(pdf: string): string[] {
  const nodes = new Map<string, readonly string[]>();
  const inner = new Set<string>();
  for (const [, node = '', kids = ''] of pdf.matchAll(
    /(?<node>\d+) 0 obj\s*<<\/Type \/Pages[^>]*?\/Kids \[(?<kids>[^\]]*)\]/gu,
  )) {
    const own = [...kids.matchAll(/(?<kid>\d+) 0 R/gu)].map(([, kid = '']) => kid);
    nodes.set(node, own);
    for (const kid of own) inner.add(kid);
  }
  const [top, ...others] = [...nodes.keys()].filter((node) => !inner.has(node));
  if (top === undefined || others.length > 0) throw new Error('The PDF has no tree of pages that this reader knows.');
  const read = (node: string): string[] => nodes.get(node)?.flatMap(read) ?? [node];
  return read(top);
}

/** A name holds other characters than letters, digits and hyphens as `#` and two hexadecimal digits. */
const unescaped = (name: string): string =>
  name.replaceAll(/#(?<code>[0-9a-f]{2})/giu, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)));
