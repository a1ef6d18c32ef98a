import { readdirSync, readFileSync } from 'node:fs';
import { built } from './built.js';

const folder = new URL('../../docs/examples/', import.meta.url);

/** An example case whose repair can be designed. */
export interface Example {
  readonly name: string;
  readonly text: string;
  readonly case: import('../../src/index.js').RepairCase;
}

export const examples: readonly Example[] = readdirSync(folder)
  .filter((file) => file.endsWith('.json'))
  .map((file) => {
    const text = readFileSync(new URL(file, folder), 'utf8');
    return { name: file.replace('.json', ''), text, case: built.json.parseCase(text).case };
  })
  .filter((example) => built.root.designRepair(example.case).verdict === 'designed');
