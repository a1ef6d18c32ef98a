import { decide, heading, step } from '../formula/index.js';
import {
  equivalentAxialForce,
  performanceFactor,
  pressureIgnoredHoop,
  substratePressure,
  thicknessIgnoredAxial,
  thicknessIgnoredHoop,
  thicknessLongTerm,
  thicknessSharingAxial,
  thicknessSharingHoop,
  thicknessSharingLive,
  thicknessYieldedAxial,
  thicknessYieldedHoop,
  thicknessYieldedLive,
} from '../laminate/index.js';
import type { Force, GaugePressure, Length, Modulus, Moment } from '../quantity/index.js';
import type { ThicknessMethod } from './case.js';
import type { AsFound, Candidate, Unavailable } from './design.js';
import type { Strains } from './strain-stage.js';
import { assumeQuantity, attempt, need, use, type Workbook, warn } from './workbook.js';

/** What every thickness method works on. */
export interface ThicknessJob {
  readonly found: AsFound;
  readonly strains: Strains;
  /** Diameter that the laminate goes round: over the filler. */
  readonly wrappedDiameter: Length;
  /** End load of the closed pipe, with the stated axial force. */
  readonly axialForce: Force;
}

/** Thickness by one method: a candidate for each way it can govern, or what is missing. */
export type MethodOutcome = readonly Candidate<Length>[] | Unavailable;

const ALL: readonly ThicknessMethod[] = [
  'substrate ignored',
  'substrate sharing load',
  'substrate yielded',
  'long-term strength',
];

/** Sets up the loads that the thickness methods share. */
export function prepareThickness(work: Workbook, found: AsFound, strains: Strains): ThicknessJob {
  const { recorder, case: repairCase } = work;
  const { filler, loads, service } = repairCase;
  heading(recorder, 'Loads on the laminate');
  const over = filler === 'none' ? 0 : filler.thicknessOverDefect;
  const wrappedDiameter = (found.outsideDiameter + 2 * over) as Length;
  if (over > 0) {
    decide(
      recorder,
      'hoop load taken on the diameter over the filler',
      'the pressure acts on the larger circle once the metal under it is gone',
    );
  }
  const axialForce = step(recorder, equivalentAxialForce, {
    pressure: service.designPressure,
    outsideDiameter: found.outsideDiameter,
    axialForce: loads.axialForce === 'none' ? (0 as Force) : loads.axialForce,
    shearForce: 0 as Force,
    bendingMoment: 0 as Moment,
    torque: 0 as Moment,
  });
  return { found, strains, wrappedDiameter, axialForce };
}

/** The method the case names, or the one that needs neither the remaining wall nor the pressure during the work. */
export function chooseMethod(work: Workbook, throughWall: boolean): ThicknessMethod | undefined {
  const { recorder, case: repairCase } = work;
  const named = repairCase.repair.method;
  if (named === undefined) {
    decide(
      recorder,
      'thickness by substrate ignored',
      'the case names no method: this one needs neither the remaining wall nor the pressure during the work',
    );
    return 'substrate ignored';
  }
  if (throughWall && (named === 'substrate sharing load' || named === 'substrate yielded')) {
    work.reasons.push({
      text: `the case names the method "${named}", which counts on metal that is not there when the defect goes through the wall: name "substrate ignored" or none`,
    });
    return undefined;
  }
  decide(recorder, `thickness by ${named}`, 'named by the case');
  return named;
}

/** Thickness by one method; what is missing becomes a missing input only when the case chose this method. */
export function thicknessBy(work: Workbook, method: ThicknessMethod, job: ThicknessJob): MethodOutcome {
  heading(work.recorder, `Thickness: ${method}`);
  switch (method) {
    case 'substrate ignored':
      return ignored(work, job);
    case 'substrate sharing load':
      return sharing(work, job);
    case 'substrate yielded':
      return yielded(work, job);
    case 'long-term strength':
      return longTerm(work, job);
  }
}

