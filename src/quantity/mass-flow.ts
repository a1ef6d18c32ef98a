import { fromSi, type PlainNumber, type Quantity, toSi, type UnitTable } from './quantity.js';

/** A mass per time: gas leak, mixing or laying rate. */
export type MassFlow = Quantity<'mass flow'>;

/** Units in which a mass flow is written, each as an exact ratio to the SI unit. */
export const massFlowUnits = {
  'kg/s': [1, 1],
  'kg/h': [1, 3600],
  'g/min': [1, 60000],
  'kg/min': [1, 60],
  'lb/h': [45359237, 360000000000],
} as const satisfies UnitTable;

/** A mass flow given in kilograms per second. */
export const kgPerS = (value: PlainNumber): MassFlow => toSi(value, massFlowUnits['kg/s']) as MassFlow;
/** The number of kilograms per second in a mass flow. */
export const inKgPerS = (quantity: MassFlow): number => fromSi(quantity, massFlowUnits['kg/s']);

/** A mass flow given in kilograms per minute. */
export const kgPerMin = (value: PlainNumber): MassFlow => toSi(value, massFlowUnits['kg/min']) as MassFlow;
/** The number of kilograms per minute in a mass flow. */
export const inKgPerMin = (quantity: MassFlow): number => fromSi(quantity, massFlowUnits['kg/min']);
