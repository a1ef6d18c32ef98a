import type { Job } from './read-job.js';
import { cyclicFactor, defaultStrains, type RuleAsker, ruleOf, temperatureFactor } from './rules.js';

export function askerOf(job: Job): RuleAsker {
  return {
    rules: job.rules,
    repairClass: job.repair.class,
    life: job.repair.life,
    rare: job.repair.loading === 'rare',
  };
}

/** Fatigue factor of the case. */
export function cyclesOf(job: Job): number {
  const { cycles } = job.loads;
  return cycles === undefined ? 1 : cyclicFactor(job, cycles.number, cycles.lowestPressure / cycles.highestPressure);
}

/** Upper temperature limit: the lower where both transitions are given. */
export function temperatureLimit(job: Job, leaking: boolean): number | undefined {
  const { laminate } = job;
  const below = (transition: string): number =>
    ruleOf(job, `temperatureMargin.${transition}.${leaking ? 'leaking' : 'notLeaking'}`);
  const limits = [
    ...(laminate.glassTransition === undefined ? [] : [laminate.glassTransition - below('glassTransition')]),
    ...(laminate.heatDistortion === undefined ? [] : [laminate.heatDistortion - below('heatDeflection')]),
  ];
  return limits.length === 0 ? undefined : Math.min(...limits);
}

/** The axial column of a laminate of less than half the stiffness along the pipe, cold or warm. */
function isSoft(job: Job): boolean {
  const { hoopModulus, axialModulus, atDesignTemperature: warm } = job.laminate;
  const ratios = [axialModulus / hoopModulus];
  if (warm !== undefined) ratios.push(warm.axialModulus / warm.hoopModulus);
  return Math.min(...ratios) <= ruleOf(job, 'modulusShare');
}

export interface Strains {
  readonly hoop: number;
  readonly axial: number;
}

/** Allowable strains in service, or on the day of the test at its temperature: default, times temperature and fatigue, less the mismatch with the steel (2.6). */
export function allowableStrains(job: Job, leaking: boolean, onTheDayAt?: number): Strains | undefined {
  const limit = temperatureLimit(job, leaking);
  if (limit === undefined) return undefined;
  const { laminate, site, service, pipe } = job;
  const installed = site.pipeTemperature;
  const at = onTheDayAt ?? service.designTemperature;
  const factor = temperatureFactor(job, limit - Math.max(at, installed));
  const cycles = cyclesOf(job);
  const days = [
    installed,
    ...(site.history ?? []).map(({ temperature }) => temperature),
    ...(site.forecast ?? []).map(({ pipeTemperature }) => pipeTemperature),
  ];
  // The cold of service comes after the day of the test.
  const lowest = onTheDayAt ?? service.lowestTemperature ?? at;
  // It sets at any hour of the work, and meets any temperature of service and of those hours afterwards.
  const swing = Math.max(
    Math.max(at, lowest, ...days) - Math.min(...days),
    Math.max(...days) - Math.min(at, lowest, ...days),
  );
  const steel = pipe.material.thermalExpansion ?? 12e-6;
  const strain = (base: number, expansion: number | undefined): number =>
    cycles * (factor * base - Math.abs(swing * (steel - (expansion ?? steel))));
  const base = defaultStrains(askerOf(job));
  if (base === undefined) return undefined;
  return {
    hoop: strain(base.hoop, laminate.hoopExpansion),
    axial: strain(isSoft(job) ? base.softAxial : base.axial, laminate.axialExpansion),
  };
}
