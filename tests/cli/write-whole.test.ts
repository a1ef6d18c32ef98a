import { mkdirSync, mkdtempSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { isSameFile, standsAt, writeWhole } from '../../src/cli/write-whole.js';

const folder = mkdtempSync(join(tmpdir(), 'hoopwright-'));

describe('a file that is written whole', () => {
  test('has the folders above it, replaces what stood there and leaves nothing beside it', async () => {
    const path = join(folder, 'a', 'b', 'sheet.txt');
    await writeWhole(path, 'first');
    await writeWhole(path, 'second');
    expect(readFileSync(path, 'utf8')).toBe('second');
    expect(readdirSync(join(folder, 'a', 'b'))).toEqual(['sheet.txt']);
  });

  test('leaves the old file as it was when the writing fails', async () => {
    const path = join(folder, 'old.txt');
    writeFileSync(path, 'old');
    const broken = { toString: () => 'no text' } as unknown as string;
    await expect(writeWhole(path, broken)).rejects.toThrow();
    // The text is written beside by then, and cannot take the place of a folder.
    mkdirSync(join(folder, 'taken'));
    await expect(writeWhole(join(folder, 'taken'), 'text')).rejects.toThrow();
    expect(readFileSync(path, 'utf8')).toBe('old');
    expect(readdirSync(folder).filter((name) => name.endsWith('.part'))).toEqual([]);
  });

  test('is told from a folder and from nothing, and from another file by where links lead', async () => {
    const path = join(folder, 'case.json');
    writeFileSync(path, '{}');
    symlinkSync(path, join(folder, 'link.json'));
    expect([await standsAt(path), await standsAt(folder), await standsAt(join(path, 'below'))]).toEqual([
      'file',
      'folder',
      'nothing',
    ]);
    expect(await isSameFile(path, join(folder, 'link.json'))).toBe(true);
    expect(await isSameFile(path, join(folder, 'x', '..', 'case.json'))).toBe(true);
    expect(await isSameFile(path, join(folder, 'other.json'))).toBe(false);
  });
});
