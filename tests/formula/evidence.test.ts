import { describe, expect, it } from 'vitest';
import { sources, sourceTags, weakest } from '../../src/formula/index.js';

describe('evidence', () => {
  it('is as weak as its weakest part', () => {
    expect(weakest(['published', 'recalled', 'secondary'])).toBe('recalled');
    expect(weakest(['practice', 'chosen'])).toBe('chosen');
    expect(weakest(['published'])).toBe('published');
    for (const tag of sourceTags) expect(weakest(['published', tag])).toBe(tag);
  });
});

describe('the sources', () => {
  it.each(Object.entries(sources))('%s says who wrote what, when, and how it was reached', (_, source) => {
    expect(source.author).not.toBe('');
    expect(source.title).not.toBe('');
    expect(Number.isInteger(source.year) && source.year > 1850 && source.year <= 2026).toBe(true);
    expect(['published', 'secondary', 'recalled']).toContain(source.reached);
    if ('doi' in source) expect(source.doi).toMatch(/^10\.\d{4,}\/\S+$/u);
  });

  it('never claim to have read ISO 24817 or ASME PCC-2', () => {
    expect(sources['iso-24817'].reached).toBe('recalled');
    expect(sources['asme-pcc-2'].reached).toBe('recalled');
  });
});
