import { step } from '../formula/index.js';
import {
  axialLineLimitsPressure,
  pressureIgnoredAxial,
  pressureIgnoredHoop,
  thicknessIgnoredAxial,
  thicknessIgnoredHoop,
} from '../laminate/index.js';
import type { Force, GaugePressure, Length } from '../quantity/index.js';
import type { Candidate } from './design.js';
import type { MethodOutcome, ThicknessJob } from './thickness-job.js';
import { type Workbook, warn } from './workbook.js';

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
  const { loads } = repairCase;
  const external = loads.axialForce === 'none' ? 0 : loads.axialForce;
  // A push along the pipe bulges the laminate: it is counted against the hoop line, a pull never for it.
  const push = Math.min(0, external);
  const relief = repair.axialRelief === true ? closedEnd(service.designPressure, found.outsideDiameter) : 0;
  const hoop = step(recorder, thicknessIgnoredHoop, {
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
  const { service, laminate, loads } = repairCase;
  const { outsideDiameter } = job.found;
  const external = loads.axialForce === 'none' ? 0 : loads.axialForce;
  const input = {
    outsideDiameter,
    hoopModulus: job.hoopModulus,
    axialModulus: job.axialModulus,
    poissonRatio: laminate.poissonRatio,
    allowableStrain: job.strains.axial,
  };
  const axial = step(recorder, thicknessIgnoredAxial, {
    ...input,
    axialForce: job.axialForce,
    pressure: service.designPressure,
  });
  const candidates = [{ criterion: 'axial strain, substrate ignored', value: axial }];
  if (external === 0) return candidates;
  const alone = step(
    recorder,
    thicknessIgnoredAxial,
    { ...input, axialForce: Math.abs(external) as Force, pressure: 0 as GaugePressure },
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
  const { recorder, case: repairCase } = work;
  const { poissonRatio } = repairCase.laminate;
  const { axialForce } = repairCase.loads;
  const external = axialForce === 'none' ? 0 : axialForce;
  const common = { laminateThickness, hoopModulus: job.hoopModulus, poissonRatio };
  const hoop = step(recorder, pressureIgnoredHoop, {
    ...common,
    outsideDiameter: job.wrappedDiameter,
    allowableStrain: job.strains.hoop,
    axialForce: Math.min(0, external) as Force,
  });
  const candidates = [{ criterion: 'hoop strain, substrate ignored', value: hoop }];
  const axialInput = {
    ...common,
    outsideDiameter: job.found.outsideDiameter,
    axialModulus: job.axialModulus,
    allowableStrain: job.strains.axial,
    externalForce: Math.abs(external) as Force,
  };
  if (!axialLineLimitsPressure(axialInput)) return candidates;
  return [
    ...candidates,
    { criterion: 'axial strain, substrate ignored', value: step(recorder, pressureIgnoredAxial, axialInput) },
  ];
}
