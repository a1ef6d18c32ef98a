import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { massFlowUnits } from './units/mass-flow.js';

/** A mass per time: gas leak, mixing or laying rate. */
export type MassFlow = Quantity<'mass flow'>;

/** A mass flow given in kilograms per second. */
export const kgPerS = (value: PlainNumber): MassFlow => toSi(value, massFlowUnits['kg/s']) as MassFlow;
/** The number of kilograms per second in a mass flow. */
export const inKgPerS = (quantity: MassFlow): number => fromSi(quantity, massFlowUnits['kg/s']);

/** A mass flow given in kilograms per minute. */
export const kgPerMin = (value: PlainNumber): MassFlow => toSi(value, massFlowUnits['kg/min']) as MassFlow;
/** The number of kilograms per minute in a mass flow. */
export const inKgPerMin = (quantity: MassFlow): number => fromSi(quantity, massFlowUnits['kg/min']);

/** A mass flow given in kilograms per hour. */
export const kgPerH = (value: PlainNumber): MassFlow => toSi(value, massFlowUnits['kg/h']) as MassFlow;
/** The number of kilograms per hour in a mass flow. */
export const inKgPerH = (quantity: MassFlow): number => fromSi(quantity, massFlowUnits['kg/h']);

/** A mass flow given in grams per minute. */
export const gPerMin = (value: PlainNumber): MassFlow => toSi(value, massFlowUnits['g/min']) as MassFlow;
/** The number of grams per minute in a mass flow. */
export const inGPerMin = (quantity: MassFlow): number => fromSi(quantity, massFlowUnits['g/min']);

/** A mass flow given in pounds per hour. */
export const lbPerH = (value: PlainNumber): MassFlow => toSi(value, massFlowUnits['lb/h']) as MassFlow;
/** The number of pounds per hour in a mass flow. */
export const inLbPerH = (quantity: MassFlow): number => fromSi(quantity, massFlowUnits['lb/h']);
