import { byId } from './dom.js';
import { type Linked, type LinkReading, linkedBy, linkOf, readLink } from './link.js';

/** What the address of the page holds. */
export type Addressed =
  | { readonly sort: 'nothing' }
  /** A place on the page, or what some other page put there. */
  | { readonly sort: 'elsewhere' }
  | { readonly sort: 'link'; readonly linked: Linked; readonly reading: LinkReading };

export async function readAddress(): Promise<Addressed> {
  if (location.hash === '') return { sort: 'nothing' };
  const linked = linkedBy(location.hash);
  if (linked === undefined) return { sort: 'elsewhere' };
  return { sort: 'link', linked, reading: await readLink(linked, location.hash) };
}

/**
 * Puts a text into the address, so that a reload keeps it and a copy of the address shares it.
 *
 * @param isNew  a step of its own: the way back brings what stood there before
 * @param isStill  whether it is still what the page holds when it has been packed
 * @returns the whole address; nothing where the text is too long for one
 */
export async function writeAddress(
  linked: Linked,
  text: string | undefined,
  isNew = false,
  isStill: () => boolean = () => true,
): Promise<string | undefined> {
  const fragment = text === undefined ? '' : await linkOf(linked, text);
  const address = `${location.href.split('#')[0]}${fragment ?? ''}`;
  if (!isStill()) return address;
  if (isNew) history.pushState(null, '', address);
  else history.replaceState(null, '', address);
  return fragment === undefined ? undefined : address;
}

/** Ways to a place on the page go there and leave the address alone, which holds the case. */
export function watchWays(): void {
  for (const way of document.querySelectorAll<HTMLAnchorElement>('a[href^="#"]'))
    way.addEventListener('click', (event) => {
      event.preventDefault();
      const target = byId(way.hash.slice(1));
      target.scrollIntoView();
      target.focus();
    });
}
