import { drawReaction, drawResistance } from './draw-cure.js';
import { type Draw, figure } from './random.js';

/** What a seal is drawn for. */
export interface SealWork {
  /** mm. */
  readonly holeDiameter: number;
  /** degC. */
  readonly hot: number;
  readonly contents: string;
  readonly gas: boolean;
}

/** Pad, putty, bands, fastener and sheet over a hole. */
export function drawSeal(draw: Draw, { holeDiameter, hot, contents, gas }: SealWork): Record<string, unknown> {
  const { chance, one, between, as } = draw;
  const pad = figure(holeDiameter + between(20, 60), 3);
  return {
    siteLimit: as(0.8, 6, 'bar', 3),
    ...(chance(0.97) ? { bands: one('removed before the wrap', 'removed before the wrap', 'left') } : {}),
    ...(chance(0.97) ? { collar: chance(0.7) ? 'none' : as(40, 200, 'mm', 3) } : {}),
    pad: {
      multiple: Number(as(1, 6, '', 3)),
      multipleOf: one('area', 'diameter', 'not stated'),
      margin: as(8, 30, 'mm', 3),
    },
    putty: {
      name: 'drawn putty',
      ...(chance(0.97) ? { resists: drawResistance(draw, contents, hot) } : {}),
      cure: drawReaction(draw, [0.3, 2], [4, 12]),
    },
    band: {
      width: as(10, 30, 'mm', 3),
      thickness: as(0.5, 1.2, 'mm', 3),
      strength: as(300, 600, 'MPa', 3),
      factor: figure(between(1.5, 3), 3),
      friction: figure(between(0.05, 0.35), 2),
      count: one(1, 2, 3),
      overlap: as(50, 150, 'mm', 3),
      holdingFactor: figure(between(1.1, 2), 3),
    },
    fastener: {
      threadDiameter: as(6, 12, 'mm', 2),
      nutFactor: figure(between(0.12, 0.3), 2),
      scatter: as(10, 40, '%', 2),
      permittedTension: as(2, 10, 'kN', 3),
    },
    sheet: {
      ...(chance(0.97) ? { across: `${figure(pad * between(0.6, 1.6), 3)} mm` } : {}),
      thickness: as(0.2, 1, 'mm', 2),
      modulus: as(180, 210, 'GPa', 3),
      yieldStrength: as(200, 700, 'MPa', 3),
      poissonRatio: figure(between(0.25, 0.33), 2),
      factor: figure(between(1.2, 2.5), 2),
      support: one('clamped', 'simply supported'),
    },
    pipeFactor: figure(between(1.5, 3), 2),
    ...(chance(0.8)
      ? {
          fluid: gas
            ? {
                phase: 'gas',
                molarMass: as(16, 30, 'g/mol', 3),
                heatCapacityRatio: figure(between(1.2, 1.45), 3),
                atmosphere: '1.013 bar',
              }
            : { phase: 'liquid', density: as(0.8, 1.05, 'g/cm3', 3) },
        }
      : {}),
  };
}
