import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { worksheetPage } from '../../docs/worksheet/build.js';
import { linkOf } from '../../docs/worksheet/link.js';
import { evaluate } from '../../src/evaluate/index.js';
import { echoes, encodeDesign, parseCase } from '../../src/json/index.js';
import { designRepair, planWork } from '../../src/repair/index.js';
import { calculationSheet, planHtml } from '../../src/report/index.js';
import { planStepTimes } from '../../src/report/plan-text.js';
import { exampleDocument, exampleText } from '../json/examples.js';
import { launchChromium } from './chromium.js';
import { box, type OpenWorksheet, openWorksheet, verdictOf } from './open-worksheet.js';

const FIRST = 'cooling-water-leak.json';

let browser: Browser;
let html: string;
let sheet: OpenWorksheet;
beforeAll(async () => {
  browser = await launchChromium();
  html = worksheetPage();
});
afterAll(() => browser?.close());
afterEach(() => sheet?.close());

/** The file that the page saves. */
async function saved(words: string): Promise<string> {
  await sheet.page.locator('.keep summary').click();
  await sheet.page.selectOption('#save', words);
  const [download] = await Promise.all([sheet.page.waitForEvent('download'), sheet.page.click('#take-save')]);
  const stream = await download.createReadStream();
  const chunks: Buffer[] = [];
  for await (const chunk of stream) chunks.push(chunk as Buffer);
  await sheet.page.locator('.keep summary').click();
  return Buffer.concat(chunks).toString('utf8');
}

/** As the cross-check of the documents has it: beyond this the engines may differ in a last bit. */
function toTwelve(json: string): unknown {
  return JSON.parse(json, (_, value) => (typeof value === 'number' ? Number(value.toPrecision(12)) : value));
}

describe('the worksheet from a disk, without a network', () => {
  it('designs the first example with the digits of Node: sheet, plan and design', async () => {
    sheet = await openWorksheet(browser, html);
    expect(await verdictOf(sheet.page, /^No case/u)).toBe('No case yet');
    await sheet.page.click('#take-example');
    expect(await verdictOf(sheet.page, /^Designed/u)).toMatch(/^Designed: \d+ warnings, \d+ assumed, \d+ cautions$/u);

    const { case: repairCase, typed, lookUps } = parseCase(exampleText(FIRST));
    const design = designRepair(repairCase, { record: true });
    const own = calculationSheet(design, { format: 'html', typed: echoes(typed) });
    expect(await saved('the calculation sheet')).toBe(own);
    expect(await saved('the plan of the work')).toBe(planHtml(planWork(design)));
    expect(toTwelve(await saved('the design as JSON'))).toEqual(
      toTwelve(JSON.stringify(encodeDesign(design, { typed, lookUps, units: 'si' }))),
    );
    expect(JSON.parse(await saved('the case'))).toEqual(exampleDocument(FIRST));

    await sheet.page.click('#tab-sheet');
    const [shown = '', written] = await sheet.page.evaluate<string[]>(`(() => {
      const text = (node) => node.textContent.replaceAll(/\\s+/gu, ' ').trim();
      const paper = document.querySelector('#panel-sheet .paper').shadowRoot.lastChild.cloneNode(true);
      for (const name of paper.querySelectorAll('.symbol-name')) name.remove();
      return [text(paper), text(new DOMParser().parseFromString(${JSON.stringify(own)}, 'text/html').body)];
    })()`);
    expect(shown.length).toBeGreaterThan(10_000);
    expect(shown).toBe(written);
    expect(sheet.complaints).toEqual([]);
  });

  it('moves the hours of the plan as its own page does', async () => {
    sheet = await openWorksheet(browser, html);
    await sheet.page.click('#take-example');
    await verdictOf(sheet.page, /^Designed/u);
    await sheet.page.click('#tab-plan');
    await sheet.page.locator('[data-step="filler"]').fill('15:45');
    for (const hold of await sheet.page.locator('[data-hold]').all()) await hold.check();
    const moved = planWork(designRepair(parseCase(exampleText(FIRST)).case), { actual: { filler: '15:45' } });
    for (const step of moved.steps)
      expect(await sheet.page.locator(`#when-${step.id}`).textContent()).toBe(planStepTimes(moved, step));
    expect(sheet.complaints).toEqual([]);
  });

  it('is filled in by the form alone, from nothing to the same case', async () => {
    sheet = await openWorksheet(browser, html);
    await sheet.page.fill(box('title'), 'Header');
    expect(await verdictOf(sheet.page, /^No answer/u)).toMatch(/^No answer: \d+ still to fill in$/u);
    await sheet.page.selectOption(box('pipe.size', 'way'), 'NPS and schedule');
    await sheet.page.fill(box('pipe.size.nps'), '8');
    await sheet.page.fill(box('pipe.size.schedule'), '40');
    await sheet.page.fill(box('defect.axialLength'), '2.5');
    await sheet.page.selectOption(box('defect.axialLength', 'unit'), 'in');
    await sheet.page.fill(box('service.designPressure'), '6 bar');
    await sheet.page.press(box('service.designPressure'), 'Tab');
    expect(await sheet.page.inputValue(box('service.designPressure', 'unit'))).toBe('bar');
    await sheet.page.selectOption(box('wrap', 'way'), 'tape');
    await sheet.page.check('[id="service.hazards/none-found"]');
    await sheet.page.click('[id="site.forecast/add"]');
    await sheet.page.fill(box('site.forecast[0].duration'), '10 h');
    await verdictOf(sheet.page, /^No answer/u);
    expect(JSON.parse(await sheet.page.inputValue('#json'))).toEqual({
      title: 'Header',
      pipe: { size: { nps: 8, schedule: 40 } },
      defect: { axialLength: '2.5 in' },
      service: { designPressure: '6 bar', hazards: [] },
      wrap: { form: 'tape' },
      site: { forecast: [{ duration: '10 h' }] },
    });
  });
});

