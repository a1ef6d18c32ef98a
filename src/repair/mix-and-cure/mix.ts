import { heading, step } from '../../formula/index.js';
import { metalLossDepth } from '../../pipe/index.js';
import type { Area, Length, Mass, MassFlow, Time, Volume } from '../../quantity/index.js';
import {
  batchPlan,
  batchSplit,
  collarVolume,
  defectVolume,
  laminateResin,
  massWithWaste,
  usableMass,
} from '../../resin/index.js';
import { practice } from '../../rules/index.js';
import { tapeArea } from '../../wrap/index.js';
import type { Filler, Parts, WetLayUp } from '../case/case.js';
import type {
  AsFound,
  CureDesigns,
  ExtentDesign,
  MixDesign,
  MixDesigns,
  SheetDesign,
  TapeDesign,
} from '../design/design.js';
import { type Open, open } from '../job/stage.js';
import { assume, attempt, type Workbook } from '../job/workbook.js';
import { laidLength } from '../wrap/wrap.js';

/** From the start of kneading or stirring to one even colour. */
export const MIXING_TIME = practice.mixingTime.value;

/** What is mixed on site: filler under the wrap, resin for it. */
export function planMixes(
  work: Workbook,
  {
    found,
    extent,
    wrap,
    cures,
  }: { found: AsFound; extent: ExtentDesign; wrap: TapeDesign | SheetDesign; cures: CureDesigns },
): MixDesigns | Open {
  const { filler: asked, resin, defect, wrap: stock } = work.case;
  const filler =
    asked === 'none' || cures.filler === 'none'
      ? 'none'
      : planFiller(work, asked, {
          outsideDiameter: found.outsideDiameter,
          axialLength: asked.underWholeWrap === true ? laidLength(wrap, extent) : extent.defectLength,
          defectLength: extent.defectLength,
          defectWidth: defect.circumferentialWidth,
          workingTime: cures.filler.workingTime,
        });
  const fabricArea =
    wrap.form === 'tape' ? tapeArea({ tapeWidth: stock.width, tapeLength: wrap.tapeLength }) : wrap.sheetArea;
  const laminateResin =
    resin === 'none' ? 'none' : planLaminateResin(work, resin, fabricArea, cures.laminate.workingTime);
  if (filler === undefined || laminateResin === undefined) return open;
  return { filler, laminateResin };
}

/** What is built up under the laminate. */
export interface FillerDemand {
  readonly outsideDiameter: Length;
  /** Length that is built up: the defect, never the bonded overlap. */
  readonly axialLength: Length;
  readonly defectLength: Length;
  readonly defectWidth: Length;
  readonly workingTime: Time;
}

/** Filler to mix, in batches that can be used up. */
export function planFiller(work: Workbook, filler: Filler, demand: FillerDemand): MixDesign | undefined {
  const { recorder } = work;
  heading(recorder, 'Filler');
  const { defect, pipe } = work.case;
  const { kind, cause } = defect;
  const outside = kind === 'metal loss' && (cause === 'external corrosion' || cause === 'mechanical damage');
  // An external pit is filled too; taken with its deepest depth all over, since filler left over costs little.
  const cavity = outside
    ? step(recorder, 'resin/defect-volume', defectVolume, {
        length: demand.defectLength,
        width: demand.defectWidth,
        depth: step(recorder, 'pipe/metal-loss-depth', metalLossDepth, {
          wallThickness: pipe.wallThickness,
          remainingWall: defect.remainingWall,
        }),
        shape: 'flat-bottomed',
      })
    : (0 as Volume);
  const volume = step(recorder, 'resin/collar-volume', collarVolume, {
    outsideDiameter: demand.outsideDiameter,
    thickness: filler.thickness,
    axialLength: demand.axialLength,
    patchLength: Math.min(demand.defectLength, demand.axialLength) as Length,
    patchWidth: demand.defectWidth,
    patchThickness: filler.thicknessOverDefect,
    defectVolume: cavity,
  });
  const waste = assume(work, filler.waste, practice.mixWaste);
  const mass = step(recorder, 'resin/mass-with-waste', massWithWaste, { volume, density: filler.density, waste });
  const batches = planBatches(work, filler, mass, demand.workingTime);
  return batches && { material: filler.name, volume, mass, ...batches };
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
  const mass = step(recorder, 'resin/laminate-resin', laminateResin, {
    fabricArea,
    arealWeight: resin.fabricWeight,
    fibreMassFraction: resin.fibreMassFraction,
    waste: assume(work, resin.waste, practice.mixWaste),
  });
  const batches = planBatches(work, resin, mass, workingTime);
  return (
    batches && {
      material: `${work.case.laminate.name}, resin`,
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
    const mixingTime = assume(work, undefined, practice.mixingTime);
    const usable = step(recorder, 'resin/usable-mass', usableMass, {
      placingRate: material.rate,
      workingTime,
      mixingTime,
    });
    const plan = step(recorder, 'resin/batch-plan', batchPlan, {
      mass,
      usableMass: usable,
      kitMass: material.kitMass,
      wholeKits: false,
    });
    const split = step(recorder, 'resin/batch-split', batchSplit, {
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
