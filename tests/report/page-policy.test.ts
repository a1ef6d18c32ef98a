import { createHash } from 'node:crypto';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planScript } from '../../src/report/page/plan-script.js';
import { pagePolicy } from '../../src/report/page-policy.js';
import { sha256 } from '../../src/report/sha-256.js';

describe('the content security policy of the page', () => {
  it('lets the script of the page run, by its hash, and nothing else', () => {
    const hash = createHash('sha256').update(planScript).digest('base64');
    expect(pagePolicy(planScript)).toContain(`script-src 'sha256-${hash}'`);
    expect(pagePolicy(planScript)).toContain("default-src 'none'");
    expect(pagePolicy(planScript)).not.toContain('script-src-attr');
  });

  it('hashes every text as Node does', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (text) => {
        expect(sha256(text)).toBe(createHash('sha256').update(text).digest('base64'));
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });
});
