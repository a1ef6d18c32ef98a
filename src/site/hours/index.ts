export * from './elapsed-time.js';
export * from './hours-to-try.js';
export * from './schedule.js';
export type { EnteredHour, ScheduledStep, ScheduleInput, StepLink } from './step-links.js';
