import { describe, expect, it } from 'vitest';
import { pagesOfAnchors } from './pdf-pages.js';

/** A PDF in the form that the browser writes, without its streams: two leaves of the tree, three pages, out of order. */
const pdf = `%PDF-1.4
9 0 obj
<</Type /Pages
/Count 3
/Kids [7 0 R 8 0 R]>>
endobj
7 0 obj
<</Type /Pages
/Count 2
/Kids [5 0 R 2 0 R]
/Parent 9 0 R>>
endobj
8 0 obj
<</Type /Pages
/Count 1
/Kids [3 0 R]
/Parent 9 0 R>>
endobj
4 0 obj
<</top [5 0 R /XYZ 0 800 0]
/f-pipe-hoop-stress [3 0 R /XYZ 0 472.1 0]
/c-WE#2e1 [2 0 R /XYZ 0 9 0]>>
endobj`;

describe('the pages of anchors', () => {
  it('follow the tree of pages, not the numbers of its objects', () => {
    expect([...pagesOfAnchors(pdf)]).toEqual([
      ['top', 1],
      ['f-pipe-hoop-stress', 3],
      ['c-WE.1', 2],
    ]);
  });

  it('are refused where the file has no such tree', () => {
    expect(() => pagesOfAnchors('%PDF-1.4')).toThrow(/no tree of pages/);
  });
});
