import type { Length } from '../../../src/quantity/index.js';
import type { CureSheet, RepairCase } from '../../../src/repair/index.js';
import { change, less, times, type Worsening } from './worsening.js';

/** More load, a larger loss, a weaker material: by a factor. */

/** A load that is there grows away from 0; one that is not begins. */
function load(key: 'axialForce' | 'bendingMoment' | 'torsion' | 'shearForce', first: number): Worsening['of'] {
  return (base, factor) => {
    const value = base.loads[key];
    const more = value === 'none' ? first * (factor - 1) : value * factor;
    return change(base, 'loads', { [key]: more } as Partial<RepairCase['loads']>);
  };
}

/** The profile of a defect that grows with it. */
function stretched(
  { defect: { profile } }: RepairCase,
  along: (position: number) => number,
  down: (depth: number) => number,
): Partial<RepairCase['defect']> {
  if (profile === undefined) return {};
  return {
    profile: profile.map(({ position, depth }) => ({
      position: along(position) as Length,
      depth: down(depth) as Length,
    })),
  };
}

function quicker(cure: CureSheet, factor: number): CureSheet {
  if (cure.mechanism === 'two-part reaction') return { ...cure, workingTime: less(cure.workingTime, factor) };
  return { ...cure, rows: cure.rows.map((row) => ({ ...row, workingTime: less(row.workingTime, factor) })) };
}

