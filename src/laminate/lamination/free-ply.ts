import { finite } from '../../formula/index.js';
import type { Ratio, TemperatureDifference, ThermalExpansion } from '../../quantity/index.js';
import { layersOf } from './plate.js';
import type { Ply } from './ply.js';
import { freeStrain, reducedOf, type Three, times, turnedOf } from './turning.js';

/** A ply that grows with temperature and with the moisture that it takes up. */
export interface GrowingPly extends Ply {
  /** Thermal expansion along the fibres [1/K]. */
  readonly alongExpansion: ThermalExpansion;
  /** Thermal expansion across the fibres [1/K]. */
  readonly acrossExpansion: ThermalExpansion;
  /** Strain for each part of moisture by mass. */
  readonly alongSwelling: number;
  /** Strain across the fibres for each part of moisture by mass. */
  readonly acrossSwelling: number;
}

/** What the plies grow by. */
export interface Growth {
  readonly temperatureChange: TemperatureDifference;
  readonly moistureChange: Ratio;
}

export function checkGrowth(plies: readonly GrowingPly[], { temperatureChange, moistureChange }: Growth): void {
  finite(temperatureChange, 'temperatureChange', 'K');
  finite(moistureChange, 'moistureChange', '');
  plies.forEach((ply, index) => {
    finite(ply.alongExpansion, `plies[${index}].alongExpansion`, '1/K');
    finite(ply.acrossExpansion, `plies[${index}].acrossExpansion`, '1/K');
    finite(ply.alongSwelling, `plies[${index}].alongSwelling`, '');
    finite(ply.acrossSwelling, `plies[${index}].acrossSwelling`, '');
  });
}

/** Strain that a ply would have if nothing held it, along and across its fibres. */
export function freeOf(
  ply: GrowingPly,
  { temperatureChange: T, moistureChange: c }: Growth,
): readonly [number, number] {
  return [ply.alongExpansion * T + ply.alongSwelling * c, ply.acrossExpansion * T + ply.acrossSwelling * c];
}

/** Line loads and moments that would hold the laminate where it was. */
export function resultantsOf(plies: readonly GrowingPly[], growth: Growth): readonly [loads: Three, moments: Three] {
  const loads: [number, number, number] = [0, 0, 0];
  const moments: [number, number, number] = [0, 0, 0];
  layersOf(plies).forEach(({ middle, thickness }, index) => {
    const ply = plies[index] as GrowingPly;
    const [along, across] = freeOf(ply, growth);
    const stress = times(turnedOf(reducedOf(ply), ply.angle), freeStrain(along, across, ply.angle));
    stress.forEach((value, place) => {
      loads[place] = (loads[place] as number) + value * thickness;
      moments[place] = (moments[place] as number) + value * thickness * middle;
    });
  });
  return [loads, moments];
}

export const growingPlies = {
  symbol: 'plies',
  kind: 'list',
  name: 'plies from z = -h/2 upward',
  columns: {
    thickness: 'length',
    angle: 'angle',
    alongModulus: 'modulus',
    acrossModulus: 'modulus',
    shearModulus: 'modulus',
    poissonRatio: 'number',
    alongExpansion: 'thermal expansion',
    acrossExpansion: 'thermal expansion',
    alongSwelling: 'number',
    acrossSwelling: 'number',
  },
} as const;

export const temperatureChange = {
  symbol: 'dT',
  kind: 'temperature difference',
  name: 'change of temperature since the laminate was without stress',
  sample: [-150, 150],
} as const;
export const moistureChange = {
  symbol: 'dc',
  kind: 'ratio',
  name: 'moisture taken up, by mass',
  sample: [-0.02, 0.02],
} as const;
