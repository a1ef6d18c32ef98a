import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const root = new URL('../../', import.meta.url);

/** Every TypeScript file under a folder. */
function filesUnder(folder: string): string[] {
  return readdirSync(new URL(folder, root), { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.ts'))
    .map((path) => `${folder}${path}`);
}

describe('doubles on their way to decimal digits', () => {
  it('pass through exactDecimal, since the constructors take the shortest text of a number', () => {
    const direct =
      /(?:new (?:Decimal|Precise)|[bB]ignumber|BigNumber)\((?!exactDecimal\(|'|mathDigits\.evaluate\(|value as never\))/u;
    const found = ['src/', 'tests/', 'verification/'].flatMap(filesUnder).flatMap((path) =>
      readFileSync(new URL(path, root), 'utf8')
        .split('\n')
        .filter((line) => direct.test(line) && !/isBigNumber\(|bignumber\(0\)|const direct/u.test(line))
        .map((line) => `${path}: ${line.trim()}`),
    );
    expect(found).toEqual([]);
  });
});
