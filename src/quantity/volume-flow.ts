import { fromSi, type PlainNumber, type Quantity, toSi, type UnitTable } from './quantity.js';

/** A volume per time: leak rate. */
export type VolumeFlow = Quantity<'volume flow'>;

/** Units in which a volume flow is written, each as an exact ratio to the SI unit. */
export const volumeFlowUnits = {
  'm3/s': [1, 1],
  'L/s': [1, 1000],
  'L/min': [1, 60000],
  'm3/h': [1, 3600],
  'gal/min': [3785411784, 60000000000000],
} as const satisfies UnitTable;

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
