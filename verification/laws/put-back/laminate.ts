import { change, type Fault } from './fault.js';

/** Thickness, strains, joints, overlap. */

const HELD = 'holds by itself';

/** Nothing of the kind was checked at the end of a design then. */
const unchecked = change('repair/job/hold-pressure', 'reaches(value, service.designPressure)', 'true');
/** There was no line for both directions together. */
const oneWay = change(
  'repair/laminate/sharing',
  'candidates.push(axialThickness(work, job), biaxialThickness(work, job))',
  'candidates.push(axialThickness(work, job))',
);

export const ofLaminate: readonly Fault[] = [
  {
    did: 'sharing, along the pipe: the force on the pipe and the thickness on the circle over the filler, what the pipe holds on that circle too',
    changes: [
      unchecked,
      oneWay,
      change('repair/laminate/sharing', 'job.axial.diameter', 'job.hoop.diameter', ['outsideDiameter: ', '']),
    ],
    law: HELD,
    says: /along the pipe/u,
  },
  {
    did: 'sharing checked no strain along the pipe',
    changes: [
      unchecked,
      oneWay,
      change(
        'repair/laminate/sharing',
        "stressOfPipe(work, allowableStressOf(work), job.axial.strain, 'along the pipe')",
        'allowableStressOf(work)',
      ),
    ],
    law: HELD,
    says: /along the pipe/u,
  },
  {
    did: 'sharing in one direction only: closed ends took the pipe past its allowable stress',
    changes: [unchecked, oneWay],
    law: HELD,
    says: /closed ends/u,
  },
  {
    did: 'relief by the end load saved plies',
    changes: [
      unchecked,
      change(
        'repair/laminate/ignored',
        "thicknessWithRelief(work, job, pushAlong(work, job, 'left out'))",
        'thicknessWithRelief(work, job, job.axial.force)',
      ),
    ],
    law: HELD,
    says: /round the pipe/u,
  },
  {
    did: 'pressure in the line during the work saved plies',
    changes: [
      unchecked,
      change(
        'repair/laminate/ignored',
        "step(work.recorder, 'laminate/thickness-ignored-hoop', thicknessIgnoredHoop, {\n    pressure: job.hoop.pressure,\n    outsideDiameter: job.hoop.diameter,\n    hoopModulus: job.hoop.modulus,\n    poissonRatio: work.case.laminate.poissonRatio,\n    allowableStrain: job.hoop.strain,\n    axialForce,\n  })",
        'thicknessIgnoredHoop({ pressure: job.hoop.pressure - (work.case.line.pressure ?? 0), outsideDiameter: job.hoop.diameter, hoopModulus: job.hoop.modulus, poissonRatio: work.case.laminate.poissonRatio, allowableStrain: job.hoop.strain, axialForce })',
      ),
    ],
    law: 'more pressure while people work',
    says: /^thickness/u,
  },
  {
    did: 'the yielded pipe held its whole yield strength where the laminate came to its strain first',
    changes: [
      unchecked,
      change(
        'repair/laminate/yielded',
        "stressOfPipe(work, work.case.pipe.material.yieldStrength, job.hoop.strain, 'round the pipe')",
        'work.case.pipe.material.yieldStrength',
      ),
    ],
    law: HELD,
    says: /on the yielded pipe/u,
  },
  {
    did: 'the long-term strength was the same at every temperature',
    changes: [
      change('repair/laminate/long-term', 'hottestUpTo(work.case, warm.testTemperature)', 'cool.testTemperature'),
    ],
    law: HELD,
    says: /temperature of its tests/u,
  },
  {
    did: 'sheet in bands ended all its plies at one joint across the defect',
    changes: [change('repair/laminate/laminate', 'joinBands(work, found, byCriteria, footprint, onPipe)', 'undefined')],
    law: HELD,
    says: /no joint is counted|what lies there/u,
  },
  {
    did: 'a steep tape kept its full stiffness round the pipe',
    changes: [change('repair/laminate/ply-moduli', "wrap.form !== 'tape'", 'true')],
    law: HELD,
    says: /15 degrees|strain/u,
  },
  {
    did: 'a tape of any angle was a laminate of the hoop direction',
    changes: [change('repair/laminate/ply-moduli', 'angle <= steepestTape.value', 'true')],
    law: HELD,
    says: /15 degrees/u,
  },
  {
    did: 'the column of the soft axial strain went by the cold moduli alone',
    changes: [change('repair/limits/strains', 'warm !== undefined', 'false')],
    law: HELD,
    says: /along the pipe more strain/u,
  },
  {
    did: 'the overlap of the bond had no factor',
    changes: [
      change(
        'repair/laminate/overlap',
        "use(work, 'factor on the overlap of the bond', rules.overlap.adhesiveFactor)",
        '1',
      ),
    ],
    law: HELD,
    says: /bond does not pass on/u,
  },
  {
    did: 'the bond followed the strain of its class and life, so that a longer life shortened the overlap',
    changes: [
      change(
        'repair/laminate/overlap',
        'largest.axial',
        'defaultStrains({ table: rules.defaultStrains.continuous[repairCase.repair.class].value, designLife: repairCase.repair.life, hoopModulus, axialModulus, failureStrain: strainToFailure, modulusShare: 0.5, leastFailureStrain: 0.01 }).axial',
      ),
    ],
    law: 'a longer life',
    says: /^(?:overlap|length)/u,
  },
  {
    did: 'a heating blanket was no installation temperature',
    changes: [change('repair/limits/mismatch', 'cooling.set === cooling.service', 'true')],
    law: HELD,
    says: /more strain/u,
  },
  {
    did: 'a cold night was no installation temperature',
    changes: [change('repair/limits/mismatch', 'coldestSteel(site)', 'site.pipeTemperature')],
    law: HELD,
    says: /more strain/u,
  },
];
