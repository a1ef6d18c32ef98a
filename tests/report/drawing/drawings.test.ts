import { describe, expect, test } from 'vitest';
import { decodeCase } from '../../../src/json/index.js';
import { designRepair, planWork, type RepairDesign } from '../../../src/repair/index.js';
import { repairDrawing, repairDrawings } from '../../../src/report/index.js';
import { exampleDocument, exampleNames } from '../../json/examples.js';
import { isInside, overlaps, textBoxes } from './text-boxes.js';

const designOf = (name: string): RepairDesign => designRepair(decodeCase(exampleDocument(name)).case);
const designs = exampleNames.map((name) => [name, designOf(name)] as const);
const designed = designs.filter(([, { verdict }]) => verdict === 'designed');

const count = (text: string, word: string): number => text.split(word).length - 1;

describe.each(designed)('the drawings of %s', (_, design) => {
  test.each(['si', 'us'] as const)('hold every text inside, and none over another, in %s', (units) => {
    const drawings = Object.entries(repairDrawings(design, { units })).filter(([, svg]) => svg !== undefined);
    const isForeseen = planWork(design).cures?.history !== undefined;
    expect(drawings.map(([name]) => name)).toEqual([
      'elevation',
      'crossSection',
      'timeline',
      ...(isForeseen ? ['cure'] : []),
    ]);
    for (const [name, svg = ''] of drawings) {
      const { sheet, texts } = textBoxes(svg);
      expect(texts.length, name).toBeGreaterThan(5);
      for (const [index, box] of texts.entries()) {
        expect(isInside(box, sheet), `${name}: "${box.text}" is cut off`).toBe(true);
        for (const other of texts.slice(index + 1))
          expect(overlaps(box, other), `${name}: "${box.text}" lies over "${other.text}"`).toBe(false);
      }
    }
  });

  test('tell materials apart by pattern and not by colour alone, and use none that a legend lacks', () => {
    const { elevation = '' } = repairDrawings(design);
    const used = new Set(
      [...elevation.matchAll(/fill="url\(#elevation-([a-z]+)\)"/gu)].map(([, material]) => material),
    );
    for (const material of used) {
      const [, pattern = ''] =
        new RegExp(`<pattern id="elevation-${material}"[^>]*>(.*?)</pattern>`, 'u').exec(elevation) ?? [];
      expect(pattern).toMatch(/<path|<circle/u);
      // Once in the drawing and once in the legend.
      expect(count(elevation, `url(#elevation-${material})`)).toBeGreaterThan(1);
    }
  });

  test('dimension overlap, taper, laminate, wrap and defect', () => {
    const { elevation = '' } = repairDrawings(design);
    for (const word of ['overlap', 'taper', 'laminate', 'tape', 'defect'])
      expect(elevation).toMatch(new RegExp(`>${word} [\\d.]+ mm`, 'u'));
  });

  test('show each step of the timeline once, and each hold point as one', () => {
    const { timeline = '' } = repairDrawings(design);
    const steps = design.timeline?.steps ?? [];
    expect(steps.length).toBeGreaterThan(10);
    const rows = textBoxes(timeline).texts.filter(({ right }) => Math.abs(right - 126) < 0.01);
    expect(rows).toHaveLength(steps.length);
    const holds = steps.filter(({ sort }) => sort === 'hold point').length;
    // One more in the key.
    expect(count(timeline, 'l6 6l-6 6l-6 -6Z')).toBe(holds + 1);
    const unknown = steps.filter(({ duration }) => !duration.known).length;
    expect(count(timeline, '>not stated<')).toBe(unknown);
  });

  test('need nothing from elsewhere, and are well formed', () => {
    const svg = repairDrawing(design) ?? '';
    expect(svg.replaceAll('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:|<image|<script|href/u);
    const open = [...svg.matchAll(/<([a-z]+)\b[^>]*(?<!\/)>/gu)].map(([, name]) => name);
    const closed = [...svg.matchAll(/<\/([a-z]+)>/gu)].map(([, name]) => name);
    expect(open.sort()).toEqual(closed.sort());
    expect(svg).not.toMatch(/NaN|undefined|Infinity/u);
  });
});

describe('the elevation', () => {
  const { elevation = '' } = repairDrawings(designOf('cooling-water-leak.json'));
  /** Left and right end of the dimension whose text this is. */
  const ends = (word: string): [number, number] => {
    const row = elevation.split('\n').find((each) => each.includes(`>${word}`)) ?? '';
    const [first, second] = [...row.matchAll(/<line x1="([\d.]+)"/gu)].map(([, x]) => Number(x));
    return [first ?? Number.NaN, second ?? Number.NaN];
  };

  test('is to scale along the pipe', () => {
    const [tapeFrom, tapeTo] = ends('tape 466.1');
    for (const [word, millimetres] of [
      ['laminate 313.6', 313.6],
      ['overlap 100.8', 100.8],
      ['taper 24.00', 24],
      ['defect 64.00', 64],
      ['leak seal 54.00', 54],
      ['hole 15.00', 15],
    ] as const) {
      const [from, to] = ends(word);
      expect((to - from) / (tapeTo - tapeFrom), word).toBeCloseTo(millimetres / 466.0567, 3);
    }
  });

  test('says by how much a thickness is drawn too large', () => {
    const [, times] = /thickness drawn ([\d.]+) times too large/u.exec(elevation) ?? [];
    const [tapeFrom, tapeTo] = ends('tape 466.1');
    const scale = (tapeTo - tapeFrom) / 466.0567;
    const [, top, low] = /M2 ([\d.]+)L418 \1L418 ([\d.]+)L/u.exec(elevation) ?? [];
    expect((Number(low) - Number(top)) / scale / Number(times)).toBeCloseTo(8.18, 1);
  });
});

describe('what was not designed', () => {
  test('has no drawing', () => {
    expect(repairDrawing(designOf('sour-gas-crack.json'))).toBeUndefined();
  });
});
