import { practice } from '../../rules/index.js';
import type { Workbook } from '../job/workbook.js';

/** Poisson's ratio of the pipe: that of steel, listed as assumed. */
export function pipePoissonRatio({ assumed }: Workbook): number {
  const { name, kind, value, tag, because } = practice.poissonRatioOfSteel;
  if (!assumed.some(({ amount }) => amount.name === name))
    assumed.push({ amount: { name, kind, value }, tag, because });
  return value;
}
