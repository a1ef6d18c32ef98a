export * from './climate-limit.js';
export { type GateDecision, type GateReason, hardest } from './gate-reason.js';
export * from './least-steel-reading.js';
export * from './site-gate.js';
export * from './surface-gate.js';
export type { WeatherHour, WeatherLimits } from './weather-check.js';
export * from './weather-gate.js';
export * from './weather-hours.js';
