import { describe, expect, it, test } from 'vitest';
import { courseOf, type OutcomeCourse, sensitivities } from '../../../src/doubt/index.js';
import { decodeCase } from '../../../src/json/index.js';
import { corrosionRate, gauge, length, stress, time } from '../../../src/quantity/index.js';
import { designRepair, planWork } from '../../../src/repair/index.js';
import {
  outcomeCourse,
  repairDrawings,
  type SurveyPoint,
  sensitivityBars,
  surveyAgainstLimit,
  surveyBands,
} from '../../../src/report/index.js';
import { type SurveyRow, screenRow, screenSurvey } from '../../../src/survey/index.js';
import { exampleDocument } from '../../json/examples.js';
import { isInside, overlaps, textBoxes } from './text-boxes.js';

const { case: example } = decodeCase(exampleDocument('cooling-water-leak.json'));

function expectLegible(svg: string | undefined): void {
  const { sheet, texts } = textBoxes(svg ?? '');
  expect(texts.length).toBeGreaterThan(5);
  for (const [index, box] of texts.entries()) {
    expect(isInside(box, sheet), `"${box.text}" is cut off`).toBe(true);
    for (const other of texts.slice(index + 1))
      expect(overlaps(box, other), `"${box.text}" lies over "${other.text}"`).toBe(false);
  }
}

const row: SurveyRow = {
  outsideDiameter: length.mm(323.9),
  wallThickness: length.mm(9.5),
  yieldStrength: stress.MPa(290),
  designPressure: gauge.MPa(6),
  defectDepth: length.mm(3),
  defectLength: length.mm(100),
  depthRate: corrosionRate.mmPerYear(0),
  lengthRate: corrosionRate.mmPerYear(0),
};
const options = { safetyFactor: 1.39, life: time.year(10) };
const rows = [0.5, 1, 2, 4, 6, 7.5, 9].flatMap((depth) =>
  [20, 60, 150, 400, 2000].map((along) => ({ ...row, defectDepth: length.mm(depth), defectLength: length.mm(along) })),
);

describe('the cure over the steel', () => {
  test('ends where the plan lets the cure end, and begins where the laminate is laid', () => {
    const { cure = '' } = repairDrawings(designRepair(example));
    const path = / d="([^"]+)"[^>]*stroke-dasharray/u.exec(cure)?.[1] ?? '';
    const points = path
      .split(/[ML]/u)
      .filter(Boolean)
      .map((pair) => pair.split(' ').map(Number));
    const step = planWork(designRepair(example)).steps.find(({ id }) => id === 'cure');
    const [first, last] = [points[0] ?? [], points.at(-1) ?? []];
    const hours = ((last[0] ?? 0) - (first[0] ?? 0)) / (328 / Math.ceil((step?.endsAt ?? 0) / 3600));
    expect(hours).toBeCloseTo(((step?.endsAt ?? 0) - (step?.startsAt ?? 0)) / 3600, 0);
    expect(last[1]).toBe(40);
    expectLegible(cure);
  });
});

describe('the ranking of the inputs', () => {
  it('is legible, and has a bar for each of the strongest, longer where the change is larger', () => {
    const found = sensitivities(example);
    const svg = sensitivityBars(found, 'thickness') ?? '';
    expectLegible(svg);
    const lengths = [...svg.matchAll(/width="([\d.]+)" height="11"/gu)].map(([, width]) => Number(width));
    expect(lengths.length).toBeGreaterThan(2);
    expect(lengths).toEqual(lengths.toSorted((a, b) => b - a));
    expect(lengths[0]).toBe(150);
  });
});

