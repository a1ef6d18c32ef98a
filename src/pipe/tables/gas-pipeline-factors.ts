import { oneOf, refuse, type SourceReference } from '../../formula/index.js';
import { frozen } from '../../numeric/frozen.js';
import { type Stress, stress, type Temperature, temperature } from '../../quantity/index.js';
import { interpolate } from './interpolate.js';
import type { TableValue } from './table-value.js';

const cfr = (locator: string): SourceReference => ({ key: 'cfr-49-192', locator });

/** Where a gas line lies, by how densely people live along it: 1 the fewest, 4 the most. */
export type ClassLocation = 1 | 2 | 3 | 4;

/** Where the pipe lies, as far as 192.111 lowers the factor for it. */
export type GasPipelineSituation =
  | 'none of these'
  | 'uncased crossing or encroachment'
  | 'supported by a bridge'
  | 'fabricated assembly'
  | 'compressor, regulating or measuring station'
  | 'platform or riser';

const classFactors: Readonly<Record<ClassLocation, number>> = { 1: 0.72, 2: 0.6, 3: 0.5, 4: 0.4 };

/** The factor that a situation sets in class 1 and in class 2; classes 3 and 4 are already as low. */
const situationFactors: Readonly<Record<GasPipelineSituation, readonly [class1: number, class2: number]>> = {
  'none of these': [0.72, 0.6],
  'uncased crossing or encroachment': [0.6, 0.5],
  'supported by a bridge': [0.6, 0.6],
  'fabricated assembly': [0.6, 0.6],
  'compressor, regulating or measuring station': [0.5, 0.5],
  'platform or riser': [0.5, 0.5],
};

/**
 * Design factor F of a gas pipeline by class location and situation.
 *
 * @param classLocation class location of the line
 * @param situation where the pipe lies, as far as that lowers the factor
 * @remarks In class 2 the crossing is one of a hard-surfaced road or a railroad. A fabricated assembly includes the pipe within
 *   five diameters of it.
 * @throws CalculationError `invalid-input`
 * @see 49 CFR 192.111
 */
export function gasDesignFactor(classLocation: ClassLocation, situation: GasPipelineSituation): TableValue {
  if (!Object.hasOwn(classFactors, classLocation)) refuseWord('classLocation', classLocation, 'must be 1, 2, 3 or 4');
  oneOf(situation, Object.keys(situationFactors) as GasPipelineSituation[], 'situation');
  const lowered = classLocation <= 2 ? situationFactors[situation][classLocation - 1] : undefined;
  return { value: lowered ?? classFactors[classLocation], tag: 'published', source: cfr('192.111') };
}

/** Longitudinal joint factors: specification, then pipe class. */
const jointFactors: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  'ASTM A53': { seamless: 1, 'electric resistance welded': 1, 'furnace butt welded': 0.6 },
  'ASTM A106': { seamless: 1 },
  'ASTM A333': { seamless: 1, 'electric resistance welded': 1 },
  'ASTM A381': { 'double submerged arc welded': 1 },
  'ASTM A671': { 'electric fusion welded': 1 },
  'ASTM A672': { 'electric fusion welded': 1 },
  'ASTM A691': { 'electric fusion welded': 1 },
  'API 5L': {
    seamless: 1,
    'electric resistance welded': 1,
    'electric flash welded': 1,
    'submerged arc welded': 1,
    'furnace butt welded': 0.6,
  },
  other: { 'over NPS 4': 0.8, 'NPS 4 or less': 0.6 },
};

/**
 * Longitudinal joint factor E of a gas pipeline by specification and pipe class; `other` for pipe of no listed one.
 *
 * @param specification of the pipe: `API 5L`
 * @param pipeClass how it is made, as the table calls it: `seamless`
 * @throws CalculationError `invalid-input`, with what is listed
 * @see 49 CFR 192.113
 */
export function gasJointFactor(specification: string, pipeClass: string): TableValue {
  const classes = Object.hasOwn(jointFactors, specification) ? jointFactors[specification] : undefined;
  if (classes === undefined)
    refuseWord('specification', specification, `must be one of ${Object.keys(jointFactors).join(', ')}`);
  const value = Object.hasOwn(classes, pipeClass) ? classes[pipeClass] : undefined;
  if (value === undefined)
    refuseWord('pipeClass', pipeClass, `must be, for ${specification}, one of ${Object.keys(classes).join(', ')}`);
  return { value, tag: 'published', source: cfr('192.113') };
}

/**
 * Temperature derating factor T of a gas pipeline: 1 to 250 degF, then linear between the table's entries to 450 degF.
 *
 * @param metalTemperature of the pipe wall
 * @throws CalculationError `outside-validity` above 450 degF
 * @see 49 CFR 192.115
 */
export function gasTemperatureFactor(metalTemperature: Temperature): TableValue {
  const points = [
    { temperature: 0 as Temperature, value: 1, tag: 'published' },
    { temperature: temperature.degF(250), value: 1, tag: 'published' },
    { temperature: temperature.degF(300), value: 0.967, tag: 'published' },
    { temperature: temperature.degF(350), value: 0.933, tag: 'published' },
    { temperature: temperature.degF(400), value: 0.9, tag: 'published' },
    { temperature: temperature.degF(450), value: 0.867, tag: 'published' },
  ] as const;
  const { value, tag } = interpolate(points, metalTemperature, '', '49 CFR 192.115');
  return { value, tag, source: cfr('192.115') };
}

/** Share of the design pressure left to pipe that was cold expanded and then heated beyond the limits of 192.105(b). */
export const gasHeatFactor: TableValue = /* @__PURE__ */ frozen<TableValue>({
  value: 0.75,
  tag: 'published',
  source: { key: 'cfr-49-192', locator: '192.105(b)' },
  note: 'Heated above 900 degF (482 degC) at any time, or above 600 degF (316 degC) for more than one hour.',
});

/** Yield strength for pipe of unknown specification that was not tested. */
export const gasUnknownYieldStrength: TableValue<Stress> = /* @__PURE__ */ frozen<TableValue<Stress>>({
  value: /* @__PURE__ */ stress.psi(24000),
  tag: 'recalled',
  source: { key: 'cfr-49-192', locator: '192.107(b)' },
});

function refuseWord(parameter: string, value: unknown, constraint: string): never {
  refuse({ code: 'invalid-input', parameter, value, unit: '', constraint });
}
