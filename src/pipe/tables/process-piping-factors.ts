import { oneOf, type SourceTag } from '../../formula/index.js';
import { frozen } from '../../numeric/frozen.js';
import { type Length, length, type Ratio, ratio, type Temperature, temperature } from '../../quantity/index.js';
import { interpolate, type TemperaturePoint } from './interpolate.js';
import type { TableValue } from './table-value.js';

type Entry = readonly [degC: number, value: number, tag: SourceTag];

function points(entries: readonly Entry[]): TemperaturePoint[] {
  return entries.map(([celsius, value, tag]) => ({
    temperature: celsius === COLD ? (0 as Temperature) : temperature.degC(celsius),
    value,
    tag,
  }));
}

/** Stands for "and below": the first entry holds down to absolute zero. */
const COLD = -273.15;

/** Steel that the coefficient of the wall equation is taken for. */
export type CoefficientYMaterial = 'ferritic steel' | 'austenitic steel';

const coefficientEntries: Readonly<Record<CoefficientYMaterial, readonly Entry[]>> = {
  'ferritic steel': [
    [COLD, 0.4, 'secondary'],
    [482, 0.4, 'secondary'],
    [510, 0.5, 'secondary'],
    [538, 0.7, 'secondary'],
    [677, 0.7, 'secondary'],
  ],
  'austenitic steel': [
    [COLD, 0.4, 'secondary'],
    [566, 0.4, 'secondary'],
    [593, 0.5, 'secondary'],
    [621, 0.7, 'secondary'],
    [677, 0.7, 'secondary'],
  ],
};

/**
 * Coefficient Y of the wall equation for t < D/6, linear between the entries; for grey iron it is 0 at any temperature.
 *
 * @param material steel of the pipe
 * @param metalTemperature of the pipe wall
 * @throws CalculationError `invalid-input`, `outside-validity` above 677 degC
 * @see ASME B31.3, Table 304.1.1
 */
export function coefficientY(material: CoefficientYMaterial, metalTemperature: Temperature): TableValue {
  oneOf(material, Object.keys(coefficientEntries) as CoefficientYMaterial[], 'material');
  const read = interpolate(points(coefficientEntries[material]), metalTemperature, '', 'ASME B31.3, Table 304.1.1');
  return { ...read, source: { key: 'asme-b31-3', locator: 'Table 304.1.1' } };
}

/** Steel of a longitudinal weld, with its heat treatment where that counts. */
export type WeldMaterial =
  | 'carbon steel'
  | 'chromium-molybdenum steel'
  | 'austenitic steel, autogenous and annealed'
  | 'austenitic steel with filler metal';

const weldEntries: Readonly<Record<WeldMaterial, readonly Entry[]>> = {
  'carbon steel': [
    [COLD, 1, 'secondary'],
    [593, 1, 'secondary'],
  ],
  'chromium-molybdenum steel': [
    [COLD, 1, 'secondary'],
    [427, 1, 'secondary'],
    [454, 0.95, 'secondary'],
    [482, 0.91, 'secondary'],
    [510, 0.86, 'secondary'],
    [538, 0.82, 'secondary'],
    [566, 0.77, 'secondary'],
    [593, 0.73, 'secondary'],
    [621, 0.68, 'secondary'],
    [649, 0.64, 'secondary'],
  ],
  'austenitic steel, autogenous and annealed': [
    [COLD, 1, 'secondary'],
    [649, 1, 'secondary'],
  ],
  'austenitic steel with filler metal': [
    [COLD, 1, 'secondary'],
    [427, 1, 'secondary'],
    [510, 1, 'recalled'],
    [538, 0.95, 'recalled'],
    [566, 0.91, 'recalled'],
    [593, 0.86, 'recalled'],
    [621, 0.82, 'recalled'],
    [649, 0.77, 'recalled'],
  ],
};

/**
 * Weld strength reduction factor W of a longitudinal weld; 1 for every steel below 427 degC.
 *
 * @param material steel of the weld
 * @param metalTemperature of the weld
 * @throws CalculationError `invalid-input`, `outside-validity` above the last entry
 * @see ASME B31.3, Table 302.3.5
 */
export function weldStrengthFactor(material: WeldMaterial, metalTemperature: Temperature): TableValue {
  oneOf(material, Object.keys(weldEntries) as WeldMaterial[], 'material');
  const read = interpolate(points(weldEntries[material]), metalTemperature, '', 'ASME B31.3, Table 302.3.5');
  return { ...read, source: { key: 'asme-b31-3', locator: 'Table 302.3.5' } };
}

/** How the longitudinal joint of the pipe is made. */
export type ProcessPipeJoint =
  | 'seamless'
  | 'electric resistance welded'
  | 'electric fusion welded, single butt'
  | 'electric fusion welded, double butt'
  | 'electric fusion welded, fully radiographed'
  | 'furnace butt welded';

const joints: Readonly<Record<ProcessPipeJoint, readonly [number, SourceTag]>> = {
  seamless: [1, 'secondary'],
  'electric resistance welded': [0.85, 'secondary'],
  'electric fusion welded, single butt': [0.8, 'recalled'],
  'electric fusion welded, double butt': [0.85, 'recalled'],
  'electric fusion welded, fully radiographed': [1, 'recalled'],
  'furnace butt welded': [0.6, 'secondary'],
};

/**
 * Longitudinal joint quality factor E of process piping.
 *
 * @param joint how the longitudinal joint is made
 * @throws CalculationError `invalid-input`
 * @see ASME B31.3, Table A-1B
 */
export function processJointFactor(joint: ProcessPipeJoint): TableValue {
  oneOf(joint, Object.keys(joints) as ProcessPipeJoint[], 'joint');
  const [value, tag] = joints[joint];
  return { value, tag, source: { key: 'asme-b31-3', locator: 'Table A-1B' } };
}

/** Under-tolerance of the wall of seamless and electric resistance welded pipe. */
export const millUnderTolerance: TableValue<Ratio> = /* @__PURE__ */ frozen<TableValue<Ratio>>({
  value: /* @__PURE__ */ ratio.percent(12.5),
  tag: 'secondary',
  source: { key: 'asme-b31-3', locator: '304.1.1, wall tolerance of the pipe specification' },
});

/** Under-tolerance of the wall of pipe welded from plate. */
export const plateUnderTolerance: TableValue<Length> = /* @__PURE__ */ frozen<TableValue<Length>>({
  value: /* @__PURE__ */ length.mm(0.25),
  tag: 'secondary',
  source: { key: 'asme-b31-3', locator: '304.1.1, wall tolerance of the plate' },
});
