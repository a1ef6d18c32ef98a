/** What a page imports from the package: one name of an entry, or all of it. */
export interface Page {
  readonly entry: string;
  readonly name: string;
}

export interface Bundle {
  readonly minified: string;
  /** Other packages that ended up inside. */
  readonly packages: readonly string[];
}

/** Makes each page's script as if it were alone, in the order of the pages. */
export type Bundler = (pages: readonly Page[]) => Promise<Bundle[]>;

/** A page as code, for a bundler that finds the package by its own name. */
export function codeOf({ entry, name }: Page): string {
  return `export ${name === '*' ? '*' : `{ ${name} }`} from ${JSON.stringify(entry.replace('.', 'hoopwright'))};`;
}
