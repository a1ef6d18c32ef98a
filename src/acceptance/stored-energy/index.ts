export * from './air-test-energy.js';
export * from './gas-energy-isentropic.js';
export * from './gas-energy-isothermal.js';
export * from './liquid-test-energy.js';
export * from './specific-gas-energy-isothermal.js';
export * from './test-distance.js';
export * from './tnt-equivalent.js';
