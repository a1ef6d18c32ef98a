import { atMost, finite, formula, positive } from '../../formula/index.js';
import type { GaugePressure, Length } from '../../quantity/index.js';
import { api579LengthParameter } from './api579-length-parameter.js';
import {
  type Api579Shell,
  checkApi579Shell,
  checkThinnestPoint,
  localMetalLossDiscontinuityUnchecked,
} from './api579-shell.js';
import { foliasApi579 } from './folias-api579.js';

export interface LocalMetalLossInput extends Api579Shell {
  readonly measuredMinimum: Length;
  readonly defectLength: Length;
}

export interface LocalMetalLoss {
  readonly remainingStrengthFactor: number;
  readonly lengthParameter: number;
  readonly remainingWallRatio: number;
  readonly foliasFactor: number;
  readonly reducedPressure: GaugePressure;
  readonly accepted: boolean;
}

/**
 * Remaining strength factor of a local metal loss by API 579-1, Part 5, Level 1, and the reduced working pressure.
 *
 * $$\mathrm{RSF} = \frac{R_t}{1 - (1 - R_t)/M_t},\qquad R_t = \frac{t_{mm} - \mathrm{FCA}}{t_c},\qquad
 * \mathrm{MAWP}_r = \mathrm{MAWP}\,\min\left(1, \frac{\mathrm{RSF}}{\mathrm{RSF}_a}\right)$$
 *
 * @param input.insideDiameter           D_i, bore [m], > 0
 * @param input.correctedWall            t_c, wall away from the loss, less what is still to be lost [m], > 0
 * @param input.futureAllowance          FCA, still to be lost at the thinnest point [m], >= 0; 0 by default
 * @param input.workingPressure          MAWP of the sound pipe [Pa], >= 0
 * @param input.allowableFactor          RSF_a, > 0 and at most 1; 0.9 by default
 * @param input.leastWall                least wall that may be left at the thinnest point [m], >= 0; 1.3 mm (pipe) by default
 * @param input.distanceToDiscontinuity  to the nearest structural discontinuity [m]; checked where it is given
 * @param input.measuredMinimum          t_mm, thinnest measured wall [m], > FCA and at most t_c + FCA
 * @param input.defectLength             s, along the pipe [m], > 0
 * @returns RSF, with lambda, R_t, M_t, the reduced working pressure [Pa] and whether RSF >= RSF_a
 * @throws CalculationError `invalid-input`; `outside-validity` for R_t < 0.2, for less than the least wall, and closer than
 *   1.8 sqrt(D_i t_c) to a discontinuity
 * @remarks For the hoop direction. The width is screened on its own: `circumferentialExtentLimit`.
 * @see API 579-1, Part 5, Level 1
 */
export function localMetalLoss(input: LocalMetalLossInput): LocalMetalLoss {
  const { insideDiameter, correctedWall: tc, measuredMinimum: tmm, defectLength } = input;
  const { workingPressure: MAWP, futureAllowance: FCA = 0, allowableFactor: RSFa = 0.9 } = input;
  checkApi579Shell(input);
  positive(tmm, 'measuredMinimum', 'm');
  atMost(tmm, tc + FCA, 'the corrected wall plus the future allowance', 'measuredMinimum', 'm');
  positive(defectLength, 'defectLength', 'm');
  checkThinnestPoint(input, tmm, 'measuredMinimum');
  const Rt = (tmm - FCA) / tc;
  const lambda = api579LengthParameter({ insideDiameter, correctedWall: tc, defectLength });
  const Mt = foliasApi579({ lengthParameter: lambda });
  const RSF = Rt / (1 - (1 - Rt) / Mt);
  finite(RSF, 'remaining strength factor', '');
  return {
    remainingStrengthFactor: RSF,
    lengthParameter: lambda,
    remainingWallRatio: Rt,
    foliasFactor: Mt,
    reducedPressure: (MAWP * Math.min(1, RSF / RSFa)) as GaugePressure,
    accepted: RSF >= RSFa,
  };
}

