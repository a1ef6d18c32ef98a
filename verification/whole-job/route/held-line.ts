import type { Job } from './read-job.js';

/** Force of heat and of cold along a line that soil or anchors hold (pipe-and-defect.md, rows 11 and 15). */
export interface HeldLine {
  /** At its hottest steel, no more than 0. */
  readonly push: number;
  /** At its coldest, no less than 0. */
  readonly pull: number;
}

export function heldLine(job: Job, diameter: number): HeldLine {
  const { loads, pipe, service, site } = job;
  const { heldLine: held } = loads;
  if (held === undefined || held === 'none') return { push: 0, pull: 0 };
  const days = [
    site.pipeTemperature,
    ...(site.history ?? []).map(({ temperature }) => temperature),
    ...(site.forecast ?? []).map(({ pipeTemperature }) => pipeTemperature),
  ];
  const steel = [service.designTemperature, service.lowestTemperature ?? service.designTemperature, ...days];
  const { modulus = 207e9, thermalExpansion = 12e-6 } = pipe.material;
  const perKelvin = Math.PI * pipe.wallThickness * (diameter - pipe.wallThickness) * modulus * thermalExpansion;
  const of = (temperature: number): number => perKelvin * (held.tieInTemperature - temperature);
  return { push: Math.min(0, of(Math.max(...steel))), pull: Math.max(0, of(Math.min(...steel))) };
}
