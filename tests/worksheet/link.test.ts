import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { linkedBy, linkOf, readLink } from '../../docs/worksheet/link.js';
import { exampleNames, exampleText } from '../json/examples.js';

async function fragmentOf(text: string): Promise<string> {
  const fragment = await linkOf('case', text);
  if (fragment === undefined) throw new Error('too long for a link');
  return fragment;
}

async function gzipped(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const packed = await new Response(
    new Blob([bytes]).stream().pipeThrough(new CompressionStream('gzip')),
  ).arrayBuffer();
  return `#case=1.${Buffer.from(packed).toString('base64url')}`;
}

describe('a link', () => {
  it.each(exampleNames)('holds %s and is short enough for a letter', async (name) => {
    const fragment = await fragmentOf(JSON.stringify(JSON.parse(exampleText(name))));
    expect(fragment.length).toBeLessThan(4000);
    expect(linkedBy(fragment)).toBe('case');
    const reading = await readLink('case', fragment);
    expect(reading.ok && JSON.parse(reading.text)).toEqual(JSON.parse(exampleText(name)));
  });

  it('gives back any text', async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: 'grapheme', maxLength: 300 }), async (text) => {
        expect(await readLink('case', await fragmentOf(text))).toEqual({ ok: true, text });
      }),
      { seed: 20261125, numRuns: 100 },
    );
  });

  it('is refused with any one letter changed or lost', async () => {
    const fragment = await fragmentOf(exampleText('vacuum-line.json'));
    const start = '#case=1.'.length;
    await fc.assert(
      fc.asyncProperty(
        fc.integer({ min: start, max: fragment.length - 1 }),
        fc.constantFrom('A', 'z', '_', ''),
        async (at, letter) => {
          const changed = `${fragment.slice(0, at)}${letter}${fragment.slice(at + 1)}`;
          const reading = await readLink('case', changed);
          // Bits of the head that say when and where it was packed, and of the last letter, hold nothing of the case.
          if (reading.ok) expect(reading.text).toBe(exampleText('vacuum-line.json'));
          else expect(reading.problem).toMatch(/cannot be read: .* Ask for the link again/u);
        },
      ),
      { seed: 20261125, numRuns: 100 },
    );
  });

  it('is refused when it is cut short anywhere', async () => {
    const fragment = await fragmentOf(exampleText('vacuum-line.json'));
    for (let length = 8; length < fragment.length - 1; length += 37)
      expect((await readLink('case', fragment.slice(0, length))).ok, String(length)).toBe(false);
  });

  it('that unpacks to more than a case is refused before it is unpacked', async () => {
    const bomb = await gzipped(new Uint8Array(4_000_000));
    expect(bomb.length).toBeLessThan(100_000);
    const reading = await readLink('case', bomb);
    expect(reading).toMatchObject({ ok: false, problem: expect.stringMatching(/more than 400000 bytes/u) });
  });

  it.each([
    '',
    '#',
    '#case',
    '#case=2.AAAA',
    '#case=1.!!',
    '#case=1.',
    '#formula=1.AAAA',
    `#case=1.${'A'.repeat(200_000)}`,
  ])('is no case: %.20s', async (fragment) => {
    expect((await readLink('case', fragment)).ok).toBe(false);
  });

  it('that is no text in UTF-8 is refused', async () => {
    expect((await readLink('case', await gzipped(Uint8Array.of(0x7b, 0xff, 0x7d)))).ok).toBe(false);
  });

  it('is not made of a text that is too long for one', async () => {
    expect(await linkOf('case', 'a'.repeat(400_001))).toBeUndefined();
    const noise = Array.from({ length: 300_000 }, (_, index) =>
      String.fromCharCode(33 + ((index * 7919 + (index >> 3) * 104_729) % 90)),
    ).join('');
    const fragment = await linkOf('case', noise);
    expect(fragment === undefined || fragment.length <= 100_000).toBe(true);
  });
});
