type Attributes = Readonly<Record<string, string | boolean | undefined>>;

/** An element with its attributes and what it holds; text goes in as text, so nothing of a case is ever read as markup. */
export function element<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...inside: readonly (Node | string | undefined)[]
): HTMLElementTagNameMap[K] {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes))
    if (value !== undefined && value !== false) made.setAttribute(name, value === true ? '' : value);
  for (const each of inside) if (each !== undefined) made.append(each);
  return made;
}

/** An element of the page by its id. */
export function byId<T extends HTMLElement = HTMLElement>(id: string): T {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`the page has no ${id}`);
  return found as T;
}

/** A list of sentences; nothing for none. */
export function list(items: readonly (Node | string)[]): HTMLElement {
  return element('ul', {}, ...items.map((item) => element('li', {}, item)));
}

/** Options of a select, with the one that is chosen; a first one stands for none. */
export function options(none: string | undefined, words: readonly string[], chosen: string): HTMLOptionElement[] {
  const option = (value: string, text: string): HTMLOptionElement =>
    element('option', { value, selected: value === chosen }, text);
  const stranger = chosen !== '' && !words.includes(chosen) ? [option(chosen, chosen)] : [];
  return [...(none === undefined ? [] : [option('', none)]), ...stranger, ...words.map((word) => option(word, word))];
}
