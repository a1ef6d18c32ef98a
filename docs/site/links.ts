import { posix } from 'node:path';

/** What a page leads to (`href` of an anchor) or loads. */
const LINK = /<(?<tag>[a-z]+)\b[^>]*?\s(?:href|src|action)="(?<target>[^"]*)"/gu;
const ANCHOR = /\s(?:id|name)="(?<id>[^"]*)"/gu;

const unescaped = (text: string): string => text.replaceAll('&quot;', '"').replaceAll('&amp;', '&');

/** The links of a site that lead nowhere (no such file, no such anchor in it), and what a page would load from the network. */
export function deadLinks(files: ReadonlyMap<string, string | undefined>): string[] {
  const anchors = new Map<string, ReadonlySet<string>>();
  const anchorsOf = (place: string): ReadonlySet<string> => {
    const known = anchors.get(place);
    if (known !== undefined) return known;
    const found = new Set(
      [...(files.get(place) ?? '').matchAll(ANCHOR)].map(({ groups }) => unescaped(groups?.['id'] ?? '')),
    );
    anchors.set(place, found);
    return found;
  };
  return [...files].flatMap(([place, text]) => {
    if (text === undefined || !place.endsWith('.html')) return [];
    // A script of a page may hold what looks like a link.
    const markup = text.replaceAll(/<script\b[^>]*>.*?<\/script>/gsu, (whole) => whole.replace(/>.*/su, '></script>'));
    return [...markup.matchAll(LINK)].flatMap(({ groups }) => {
      const target = unescaped(groups?.['target'] ?? '');
      if (/^(?:data|mailto):/u.test(target)) return [];
      // A reader may follow the DOI of a source; a page loads nothing from elsewhere.
      if (/^[a-z]+:/u.test(target))
        return groups?.['tag'] === 'a' ? [] : [`${place}: loads ${target} from another host`];
      const [path = '', anchor] = target.replace(/\?.*?(?=#|$)/u, '').split('#');
      const file = path === '' ? place : posix.normalize(posix.join(posix.dirname(place), decodeURIComponent(path)));
      if (!files.has(file)) return [`${place}: ${target} is not there`];
      if (anchor === undefined || anchor === '' || files.get(file) === undefined) return [];
      return anchorsOf(file).has(decodeURIComponent(anchor)) ? [] : [`${place}: ${target} has no such anchor`];
    });
  });
}