/** The methods beside the chosen one, each as its largest candidate, for comparison. */
export function alternativesTo(
  work: Workbook,
  chosen: ThicknessMethod,
  job: ThicknessJob,
): (Candidate<Length> | Unavailable)[] {
  return ALL.filter((method) => method !== chosen).map((method) => {
    if (job.found.throughWall && (method === 'substrate sharing load' || method === 'substrate yielded')) {
      return { criterion: method, needs: 'metal that carries load; the defect goes through the wall' };
    }
    const outcome = thicknessBy(work, method, job);
    if ('needs' in outcome) {
      decide(work.recorder, `${method} not computed`, `it needs ${outcome.needs}`);
      return outcome;
    }
    const value = Math.max(...outcome.map((candidate) => candidate.value)) as Length;
    return { criterion: method, value };
  });
}

/** What a missing input of the chosen method means for the design. */
export function needFor(work: Workbook, outcome: Unavailable): void {
  need(work, fieldOf(outcome.needs), `the case names the method "${outcome.criterion}"`, 'whoever chose the method');
}

const FIELDS: Readonly<Record<string, string>> = {
  'the allowable stress of the pipe': 'pipe.material.allowableStress',
  'the pressure during application': 'repair.pressureDuringApplication',
  'the long-term strength of the laminate': 'laminate.longTermStrength',
};

function fieldOf(needs: string): string {
  return FIELDS[needs] ?? needs;
}

function ignored(work: Workbook, job: ThicknessJob): MethodOutcome {
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
  const relief =
    repair.axialRelief === true ? { axialForce: closedEnd(service.designPressure, found.outsideDiameter) } : {};
  const hoop = step(recorder, thicknessIgnoredHoop, {
    pressure: service.designPressure,
    outsideDiameter: job.wrappedDiameter,
    hoopModulus,
    poissonRatio,
    allowableStrain: strains.hoop,
    axialForce: 0 as Force,
    ...relief,
  });
  const axial = step(recorder, thicknessIgnoredAxial, {
    axialForce: job.axialForce,
    pressure: service.designPressure,
    outsideDiameter: found.outsideDiameter,
    hoopModulus,
    axialModulus,
    poissonRatio,
    allowableStrain: strains.axial,
  });
  return [
    { criterion: 'hoop strain, substrate ignored', value: hoop },
    { criterion: 'axial strain, substrate ignored', value: axial },
  ];
}

function closedEnd(pressure: GaugePressure, outsideDiameter: Length): Force {
  return ((Math.PI / 4) * pressure * outsideDiameter * outsideDiameter) as Force;
}

function sharing(work: Workbook, job: ThicknessJob): MethodOutcome {
  const criterion = 'substrate sharing load';
  const { recorder, case: repairCase } = work;
  const { pipe, service, repair, laminate } = repairCase;
  const { allowableStress } = pipe.material;
  const livePressure = repair.pressureDuringApplication;
  if (allowableStress === undefined) return { criterion, needs: 'the allowable stress of the pipe' };
  if (livePressure === undefined) return { criterion, needs: 'the pressure during application' };
  const { found, wrappedDiameter: outsideDiameter } = job;
  const Ps = substratePressureOf(work, job, allowableStress);
  const common = { outsideDiameter, allowableStress, substrateModulus: pipeModulus(work) };
  const candidates: Candidate<Length>[] = [];
  const hoop = step(recorder, thicknessSharingHoop, {
    ...common,
    pressure: service.designPressure,
    hoopModulus: laminate.hoopModulus,
    substratePressure: Ps,
  });
  candidates.push({ criterion: 'hoop stress of the pipe, load shared', value: hoop });
  const live = attempt(work, 'load sharing with pressure during application', () =>
    step(recorder, thicknessSharingLive, {
      ...common,
      pressure: service.designPressure,
      livePressure,
      remainingWall: found.wallAtEndOfLife,
      hoopModulus: laminate.hoopModulus,
    }),
  );
  if (live !== undefined)
    candidates.push({ criterion: 'hoop stress of the pipe, with pressure during application', value: live });
  const axial = step(recorder, thicknessSharingAxial, {
    ...common,
    axialForce: job.axialForce,
    axialModulus: laminate.axialModulus,
    substratePressure: Ps,
  });
  candidates.push({ criterion: 'axial stress of the pipe, load shared', value: axial });
  return candidates;
}

