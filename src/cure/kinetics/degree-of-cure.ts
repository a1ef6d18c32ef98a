import { finite, formula, listOfRows, oneOf, positive, refuse, within } from '../../formula/index.js';
import type { Ratio } from '../../quantity/index.js';
import { startFromNothing } from './conversions.js';
import { type KineticLaw, type KineticSet, type KineticSetName, kineticSets } from './kinetic-law.js';
import { march, type ProgrammePoint } from './programme.js';

export interface DegreeOfCureInput {
  readonly parameterSet: KineticSetName;
  readonly programme: readonly ProgrammePoint[];
  readonly startConversion?: Ratio | undefined;
}

/**
 * Degree of cure at the end of a temperature programme, by a published set of constants.
 *
 * $$a(t) = a_0 + \int_0^t r(a, T(\tau))\,d\tau$$
 *
 * @param input.parameterSet    a name from `kineticSets`
 * @param input.programme       corners of the temperature of the resin, in order of time
 * @param input.startConversion a_0, 0 when absent; an autocatalytic set needs it above 0
 * @returns degree of cure
 * @throws CalculationError `invalid-input`; `no-solution` when the law stalls or does not start
 * @remarks The resin is taken at the temperature of the programme: its own heat is not added. A law with two branches is
 *   stopped at the jump of its rate and goes on from there.
 * @see input decks of public cure solvers
 */
export function degreeOfCure(input: DegreeOfCureInput): Ratio {
  const { parameterSet, programme, startConversion = 0 as Ratio } = input;
  oneOf(
    parameterSet,
    ['two-branch epoxy', 'glass-polyester', 'two-part polyurethane', 'diffusion-limited epoxy'],
    'parameterSet',
  );
  const { law } = kineticSets.find(({ name }) => name === parameterSet) as KineticSet;
  return degreeOfCureByLaw(law, programme, startConversion);
}

/**
 * Degree of cure at the end of a temperature programme, by any law with constants of one's own.
 *
 * @param law the rate law with its constants
 * @param programme corners of the temperature over time, in order
 * @param startConversion degree of cure at the start, from 0 to below 1; an autocatalytic law needs it above 0
 */
export function degreeOfCureByLaw(
  law: KineticLaw,
  programme: readonly ProgrammePoint[],
  startConversion: Ratio,
): Ratio {
  within(startConversion, 0, 1 - 1e-12, 'startConversion', '');
  checkProgramme(programme);
  if (startConversion === 0 && law.law === 'autocatalytic' && law.m > 0) startFromNothing(startConversion);
  let state = -Math.log1p(-startConversion);
  programme.slice(1).forEach((to, before) => {
    state = march(law, programme[before] as ProgrammePoint, to, state);
  });
  return -Math.expm1(-state) as Ratio;
}

function checkProgramme(programme: readonly ProgrammePoint[]): void {
  const refuseProgramme = (value: unknown, parameter: string, constraint: string): never =>
    refuse({ code: 'invalid-input', parameter, value, unit: '', constraint });
  listOfRows(programme, 'programme');
  if (programme.length < 2) {
    refuseProgramme(`${programme.length} long`, 'programme', 'must hold at least two corners of { time, temperature }');
  }
  programme.forEach(({ time, temperature }, index) => {
    finite(time, `programme[${index}].time`, 's');
    positive(temperature, `programme[${index}].temperature`, 'K');
    if (time < (programme[index - 1]?.time ?? time)) {
      refuseProgramme(time, `programme[${index}].time`, 'must not lie before that of the corner in front of it');
    }
  });
}

export const degreeOfCureFormula = /* @__PURE__ */ formula<DegreeOfCureInput, Ratio>({
  id: 'cure/degree-of-cure',
  title: 'Degree of cure over a temperature programme',
  search: ['cure kinetics', 'dsc', 'conversion'],
  compute: degreeOfCure,
  equation: {
    algorithm:
      'The rate law of the set is marched along the programme by checked fourth-order steps; a two-branch law is stopped at its jump.',
  },
  inputs: {
    parameterSet: {
      symbol: 'set',
      kind: 'choice',
      name: 'published set of constants',
      choices: ['two-branch epoxy', 'glass-polyester', 'two-part polyurethane', 'diffusion-limited epoxy'],
    },
    programme: {
      symbol: 'programme',
      kind: 'list',
      name: 'temperature programme',
      columns: { time: 'time', temperature: 'temperature' },
    },
    startConversion: {
      symbol: 'a_0',
      kind: 'ratio',
      name: 'degree of cure at the start',
      sample: [0.001, 0.05],
      default: 0,
    },
  },
  output: { symbol: 'a', kind: 'ratio', name: 'degree of cure' },
  sources: [
    { key: 'cure-solver-decks', locator: 'constants' },
    { key: 'hubert-2001', locator: 'constants of the epoxy' },
  ],
  evidence: { form: { tag: 'secondary' }, 'diffusion-limited epoxy': { tag: 'recalled' } },
  limits: [],
  inhomogeneous: 'the set of constants is chosen by its name',
});
