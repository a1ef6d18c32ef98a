import type { ThermalExpansion } from '../../quantity/index.js';
import { need, type Workbook } from '../job/workbook.js';
import { coldestEver, hottestEver } from './hottest-and-coldest.js';

/** Thermal expansion of the laminate, in both directions. */
export interface Expansions {
  readonly hoop: ThermalExpansion;
  readonly axial: ThermalExpansion;
}

/** Without a temperature difference the expansion has no effect. */
const NO_EFFECT = 0 as ThermalExpansion;

/** The expansions as stated; both are asked for as soon as the steel is ever at another temperature than as it is read. */
export function expansionsOf(work: Workbook): Expansions | undefined {
  const { hoopExpansion, axialExpansion } = work.case.laminate;
  if (coldestEver(work.case) === hottestEver(work.case))
    return { hoop: hoopExpansion ?? NO_EFFECT, axial: axialExpansion ?? NO_EFFECT };
  if (hoopExpansion === undefined) askFor(work, 'laminate.hoopExpansion');
  if (axialExpansion === undefined) askFor(work, 'laminate.axialExpansion');
  if (hoopExpansion === undefined || axialExpansion === undefined) return undefined;
  return { hoop: hoopExpansion, axial: axialExpansion };
}

function askFor(work: Workbook, field: string): void {
  need(
    work,
    field,
    'pipe and laminate expand differently between installation and design temperature, and the difference is taken off the allowable strain',
    'the maker of the repair system',
  );
}
