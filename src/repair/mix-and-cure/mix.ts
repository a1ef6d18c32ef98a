import { heading, step } from '../../formula/index.js';
import type { Area, Length, Mass, MassFlow, Ratio, Time, Volume } from '../../quantity/index.js';
import {
  batchPlan,
  batchSplit,
  collarVolume,
  defectVolume,
  laminateResin,
  massWithWaste,
  usableMass,
} from '../../resin/index.js';
import type { Filler, Parts, WetLayUp } from '../case/case.js';
import type { MixDesign } from '../design/design.js';
import { assumeQuantity, attempt, type Workbook } from '../job/workbook.js';

/** From the start of kneading or stirring to one even colour: common practice. */
export const MIXING_TIME = 300 as Time;

/** What is built up under the laminate. */
export interface FillerDemand {
  readonly outsideDiameter: Length;
  /** Length that is built up: the defect, never the bonded overlap. */
  readonly axialLength: Length;
  readonly defectLength: Length;
  readonly defectWidth: Length;
  readonly defectDepth: Length;
  readonly workingTime: Time;
}

/** Filler to mix, in batches that can be used up. */
export function planFiller(work: Workbook, filler: Filler, demand: FillerDemand): MixDesign | undefined {
  const { recorder } = work;
  heading(recorder, 'Filler');
  const { kind, cause } = work.case.defect;
  const outside = kind === 'metal loss' && (cause === 'external corrosion' || cause === 'mechanical damage');
  // An external pit is filled too; taken with its deepest depth all over, since filler left over costs little.
  const cavity = outside
    ? step(recorder, defectVolume, {
        length: demand.defectLength,
        width: demand.defectWidth,
        depth: demand.defectDepth,
        shape: 'flat-bottomed',
      })
    : (0 as Volume);
  const volume = step(recorder, collarVolume, {
    outsideDiameter: demand.outsideDiameter,
    thickness: filler.thickness,
    axialLength: demand.axialLength,
    patchLength: Math.min(demand.defectLength, demand.axialLength) as Length,
    patchWidth: demand.defectWidth,
    patchThickness: filler.thicknessOverDefect,
    defectVolume: cavity,
  });
  const waste = wasteOf(work, filler.waste, 'filler');
  const mass = step(recorder, massWithWaste, { volume, density: filler.density, waste });
  const batches = planBatches(work, filler, mass, demand.workingTime);
  return batches && { material: filler.name, use: 'filler', volume, mass, ...batches };
}

/** Resin to wet out the fabric of the laminate, in batches that can be used up. */
export function planLaminateResin(
  work: Workbook,
  resin: WetLayUp,
  fabricArea: Area,
  workingTime: Time,
): MixDesign | undefined {
  const { recorder } = work;
  heading(recorder, 'Laminate resin');
  const mass = step(recorder, laminateResin, {
    fabricArea,
    arealWeight: resin.fabricWeight,
    fibreMassFraction: resin.fibreMassFraction,
    waste: wasteOf(work, resin.waste, 'laminate resin'),
  });
  const batches = planBatches(work, resin, mass, workingTime);
  return (
    batches && {
      material: `${work.case.laminate.name}, resin`,
      use: 'laminate resin',
      area: fabricArea,
      mass,
      ...batches,
    }
  );
}

interface Mixed {
  readonly parts: Parts;
  readonly kitMass: Mass;
  readonly rate: MassFlow;
}

type Batches = Pick<MixDesign, 'base' | 'hardener' | 'batches' | 'batchMass' | 'limitedBy' | 'kits'>;

function planBatches(work: Workbook, material: Mixed, mass: Mass, workingTime: Time): Batches | undefined {
  const { recorder } = work;
  return attempt(work, 'mixing', () => {
    assumeQuantity(work, undefined, {
      name: 'time for mixing a batch',
      kind: 'time',
      value: MIXING_TIME,
      tag: 'practice',
      because: 'about five minutes of stirring to one even colour',
    });
    const usable = step(recorder, usableMass, {
      placingRate: material.rate,
      workingTime,
      mixingTime: MIXING_TIME,
    });
    const plan = step(recorder, batchPlan, { mass, usableMass: usable, kitMass: material.kitMass, wholeKits: false });
    const split = step(recorder, batchSplit, {
      batchMass: plan.batchMass,
      partsA: material.parts.base,
      partsB: material.parts.hardener,
    });
    return {
      batches: plan.batches,
      batchMass: plan.batchMass,
      base: split.massA,
      hardener: split.massB,
      limitedBy: plan.governing,
      kits: plan.kits,
    };
  });
}

function wasteOf(work: Workbook, given: Ratio | undefined, what: string): Ratio {
  return assumeQuantity(work, given, {
    name: `waste of ${what}`,
    kind: 'ratio',
    value: 0.15 as Ratio,
    tag: 'practice',
    because: 'within the usual 10 to 25 per cent; it costs material only',
  });
}
