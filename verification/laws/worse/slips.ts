import { inLeaf } from './leaves.js';
import { change, type Worsening } from './worsening.js';

/** Slips and choices that a case may hold and a reader has to be told of, and numbers that no case may hold. */

export const slips: readonly Worsening[] = [
  {
    name: 'an activation energy in kJ for J',
    demands: 'a warning of its field',
    of: (base) => {
      const { cure } = base.laminate;
      if (cure.mechanism !== 'two-part reaction' || cure.activationEnergy === undefined) return undefined;
      return change(base, 'laminate', { cure: { ...cure, activationEnergy: (cure.activationEnergy / 1000) as never } });
    },
  },
  {
    name: 'a radius for a diameter',
    demands: 'a warning of its field',
    of: (base) => change(base, 'pipe', { outsideDiameter: ((base.pipe.outsideDiameter ?? 0) / 2) as never }),
  },
  {
    name: 'fabric in g for kg',
    demands: 'a warning of its field',
    of: (base) =>
      base.resin === 'none'
        ? undefined
        : { ...base, resin: { ...base.resin, fabricWeight: (base.resin.fabricWeight * 1000) as never } },
  },
  {
    name: 'a strain in per cent for parts',
    demands: 'a warning of its field',
    of: (base) => change(base, 'laminate', { strainToFailure: ((base.laminate.strainToFailure ?? 0) / 100) as never }),
  },
  {
    name: 'kelvin for degrees Celsius',
    demands: 'a warning of its field',
    of: (base) => change(base, 'site', { pipeTemperature: (base.site.pipeTemperature - 273.15) as never }),
  },
  {
    name: 'the pipe shares the load',
    demands: 'a warning more',
    of: (base) =>
      base.repair.method === 'substrate ignored'
        ? change(base, 'repair', { method: 'substrate sharing load' })
        : undefined,
  },
  {
    name: 'the long-term strength counts',
    demands: 'a warning more',
    of: (base) =>
      base.repair.method === 'substrate ignored' ? change(base, 'repair', { method: 'long-term strength' }) : undefined,
  },
  {
    name: 'another flow stress',
    demands: 'a warning more',
    of: (base) =>
      base.assessment?.flowStress === undefined && base.defect.kind === 'metal loss'
        ? { ...base, assessment: { ...base.assessment, flowStress: 'SMYS + 69 MPa' } }
        : undefined,
  },
  {
    name: 'a safety factor of 1.2',
    demands: 'a warning more',
    of: (base) =>
      base.defect.kind === 'metal loss'
        ? { ...base, assessment: { safetyFactor: 1.2, flowStress: base.assessment?.flowStress } }
        : undefined,
  },
  {
    name: 'the effective area',
    demands: 'a warning more',
    of: (base) =>
      base.defect.profile === undefined
        ? undefined
        : { ...base, assessment: { ...base.assessment, method: 'effective area' } },
  },
  { name: 'a number that is none', demands: 'refused', of: (base, factor) => inLeaf(base, factor, Number.NaN) },
  {
    name: 'a crew that does not move',
    demands: 'refused',
    of: (base) => (base.crew === undefined ? undefined : { ...base, crew: { ...base.crew, layingSpeed: 0 as never } }),
  },
  {
    name: 'a profile that misses the defect',
    demands: 'refused',
    of: (base) =>
      base.defect.profile === undefined
        ? undefined
        : change(base, 'defect', {
            profile: base.defect.profile.map(({ position, depth }) => ({ position, depth: (depth / 3) as never })),
          }),
  },
];
