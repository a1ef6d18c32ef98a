import type { Designed } from '../../../src/repair/index.js';
import { forceOf, hottest, pressureOf, reaches, wallThen, wrappedOf } from './stated.js';

/**
 * The laid laminate, with the pipe where the method counts on it, balances the pressure and the force both ways while
 * neither passes its strain or its stress: written from the balance of a closed cylinder, not from the equations of the
 * rule sets.
 */

interface Section {
  readonly pressure: number;
  readonly force: number;
  /** D, of the pipe; D_w, of the laminate. */
  readonly pipe: number;
  readonly wrapped: number;
  readonly wall: number;
  readonly steel: number;
  readonly round: number;
  readonly along: number;
  /** Of the laid thickness, and of the plies that go through along the pipe. */
  readonly thickness: number;
  readonly through: number;
}

/** Stiffness of a ply at an angle to its first direction, where it shears freely; never above that along it. */
function turned(first: number, second: number, shear: number, poisson: number, angle: number): number {
  const [c, s] = [Math.cos(angle) ** 2, Math.sin(angle) ** 2];
  return Math.min(first, 1 / ((c * c) / first + (s * s) / second + c * s * (1 / shear - (2 * poisson) / first)));
}

/** The angle of a tape to the hoop, by its advance in one turn on the bare pipe. */
export function leadOf({ case: { wrap, pipe } }: Designed): number {
  if (wrap.form === 'sheet') return 0;
  return Math.asin(Math.min(1, (wrap.width * (1 - wrap.overlap)) / (Math.PI * (pipe.outsideDiameter as number))));
}

function sectionOf(design: Designed): Section {
  const { case: stated, laminate } = design;
  const { hoopModulus, axialModulus, poissonRatio, shearModulus = 0, atDesignTemperature: warm } = stated.laminate;
  const round = Math.min(hoopModulus, warm?.hoopModulus ?? hoopModulus);
  const along = Math.min(axialModulus, warm?.axialModulus ?? axialModulus);
  const angle = leadOf(design);
  const thickness = laminate.laidThickness;
  const through =
    laminate.joints === undefined ? thickness : laminate.joints.carryingPlies * stated.laminate.plyThickness;
  const pipe = stated.pipe.outsideDiameter as number;
  const pressure = pressureOf(stated);
  return {
    pressure,
    force: (Math.PI / 4) * pressure * pipe * pipe + Math.abs(forceOf(stated)),
    pipe,
    wrapped: wrappedOf(stated),
    wall: wallThen(stated),
    steel: stated.pipe.material.modulus ?? 207e9,
    round: angle === 0 ? round : turned(round, along, shearModulus, poissonRatio, angle),
    along: angle === 0 ? along : turned(along, round, shearModulus, (poissonRatio * along) / round, angle),
    thickness,
    through,
  };
}

/** By strains that agree: the pipe holds what it carries at the strain of the laminate, up to its own limit. */
function byStrain(
  design: Designed,
  section: Section,
  limit: number,
  inside: string,
  isHeld = false,
): string | undefined {
  const { hoopStrain, axialStrain } = design.laminate;
  const { pressure, force, pipe, wrapped, wall, steel, round, along, thickness, through } = section;
  // Where the pipe may not pass a stress, what lies on it strains no further.
  const most = (strain: number): number => (isHeld ? Math.min(strain, limit / steel) : strain);
  const metalRound = Math.min(limit, steel * hoopStrain) * wall;
  const metalAlong = Math.min(limit, steel * axialStrain) * wall;
  if (!isHeld && !reaches(thickness * round * hoopStrain + metalRound, (pressure * wrapped) / 2))
    return `round the pipe the laminate${inside} passes its strain`;
  // The pressure round a bare laminate shortens it, by its Poisson's ratio.
  const shortened = limit === 0 ? (design.case.laminate.poissonRatio * pressure * wrapped * along) / (2 * round) : 0;
  const ofPly = through * along * most(axialStrain) + shortened;
  if (!reaches(ofPly * wrapped + metalAlong * pipe, force / Math.PI))
    return `along the pipe the laminate${inside} passes its strain`;
  return undefined;
}

