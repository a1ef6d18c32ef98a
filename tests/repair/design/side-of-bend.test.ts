import { describe, expect, it } from 'vitest';
import { length } from '../../../src/quantity/index.js';
import { compareAsBuilt, planWork } from '../../../src/repair/index.js';
import { calculationSheet, firstPage, planText, repairDrawing } from '../../../src/report/index.js';
import { caseOf } from '../../faults/answers.js';
import { bend, loss } from '../../faults/cases.js';
import { designed } from '../by-use.js';

const onBend = designed(caseOf(bend));
const flat = (text: string) => text.replaceAll(/\s+/gu, ' ');

describe('on a bend every length names its side', () => {
  it('on first page, sheet, drawing and plan alike: overlap inside, whole length outside', () => {
    const page = flat(firstPage(onBend));
    expect(page).toMatch(/along the outside, [\d.]+ mm along the inside; along the inside too, each end/);
    const sheet = flat(calculationSheet(onBend));
    expect(sheet).toMatch(/Overlap, each end [\d.]+ mm along the inside/);
    expect(sheet).toMatch(/Taper, each end [\d.]+ mm along the inside/);
    expect(repairDrawing(onBend)).toMatch(/overlap [\d.]+ mm along the inside/);
    expect(repairDrawing(onBend)).toMatch(/laminate [\d.]+ mm along the outside/);
    const plan = flat(planText(planWork(onBend)));
    expect(plan).toMatch(
      /steel [\d.]+ mm or more along the inside on each side; whole length [\d.]+ mm or more along the outside/,
    );
    expect(plan).toMatch(/Mark the ends of the wrap [\d.]+ mm to each side of the centre along the outside/);
  });

  it('as built too, and nowhere on straight pipe', () => {
    const { points } = compareAsBuilt(onBend, { leastOverlap: length.mm(60) });
    const [overlap] = points.filter(({ point }) => point === 'overlap');
    expect(overlap).toMatchObject({
      verdict: 'does not meet',
      found: { name: 'overlap along the inside' },
    });
    const straight = designed(caseOf(loss));
    for (const text of [firstPage(straight), calculationSheet(straight), planText(planWork(straight))])
      expect(flat(text)).not.toMatch(/along the (?:in|out)side/);
  });
});
