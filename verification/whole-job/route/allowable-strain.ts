import type { Job } from './read-job.js';
import { cyclicFactor, defaultStrain, type RuleAsker, temperatureFactor, temperatureMargins, YEAR } from './rules.js';

export function askerOf(job: Job): RuleAsker {
  return {
    basis: job.basis,
    repairClass: job.repair.class,
    years: job.repair.life / YEAR,
    rare: job.repair.loading === 'rare',
  };
}

/** Fatigue factor of the case. */
export function cyclesOf({ loads }: Job): number {
  const { cycles } = loads;
  return cycles === undefined ? 1 : cyclicFactor(cycles.number, cycles.lowestPressure / cycles.highestPressure);
}

/** Upper temperature limit: the lower where both transitions are given. */
export function temperatureLimit({ laminate }: Job, leaking: boolean): number | undefined {
  const { transition, distortion } = temperatureMargins(leaking);
  const limits = [
    ...(laminate.glassTransition === undefined ? [] : [laminate.glassTransition - transition]),
    ...(laminate.heatDistortion === undefined ? [] : [laminate.heatDistortion - distortion]),
  ];
  return limits.length === 0 ? undefined : Math.min(...limits);
}

/** The axial column of a laminate of less than half the stiffness along the pipe, cold or warm. */
function isSoft({ laminate }: Job): boolean {
  const { hoopModulus, axialModulus, atDesignTemperature: warm } = laminate;
  const ratios = [axialModulus / hoopModulus];
  if (warm !== undefined) ratios.push(warm.axialModulus / warm.hoopModulus);
  return Math.min(...ratios) <= 0.5;
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
  const factor = temperatureFactor(limit - Math.max(at, installed));
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
  const asker = askerOf(job);
  return {
    hoop: strain(defaultStrain(asker, false), laminate.hoopExpansion),
    axial: strain(defaultStrain(asker, isSoft(job)), laminate.axialExpansion),
  };
}
