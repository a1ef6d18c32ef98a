import { atMost, nonNegative, positive, refuse, within } from '../../formula/index.js';
import type { Length, Stress } from '../../quantity/index.js';

/** What one pipe is rated by, and many readings of its wall. */
export interface MawpAllInput {
  /** Outside diameter [m]. */
  readonly outsideDiameter: Length;
  /** Wall thickness t of each reading [m]: measured wall less loss still to come and mechanical allowance. */
  readonly wallThickness: Float64Array;
  /** Thickness for loads beside the pressure [m]. */
  readonly supplementalThickness?: Length | undefined;
  /** Allowable stress of the code [Pa]. */
  readonly allowableStress: Stress;
  /** Quality factor of the weld joint. */
  readonly jointFactor: number;
  /** Coefficient Y of the code. */
  readonly temperatureCoefficient?: number | undefined;
}

/**
 * Maximum allowable working pressure for every wall thickness of a survey: `mawp`, row by row, without allocation.
 *
 * @param input.outsideDiameter         D [m], > 0
 * @param input.wallThickness           t of each reading [m], above t_sl and below D/6
 * @param input.supplementalThickness   t_sl [m], >= 0; 0 when left out
 * @param input.allowableStress         S at the design temperature [Pa], > 0
 * @param input.jointFactor             E, above 0 and at most 1
 * @param input.temperatureCoefficient  Y, from 0 to 1; 0.4 when left out (ductile steel below 482 degC)
 * @param out                           takes the pressures [Pa]; as long as `wallThickness`, which it may be
 * @returns `out`
 * @throws CalculationError `invalid-input`, `outside-validity` or `no-solution`, naming the first bad row; `out` then
 *   holds the rows before it
 */
export function mawpAll(input: MawpAllInput, out: Float64Array): Float64Array {
  const { outsideDiameter: D, wallThickness, supplementalThickness: tsl = 0 } = input;
  const { allowableStress: S, jointFactor: E, temperatureCoefficient: Y = 0.4 } = input;
  positive(D, 'outsideDiameter', 'm');
  nonNegative(tsl, 'supplementalThickness', 'm');
  positive(S, 'allowableStress', 'Pa');
  positive(E, 'jointFactor', '');
  atMost(E, 1, 'full strength', 'jointFactor', '');
  within(Y, 0, 1, 'temperatureCoefficient', '');
  // The greatest pressure of any row is below 4 S E; more than that cannot be held in a number.
  positive(4 * S * E * D, '4 allowableStress jointFactor outsideDiameter', 'N/m');
  const rows = wallThickness.length;
  if (out.length !== rows) refuseLength(out.length, rows);
  const thickest = D / 6;
  const row =
    tsl === 0 ? fillPlain(wallThickness, out, 2 * S * E, D, 2 * Y) : fill(wallThickness, out, 2 * S * E, D, 2 * Y, tsl);
  if (row !== rows) refuseRow(wallThickness[row] as number, row, tsl, thickest);
  return out;
}

// Both loops return the first bad row and leave the refusal to the caller: a throw inside makes them half as fast.

function fillPlain(walls: Float64Array, out: Float64Array, load: number, D: number, gap: number): number {
  const rows = walls.length;
  const thickest = D / 6;
  let row = 0;
  for (; row < rows; row++) {
    const t = walls[row] as number;
    if (!(t > 0 && t < thickest)) break;
    out[row] = (load * t) / (D - gap * t);
  }
  return row;
}

/** The longitudinal value is the hoop value of a wall 2 (t - t_sl), so the lower value belongs to the thinner of the two. */
function fill(walls: Float64Array, out: Float64Array, load: number, D: number, gap: number, tsl: number): number {
  const rows = walls.length;
  const thickest = D / 6;
  let row = 0;
  for (; row < rows; row++) {
    const t = walls[row] as number;
    if (!(t > tsl && t < thickest)) break;
    const governing = Math.min(t, 2 * (t - tsl));
    out[row] = (load * governing) / (D - gap * governing);
  }
  return row;
}

function refuseLength(length: number, rows: number): never {
  const constraint = `must be ${rows}, the length of wallThickness`;
  refuse({ code: 'invalid-input', parameter: 'out.length', value: length, unit: '', constraint });
}

function refuseRow(t: number, row: number, tsl: number, thickest: number): never {
  const parameter = `wallThickness[${row}]`;
  const common = { parameter, value: t, unit: 'm' };
  if (!(t > 0 && t < Number.POSITIVE_INFINITY))
    refuse({ ...common, code: 'invalid-input', constraint: 'must be a finite number above 0' });
  if (t <= tsl)
    refuse({ ...common, code: 'no-solution', constraint: `must be above the supplemental thickness, ${tsl} m` });
  const constraint = `must be below D/6, ${thickest} m: a thicker wall needs a special analysis`;
  refuse({ ...common, code: 'outside-validity', constraint, source: 'ASME B31.3, 304.1.2(b)' });
}
