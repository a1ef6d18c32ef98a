import { type Draw, figure } from './random.js';

type Drawn = Record<string, unknown>;
/** From, to. */
type Span = readonly [number, number];

export function drawReaction({ chance, one, between, as }: Draw, hours: Span, minutes: Span): Drawn {
  const from = figure(between(5, 10), 3);
  return {
    mechanism: 'two-part reaction',
    referenceTemperature: `${one(20, 23, 25)} degC`,
    cureTime: as(hours[0], hours[1], 'h', 3),
    workingTime: as(minutes[0], minutes[1], 'min', 3),
    ...(chance(0.75) ? { activationEnergy: as(42, 65, 'kJ/mol', 3) } : {}),
    testedFrom: `${from} degC`,
    testedTo: as(35, 60, 'degC', 3),
    minimumTemperature: `${figure(from - (chance(0.5) ? 0 : between(0, 4)), 3)} degC`,
  };
}

function drawMoisture({ between }: Draw): Drawn {
  const [hours, minutes] = [between(6, 20), between(20, 60)];
  return {
    mechanism: 'moisture',
    rows: [0, 10, 20].flatMap((step) =>
      [25, 70].map((damp) => {
        const slower = (1 - 0.025 * step) * (1 - 0.003 * (damp - 25)) * between(0.98, 1);
        return {
          temperature: `${figure(step + between(3, 5), 3)} degC`,
          humidity: `${figure(damp + between(0, 3), 3)} %`,
          cureTime: `${figure(hours * slower, 3)} h`,
          workingTime: `${figure(minutes * slower, 3)} min`,
        };
      }),
    ),
  };
}

/** Cured by its hardener, seldom by moisture. */
export function drawCure(draw: Draw, hours: Span, minutes: Span): Drawn {
  return draw.chance(0.06) ? drawMoisture(draw) : drawReaction(draw, hours, minutes);
}

/** The contents and the heat that a material was found to resist, seldom other contents or too little heat. */
export function drawResistance({ chance, between }: Draw, contents: string, hottest: number): Drawn {
  return {
    contents: chance(0.97) ? contents : 'sea water',
    temperature: `${figure(hottest + (chance(0.95) ? between(0, 30) : -3), 4)} degC`,
    statedBy: 'data sheet (drawn)',
  };
}