export const localMetalLossFormula = /* @__PURE__ */ formula<LocalMetalLossInput, LocalMetalLoss>({
  id: 'pipe/local-metal-loss',
  title: 'Remaining strength factor by API 579-1, Part 5, Level 1',
  search: ['lta', 'ffs', 'fitness for service', 'rsf', 'corrosion'],
  compute: localMetalLoss,
  equation: {
    where: [
      { symbol: 'R_t', kind: 'number', expression: '(t_mm - FCA) / t_c' },
      { symbol: 'l', kind: 'number', expression: 'min(1.285 * s / sqrt(D_i * t_c), 20)' },
      {
        symbol: 'M_t',
        kind: 'number',
        expression:
          '1.0010 - 0.014195 * l + 0.29090 * l^2 - 0.096420 * l^3 + 0.020890 * l^4 - 0.0030540 * l^5 + 2.9570e-4 * l^6 - 1.8462e-5 * l^7 + 7.1553e-7 * l^8 - 1.5631e-8 * l^9 + 1.4656e-10 * l^10',
      },
    ],
    expression: 'R_t / (1 - (1 - R_t) / M_t)',
  },
  inputs: {
    insideDiameter: { symbol: 'D_i', kind: 'length', name: 'inside diameter', sample: [0.05, 1.2] },
    correctedWall: {
      symbol: 't_c',
      kind: 'length',
      name: 'wall away from the loss, at end of life',
      sample: [0.008, 0.03],
    },
    futureAllowance: {
      symbol: 'FCA',
      kind: 'length',
      name: 'future corrosion allowance',
      sample: [0, 0.003],
      default: 0,
    },
    workingPressure: {
      symbol: 'MAWP',
      kind: 'gauge pressure',
      name: 'working pressure of the sound pipe',
      sample: [0, 15e6],
      usual: [0, 3e7],
    },
    allowableFactor: {
      symbol: 'RSF_a',
      kind: 'number',
      name: 'allowable remaining strength factor',
      sample: [0.8, 1],
      default: 0.9,
    },
    leastWall: {
      symbol: 't_least',
      kind: 'length',
      name: 'least wall at the thinnest point',
      sample: [0.001, 0.0025],
      default: 0.0013,
    },
    distanceToDiscontinuity: {
      symbol: 'L_msd',
      kind: 'length',
      name: 'distance to the nearest discontinuity',
      sample: [0.2, 3],
      optional: true,
    },
    measuredMinimum: {
      symbol: 't_mm',
      kind: 'length',
      name: 'thinnest measured wall',
      sample: [0.004, 0.02],
      usual: [0.0005, 0.06],
    },
    defectLength: { symbol: 's', kind: 'length', name: 'length of the defect along the pipe', sample: [0.01, 1] },
  },
  output: {
    remainingStrengthFactor: { symbol: 'RSF', kind: 'number', name: 'remaining strength factor' },
    lengthParameter: { symbol: 'lambda', kind: 'number', name: 'length parameter' },
    remainingWallRatio: { symbol: 'R_t', kind: 'number', name: 'remaining wall over corrected wall' },
    foliasFactor: { symbol: 'M_t', kind: 'number', name: 'bulging factor' },
    reducedPressure: { symbol: 'MAWP_r', kind: 'gauge pressure', name: 'reduced working pressure' },
    accepted: { symbol: 'accepted', kind: 'flag', name: 'acceptable without reduction' },
  },
  sources: [{ key: 'api-579', locator: 'Part 5, Level 1' }],
  evidence: {
    form: { tag: 'secondary' },
    allowableFactor: { tag: 'secondary' },
    leastWall: { tag: 'secondary', note: '1.3 mm for pipe, 2.5 mm for vessels.' },
  },
  limits: [
    { sort: 'stop', text: 'R_t below 0.2.', source: { key: 'api-579', locator: 'Part 5, Level 1' } },
    {
      sort: 'stop',
      text: 'Less than 1.3 mm of wall left in a pipe.',
      source: { key: 'api-579', locator: 'Part 5, Level 1' },
    },
    {
      sort: 'stop',
      text: 'Closer than 1.8 sqrt(D_i t_c) to a structural discontinuity.',
      source: { key: 'api-579', locator: 'Part 5, Level 1' },
    },
    {
      sort: 'note',
      text: 'Nothing shows that the nearest structural discontinuity is at least 1.8 sqrt(D_i t_c) away.',
      beyond: localMetalLossDiscontinuityUnchecked,
      source: { key: 'api-579', locator: 'Part 5, Level 1' },
    },
  ],
});
