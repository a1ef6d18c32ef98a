export * from './elapsed-time.js';
export * from './schedule.js';
