import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Shows } from '../derivations/second-route.js';
import { filesIn, root } from '../in-process/files.js';

/** What the second routes in code show, read from the tests that take them. Older routes do not say it. */

export interface OwnRoute {
  readonly file: string;
  readonly formula: string;
  readonly shows: Shows;
  readonly how: string;
}

const ROUTE =
  /\bsecondRoute\(\s*'(?<formula>[a-z]+\/[a-z0-9-]+)',\s*'(?<shows>[a-z]+)',\s*(?<quote>['"])(?<how>.*?)\k<quote>/gu;

export function ownRoutes(): OwnRoute[] {
  return filesIn('verification/derivations', '.test.ts').flatMap((file) =>
    [...readFileSync(join(root, file), 'utf8').matchAll(ROUTE)].map(({ groups = {} }): OwnRoute => {
      const { formula = '', shows = '', how = '' } = groups;
      return { file, formula, shows: shows as Shows, how };
    }),
  );
}