function substratePressureOf(
  work: Workbook,
  job: ThicknessJob,
  allowableStress: NonNullable<Workbook['case']['pipe']['material']['allowableStress']>,
): GaugePressure {
  const { found } = job;
  if (found.strength !== undefined) {
    decide(
      work.recorder,
      `P_s from ${found.strength.method}`,
      `its safe pressure at the end of life, safety factor ${found.strength.safetyFactor}`,
    );
    return found.strength.safePressure;
  }
  return step(work.recorder, substratePressure, {
    allowableStress,
    remainingWall: found.wallAtEndOfLife,
    outsideDiameter: found.outsideDiameter,
  });
}

function pipeModulus(work: Workbook): Modulus {
  return assumeQuantity(work, work.case.pipe.material.modulus, {
    name: 'modulus of the pipe',
    kind: 'modulus',
    value: 207e9 as Modulus,
    tag: 'practice',
    because: 'the usual figure for carbon steel',
  });
}

function yielded(work: Workbook, job: ThicknessJob): MethodOutcome {
  const { recorder, case: repairCase } = work;
  const { pipe, service, repair, laminate } = repairCase;
  const { found, strains, wrappedDiameter: outsideDiameter } = job;
  const common = { yieldStrength: pipe.material.yieldStrength, remainingWall: found.wallAtEndOfLife };
  const hoopInput = {
    ...common,
    outsideDiameter,
    pressure: service.designPressure,
    hoopModulus: laminate.hoopModulus,
    allowableStrain: strains.hoop,
  };
  const axial = step(recorder, thicknessYieldedAxial, {
    ...common,
    outsideDiameter: found.outsideDiameter,
    axialForce: job.axialForce,
    axialModulus: laminate.axialModulus,
    allowableStrain: strains.axial,
  });
  const axialCandidate = { criterion: 'axial strain, substrate yielded', value: axial };
  const livePressure = repair.pressureDuringApplication;
  if (repair.creditPressureDuringApplication === true && livePressure !== undefined && livePressure > 0) {
    warn(
      work,
      'The yielded form takes credit for the pressure during application, as the case asks: once the pipe has yielded, equilibrium gives the laminate more strain than that formula admits (a third more in the check case). Less conservative.',
    );
    const hoop = step(recorder, thicknessYieldedLive, {
      ...hoopInput,
      livePressure,
      substrateModulus: pipeModulus(work),
    });
    return [
      { criterion: 'hoop strain, substrate yielded, with credit for pressure during application', value: hoop },
      axialCandidate,
    ];
  }
  const hoop = step(recorder, thicknessYieldedHoop, hoopInput);
  return [{ criterion: 'hoop strain, substrate yielded', value: hoop }, axialCandidate];
}

function longTerm(work: Workbook, job: ThicknessJob): MethodOutcome {
  const { recorder, rules, case: repairCase } = work;
  const { laminate, service, repair } = repairCase;
  const longTermStrength = laminate.longTermStrength;
  if (longTermStrength === undefined)
    return { criterion: 'long-term strength', needs: 'the long-term strength of the laminate' };
  const survival = longTermStrength.test === '1000 h survival';
  const tables = survival ? rules.performance.survivalTest : rules.performance.designLifeTest;
  const table = use(work, `factor on the long-term strength (${longTermStrength.test})`, tables[repair.class]);
  const { factor } = step(recorder, performanceFactor, { table, designLife: repair.life });
  // The pipe is not counted: the safe one of the two forms.
  const hoop = step(recorder, thicknessLongTerm, {
    pressure: service.designPressure,
    outsideDiameter: job.wrappedDiameter,
    longTermStrength: longTermStrength.strength,
    performanceFactor: factor,
  });
  return [{ criterion: 'hoop stress, long-term strength, substrate ignored', value: hoop }];
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
