import { drawCure, drawResistance } from './draw-cure.js';
import { type Draw, figure } from './random.js';

/** What a laminate is drawn for. */
export interface LaminateWork {
  /** Of a ply, mm. */
  readonly ply: number;
  /** degC. */
  readonly installed: number;
  readonly hot: number;
  readonly contents: string;
  readonly method: string | undefined;
}

/** A laminate of glass or carbon with most of what its maker may state. */
export function drawLaminate(
  draw: Draw,
  { ply, installed, hot, contents, method }: LaminateWork,
): Record<string, unknown> {
  const { chance, one, between, as } = draw;
  const carbon = chance(0.15);
  const modulus = figure(between(18, 60), 3);
  return {
    name: 'drawn laminate',
    hoopModulus: `${modulus} GPa`,
    axialModulus: `${figure(modulus * (chance(0.2) ? between(0.3, 0.5) : between(0.5, 0.95)), 3)} GPa`,
    poissonRatio: figure(between(0.05, 0.25), 2),
    plyThickness: `${ply} mm`,
    ...(chance(0.97) ? { shearModulus: as(2, 5, 'GPa', 3) } : {}),
    ...(chance(0.6) ? { qualifiedPlies: one(1, 2, 3, 4, 6) } : {}),
    ...(chance(0.98) ? { strainToFailure: chance(0.97) ? as(1.1, 2, '%', 3) : '0.8 %' } : {}),
    hoopExpansion: `${figure(between(2, 16), 3)}e-6 1/K`,
    axialExpansion: `${figure(between(8, 24), 3)}e-6 1/K`,
    ...(chance(0.98) ? { glassTransition: as(85, 130, 'degC', 4) } : {}),
    ...(chance(0.98)
      ? { transitionCuredAt: `${figure(chance(0.95) ? installed - between(6, 12) : installed + 3, 3)} degC` }
      : {}),
    ...(chance(0.98) ? { fibre: carbon ? 'carbon' : 'glass' } : {}),
    ...((carbon || modulus > 45) && chance(0.95) ? { isolatingLayer: 'glass ply, drawn' } : {}),
    ...(chance(0.25) ? { heatDistortion: as(80, 120, 'degC', 4) } : {}),
    ...(chance(0.2) ? { lowestTemperature: as(-40, 10, 'degC', 3) } : {}),
    ...(chance(0.98) ? { resists: drawResistance(draw, contents, hot) } : {}),
    ...(chance(0.97) ? { energyReleaseRate: as(100, 350, 'J/m2', 3) } : {}),
    ...(chance(0.25)
      ? { energyReleaseRateOverSeal: { energyReleaseRate: as(80, 300, 'J/m2', 3), footprint: as(40, 160, 'mm', 3) } }
      : {}),
    ...(chance(0.25)
      ? {
          atDesignTemperature: {
            energyReleaseRate: as(80, 260, 'J/m2', 3),
            hoopModulus: `${figure(modulus * between(0.7, 1), 3)} GPa`,
            axialModulus: `${figure(modulus * between(0.3, 0.8), 3)} GPa`,
          },
        }
      : {}),
    ...(chance(0.98) ? { lapShearStrength: chance(0.97) ? as(5, 12, 'MPa', 3) : as(3, 5, 'MPa', 3) } : {}),
    ...(chance(method === 'long-term strength' ? 0.95 : 0.4)
      ? { longTermStrength: drawLongTermStrength(draw, hot) }
      : {}),
    cure: drawCure(draw, [12, 30], [25, 90]),
  };
}

/** Of two series the colder holds more. */
function drawLongTermStrength({ chance, one, between, as }: Draw, hot: number): Record<string, unknown> {
  const series = {
    strength: as(60, 140, 'MPa', 3),
    test: one('1000 h survival', 'design life regression'),
    testTemperature: `${figure(hot + (chance(0.9) ? between(0, 20) : -between(0, 20)), 4)} degC`,
  };
  if (!chance(0.4)) return series;
  const testTemperature = `${figure(hot - between(20.5, 40), 4)} degC`;
  const drawn = as(60, 140, 'MPa', 3);
  const [strength, colder] = [series.strength, drawn].sort((a, b) => Number.parseFloat(a) - Number.parseFloat(b));
  return { ...series, strength, second: { testTemperature, strength: colder } };
}
