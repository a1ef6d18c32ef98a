import { step } from '../formula/index.js';
import { pressureIgnoredHoop, thicknessIgnoredAxial, thicknessIgnoredHoop } from '../laminate/index.js';
import type { Force, GaugePressure, Length } from '../quantity/index.js';
import type { MethodOutcome, ThicknessJob } from './thickness-job.js';
import { type Workbook, warn } from './workbook.js';

/** The laminate carries everything: neither the remaining wall nor the pressure during the work enters. */
export function thicknessIgnoringPipe(work: Workbook, job: ThicknessJob): MethodOutcome {
  const { recorder, case: repairCase } = work;
  const { laminate, service, repair } = repairCase;
  const { hoopModulus, axialModulus, poissonRatio } = laminate;
  const { strains, found } = job;
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
  const axialInput = {
    outsideDiameter: found.outsideDiameter,
    hoopModulus,
    axialModulus,
    poissonRatio,
    allowableStrain: strains.axial,
  };
  const axial = step(recorder, thicknessIgnoredAxial, {
    ...axialInput,
    axialForce: job.axialForce,
    pressure: service.designPressure,
  });
  const alone =
    external === 0
      ? []
      : [
          {
            criterion: 'axial strain, external force without pressure',
            value: step(
              recorder,
              thicknessIgnoredAxial,
              { ...axialInput, axialForce: Math.abs(external) as Force, pressure: 0 as GaugePressure },
              'external force while the line is without pressure',
            ),
          },
        ];
  return [
    { criterion: 'hoop strain, substrate ignored', value: hoop },
    { criterion: 'axial strain, substrate ignored', value: axial },
    ...alone,
  ];
}

function closedEnd(pressure: GaugePressure, outsideDiameter: Length): Force {
  return ((Math.PI / 4) * pressure * outsideDiameter * outsideDiameter) as Force;
}

/** Pressure that a laid thickness resists with the pipe ignored. */
export function resistanceIgnored(work: Workbook, job: ThicknessJob, laminateThickness: Length): GaugePressure {
  const { laminate } = work.case;
  return step(
    work.recorder,
    pressureIgnoredHoop,
    {
      laminateThickness,
      outsideDiameter: job.wrappedDiameter,
      hoopModulus: laminate.hoopModulus,
      poissonRatio: laminate.poissonRatio,
      allowableStrain: job.strains.hoop,
    },
    'pressure that the laid thickness resists',
  );
}
