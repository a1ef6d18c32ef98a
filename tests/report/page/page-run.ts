import { createContext, runInContext } from 'node:vm';

interface Field {
  readonly dataset: Record<string, string>;
  readonly listeners: Map<string, () => void>;
  value: string;
  checked: boolean;
  textContent: string;
  readonly classes: Set<string>;
  open: boolean;
}

/** What a test does on a page and sees of it. */
export interface PageRun {
  enter(step: string, hour: string): void;
  pass(hold: string): void;
  clear(): void;
  /** Steps whose cards are open. */
  open(): string[];
  openAll(): void;
  print(): void;
  shown(id: string): string;
  marked(id: string): boolean;
}

/** Runs the script of a page as far as it touches it; the store may be the one of an earlier load. */
export function runPage(html: string, store: Map<string, string> | undefined = new Map(), isNarrow = false): PageRun {
  const [, key = '', data = ''] =
    /<script type="application\/json" id="plan" data-key="([^"]*)">(.*?)<\/script>/su.exec(html) ?? [];
  const [, script = ''] = /<script>(.*?)<\/script>/su.exec(html) ?? [];
  const field = (dataset: Record<string, string>, value = '', textContent = ''): Field & Record<string, unknown> => {
    const listeners = new Map<string, () => void>();
    const classes = new Set<string>();
    return {
      dataset,
      listeners,
      value,
      checked: false,
      open: true,
      textContent,
      classes,
      addEventListener: (event: string, call: () => void) => void listeners.set(event, call),
      classList: { toggle: (name: string, on: boolean) => void (on ? classes.add(name) : classes.delete(name)) },
    };
  };
  const elements = new Map<string, Field>([['plan', field({ key }, '', data)]]);
  for (const [, tag, id = ''] of html.matchAll(/<(output|p|section|button)[^>]*? id="([^"]+)"/gu))
    if (tag !== undefined) elements.set(id, field({}));
  const all = (name: string): Field[] => {
    const found = html.matchAll(new RegExp(`<(?:input|details)[^>]*? data-${name}="([^"]+)"([^>]*)>`, 'gu'));
    return [...found].map(([, id = '', rest = '']) => {
      const made = field({ [name]: id }, / value="([^"]*)"/u.exec(rest)?.[1] ?? '');
      return { ...made, checked: rest.endsWith(' checked') };
    });
  };
  const fields = { step: all('step'), hold: all('hold'), note: all('note'), mark: all('mark'), card: all('card') };
  const document = {
    getElementById: (id: string) => elements.get(id) ?? null,
    querySelectorAll: (selector: string) => fields[/data-(\w+)/u.exec(selector)?.[1] as keyof typeof fields],
  };
  const localStorage = {
    getItem: (name: string) => store?.get(name) ?? null,
    setItem: (name: string, text: string) => void store?.set(name, text),
    removeItem: (name: string) => void store?.delete(name),
  };
  const global = store === undefined ? {} : { localStorage };
  const onPrint: (() => void)[] = [];
  const matchMedia = () => ({ matches: isNarrow });
  const addEventListener = (_: string, call: () => void) => void onPrint.push(call);
  runInContext(script, createContext({ document, JSON, Math, matchMedia, addEventListener, ...global }));
  const named = (name: keyof typeof fields, id: string): Field => {
    const found = fields[name].find(({ dataset }) => dataset[name] === id);
    if (found === undefined) throw new Error(`the page has no field ${name} ${id}`);
    return found;
  };
  return {
    enter: (step, hour) => {
      const found = named('step', step);
      found.value = hour;
      found.listeners.get('input')?.();
    },
    pass: (hold) => {
      const found = named('hold', hold);
      found.checked = true;
      found.listeners.get('input')?.();
    },
    open: () => fields.card.flatMap(({ dataset, open }) => (open ? [dataset['card'] ?? ''] : [])),
    openAll: () => elements.get('open-all')?.listeners.get('click')?.(),
    print: () => {
      for (const call of onPrint) call();
    },
    clear: () => elements.get('clear')?.listeners.get('click')?.(),
    shown: (id) => elements.get(id)?.textContent ?? '',
    marked: (id) => elements.get(id)?.classes.has('skipped') ?? false,
  };
}
