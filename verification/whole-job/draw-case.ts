import { drawCure } from './draw-cure.js';
import { drawFeatures } from './draw-features.js';
import { drawLaminate } from './draw-laminate.js';
import { drawSeal } from './draw-seal.js';
import { drawFrom, figure, randomNumbers } from './random.js';

type Drawn = Record<string, unknown>;

/** Draws the document of a case: any of the kinds, methods, forms and rule sets, mostly in the usual spans. */
export function drawCase(seed: number): Drawn {
  return drawFeatures(drawPlain(seed), seed);
}

/** A case on straight pipe, with a loss or a round hole, by the rule sets as they stand. */
function drawPlain(seed: number): Drawn {
  const draw = drawFrom(randomNumbers(Math.imul(seed, 0x9e3779b1)));
  const { chance, one, between, as } = draw;

  const diameter = figure(
    one(60.3, 88.9, 114.3, 168.3, 219.1, 323.9, 508, 610) * (chance(0.2) ? between(0.9, 1.1) : 1),
  );
  const wall = figure(Math.min(between(0.03, 0.06) * diameter, between(4, 16)), 3);
  const kind = chance(0.03)
    ? one('crack', 'dent', 'gouge', 'lamination', 'bulge', 'seam defect')
    : chance(0.4)
      ? 'through-wall hole'
      : 'metal loss';
  const hole = kind === 'through-wall hole';
  const yieldStrength = figure(between(205, 485), 3);
  const years = figure(chance(0.03) ? between(20, 30) : between(1, 20), 3);
  const life = chance(0.15) ? one(2, 10, 20) : years;
  const left = figure(wall * (chance(0.2) ? between(0.05, 0.3) : between(0.25, 0.85)), 3);
  const length = figure(chance(0.2) ? between(100, 500) : between(20, 120), 3);
  const width = figure(Math.min(chance(0.2) ? between(60, 300) : between(15, 90), 0.9 * Math.PI * diameter), 3);
  const holeDiameter = figure(Math.min(between(1, 25), 0.9 * length, 0.9 * width), 3);
  const cause = one('internal corrosion', 'external corrosion', 'internal erosion', 'mechanical damage', 'unknown');
  const grows = cause !== 'external corrosion' && cause !== 'mechanical damage' ? true : chance(0.3);
  const rate = chance(0.3) ? 0 : (left / life) * between(0, chance(0.2) ? 1.4 : 0.5);
  const gas = chance(0.06);
  const pressure = figure(chance(0.2) ? between(15, 70) : between(1.5, 12), 3);
  const cold = chance(0.1);
  const installed = figure(cold ? between(5, 12) : between(12, 28), 3);
  const hot = figure(installed + (chance(0.15) ? between(25, 60) : between(-4, 25)), 3);
  const contents = one('cooling water', 'service water', 'produced water');
  const live = hole ? chance(0.5) : chance(0.35);
  const drawnHazards = gas || chance(0.08) ? [one('flammable', 'toxic', 'hot', 'corrosive', 'asphyxiant')] : [];
  // What is a little above 60 degC may not be called hot.
  const hazards = hot > 63 && drawnHazards.length === 0 ? ['hot'] : drawnHazards;
  const linePressure = figure(hole ? between(0.05, chance(0.8) ? 0.3 : 0.8) : pressure * between(0.1, 1), 3);
  const form = one('tape', 'tape', 'sheet');
  const repairClass = chance(0.8)
    ? gas || hazards.length > 0 || pressure > 20
      ? 3
      : pressure > 10
        ? 2
        : one(1, 2, 3)
    : one(1, 2, 3);

  const ply = figure(between(0.3, 1.2), 3);
  const share = between(0.45, 0.65);
  const usedUp = hole || left / life < rate;
  const method = chance(0.3)
    ? undefined
    : usedUp && chance(0.95)
      ? 'substrate ignored'
      : one('substrate ignored', 'substrate sharing load', 'substrate yielded', 'long-term strength');

  const hours = (): number => figure(between(3, 20), 3);
  const forecast = Array.from({ length: chance(0.1) ? 2 : 10 }, () => {
    const steel = figure(installed + between(-5, 6), 3);
    return {
      duration: `${hours()} h`,
      pipeTemperature: `${steel} degC`,
      airTemperature: `${figure(steel + between(-5, 4), 3)} degC`,
      relativeHumidity: `${figure(between(30, chance(0.1) ? 95 : 78), 3)} %`,
    };
  });

  const depthLeft = wall - left;
  const profile = [0, 0.2, 0.45, 0.7, 1].map((share, index) => ({
    position: `${figure(share * length, 4)} mm`,
    depth: `${index === 2 ? Number(depthLeft.toFixed(6)) : figure(depthLeft * between(0, 0.9), 3)} mm`,
  }));

  // Newton metres that take the sound pipe to its yield, nearly.
  const moment = (Math.PI / 4) * diameter ** 2 * wall * yieldStrength * 1e-3;
  const loaded = chance(0.3);
  const beside = (share: number): boolean => loaded && chance(share);
  const laminate = drawLaminate(draw, { ply, installed, hot, contents, method });
  const seal = drawSeal(draw, { holeDiameter, contents, hot, gas });

  return {
    title: `Drawn case ${seed}`,
    date: '2026-03-14',
    basis: one('ISO 24817', 'ASME PCC-2'),
    pipe: {
      ...(chance(0.85) ? { outsideDiameter: `${diameter} mm` } : { circumference: `${figure(diameter * Math.PI)} mm` }),
      wallThickness: `${wall} mm`,
      ...(chance(0.95)
        ? { cathodicProtection: chance(0.5) ? 'none' : { underWrap: 'judged by the engineer of the line' } }
        : {}),
      material: {
        name: 'drawn steel',
        yieldStrength: `${yieldStrength} MPa`,
        ...(chance(0.9) ? { tensileStrength: `${figure(yieldStrength * between(1.15, 1.6), 3)} MPa` } : {}),
        ...(chance(0.8) ? { allowableStress: `${figure(yieldStrength * between(0.4, 0.7), 3)} MPa` } : {}),
        ...(chance(0.7) ? { modulus: as(195, 212, 'GPa', 3) } : {}),
        ...(chance(0.7) ? { thermalExpansion: `${figure(between(10.5, 13), 3)}e-6 1/K` } : {}),
      },
    },
    service: {
      contents,
      phase: gas ? one('gas', 'two-phase') : 'liquid',
      hazards,
      hazardsStatedBy: 'the operator of the line',
      safetyCritical: chance(0.03),
      designPressure: `${pressure} bar`,
      designTemperature: `${hot} degC`,
      ...(chance(0.98) ? { surge: chance(0.85) ? 'included' : `${figure(pressure * between(0.9, 1.4), 3)} bar` } : {}),
      ...(chance(0.98)
        ? {
            cracking: chance(0.97)
              ? 'none'
              : {
                  environment: one('sour', 'stress corrosion'),
                  ...(chance(0.6)
                    ? {
                        test: {
                          method: 'wet magnetic particles',
                          result: 'no crack found',
                          date: one('2026-03-10', '2025-02-12'),
                        },
                      }
                    : {}),
                },
          }
        : {}),
      ...(chance(0.2) ? { lowestTemperature: `${figure(Math.min(hot, installed) - between(1, 20), 3)} degC` } : {}),
      ...(chance(0.3)
        ? {
            recentPressure: {
              pressure: `${figure(pressure * between(0.4, 1), 3)} bar`,
              date: chance(0.85) ? '2026-02-12' : '2025-02-12',
            },
          }
        : {}),
    },
    line: live
      ? {
          state: gas ? 'under pressure' : hole && chance(0.5) ? 'static head' : one('under pressure', 'static head'),
          pressure: `${Math.min(linePressure, pressure)} bar`,
          writtenProcedure: chance(0.9) ? 'WP-7' : 'none',
        }
      : { state: 'empty, dry, isolated, vented' },
    defect: {
      kind,
      cause,
      axialLength: `${length} mm`,
      circumferentialWidth: `${width} mm`,
      remainingWall: `${left} mm`,
      readingError: chance(0.3) ? 'none' : `${figure(Math.min(between(0.05, 0.4), 0.4 * left), 2)} mm`,
      ...(hole ? { holeDiameter: `${holeDiameter} mm` } : chance(0.4) ? { holeAtEndOfLife: as(5, 25, 'mm', 3) } : {}),
      ...(!hole && kind === 'metal loss' && chance(0.35) ? { profile } : {}),
      ...(chance(0.98)
        ? { nearestAttachment: `${figure(chance(0.95) ? between(800, 6000) : between(10, 300), 3)} mm` }
        : {}),
      neighbours: 'none',
      growth: grows
        ? {
            depth: chance(0.6)
              ? `${figure(rate, 3)} mm/year`
              : {
                  previousWall: `${figure(Math.min(wall, left + between(0.1, 0.9) * rate), 4)} mm`,
                  sincePrevious: as(1, 6, 'year', 3),
                  service: as(15, 60, 'year', 3),
                },
            length: `${figure(chance(0.2) ? 0 : between(0, 1), 2)} mm/year`,
          }
        : 'none',
    },
    loads: {
      axialForce: chance(0.7) ? 'none' : as(-30, 60, 'kN', 3),
      heldLine: 'none',
      bendingMoment: beside(0.4) ? `${figure(moment * between(0.01, 0.2), 3)} N m` : 'none',
      torsion: beside(0.4) ? `${figure(moment * between(0.01, 0.2), 3)} N m` : 'none',
      shearForce: beside(0.4) ? `${figure((moment / diameter) * between(2, 60), 3)} N` : 'none',
      externalPressure: beside(0.3) ? as(0.1, 1, 'bar', 3) : 'none',
      soil: beside(0.3)
        ? {
            cover: as(0.5, 3, 'm', 3),
            density: as(1600, 2200, 'kg/m3', 3),
            waterAbove: chance(0.5) ? 'none' : as(0.2, 3, 'm', 3),
            traffic: chance(0.5) ? 'none' : as(5, 60, 'kPa', 3),
          }
        : 'none',
      ...(chance(0.9) ? { freeSpan: as(2, 12, 'm', 3) } : {}),
      cycles: chance(0.7)
        ? 'none'
        : {
            number: Math.round(10 ** between(2, 8.5)),
            lowestPressure: `${figure(pressure * between(0, 0.7), 3)} bar`,
            highestPressure: `${figure(pressure * between(0.75, 1), 3)} bar`,
          },
    },
    fitting: chance(0.98) ? 'none' : { kind: one('tee', 'weld') },
    ...(chance(0.97)
      ? {
          assessment: {
            ...(chance(0.2)
              ? {
                  method: one(
                    'original B31G',
                    'modified B31G',
                    'effective area',
                    'DNV-RP-F101',
                    'API 579-1 Level 1',
                    'API 579-1 Level 2',
                  ),
                }
              : {}),
            ...(chance(0.25) ? { flowStress: one('1.1 SMYS', 'SMYS + 69 MPa', '(SMYS + SMTS) / 2') } : {}),
            ...(chance(0.6) ? { safetyFactor: figure(between(1, 2), 3) } : {}),
            ...(chance(0.5) ? { designFactor: one(0.4, 0.5, 0.6, 0.72, 0.8) } : {}),
          },
        }
      : {}),
    repair: {
      class: repairClass,
      life: `${life} year`,
      ...(method === undefined ? {} : { method }),
      ...(chance(0.3) ? { loading: one('rare', 'continuous') } : {}),
      ...(chance(0.2) ? { leakFactorByFormula: chance(0.7) } : {}),
      ...(chance(0.15) ? { availableOverlap: as(20, 300, 'mm', 3) } : {}),
    },
    laminate,
    wrap:
      form === 'tape'
        ? {
            form,
            width: as(40, 150, 'mm', 2),
            overlap: `${one(50, 50, 55, 66.7, 75)} %`,
            rollLength: as(8, 25, 'm', 3),
            ...(chance(0.6) ? { waste: as(5, 20, '%', 2) } : {}),
          }
        : {
            form,
            width: as(120, 500, 'mm', 3),
            rollLength: as(15, 50, 'm', 3),
            ...(chance(0.6) ? { finalLap: as(25, 150, 'mm', 3) } : {}),
            ...(chance(0.6) ? { waste: as(5, 20, '%', 2) } : {}),
          },
    resin: chance(0.3)
      ? 'none'
      : {
          // A ply of 1.3 to 2.2 g/cm3.
          fabricWeight: `${figure(between(1300, 2200) * ply * share, 3)} g/m2`,
          fibreMassFraction: `${figure(100 * share, 3)} %`,
          parts: { base: 100, hardener: one(20, 30, 45, 50) },
          kitMass: as(1, 6, 'kg', 2),
          rate: as(0.1, 0.5, 'kg/min', 2),
          ...(chance(0.6) ? { waste: as(5, 25, '%', 2) } : {}),
        },
    filler: chance(0.2)
      ? 'none'
      : {
          name: 'drawn filler',
          thickness: as(1, 4, 'mm', 2),
          thicknessOverDefect: as(4, 10, 'mm', 2),
          ...(chance(0.98) ? { greatestLift: chance(0.93) ? as(22, 40, 'mm', 3) : as(3, 12, 'mm', 3) } : {}),
          density: as(1.2, 1.8, 'g/cm3', 3),
          parts: { base: 100, hardener: one(25, 50, 100) },
          kitMass: as(0.5, 3, 'kg', 2),
          rate: as(0.05, 0.3, 'kg/min', 2),
          ...(chance(0.6) ? { waste: as(5, 20, '%', 2) } : {}),
          ...(chance(0.06)
            ? {
                underWholeWrap: true,
                ...(chance(0.7) ? { qualifiedOverFiller: { energyReleaseRate: as(80, 200, 'J/m2', 3) } } : {}),
              }
            : {}),
          cure: drawCure(draw, [2, 8], [12, 30]),
        },
    site: {
      pipeTemperature: `${installed} degC`,
      airTemperature: `${figure(installed + between(-5, 3), 3)} degC`,
      relativeHumidity: as(30, 88, '%', 3),
      ...(chance(0.7)
        ? { instruments: { temperatureError: as(0.2, 1, 'K', 2), humidityError: as(1, 5, '%', 2) } }
        : {}),
      ...(chance(0.3)
        ? {
            history: Array.from({ length: chance(0.1) ? 1 : 10 }, () => ({
              duration: `${hours()} h`,
              temperature: `${figure(installed + between(-5, 6), 3)} degC`,
            })),
          }
        : {}),
      ...(chance(0.8) ? { forecast } : {}),
      ...(chance(0.8)
        ? {
            surface: {
              grade: one('St 3', 'SP 11', 'Sa 2', 'Sa 2 1/2', 'Sa 2 1/2', 'Sa 3'),
              profile: as(40, 100, 'um', 3),
              ...(chance(0.7) ? { salts: as(0.005, 0.035, 'g/m2', 2) } : {}),
              ...(chance(0.7)
                ? { qualified: { grade: one('SP 11', 'Sa 2', 'Sa 2 1/2'), profile: as(40, 75, 'um', 3) } }
                : {}),
            },
          }
        : {}),
    },
    ...(hole && (live || chance(0.4)) && chance(0.97) ? { seal } : {}),
    ...(chance(0.85)
      ? {
          crew: {
            layingSpeed: as(0.3, 4, 'm/min', 2),
            crews: one(1, 1, 2),
            ...(chance(0.3) ? { soakTime: as(0, 2, 'min', 2) } : {}),
            start: '07:30',
          },
        }
      : {}),
    ...(chance(0.85)
      ? {
          acceptance: {
            ...(chance(0.7)
              ? { hardnessScale: 'Shore D', qualifiedHardness: figure(between(60, 90), 3) }
              : { hardnessScale: 'Barcol', qualifiedHardness: figure(between(30, 70), 3) }),
            pressureTest: chance(0.2)
              ? 'none'
              : {
                  ...(chance(0.75) ? { medium: 'liquid', liquid: 'fresh water' } : { medium: 'gas' }),
                  length: as(5, 200, 'm', 3),
                  atmosphere: '1.013 bar',
                  ...(chance(0.98)
                    ? {
                        lowestRating: `${figure(pressure * (chance(0.95) ? between(1.6, 3) : between(0.8, 1.1)), 3)} bar`,
                      }
                    : {}),
                },
          },
        }
      : {}),
  };
}