describe('the thickness against one input', () => {
  const course = courseOf(example, 'service.designPressure', 'thickness');
  const ring = (svg: string): [number, number] => {
    const [, x, y] = /<circle cx="([\d.]+)" cy="([\d.]+)"/u.exec(svg) ?? [];
    return [Number(x), Number(y)];
  };

  it('is the design of each value: in the middle that of the case, and never less for more pressure', () => {
    expect(course.points).toHaveLength(41);
    expect(course.points[20]?.outcome).toBe(designRepair(example).laminate?.thickness.value);
    expect(course.points[0]?.value).toBeCloseTo(0.7 * example.service.designPressure, 3);
    const drawn = course.points.flatMap(({ outcome }) => (outcome === undefined ? [] : [outcome]));
    expect(drawn.length).toBeGreaterThan(20);
    expect(drawn).toEqual(drawn.toSorted((a, b) => a - b));
  });

  it('is legible, with the ring in the middle and a key of what governs', () => {
    const svg = outcomeCourse(course) ?? '';
    expectLegible(svg);
    expect(ring(svg)[0]).toBe(210);
    expect(svg).toContain('leak through the hole');
    expect(svg).toContain('service.designPressure');
  });

  it('leaves a gap where the case is not designed, and changes the stroke with the criterion', () => {
    const points = course.points.map((point, index) => ({
      ...point,
      outcome: index === 5 ? undefined : 0.004 + index * 1e-5,
      governing: index < 10 ? 'one' : 'two',
    }));
    const svg = outcomeCourse({ ...course, points } as OutcomeCourse) ?? '';
    expect(svg).toContain('gap: not designed');
    const lines = [...svg.matchAll(/<path d="(M[^"]+)" fill="none"[^>]*>/gu)];
    // Two stretches by one, one by two, and the two of the key.
    expect(lines).toHaveLength(5);
    expect(lines.filter(([line]) => line.includes('stroke-dasharray'))).toHaveLength(2);
    expect(outcomeCourse({ ...course, points: course.points.map((each) => ({ ...each, outcome: undefined })) })).toBe(
      undefined,
    );
  });
});

describe('a survey in pictures', () => {
  it('counts every row in one band', () => {
    const column = (name: keyof SurveyRow) => new Float64Array(rows.map((each) => each[name]));
    const screened = screenSurvey(
      { ...row, defectDepth: column('defectDepth'), defectLength: column('defectLength') },
      options,
    );
    const svg = surveyBands(screened, row.designPressure);
    expectLegible(svg);
    const counts = textBoxes(svg).texts.flatMap(({ text }) => (/^\d+$/u.test(text) ? [Number(text)] : []));
    expect(counts).toHaveLength(10);
    expect(counts.reduce((sum, each) => sum + each, 0)).toBe(rows.length);
    expect(counts.at(-2)).toBeGreaterThan(0);
  });

  it('draws each loss once, by the shape of its status, beside the limit after B31G', () => {
    const points: SurveyPoint[] = rows.map((each) => ({ ...each, status: screenRow(each, options).status }));
    const svg = surveyAgainstLimit(points);
    expectLegible(svg);
    const deep = points.filter(({ status }) => status === 'too deep').length;
    expect(deep).toBeGreaterThan(0);
    // One more of each in the key.
    expect(svg.match(/l7 7m0 -7l-7 7/gu)).toHaveLength(deep + 1);
    expect(svg.match(/<circle/gu)).toHaveLength(
      points.filter(({ status }) => status === 'sound' || status === 'repair').length + 2,
    );
    expect(svg).toContain('beyond the axes, drawn at their edge');
  });

  it('says how many rows are drawn where not all are', () => {
    const points: SurveyPoint[] = rows.map((each) => ({ ...each, status: screenRow(each, options).status }));
    const svg = surveyAgainstLimit(points, 12_345);
    expect(svg).toContain(`the worst ${rows.length} of 12345`);
    expectLegible(svg);
  });

  it('has the limit of the figure: A = 4 for shallow loss, a depth of 0.8 only where it is short', () => {
    const path =
      /<path d="(M[^"]+)" fill="none" stroke="#161616" stroke-width="1.6"\/>/u.exec(surveyAgainstLimit([]))?.[1] ?? '';
    const points = path
      .split(/[ML]/u)
      .filter(Boolean)
      .map((pair) => pair.split(' ').map(Number));
    const along = points.map(([x = 0]) => ((x - 46) / 328) * 8);
    // 4 / 0.893, and for d/t = 0.8 the root of (q / (1 - 1.1 (1 - q)))^2 - 1 with q = 0.8 * 2/3.
    expect(Math.max(...along)).toBeCloseTo(4.479, 2);
    const q = (0.8 * 2) / 3;
    expect(along[0]).toBeCloseTo(Math.sqrt((q / (1 - 1.1 * (1 - q))) ** 2 - 1) / 0.893, 2);
  });
});
