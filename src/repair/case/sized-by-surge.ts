import type { RepairCase } from './case.js';

/** The case that a repair is sized by: a surge above the design pressure takes its place in every line of the design. */
export function sizedBySurge(stated: RepairCase): RepairCase {
  const { surge, designPressure } = stated.service;
  if (surge === undefined || surge === 'included' || surge <= designPressure) return stated;
  return { ...stated, service: { ...stated.service, designPressure: surge } };
}
