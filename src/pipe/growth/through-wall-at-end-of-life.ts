import { formula, nonNegative } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';

export interface ThroughWallAtEndOfLifeInput {
  readonly wallAtEndOfLife: Length;
  readonly leastWall?: Length;
}

const ONE_MILLIMETRE = 1e-3 as Length;

/**
 * Whether a defect counts as through-wall at the end of life: less than 1 mm of wall is left.
 *
 * $$t_{eol} < 1\ \mathrm{mm}$$
 *
 * @param input.wallAtEndOfLife  t_eol, at the thinnest point [m], >= 0
 * @param input.leastWall        wall that counts as closed [m], >= 0; 1 mm by default
 * @returns true when the repair is to be designed for a leak
 * @throws CalculationError `invalid-input`
 * @see ISO 24817 and ASME PCC-2, as recalled
 */
export function throughWallAtEndOfLife(input: ThroughWallAtEndOfLifeInput): boolean {
  const { wallAtEndOfLife: t, leastWall = ONE_MILLIMETRE } = input;
  nonNegative(t, 'wallAtEndOfLife', 'm');
  nonNegative(leastWall, 'leastWall', 'm');
  return t < leastWall;
}

export const throughWallAtEndOfLifeFormula = /* @__PURE__ */ formula<ThroughWallAtEndOfLifeInput, boolean>({
  id: 'pipe/through-wall-at-end-of-life',
  title: 'Through-wall at the end of life',
  search: ['leak', 'perforation', 'pinhole'],
  compute: throughWallAtEndOfLife,
  equation: { expression: 't_eol < t_least' },
  inputs: {
    wallAtEndOfLife: { symbol: 't_eol', kind: 'length', name: 'wall at the end of life', sample: [0, 0.003] },
    leastWall: {
      symbol: 't_least',
      kind: 'length',
      name: 'wall that counts as closed',
      sample: [0.0005, 0.002],
      default: 0.001,
    },
  },
  output: { symbol: 'through', kind: 'flag', name: 'counts as through-wall' },
  sources: [
    { key: 'iso-24817', locator: 'defect types, as recalled' },
    { key: 'asme-pcc-2', locator: 'Article 401, as recalled' },
  ],
  evidence: { form: { tag: 'recalled' }, leastWall: { tag: 'recalled' } },
  limits: [],
});
