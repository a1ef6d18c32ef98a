import { finite, formula, refuse } from '../../formula/index.js';
import type { LineLoad, Ratio, Strain, TemperatureDifference, ThermalExpansion } from '../../quantity/index.js';
import { loadX, loadY, shearFlow } from './loads.js';
import { plateOf, respond } from './plate.js';
import { checkPlies, type Ply } from './ply.js';
import { type PlyState, statesOf } from './ply-states.js';
import { checkStrengths, type PlyStrengths, shareOf } from './strengths.js';
import { tsaiWuUse } from './tsai-wu.js';
import type { Three } from './turning.js';

/** A ply whose strengths are known. */
export interface StrongPly extends Ply, PlyStrengths {}

export interface FirstPlyFailureInput {
  readonly plies: readonly StrongPly[];
  readonly loadX: LineLoad;
  readonly loadY: LineLoad;
  readonly shearFlow: LineLoad;
}

/** What the first ply to fail leaves of a load. */
export interface FirstPlyFailure {
  readonly byStrain: number;
  readonly ply: number;
  readonly strainX: Strain;
  readonly strainY: Strain;
  readonly byTsaiWu: number;
}

/**
 * How many times a load in the plane could be before the first ply of a laminate fails, by maximum strain and by Tsai and Wu,
 * and the strains of the laminate then.
 *
 * $$R = \min_{\text{plies}} R_k,\qquad \varepsilon_{fpf} = R\,\varepsilon$$
 *
 * @param input.plies      from z = -h/2 upward, each with its five strengths [Pa], > 0
 * @param input.loadX      N_x [N/m], of either sign
 * @param input.loadY      N_y [N/m], of either sign
 * @param input.shearFlow  N_xy [N/m], of either sign
 * @returns ratio by maximum strain, the ply that is first by it, strains of the mid-plane at that load, ratio by Tsai and Wu
 * @throws CalculationError `invalid-input`
 * @remarks For information: without stresses of cure, and a laminate carries on beyond its first crack across the fibres. A
 *   repair is held to the strains of the rule set.
 * @see Kaw, Mechanics of Composite Materials, chapter 5
 */
export function firstPlyFailure(input: FirstPlyFailureInput): FirstPlyFailure {
  const { plies } = input;
  checkPlies(plies);
  plies.forEach((ply, index) => {
    checkStrengths(ply, `plies[${index}].`);
  });
  const loads: Three = [input.loadX, input.loadY, input.shearFlow];
  finite(input.loadX, 'loadX', 'N/m');
  finite(input.loadY, 'loadY', 'N/m');
  finite(input.shearFlow, 'shearFlow', 'N/m');
  if (loads.every((load) => load === 0))
    refuse({
      code: 'invalid-input',
      parameter: 'loadX',
      value: 0,
      unit: 'N/m',
      constraint: 'must not be 0 with both others',
    });
  const states = statesOf(plies.map(still), loads, [0, 0, 0], noGrowth);
  let [byStrain, byTsaiWu, first] = [0, 0, 1];
  for (const state of states) {
    const ply = plies[state.ply - 1] as StrongPly;
    const used = strainUse(state, ply);
    if (used > byStrain) [byStrain, first] = [used, state.ply];
    byTsaiWu = Math.max(byTsaiWu, tsaiWuUse(state, ply));
  }
  const [e] = respond(plateOf(plies), loads, [0, 0, 0]);
  const found = {
    byStrain: 1 / byStrain,
    ply: first,
    strainX: (e[0] / byStrain) as Strain,
    strainY: (e[1] / byStrain) as Strain,
    byTsaiWu: 1 / byTsaiWu,
  };
  for (const value of Object.values(found)) finite(value, 'strength ratio', '');
  return found;
}

const noGrowth = { temperatureChange: 0 as TemperatureDifference, moistureChange: 0 as Ratio };

function still(ply: StrongPly) {
  const none = 0 as ThermalExpansion;
  const { thickness, angle, alongModulus, acrossModulus, shearModulus, poissonRatio } = ply;
  return {
    thickness,
    angle,
    alongModulus,
    acrossModulus,
    shearModulus,
    poissonRatio,
    alongExpansion: none,
    acrossExpansion: none,
    alongSwelling: 0,
    acrossSwelling: 0,
  };
}

function strainUse(state: PlyState, ply: StrongPly): number {
  return Math.max(
    shareOf(state.alongStrain * ply.alongModulus, ply.alongTension, ply.alongCompression),
    shareOf(state.acrossStrain * ply.acrossModulus, ply.acrossTension, ply.acrossCompression),
    Math.abs(state.shearStress) / ply.shearStrength,
  );
}

export const firstPlyFailureFormula = /* @__PURE__ */ formula<FirstPlyFailureInput, FirstPlyFailure>({
  id: 'laminate/first-ply-failure',
  title: 'Load of the first ply to fail',
  search: ['ply failure', 'laminate strength', 'clt'],
  compute: firstPlyFailure,
  equation: {
    algorithm:
      'stresses and strains on both faces of every ply; the least ratio of strength by each criterion; the strains of the laminate times it',
  },
  inputs: {
    plies: {
      symbol: 'plies',
      kind: 'list',
      name: 'plies from z = -h/2 upward',
      columns: {
        thickness: 'length',
        angle: 'angle',
        alongModulus: 'modulus',
        acrossModulus: 'modulus',
        shearModulus: 'modulus',
        poissonRatio: 'number',
        alongTension: 'stress',
        alongCompression: 'stress',
        acrossTension: 'stress',
        acrossCompression: 'stress',
        shearStrength: 'stress',
      },
    },
    loadX,
    loadY,
    shearFlow,
  },
  output: {
    byStrain: { symbol: 'R_e', kind: 'number', name: 'ratio by maximum strain' },
    ply: { symbol: 'k', kind: 'count', name: 'first ply by maximum strain' },
    strainX: { symbol: 'eps_x', kind: 'strain', name: 'strain along x at that load' },
    strainY: { symbol: 'eps_y', kind: 'strain', name: 'strain along y at that load' },
    byTsaiWu: { symbol: 'R_w', kind: 'number', name: 'ratio by Tsai and Wu' },
  },
  sources: [{ key: 'kaw', locator: 'chapter 5, as slides quote it' }],
  evidence: {
    form: {
      tag: 'secondary',
      derived: 'the load times the ratio meets the criterion in one ply and no other passes it',
    },
  },
  limits: [],
});
