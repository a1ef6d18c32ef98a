import { describe, expect, it } from 'vitest';
import { designRepair } from '../../src/repair/index.js';
import { tapeModuli } from '../repair/tape-moduli.js';
import { caseOf, laminateOf, millimetresAsked, refusedFields, verdictOf } from './answers.js';
import { evenLoss, live, withPaths, yieldedLoss } from './cases.js';

/** Issue 9, item 1: relief and credit can never save a ply; they stay among the alternatives. */

const STEEL = 207_000;

/** 30 bar in the line, 60 bar by design. */
const credited = withPaths(yieldedLoss, {
  'service.designPressure': '60 bar',
  ...live('30 bar'),
});

/** Thicknesses beside the chosen one, in millimetres. */
const alternatives = (file: typeof evenLoss): number[] =>
  laminateOf(file).alternatives.flatMap((each) => ('value' in each ? [each.value * 1000] : []));

describe('a less conservative line', () => {
  const options = [
    ['relief by the end load', evenLoss, 'repair.axialRelief', 40],
    ['credit for pressure during the work', credited, 'repair.creditPressureDuringApplication', 60],
  ] as const;

  it('is not needed for a design', () => {
    expect([evenLoss, credited].map(verdictOf)).toEqual(['designed', 'designed']);
  });

  it.each(options)('saves nothing: %s', (_, file, option) => {
    expect(millimetresAsked(withPaths(file, { [option]: true }))).toBeGreaterThanOrEqual(millimetresAsked(file));
  });

  it.each(options)('is no option of the case: %s', (_, file, option) => {
    expect(refusedFields(withPaths(file, { [option]: true }))).toEqual([option]);
  });

  it.each(options)('leaves no design that resists less than its pressure: %s', (_, file, option, bar) => {
    const asked = withPaths(file, { [option]: true });
    const resisted = verdictOf(asked) === 'designed' ? laminateOf(asked).resistance.value / 1e5 : bar;
    expect(resisted).toBeGreaterThanOrEqual(bar * (1 - 1e-9));
  });

  it('stands among the alternatives: relief by the end load', () => {
    // t = (P D/2 - (F/(pi D)) nu)/(eps E), F = pi P D^2/4, E of the tape at its lead of 5.4 degrees (item 12)
    const { hoop } = tapeModuli({ hoop: 24_000, axial: 14_000, shear: 3000, poisson: 0.12 }, 100, 0.5, 168.3);
    const relieved = (((4 * 168.3) / 2) * (1 - 0.12 / 2)) / (0.0025 * hoop);
    expect(alternatives(evenLoss).some((value) => Math.abs(value / relieved - 1) < 0.01)).toBe(true);
  });

  it('is shown with what it costs: by its credit the laminate would strain beyond what is allowed', () => {
    const { record = [], laminate } = designRepair(caseOf(credited), { record: true });
    const strains = record.flatMap((entry) =>
      entry.sort === 'step' && entry.formula === 'laminate/strain-yielded-hoop' ? [Number(entry.result)] : [],
    );
    expect(strains).toHaveLength(1);
    // A third more in this case.
    expect((strains[0] ?? 0) / (laminate?.hoopStrain ?? 1)).toBeGreaterThan(4 / 3);
  });

  it('stands among the alternatives: credit for pressure during the work', () => {
    // eps E_c t = P D/2 - s t_s - (P_live D/2) E_c t/(E_c t + E_s t_s), its one positive root
    const [A, B, S] = [(6 * 617.6) / 2 - 359 * 3.812, (3 * 617.6) / 2, STEEL * 3.812];
    const b = A - B - 0.0025 * S;
    const t = (b + Math.sqrt(b ** 2 + 4 * 0.0025 * A * S)) / (2 * 0.0025 * 24_000);
    expect(alternatives(credited).some((value) => Math.abs(value / t - 1) < 0.01)).toBe(true);
  });
});
