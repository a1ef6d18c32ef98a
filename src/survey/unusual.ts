import { notNearSize, strangeDiameter } from '../pipe/tables/strange-diameter.js';
import type { Kind, Line } from '../quantity/index.js';
import { outsideUsual } from '../quantity/slips.js';
import { defect } from '../repair/case/table-defect.js';
import { pipe, pressure } from '../repair/case/table-pipe.js';
import { practice } from '../rules/index.js';
import type { ScreeningOptions, SurveyRow } from './survey-row.js';

type Usual = readonly [kind: Kind, least: number, most: number];

const { depth, length } = defect.growth.fields;

/** Where real losses lie: the spans of a case; for the depth, which a case does not state, `chosen`. */
const USUAL: Readonly<Record<keyof SurveyRow, Usual>> = {
  outsideDiameter: ['length', ...pipe.outsideDiameter.usual],
  wallThickness: ['length', ...pipe.wallThickness.usual],
  yieldStrength: ['stress', ...pipe.material.fields.yieldStrength.usual],
  designPressure: ['gauge pressure', ...pressure.usual],
  // Less than a twentieth of a millimetre no tool measures: metres or inches under a header of millimetres.
  defectDepth: ['length', 0.05e-3, pipe.wallThickness.usual[1]],
  defectLength: ['length', ...defect.axialLength.usual],
  depthRate: ['corrosion rate', ...depth.shapes[0].usual],
  lengthRate: ['corrosion rate', ...length.usual],
};

const NAMES = Object.keys(USUAL) as (keyof SurveyRow)[];

/** Each value of a row outside its usual span, as a sentence: it may be right, and is more often a slip of unit or factor. */
export function unusualValues(row: SurveyRow): Line[] {
  const lines: Line[] = [];
  for (const name of NAMES) {
    const [kind, least, most] = USUAL[name];
    const value = row[name];
    const noLoss = name === 'defectDepth' && value === 0;
    if (noLoss || !Number.isFinite(value) || (value >= least && value <= most)) continue;
    lines.push(outsideUsual(name, kind, value, [least, most]));
  }
  if (lines.some(({ amounts }) => amounts?.[0]?.name === 'outsideDiameter')) return lines;
  const { outsideDiameter, wallThickness } = row;
  const given = { outsideDiameter, wallThickness, tolerance: practice.pipeSizeTolerance.value };
  const strange = strangeDiameter(given);
  if (strange !== undefined) lines.push(notNearSize('outsideDiameter', given, strange));
  return lines;
}

/**
 * What makes every row of a screening look better than it would by the choices that are made unasked, in words.
 *
 * @param options safety factor, life and method
 */
export function lessConservative({ safetyFactor, method, flowStress }: ScreeningOptions): string[] {
  const least = practice.leastSafetyFactor.value;
  const said: string[] = [];
  if (safetyFactor < least)
    said.push(
      `The safety factor is ${safetyFactor}, below the ${least} that a thinned pipe is given unasked: less conservative.`,
    );
  if (method !== undefined && method !== 'lowest')
    said.push(`The failure pressure is by ${method} alone, not by the lower of two methods: less conservative.`);
  if (flowStress !== undefined && flowStress !== '1.1 SMYS')
    said.push(`The flow stress is ${flowStress} in place of 1.1 SMYS: less conservative where it is more.`);
  return said;
}