describe('a refusal', () => {
  it('stands beside its field, and takes the old answer off the screen from the first key on', async () => {
    sheet = await openWorksheet(browser, html);
    const { page } = sheet;
    await page.click('#take-example');
    await verdictOf(page, /^Designed/u);
    const numbers = page.locator('.numbers');
    expect(await numbers.isVisible()).toBe(true);
    const [gone, brief] = await page.evaluate<[boolean, string]>(`(() => {
      const box = document.getElementById('defect.remainingWall/box');
      box.value = '9';
      box.dispatchEvent(new Event('input', { bubbles: true }));
      const numbers = document.querySelector('.numbers');
      return [numbers === null || getComputedStyle(numbers).visibility === 'hidden', document.getElementById('brief-text').textContent];
    })()`);
    expect(gone).toBe(true);
    expect(brief).toBe('Computing anew');
    expect(await verdictOf(page, /^No answer/u)).toBe('No answer: 1 field to mend');
    expect(await numbers.count()).toBe(0);
    expect(await page.locator('#tabs').isVisible()).toBe(false);
    const refusal = page.locator(box('defect.remainingWall', 'refusal'));
    expect(await refusal.textContent()).toMatch(/^Least remaining wall is "9 mm"; it must/u);
    const field = page.locator(box('defect.remainingWall'));
    expect(await field.getAttribute('aria-invalid')).toBe('true');
    expect(await field.getAttribute('aria-describedby')).toContain('defect.remainingWall/refusal');
    await page.fill(box('defect.remainingWall'), '3.1');
    await verdictOf(page, /^Designed/u);
    expect(await refusal.isVisible()).toBe(false);
    expect(sheet.complaints).toEqual([]);
  });

  it('is never passed over by choosing other units while the page computes', async () => {
    sheet = await openWorksheet(browser, html);
    const { page } = sheet;
    await page.click('#take-example');
    await verdictOf(page, /^Designed/u);
    const brief: string = await page.evaluate(`(() => {
      const enter = (id, value, event) => {
        const box = document.getElementById(id);
        box.value = value;
        box.dispatchEvent(new Event(event, { bubbles: true }));
      };
      enter('defect.remainingWall/box', '9', 'input');
      enter('units', 'us', 'change');
      return document.getElementById('brief-text').textContent;
    })()`);
    expect(brief).toBe('No answer: 1 field to mend');
  });

  it('of a number without a unit is said where a bare number would pass for a fraction', async () => {
    sheet = await openWorksheet(browser, html);
    await sheet.page.click('#take-example');
    await verdictOf(sheet.page, /^Designed/u);
    await sheet.page.selectOption(box('site.relativeHumidity', 'unit'), '');
    await sheet.page.fill(box('site.relativeHumidity'), '0.65');
    await verdictOf(sheet.page, /^No answer/u);
    expect(await sheet.page.locator(box('site.relativeHumidity', 'refusal')).textContent()).toMatch(/unit/u);
  });

  it('of a text that cannot be read leaves no answer, and leaves the form as it is', async () => {
    sheet = await openWorksheet(browser, html);
    await sheet.page.click('#take-example');
    await verdictOf(sheet.page, /^Designed/u);
    await sheet.page.fill('#json', '{"title": ');
    await verdictOf(sheet.page, /^No answer/u);
    expect(await sheet.page.locator('#json-refusal').textContent()).toMatch(/not a JSON document/u);
    expect(await sheet.page.locator('.numbers').count()).toBe(0);
    expect(await sheet.page.inputValue(box('title'))).toBe(exampleDocument(FIRST).title);
    // The case in the form is designed again as soon as a field is touched.
    await sheet.page.fill(box('title'), 'Once more');
    await verdictOf(sheet.page, /^Designed/u);
    expect(JSON.parse(await sheet.page.inputValue('#json')).title).toBe('Once more');
    await sheet.page.fill('#json', exampleText('vacuum-line.json'));
    await verdictOf(sheet.page, /^(?:Designed|Not|Needs)/u);
    expect(await sheet.page.inputValue(box('title'))).toBe(exampleDocument('vacuum-line.json').title);
  });
});