export const bySize: readonly Worsening[] = [
  {
    name: 'more pressure',
    of: (base, factor) => change(base, 'service', { designPressure: times(base.service.designPressure, factor) }),
  },
  { name: 'more axial force', of: load('axialForce', 50e3) },
  {
    name: 'a line that is held',
    of: (base, factor) => {
      const tieInTemperature = base.service.designTemperature - 25 * (factor - 1);
      return change(base, 'loads', { heldLine: { tieInTemperature } as never });
    },
  },
  {
    name: 'a held line tied in colder',
    // Below the coldest steel, so that it never pulls: a colder tie-in then pushes more, and that is all.
    from: (base, share) => {
      const { lowestTemperature = 273 as never } = base.service;
      const tieInTemperature = Math.min(270, lowestTemperature) - 20 * share;
      const held = change(base, 'loads', { heldLine: { tieInTemperature } as never });
      return change(held, 'service', { lowestTemperature });
    },
    of: (base, factor) => {
      const { heldLine } = base.loads;
      if (heldLine === undefined || heldLine === 'none') return undefined;
      return change(base, 'loads', {
        heldLine: { tieInTemperature: (heldLine.tieInTemperature - 20 * (factor - 1)) as never },
      });
    },
  },
  { name: 'more bending', of: load('bendingMoment', 5e3) },
  { name: 'more torsion', of: load('torsion', 2e3) },
  { name: 'more shear', of: load('shearForce', 10e3) },
  {
    name: 'more external pressure',
    of: (base, factor) => {
      const { externalPressure } = base.loads;
      const more = externalPressure === 'none' ? 1e5 * (factor - 1) : externalPressure * factor;
      return change(base, 'loads', { externalPressure: more as never });
    },
  },
  {
    name: 'more soil',
    of: (base, factor) => {
      const { soil } = base.loads;
      const first = { cover: 0.5 * factor, density: 1800, waterAbove: 'none', traffic: 'none' };
      const more = soil === 'none' ? first : { ...soil, cover: soil.cover * factor };
      return change(base, 'loads', { soil: more as never });
    },
  },
  {
    name: 'more ground water and traffic',
    of: (base, factor) => {
      const { soil } = base.loads;
      if (soil === 'none') return undefined;
      const waterAbove = soil.waterAbove === 'none' ? factor - 1 : soil.waterAbove * factor;
      const traffic = soil.traffic === 'none' ? 10e3 * (factor - 1) : soil.traffic * factor;
      return change(base, 'loads', { soil: { ...soil, waterAbove, traffic } as never });
    },
  },
  {
    name: 'a longer free span',
    of: (base, factor) => {
      const { freeSpan } = base.loads;
      if (freeSpan === undefined) return undefined;
      return change(base, 'loads', { freeSpan: times(freeSpan, factor) });
    },
  },
  {
    name: 'more cycles',
    of: (base, factor) => {
      const { cycles } = base.loads;
      if (cycles === 'none') return undefined;
      return change(base, 'loads', { cycles: { ...cycles, number: Math.round(cycles.number * factor ** 4) } });
    },
  },
  {
    name: 'a wider span of cycles',
    of: (base, factor) => {
      const { cycles } = base.loads;
      if (cycles === 'none') return undefined;
      return change(base, 'loads', { cycles: { ...cycles, lowestPressure: less(cycles.lowestPressure, factor) } });
    },
  },
  {
    name: 'a longer defect',
    of: (base, factor) =>
      change(base, 'defect', {
        axialLength: times(base.defect.axialLength, factor),
        ...stretched(
          base,
          (position) => position * factor,
          (depth) => depth,
        ),
      }),
  },
  {
    name: 'a wider defect',
    of: (base, factor) => {
      const width = times(base.defect.circumferentialWidth, factor);
      if (width > Math.PI * (base.pipe.outsideDiameter ?? 0)) return undefined;
      return change(base, 'defect', { circumferentialWidth: width });
    },
  },
  {
    name: 'a deeper defect',
    of: (base, factor) => {
      const { remainingWall } = base.defect;
      const deeper = remainingWall - remainingWall / factor;
      const deeperBy = (depth: number): number => (depth === 0 ? 0 : depth + deeper);
      return change(base, 'defect', {
        remainingWall: less(remainingWall, factor),
        ...stretched(base, (position) => position, deeperBy),
      });
    },
  },
  {
    name: 'a nearer attachment',
    of: (base, factor) => {
      const { nearestAttachment } = base.defect;
      if (nearestAttachment === undefined) return undefined;
      return change(base, 'defect', { nearestAttachment: less(nearestAttachment, factor ** 2) });
    },
  },
  {
    name: 'a larger hole',
    of: (base, factor) => {
      const { holeDiameter, axialLength, circumferentialWidth } = base.defect;
      if (holeDiameter === undefined) return undefined;
      const larger = times(holeDiameter, factor);
      if (larger > Math.min(axialLength, circumferentialWidth)) return undefined;
      return change(base, 'defect', { holeDiameter: larger });
    },
  },
  {
    name: 'faster growth in depth',
    of: (base, factor) => {
      const { growth } = base.defect;
      if (growth === 'none' || typeof growth.depth !== 'number') return undefined;
      return change(base, 'defect', { growth: { ...growth, depth: times(growth.depth, factor) } });
    },
  },
  {
    name: 'faster growth in length',
    of: (base, factor) => {
      const { growth } = base.defect;
      if (growth === 'none') return undefined;
      return change(base, 'defect', { growth: { ...growth, length: times(growth.length, factor) } });
    },
  },
  { name: 'a longer life', of: (base, factor) => change(base, 'repair', { life: times(base.repair.life, factor) }) },
  {
    // Never below the temperature of the work: the case is drawn so, and this only rises.
    name: 'more heat',
    of: (base, factor) =>
      change(base, 'service', { designTemperature: (base.service.designTemperature + 40 * (factor - 1)) as never }),
  },
  {
    name: 'a weaker pipe',
    of: (base, factor) => {
      const { material } = base.pipe;
      const { yieldStrength, tensileStrength, allowableStress } = material;
      return change(base, 'pipe', {
        material: {
          ...material,
          yieldStrength: less(yieldStrength, factor),
          ...(tensileStrength === undefined ? {} : { tensileStrength: less(tensileStrength, factor) }),
          ...(allowableStress === undefined ? {} : { allowableStress: less(allowableStress, factor) }),
        },
      });
    },
  },
  {
    name: 'less long-term strength',
    of: (base, factor) => {
      const { longTermStrength } = base.laminate;
      if (longTermStrength === undefined) return undefined;
      return change(base, 'laminate', {
        longTermStrength: { ...longTermStrength, strength: less(longTermStrength.strength, factor) },
      });
    },
  },
  {
    name: 'a lower wet transition',
    of: (base, factor) => {
      const { glassTransition: dry, wetGlassTransition: wet = dry } = base.laminate;
      if (wet === undefined) return undefined;
      return change(base, 'laminate', { wetGlassTransition: (wet - 15 * (factor - 1)) as never });
    },
  },
  {
    name: 'lower qualified strains',
    of: (base, factor) => {
      const { hoop = 0.0035, axial = 0.0025 } = base.laminate.qualifiedStrains ?? {};
      return change(base, 'laminate', { qualifiedStrains: { hoop: hoop / factor, axial: axial / factor } as never });
    },
  },
  {
    name: 'a softer laminate',
    // Warm and cold alike: a laminate that only softens less in the heat is no worse one.
    of: (base, factor) => {
      const { hoopModulus, axialModulus, atDesignTemperature: warm } = base.laminate;
      return change(base, 'laminate', {
        hoopModulus: less(hoopModulus, factor),
        axialModulus: less(axialModulus, factor),
        ...(warm === undefined
          ? {}
          : {
              atDesignTemperature: {
                ...warm,
                hoopModulus: less(warm.hoopModulus, factor),
                axialModulus: less(warm.axialModulus, factor),
              },
            }),
      });
    },
  },
  {
    name: 'a weaker bond under a hole',
    of: (base, factor) => {
      const { energyReleaseRate, energyReleaseRateOverSeal: over } = base.laminate;
      if (energyReleaseRate === undefined) return undefined;
      return change(base, 'laminate', {
        energyReleaseRate: less(energyReleaseRate, factor),
        ...(over === undefined
          ? {}
          : { energyReleaseRateOverSeal: { ...over, energyReleaseRate: less(over.energyReleaseRate, factor) } }),
      });
    },
  },
  {
    name: 'a weaker bond in shear',
    of: (base, factor) => {
      const { lapShearStrength } = base.laminate;
      if (lapShearStrength === undefined) return undefined;
      return change(base, 'laminate', { lapShearStrength: less(lapShearStrength, factor) });
    },
  },
  {
    name: 'less working time of the laminate',
    of: (base, factor) => change(base, 'laminate', { cure: quicker(base.laminate.cure, factor) }),
  },
  {
    name: 'less working time of the filler',
    of: (base, factor) =>
      base.filler === 'none'
        ? undefined
        : { ...base, filler: { ...base.filler, cure: quicker(base.filler.cure, factor) } },
  },
];