/** Pipe and laminate as two layers that strain alike, with what Poisson's ratio adds: no stress and no strain passes its limit. */
function shared(design: Designed, section: Section): string | undefined {
  const { case: stated, laminate, found } = design;
  const limit = stated.pipe.material.allowableStress ?? 0;
  const { pressure, force, pipe, wrapped, wall, steel, round, along, thickness } = section;
  const counts = found.strength === undefined ? wall : (found.strength.safePressure * pipe) / (2 * limit);
  const nu = 0.3;
  const minor = (stated.laminate.poissonRatio * along) / round;
  const metal = (counts * steel) / (1 - nu * nu);
  const ply = thickness / (1 - stated.laminate.poissonRatio * minor);
  // Along the pipe the laminate stands on a circle that is longer by D_w/D.
  const lever = wrapped / pipe;
  const cross = nu * metal + ply * stated.laminate.poissonRatio * along;
  const crossAlong = nu * metal + ply * stated.laminate.poissonRatio * along * lever;
  const [a, c] = [metal + ply * round, metal + ply * along * lever];
  const [n, m] = [(pressure * wrapped) / 2, force / (Math.PI * pipe)];
  const det = a * c - cross * crossAlong;
  const [hoop, axial] = [(n * c - cross * m) / det, (a * m - crossAlong * n) / det];
  const stressRound = (steel / (1 - nu * nu)) * (hoop + nu * axial);
  const stressAlong = (steel / (1 - nu * nu)) * (axial + nu * hoop);
  if (counts > 0 && !reaches(limit * (1 + 1e-6), stressRound))
    return 'with closed ends the pipe passes its allowable stress round it';
  if (counts > 0 && !reaches(limit * (1 + 1e-6), stressAlong))
    return 'with closed ends the pipe passes its allowable stress along it';
  if (!reaches(laminate.hoopStrain * (1 + 1e-6), hoop))
    return 'with closed ends the laminate passes its strain round the pipe';
  if (!reaches(laminate.axialStrain * (1 + 1e-6), axial))
    return 'with closed ends the laminate passes its strain along the pipe';
  return undefined;
}

function sharedRound(design: Designed, section: Section): string | undefined {
  const { case: stated, laminate, found } = design;
  const limit = stated.pipe.material.allowableStress ?? 0;
  const { pressure, pipe, wrapped, wall, steel, round, thickness } = section;
  const bears = found.strength === undefined ? (2 * limit * wall) / pipe : found.strength.safePressure;
  const used = (bears * Math.min(limit, steel * laminate.hoopStrain)) / limit;
  // What the pipe carries acts on its own circle, what the laminate carries on the larger one.
  const strain = Math.min(limit / steel, laminate.hoopStrain);
  if (!reaches(thickness * round * strain, (pressure * wrapped - used * pipe) / 2 - 1e-6 * pressure * wrapped))
    return 'round the pipe the shared load passes what pipe and laminate hold at one strain';
  return undefined;
}

const HOOP = 'hoop stress of the pipe, load shared';
const AXIAL = 'axial stress of the pipe, load shared';

/** With the thickness that one line of the method asks for by itself, whichever governs. */
function lineOf({ laminate }: Designed, section: Section, line: string): Section {
  const asked = laminate.thickness.candidates.find(({ criterion }) => criterion === line)?.value ?? 0;
  return { ...section, thickness: asked, through: asked };
}

export function equilibrium(design: Designed): string | undefined {
  const section = sectionOf(design);
  const { laminate } = design;
  const { material } = design.case.pipe;
  switch (laminate.method) {
    case 'substrate ignored':
      return byStrain(design, section, 0, '');
    case 'substrate yielded':
      return byStrain(design, section, material.yieldStrength, ' on the yielded pipe');
    case 'substrate sharing load':
      return (
        byStrain(design, lineOf(design, section, AXIAL), material.allowableStress ?? 0, ' on the sharing pipe', true) ??
        sharedRound(design, lineOf(design, section, HOOP)) ??
        shared(design, section)
      );
    default:
      return longTerm(design, section);
  }
}

function longTerm({ case: stated }: Designed, { thickness, pressure, wrapped }: Section): string | undefined {
  const given = stated.laminate.longTermStrength;
  if (given === undefined) return 'no long-term strength is stated';
  const { strength, testTemperature = 0, second } = given;
  if (hottest(stated) > Math.max(testTemperature, second?.testTemperature ?? 0))
    return 'the long-term strength counts above the temperature of its tests';
  if (!reaches(thickness * strength, (pressure * wrapped) / 2))
    return 'round the pipe the long-term strength is passed';
  return undefined;
}
