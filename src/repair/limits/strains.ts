import { heading, step } from '../../formula/index.js';
import {
  allowableStrain,
  cyclicFactor,
  cyclicFactorBeyondData,
  defaultStrains,
  temperatureFactor,
} from '../../laminate/index.js';
import type { Strain, Temperature, ThermalExpansion } from '../../quantity/index.js';
import { type Open, open } from '../job/stage.js';
import { assumeQuantity, assumeWord, attempt, need, use, type Workbook, warn } from '../job/workbook.js';
import { hottestOf, type Limits } from './limits.js';

/** Strains that the laminate may carry, and the factors that led to them. */
export interface Strains {
  readonly hoop: Strain;
  readonly axial: Strain;
  /** Axial strain before temperature and cycles: the one that the bond has to follow. */
  readonly axialDefault: Strain;
  readonly temperatureFactor: number;
  readonly cyclicFactor: number;
}

/** Allowable strain round and along the pipe. */
export function allowStrains(work: Workbook, { limits }: { limits: Limits }): Strains | Open {
  const { recorder, rules, case: repairCase } = work;
  const { laminate, service, repair, loads, pipe, site } = repairCase;
  heading(recorder, 'Allowable strain of the laminate');
  const { strainToFailure } = laminate;
  if (strainToFailure === undefined) {
    need(
      work,
      'laminate.strainToFailure',
      'the default strains of the rule set hold only for a laminate whose short-term strain to failure is large enough',
      'the maker of the repair system: tensile tests',
    );
    return open;
  }
  const loading = repair.loading ?? 'continuous';
  if (repair.loading === undefined)
    assumeWord(work, 'how often the design load acts', loading, 'chosen', 'the safe one of the two');
  else if (loading === 'rare')
    warn(
      work,
      'The design load is taken as rare, as the case states: less conservative where the rule set asks for it.',
    );
  const table = use(work, `default strains of class ${repair.class}`, rules.defaultStrains[loading][repair.class]);
  const defaults = attempt(work, 'default strains', () =>
    step(recorder, 'laminate/default-strains', defaultStrains, {
      table,
      designLife: repair.life,
      hoopModulus: laminate.hoopModulus,
      axialModulus: laminate.axialModulus,
      failureStrain: strainToFailure,
      modulusShare: use(work, 'share of the axial modulus', rules.modulusShare),
      leastFailureStrain: use(work, 'least strain to failure', rules.leastFailureStrain),
    }),
  );
  const expansions = expansionsOf(work);
  if (defaults === undefined || expansions === undefined) return open;
  const { quadratic, linear, constant, unit } = use(work, 'temperature factor f_T1', rules.temperatureFactor);
  const fT = step(recorder, 'laminate/temperature-factor', temperatureFactor, {
    upperTemperatureLimit: limits.upperTemperature,
    designTemperature: hottestOf(repairCase),
    quadratic,
    linear,
    constant,
    coefficientUnit: unit,
  });
  const fc = loads.cycles === 'none' ? 1 : cyclicFactorOf(work, loads.cycles);
  use(work, 'thermal mismatch taken off the strain', rules.mismatch);
  const { designTemperature, lowestTemperature = designTemperature } = service;
  const farthest = farthestFrom(site.pipeTemperature, designTemperature, lowestTemperature);
  const allow = (defaultStrain: Strain, laminateExpansion: ThermalExpansion, way: string): Strain | undefined =>
    attempt(work, `allowable ${way} strain`, () =>
      step(
        recorder,
        'laminate/allowable-strain',
        allowableStrain,
        {
          defaultStrain,
          temperatureFactor: fT,
          cyclicFactor: fc,
          designTemperature: farthest,
          installationTemperature: site.pipeTemperature,
          substrateExpansion: pipeExpansion(work, pipe.material.thermalExpansion),
          laminateExpansion,
        },
        `${way} strain`,
      ),
    );
  const hoop = allow(defaults.hoop, expansions.hoop, 'hoop');
  const axial = allow(defaults.axial, expansions.axial, 'axial');
  if (hoop === undefined || axial === undefined) return open;
  return { hoop, axial, axialDefault: defaults.axial, temperatureFactor: fT, cyclicFactor: fc };
}

/** The end of the temperature range that lies farthest from the day of the work: the mismatch is worst there. */
function farthestFrom(installed: Temperature, ...temperatures: Temperature[]): Temperature {
  return temperatures.reduce((far, next) => (Math.abs(next - installed) > Math.abs(far - installed) ? next : far));
}

function cyclicFactorOf(
  work: Workbook,
  cycles: { number: number; lowestPressure: number; highestPressure: number },
): number {
  const { slope, intercept, freeCycles, lastCycles } = use(work, 'cyclic factor f_c', work.rules.cyclic);
  const input = {
    cycles: cycles.number,
    pressureRatio: cycles.lowestPressure / cycles.highestPressure,
    slope,
    intercept,
    freeCycles,
    lastCycles,
  };
  if (cyclicFactorBeyondData(input)) {
    warn(
      work,
      'The number of cycles is above the range of the cyclic factor: the factor of its upper end is taken.',
      work.rules.cyclic.clause,
    );
  }
  return step(work.recorder, 'laminate/cyclic-factor', cyclicFactor, input);
}

function pipeExpansion(work: Workbook, given: ThermalExpansion | undefined): ThermalExpansion {
  return assumeQuantity(work, given, {
    name: 'thermal expansion of the pipe',
    kind: 'thermal expansion',
    value: 12e-6 as ThermalExpansion,
    tag: 'practice',
    because: 'the usual figure for carbon steel',
  });
}

function expansionsOf(work: Workbook): { hoop: ThermalExpansion; axial: ThermalExpansion } | undefined {
  const { laminate, service, site } = work.case;
  const { hoopExpansion, axialExpansion } = laminate;
  const { designTemperature, lowestTemperature = designTemperature } = service;
  const noDifference = designTemperature === site.pipeTemperature && lowestTemperature === site.pipeTemperature;
  if (noDifference) return { hoop: hoopExpansion ?? ZERO, axial: axialExpansion ?? ZERO };
  if (hoopExpansion !== undefined && axialExpansion !== undefined)
    return { hoop: hoopExpansion, axial: axialExpansion };
  for (const [field, value] of [
    ['laminate.hoopExpansion', hoopExpansion],
    ['laminate.axialExpansion', axialExpansion],
  ] as const) {
    if (value === undefined) {
      need(
        work,
        field,
        'pipe and laminate expand differently between installation and design temperature, and the difference is taken off the allowable strain',
        'the maker of the repair system',
      );
    }
  }
  return undefined;
}

/** Without a temperature difference the expansion has no effect. */
const ZERO = 0 as ThermalExpansion;
