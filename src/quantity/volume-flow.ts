import { fromSi, type PlainNumber, type Quantity, toSi } from './quantity.js';
import { volumeFlowUnits } from './units/volume-flow.js';

/** A volume per time: leak rate. */
export type VolumeFlow = Quantity<'volume flow'>;

/** A volume flow given in cubic metres per second. */
export const m3PerS = (value: PlainNumber): VolumeFlow => toSi(value, volumeFlowUnits['m3/s']) as VolumeFlow;
/** The number of cubic metres per second in a volume flow. */
export const inM3PerS = (quantity: VolumeFlow): number => fromSi(quantity, volumeFlowUnits['m3/s']);

/** A volume flow given in litres per second. */
export const LPerS = (value: PlainNumber): VolumeFlow => toSi(value, volumeFlowUnits['L/s']) as VolumeFlow;
/** The number of litres per second in a volume flow. */
export const inLPerS = (quantity: VolumeFlow): number => fromSi(quantity, volumeFlowUnits['L/s']);

/** A volume flow given in litres per minute. */
export const LPerMin = (value: PlainNumber): VolumeFlow => toSi(value, volumeFlowUnits['L/min']) as VolumeFlow;
/** The number of litres per minute in a volume flow. */
export const inLPerMin = (quantity: VolumeFlow): number => fromSi(quantity, volumeFlowUnits['L/min']);

/** A volume flow given in cubic metres per hour. */
export const m3PerH = (value: PlainNumber): VolumeFlow => toSi(value, volumeFlowUnits['m3/h']) as VolumeFlow;
/** The number of cubic metres per hour in a volume flow. */
export const inM3PerH = (quantity: VolumeFlow): number => fromSi(quantity, volumeFlowUnits['m3/h']);

/** A volume flow given in US gallons per minute. */
export const galPerMin = (value: PlainNumber): VolumeFlow => toSi(value, volumeFlowUnits['gal/min']) as VolumeFlow;
/** The number of US gallons per minute in a volume flow. */
export const inGalPerMin = (quantity: VolumeFlow): number => fromSi(quantity, volumeFlowUnits['gal/min']);
