import type { Found } from './pipe-as-found.js';
import type { Job, Seal } from './read-job.js';

/** Poisson's ratio and modulus of a steel pipe whose case does not give them. */
const NU = 0.3;
const E_STEEL = 207e9;

export interface SealFigures {
  readonly padDiameter: number;
  readonly padGovernedBy: string;
  readonly forceOnPad: number;
  readonly forceOnHole: number;
  readonly fastenerTension?: number;
  readonly torque?: number;
  readonly strapStress?: number;
  readonly contactPressure?: number;
  readonly forming: string;
  readonly bandLength: number;
  readonly highestPressure: number;
  readonly limitedBy: string;
  readonly endLoadNotCarried: number;
  readonly jet?: Readonly<Record<string, number | string>>;
}

/** The pad: the larger of a multiple of the hole, read as area or as diameter, and a margin all round (5.6 of the note). */
export function padOf({ pad }: Seal, hole: number): { readonly diameter: number; readonly by: string } {
  const readings: [string, number][] = [['margin', hole + 2 * pad.margin]];
  if (pad.multipleOf !== 'diameter') readings.push(['area', hole * Math.sqrt(pad.multiple)]);
  if (pad.multipleOf !== 'area') readings.push(['diameter', hole * pad.multiple]);
  const [by, diameter] = readings.reduce((a, b) => (b[1] > a[1] ? b : a));
  return { diameter, by };
}

/** Putty under a sheet and tightened bands (laminate-and-wrap.md, section 5), per pascal of pressure in the line. */
export function leakSeal(job: Job, found: Found): SealFigures | undefined {
  const { seal, pipe, service } = job;
  const hole = found.holeToday;
  if (seal === undefined || hole === undefined) return undefined;
  const { band, fastener, sheet } = seal;
  const D = found.outsideDiameter;
  const pressure = job.line.pressure ?? 0;
  const { diameter: pad, by } = padOf(seal, hole);
  const padArea = (Math.PI * pad * pad) / 4;

  // Tension at the fastener for one pascal: both ends of each band pull over the half angle of the pad, less friction.
  const reach = pad / D;
  // Bands beside the pad hold nothing.
  const over = Math.min(band.count, pad / band.width);
  const tension = (band.holdingFactor * padArea * Math.exp(band.friction * Math.PI)) / (2 * over * Math.sin(reach));
  const atLeast = tension;
  const atMost = (tension * (1 + fastener.scatter)) / (1 - fastener.scatter);
  const strapStress = atMost / (band.width * band.thickness);
  const contact = atMost / ((D / 2) * band.width);

  // The sheet spans the hole as a plate; the thinned pipe under the band buckles or yields, whichever comes nearer.
  const nu = sheet.poissonRatio;
  const share = sheet.support === 'clamped' ? 0.75 : (3 * (3 + nu)) / 8;
  const sheetLimit = (sheet.yieldStrength / sheet.factor / share) * (sheet.thickness / (hole / 2)) ** 2;
  const t = found.wallToday;
  const buckling = ((2 * (pipe.material.modulus ?? E_STEEL)) / (1 - NU * NU)) * (t / D) ** 3;
  const yielding = (2 * pipe.material.yieldStrength * t) / D;
  const crushing = 1 / (1 / buckling + 1 / yielding);
  const limits: [string, number][] = [
    ['site', seal.siteLimit],
    ['strap', band.strength / band.factor / strapStress],
    ['fastener', fastener.permittedTension / atMost],
    ['sheet', sheetLimit],
    ['pipe', crushing / seal.pipeFactor / contact],
  ];
  const [limitedBy, highestPressure] = limits.reduce((a, b) => (b[1] < a[1] ? b : a));
  const live = pressure > 0;
  return {
    padDiameter: pad,
    padGovernedBy: by,
    forceOnPad: pressure * padArea,
    forceOnHole: (pressure * Math.PI * hole * hole) / 4,
    ...(live
      ? {
          fastenerTension: atLeast * pressure,
          torque: (fastener.nutFactor * fastener.threadDiameter * atLeast * pressure) / (1 - fastener.scatter),
          strapStress: strapStress * pressure,
          contactPressure: contact * pressure,
        }
      : {}),
    forming: (sheet.modulus * sheet.thickness) / (D + sheet.thickness) > sheet.yieldStrength ? 'pre-roll' : 'elastic',
    bandLength: Math.PI * (D + 2 * sheet.thickness + band.thickness) + band.overlap,
    highestPressure,
    limitedBy,
    endLoadNotCarried: (service.designPressure * Math.PI * D * D) / 4 + Math.max(0, job.loads.axialForce ?? 0),
    ...(seal.fluid !== undefined && live ? { jet: jetOf(seal.fluid, hole, pressure, job.site.pipeTemperature) } : {}),
  };
}

const R = 8.31446261815324;

/** What leaves through the hole, upper bound: no contraction (5.8 of the note). */
function jetOf(
  fluid: NonNullable<Seal['fluid']>,
  hole: number,
  pressure: number,
  temperature: number,
): Record<string, number | string> {
  const area = (Math.PI * hole * hole) / 4;
  const reaction = 2 * area * pressure;
  if (fluid.phase === 'liquid') {
    const speed = Math.sqrt((2 * pressure) / fluid.density);
    return { reaction, speed, volumeFlow: area * speed };
  }
  // A sharp hole at room temperature; choked above the critical ratio.
  const { heatCapacityRatio: k, molarMass: M, atmosphere } = fluid;
  const inside = pressure + atmosphere;
  const ratio = atmosphere / inside;
  const critical = (2 / (k + 1)) ** (k / (k - 1));
  const root = Math.sqrt((k * M) / (R * temperature));
  const choked = ratio <= critical;
  const flow = choked
    ? root * (2 / (k + 1)) ** ((k + 1) / (2 * (k - 1)))
    : root * Math.sqrt((2 / (k - 1)) * (ratio ** (2 / k) - ratio ** ((k + 1) / k)));
  return { regime: choked ? 'choked' : 'unchoked', reaction, massFlow: area * inside * flow };
}
