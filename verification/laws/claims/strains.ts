import type { Designed } from '../../../src/repair/index.js';
import { asmePcc2, iso24817 } from '../../../src/rules/index.js';
import { reaches } from './stated.js';

/** The allowable strains are at most those of the table for class and life, less what heat and cold part pipe and laminate by. */
export function strains({ case: stated, laminate }: Designed): string | undefined {
  const { repair, laminate: system, basis, service, site, pipe } = stated;
  const { atDesignTemperature: warm } = system;
  const rules = basis === 'ISO 24817' ? iso24817 : asmePcc2;
  const table = rules.defaultStrains[repair.loading ?? 'continuous'][repair.class].value ?? [];
  const [row] = table.filter(({ life }) => life >= repair.life).toSorted((a, b) => a.life - b.life);
  if (row === undefined) return 'a life is designed for that no column of strains reaches';
  const shares = [system.axialModulus / system.hoopModulus];
  if (warm !== undefined) shares.push(warm.axialModulus / warm.hoopModulus);
  const axial = Math.min(...shares) > 0.5 ? row.axial : row.softAxial;
  // It sets at any hour of the work, cold or warm, and then meets the rest of those hours and of service.
  const hours = [site.pipeTemperature];
  for (const { temperature } of site.history ?? []) hours.push(temperature);
  for (const { pipeTemperature } of site.forecast ?? []) hours.push(pipeTemperature);
  const met = [...hours, service.designTemperature, service.lowestTemperature ?? service.designTemperature];
  const apart = Math.max(Math.max(...met) - Math.min(...hours), Math.max(...hours) - Math.min(...met));
  const steel = pipe.material.thermalExpansion ?? 12e-6;
  const less = (expansion: number | undefined): number => Math.abs((expansion ?? steel) - steel) * apart;
  const slack = 1 + 1e-9;
  if (!reaches((row.hoop - less(system.hoopExpansion)) * slack, laminate.hoopStrain))
    return 'round the pipe more strain is allowed than the table leaves';
  if (!reaches((axial - less(system.axialExpansion)) * slack, laminate.axialStrain))
    return 'along the pipe more strain is allowed than the table leaves';
  return undefined;
}
