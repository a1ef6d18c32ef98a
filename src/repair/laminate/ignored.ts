import { step } from '../../formula/index.js';
import {
  pressureIgnoredAxial,
  pressureIgnoredAxialHasLimit,
  pressureIgnoredHoop,
  thicknessIgnoredAxial,
  thicknessIgnoredHoop,
} from '../../laminate/index.js';
import type { Force, GaugePressure, Length } from '../../quantity/index.js';
import type { Candidate } from '../design/design.js';
import { type Workbook, warn } from '../job/workbook.js';
import type { MethodOutcome, ThicknessJob } from './loads.js';

/** The laminate carries everything: neither the remaining wall nor the pressure during the work enters. */
export function thicknessIgnoringPipe(work: Workbook, job: ThicknessJob): MethodOutcome {
  const { recorder, case: repairCase } = work;
  const { laminate, service, repair } = repairCase;
  const { poissonRatio } = laminate;
  const { strains, found, hoopModulus } = job;
  if (repair.axialRelief === true) {
    warn(
      work,
      'The hoop thickness counts on the relief by the end load, as the case asks: it holds only while that end load is surely there.',
    );
  }
  // A push along the pipe bulges the laminate: it is counted against the hoop line, a pull never for it.
  const push = Math.min(0, job.externalForce);
  const relief = repair.axialRelief === true ? closedEnd(service.designPressure, found.outsideDiameter) : 0;
  const hoop = step(recorder, 'laminate/thickness-ignored-hoop', thicknessIgnoredHoop, {
    pressure: service.designPressure,
    outsideDiameter: job.wrappedDiameter,
    hoopModulus,
    poissonRatio,
    allowableStrain: strains.hoop,
    axialForce: (relief + push) as Force,
  });
  return [{ criterion: 'hoop strain, substrate ignored', value: hoop }, ...axialIgnoringPipe(work, job)];
}

/** The axial lines with the pipe ignored: with the pressure, and the external force while the line is without pressure. */
export function axialIgnoringPipe(work: Workbook, job: ThicknessJob): readonly Candidate<Length>[] {
  const { recorder, case: repairCase } = work;
  const { service, laminate } = repairCase;
  const { outsideDiameter } = job.found;
  const input = {
    outsideDiameter,
    hoopModulus: job.hoopModulus,
    axialModulus: job.axialModulus,
    poissonRatio: laminate.poissonRatio,
    allowableStrain: job.strains.axial,
  };
  const axial = step(recorder, 'laminate/thickness-ignored-axial', thicknessIgnoredAxial, {
    ...input,
    axialForce: job.axialForce,
    pressure: service.designPressure,
  });
  const candidates = [{ criterion: 'axial strain, substrate ignored', value: axial }];
  if (job.externalForce === 0) return candidates;
  const alone = step(
    recorder,
    'laminate/thickness-ignored-axial',
    thicknessIgnoredAxial,
    { ...input, axialForce: Math.abs(job.externalForce) as Force, pressure: 0 as GaugePressure },
    'external force while the line is without pressure',
  );
  return [...candidates, { criterion: 'axial strain, external force without pressure', value: alone }];
}

function closedEnd(pressure: GaugePressure, outsideDiameter: Length): Force {
  return ((Math.PI / 4) * pressure * outsideDiameter * outsideDiameter) as Force;
}

/** Pressures that a laid thickness resists with the pipe ignored, by hoop and by axial strain. */
export function resistanceIgnoringPipe(
  work: Workbook,
  job: ThicknessJob,
  laminateThickness: Length,
): Candidate<GaugePressure>[] {
  const hoop = step(work.recorder, 'laminate/pressure-ignored-hoop', pressureIgnoredHoop, {
    laminateThickness,
    hoopModulus: job.hoopModulus,
    poissonRatio: work.case.laminate.poissonRatio,
    outsideDiameter: job.wrappedDiameter,
    allowableStrain: job.strains.hoop,
    axialForce: Math.min(0, job.externalForce) as Force,
  });
  return [
    { criterion: 'hoop strain, substrate ignored', value: hoop },
    ...axialResistanceIgnoringPipe(work, job, laminateThickness),
  ];
}

/** The axial line of that; none where the hoop load relieves the axial strain as fast as the end load adds to it. */
export function axialResistanceIgnoringPipe(
  work: Workbook,
  job: ThicknessJob,
  laminateThickness: Length,
): Candidate<GaugePressure>[] {
  const input = {
    laminateThickness,
    hoopModulus: job.hoopModulus,
    poissonRatio: work.case.laminate.poissonRatio,
    outsideDiameter: job.found.outsideDiameter,
    axialModulus: job.axialModulus,
    allowableStrain: job.strains.axial,
    externalForce: Math.abs(job.externalForce) as Force,
  };
  if (!pressureIgnoredAxialHasLimit(input)) return [];
  return [
    {
      criterion: 'axial strain, substrate ignored',
      value: step(work.recorder, 'laminate/pressure-ignored-axial', pressureIgnoredAxial, input),
    },
  ];
}