describe('a link', () => {
  it('brings the case to another reader, and a reload keeps it', async () => {
    sheet = await openWorksheet(browser, html);
    await sheet.page.click('#take-example');
    await sheet.page.fill(box('defect.axialLength'), '61');
    await verdictOf(sheet.page, /^Designed/u);
    const isKept = `location.hash.length > 10 && document.getElementById('link').value.endsWith(location.hash)`;
    await expect.poll(() => sheet.page.evaluate(isKept)).toBe(true);
    const fragment: string = await sheet.page.evaluate('location.hash');
    await sheet.page.reload();
    await verdictOf(sheet.page, /^Designed/u);
    expect(await sheet.page.inputValue(box('defect.axialLength'))).toBe('61');
    await sheet.close();
    sheet = await openWorksheet(browser, html, {}, fragment);
    await verdictOf(sheet.page, /^Designed/u);
    const shared = JSON.parse(await sheet.page.inputValue('#json'));
    expect(shared).toEqual({
      ...exampleDocument(FIRST),
      defect: { ...exampleDocument(FIRST).defect, axialLength: '61 mm' },
    });
  });

  it.each([
    ['cut short', async () => (await linkOf('case', exampleText(FIRST)))?.slice(0, 900) ?? '', /cut short/u],
    ['that holds no document', async () => (await linkOf('case', 'alert(1)')) ?? '', /not a JSON document/u],
    ['of another version', async () => '#case=9.AAAA', /not made by this version/u],
  ])('%s is refused in a sentence', async (_, fragmentOf, says) => {
    sheet = await openWorksheet(browser, html, {}, await fragmentOf());
    await verdictOf(sheet.page, /^No answer/u);
    expect(await sheet.page.locator('#panel-summary').textContent()).toMatch(says);
    expect(sheet.complaints).toEqual([]);
  });

  it('whose texts are markup shows them as text, and runs nothing', async () => {
    const evil = '<img src=x onerror="document.title=1"><script>document.title=2</script>';
    const document = { ...exampleDocument(FIRST), title: evil, [evil]: evil };
    sheet = await openWorksheet(browser, html, {}, await linkOf('case', JSON.stringify(document)));
    await verdictOf(sheet.page, /^No answer/u);
    expect(await sheet.page.inputValue(box('title'))).toBe(evil);
    const { [evil]: _, ...rest } = document;
    await sheet.page.fill('#json', JSON.stringify(rest));
    await verdictOf(sheet.page, /^Designed/u);
    for (const tab of ['drawing', 'sheet', 'plan']) await sheet.page.click(`#tab-${tab}`);
    expect(await sheet.page.title()).toBe('Repair worksheet, hoopwright');
    expect(await sheet.page.locator('img').count()).toBe(0);
    expect(sheet.complaints).toEqual([]);
  });

  it('of the way back brings the case before', async () => {
    sheet = await openWorksheet(browser, html);
    await sheet.page.click('#take-example');
    await verdictOf(sheet.page, /^Designed/u);
    await sheet.page.click('#clear');
    await verdictOf(sheet.page, /^No case/u);
    await sheet.page.goBack();
    await verdictOf(sheet.page, /^Designed/u);
    await sheet.page.focus('.skip');
    await sheet.page.keyboard.press('Enter');
    expect(await verdictOf(sheet.page, /^Designed/u)).toMatch(/^Designed/u);
  });
});

describe('the calculator', () => {
  it('evaluates a formula with the digits of Node, and checks a result worked out by hand', async () => {
    sheet = await openWorksheet(browser, html);
    const { page } = sheet;
    await page.click('#view-formula');
    await page.fill('#find', 'barlow');
    await page.click('#found button >> text=outside diameter');
    await page.fill(box('pressure'), '150 psig');
    await page.fill(box('outsideDiameter'), '12 3/4 in');
    await page.fill(box('wallThickness'), '0.33');
    await page.locator('#result', { hasText: 'No result' }).waitFor();
    expect(await page.locator(box('wallThickness', 'refusal')).textContent()).toMatch(/has no unit/u);
    await page.selectOption(box('wallThickness', 'unit'), 'in');
    await page.selectOption('#result-unit', 'psi');
    const given = { pressure: '150 psig', outsideDiameter: '12 3/4 in', wallThickness: '0.33 in' };
    const { value } = evaluate('pipe/hoop-stress', given, { units: { system: 'si', kinds: { stress: 'psi' } } });
    await page.locator('#result td', { hasText: `${String(value)} psi` }).waitFor();
    expect(await page.locator('#result math').count()).toBe(1);
    await page.fill('#claimed', '2898 psi');
    await page.locator('#result .word', { hasText: /^Agrees$/u }).waitFor();
    await page.fill('#claimed', '1449 psi');
    await page.locator('#result .word', { hasText: 'Does not agree' }).waitFor();
    expect(await page.locator('#result').textContent()).toMatch(/likely slip|Each of these slips/u);
    const fragment: string = await page.evaluate('location.hash');
    expect(sheet.complaints).toEqual([]);
    await sheet.close();
    sheet = await openWorksheet(browser, html, {}, fragment);
    await sheet.page.locator('#result .word', { hasText: 'Does not agree' }).waitFor();
    expect(await sheet.page.inputValue(box('outsideDiameter'))).toBe('12 3/4');
  });
});
