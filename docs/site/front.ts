import { escapedHtml } from '../../src/report/html-text.js';
import { groups } from './contents.js';
import type { ListedGroup } from './frame.js';

/** The first page: what this is, what it is not, and the four ways on. */
export function frontPage(lists: readonly ListedGroup[], hasWorksheet: boolean): string {
  const parts = groups.map(({ name, says }) => {
    const links = lists.find((list) => list.name === name)?.links ?? [];
    const items = links.map(({ place, label }) => `<li><a href="${place}">${escapedHtml(label)}</a></li>`);
    return `<section><h2>${escapedHtml(name)}</h2>\n<p>${escapedHtml(says)}</p>\n<ul>${items.join('')}</ul></section>`;
  });
  const worksheet = hasWorksheet
    ? '<p><strong><a href="worksheet.html">Open the worksheet</a></strong>: enter a case and see sheet, drawing and plan as you type; it runs in this browser and sends nothing anywhere.</p>\n'
    : '';
  return `<h1>Design of composite pipe repairs, every step shown</h1>
<p>A pipe leaks or has lost wall; it is cleaned, sealed, built up and wrapped with resin-bearing glass tape. hoopwright computes the design behind that hand work and shows every step of the arithmetic, its clause and how well that clause is known. It is a TypeScript library, a command, and a verification suite.</p>
<p class="caution"><strong>Before you rely on it.</strong> A wrong number here can hurt someone. The design rules follow ISO 24817:2017 and ASME PCC-2 <em>as recalled</em>: no body page of either was seen, and every sheet lists which of its coefficients that concerns. A competent person checks a design under the local code.</p>
${worksheet}<div class="kinds">
${parts.join('\n')}
</div>`;
}
