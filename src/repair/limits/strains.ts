import { decide, heading, step } from '../../formula/index.js';
import {
  allowableStrain,
  type DefaultStrains,
  type DefaultStrainsInput,
  defaultStrains,
  defaultStrainsNearStep,
  temperatureFactor,
} from '../../laminate/index.js';
import type { Strain, Temperature, ThermalExpansion } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { type Open, open } from '../job/stage.js';
import { assume, assumeWord, attempt, need, use, type Workbook, warn, warnOwner } from '../job/workbook.js';
import { cyclicFactorOf } from './cycles.js';
import { expansionsOf } from './expansions.js';
import type { Limits } from './limits.js';
import { mismatchesOf } from './mismatch.js';
import { hottestUpTo } from './temperature.js';

/** Strains that the laminate may carry, and the factors that led to them. */
export interface Strains {
  readonly hoop: Strain;
  readonly axial: Strain;
  readonly temperatureFactor: number;
  readonly cyclicFactor: number;
}

/** Allowable strain round and along the pipe (ISO 24817, 7.5.5; PCC-2, 401-3.4, Eq. 10 and Table 401-3.4.4). */
export function allowStrains(work: Workbook, { limits }: { limits: Limits }): Strains | Open {
  heading(work.recorder, 'Allowable strain of the laminate');
  const failureStrain = failureStrainOf(work);
  if (failureStrain === undefined) return open;
  const defaults = defaultsOf(work, failureStrain);
  const expansions = expansionsOf(work);
  if (defaults === undefined || expansions === undefined) return open;
  const fT = temperatureFactorOf(work, limits.upperTemperature);
  const fc = cyclicFactorOf(work);
  use(work, 'thermal mismatch taken off the strain', work.rules.mismatch);
  const mismatches = mismatchesOf(work);
  const allow = (defaultStrain: Strain, laminateExpansion: ThermalExpansion, way: string): Strain | undefined =>
    attempt(work, `allowable ${way} strain`, () => {
      let least = Number.POSITIVE_INFINITY;
      for (const { set, service, purpose } of mismatches) {
        const strain = step(
          work.recorder,
          'laminate/allowable-strain',
          allowableStrain,
          {
            defaultStrain,
            temperatureFactor: fT,
            cyclicFactor: fc,
            designTemperature: service,
            installationTemperature: set,
            substrateExpansion: assume(work, work.case.pipe.material.thermalExpansion, practice.expansionOfSteel),
            laminateExpansion,
          },
          `${way} strain${purpose}`,
        );
        least = Math.min(least, strain);
      }
      return least as Strain;
    });
  const hoop = allow(defaults.hoop, expansions.hoop, 'hoop');
  const axial = allow(defaults.axial, expansions.axial, 'axial');
  if (hoop === undefined || axial === undefined) return open;
  return { hoop, axial, temperatureFactor: fT, cyclicFactor: fc };
}

function failureStrainOf(work: Workbook): Strain | undefined {
  return (
    work.case.laminate.strainToFailure ??
    need(
      work,
      'laminate.strainToFailure',
      'the default strains of the rule set hold only for a laminate whose short-term strain to failure is large enough',
      'the maker of the repair system: tensile tests',
    )
  );
}

/** By class, life and loading; the loading that the case does not state is the harder one. */
function defaultsOf(work: Workbook, failureStrain: Strain): DefaultStrains | undefined {
  const { rules, case: repairCase } = work;
  const { laminate, repair } = repairCase;
  const loading = repair.loading ?? 'continuous';
  if (repair.loading === undefined)
    assumeWord(work, 'how often the design load acts', loading, 'chosen', 'the safe one of the two');
  else if (loading === 'rare')
    warnOwner(
      work,
      'The design load is taken as rare, as the case states: less conservative where the rule set asks for it.',
    );
  const table = use(work, `default strains of class ${repair.class}`, rules.defaultStrains[loading][repair.class]);
  const { atDesignTemperature: warm } = laminate;
  const input: { -readonly [K in keyof DefaultStrainsInput]: DefaultStrainsInput[K] } = {
    table,
    designLife: repair.life,
    hoopModulus: laminate.hoopModulus,
    axialModulus: laminate.axialModulus,
    failureStrain,
    modulusShare: use(work, 'share of the axial modulus', rules.modulusShare),
    leastFailureStrain: use(work, 'least strain to failure', rules.leastFailureStrain),
  };
  if (warm !== undefined) {
    input.warmHoopModulus = warm.hoopModulus;
    input.warmAxialModulus = warm.axialModulus;
  }
  if (defaultStrainsNearStep(input)) warnOfStep(work);
  const defaults = attempt(work, 'default strains', () =>
    step(work.recorder, 'laminate/default-strains', defaultStrains, input),
  );
  return defaults === undefined ? undefined : noMoreThanQualified(work, defaults);
}

/** The defaults are for systems of which nothing better is known: a test that shows less counts, one that shows more does not. */
function noMoreThanQualified(work: Workbook, defaults: DefaultStrains): DefaultStrains {
  const { hoop, axial, lifeColumn } = defaults;
  const { qualifiedStrains: qualified } = work.case.laminate;
  if (qualified === undefined) return defaults;
  decide(
    work.recorder,
    'the lower of default and qualified strain, round the pipe and along it',
    'the qualification may show less than the rule set allows without it; more of it earns no credit here',
  );
  return {
    hoop: Math.min(hoop, qualified.hoop) as Strain,
    axial: Math.min(axial, qualified.axial) as Strain,
    lifeColumn,
  };
}

function warnOfStep(work: Workbook): void {
  warn(
    work,
    'The axial modulus of the laminate lies within 5 per cent of the share of its hoop modulus at which the axial strain steps down: the scatter of either decides which strain holds. Confirm both moduli, or take the smaller strain.',
    work.rules.modulusShare.clause,
  );
}

/** f_T1, at the hottest steel. */
function temperatureFactorOf(work: Workbook, upperTemperature: Temperature): number {
  const rule = use(work, 'temperature factor f_T1', work.rules.temperatureFactor);
  return step(work.recorder, 'laminate/temperature-factor', temperatureFactor, {
    upperTemperatureLimit: upperTemperature,
    designTemperature: hottestUpTo(work.case, upperTemperature),
    quadratic: rule.quadratic,
    linear: rule.linear,
    constant: rule.constant,
    coefficientUnit: rule.unit,
  });
}
