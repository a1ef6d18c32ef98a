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
  const foreseen =
    site.history ?? site.forecast?.map(({ pipeTemperature }) => ({ temperature: pipeTemperature })) ?? [];
  const set = Math.max(site.pipeTemperature, ...foreseen.map(({ temperature }) => temperature));
  const coldest = Math.min(
    service.lowestTemperature ?? service.designTemperature,
    service.designTemperature,
    site.pipeTemperature,
  );
  const heated = set > site.pipeTemperature ? set - coldest : 0;
  const apart = Math.max(
    heated,
    service.designTemperature - site.pipeTemperature,
    site.pipeTemperature - (service.lowestTemperature ?? site.pipeTemperature),
  );
  const steel = pipe.material.thermalExpansion ?? 12e-6;
  const less = (expansion: number | undefined): number => Math.abs((expansion ?? steel) - steel) * Math.max(0, apart);
  const slack = 1 + 1e-9;
  if (!reaches((row.hoop - less(system.hoopExpansion)) * slack, laminate.hoopStrain))
    return 'round the pipe more strain is allowed than the table leaves';
  if (!reaches((axial - less(system.axialExpansion)) * slack, laminate.axialStrain))
    return 'along the pipe more strain is allowed than the table leaves';
  return undefined;
}
