export * from './climate-limit.js';
export { type GateDecision, type GateReason, hardest } from './gate-reason.js';
export type { JudgedClimates } from './judged-climates.js';
export * from './least-steel-reading.js';
export * from './site-gate.js';
export * from './surface-gate.js';
export { type Climate, checkHour, type WeatherHour, type WeatherLimits } from './weather-check.js';
export * from './weather-gate.js';
export * from './weather-hours.js';
