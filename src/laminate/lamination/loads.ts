import { finite } from '../../formula/index.js';
import type { LineLoad, LineMoment } from '../../quantity/index.js';
import type { Three } from './turning.js';

/** Line loads and line moments on a laminate, in x and y. */
export interface PlateLoads {
  readonly loadX: LineLoad;
  readonly loadY: LineLoad;
  readonly shearFlow: LineLoad;
  readonly momentX: LineMoment;
  readonly momentY: LineMoment;
  readonly twist: LineMoment;
}

export function loadsOf(input: PlateLoads): readonly [loads: Three, moments: Three] {
  const loads: Three = [input.loadX, input.loadY, input.shearFlow];
  const moments: Three = [input.momentX, input.momentY, input.twist];
  finite(input.loadX, 'loadX', 'N/m');
  finite(input.loadY, 'loadY', 'N/m');
  finite(input.shearFlow, 'shearFlow', 'N/m');
  finite(input.momentX, 'momentX', 'N');
  finite(input.momentY, 'momentY', 'N');
  finite(input.twist, 'twist', 'N');
  return [loads, moments];
}

export const loadX = { symbol: 'N_x', kind: 'line load', name: 'pull along x', sample: [-1e6, 1e6] } as const;
export const loadY = { symbol: 'N_y', kind: 'line load', name: 'pull along y', sample: [-1e6, 1e6] } as const;
export const shearFlow = { symbol: 'N_xy', kind: 'line load', name: 'shear flow', sample: [-1e5, 1e5] } as const;
export const momentX = { symbol: 'M_x', kind: 'line moment', name: 'bending along x', sample: [-1e3, 1e3] } as const;
export const momentY = { symbol: 'M_y', kind: 'line moment', name: 'bending along y', sample: [-1e3, 1e3] } as const;
export const twist = { symbol: 'M_xy', kind: 'line moment', name: 'twist', sample: [-1e2, 1e2] } as const;
