/** Coefficients of the two rule sets, written out from the reference notes (repair-design.md, sections 2 and 5). */

export const YEAR = 365.25 * 86_400;

interface StrainRow {
  readonly years: number;
  readonly hoop: number;
  readonly soft: number;
}

/** ISO 24817, default strains by class (section 2.6, soft column by section 5): 2, 10 and 20 years. */
const ISO_STRAINS: Readonly<Record<1 | 2 | 3, readonly StrainRow[]>> = {
  1: [
    { years: 2, hoop: 0.4e-2, soft: 0.25e-2 },
    { years: 10, hoop: 0.32e-2, soft: 0.16e-2 },
    { years: 20, hoop: 0.25e-2, soft: 0.1e-2 },
  ],
  2: [
    { years: 2, hoop: 0.35e-2, soft: 0.22e-2 },
    { years: 10, hoop: 0.3e-2, soft: 0.15e-2 },
    { years: 20, hoop: 0.25e-2, soft: 0.1e-2 },
  ],
  3: [
    { years: 2, hoop: 0.3e-2, soft: 0.18e-2 },
    { years: 10, hoop: 0.27e-2, soft: 0.13e-2 },
    { years: 20, hoop: 0.25e-2, soft: 0.1e-2 },
  ],
};

const ISO_PERFORMANCE: Readonly<Record<1 | 2 | 3, readonly [number, number, number]>> = {
  1: [0.8, 0.64, 0.5],
  2: [0.67, 0.58, 0.5],
  3: [0.59, 0.54, 0.5],
};

const ISO_LEAK: Readonly<Record<1 | 2 | 3, readonly [number, number]>> = {
  1: [0.83, 0.02088],
  2: [0.75, 0.01856],
  3: [0.666, 0.01584],
};

/** What a question to the rule sets needs to know. */
export interface RuleAsker {
  readonly basis: 'ISO 24817' | 'ASME PCC-2';
  readonly repairClass: 1 | 2 | 3;
  readonly years: number;
  readonly rare: boolean;
}

/** Default strain for a life: the column of the next longer life. `soft` is the axial one of a laminate of less than half. */
export function defaultStrain({ basis, repairClass, years, rare }: RuleAsker, soft: boolean): number {
  if (basis === 'ASME PCC-2') return rare ? (soft ? 0.25e-2 : 0.4e-2) : soft ? 0.1e-2 : 0.25e-2;
  const row = ISO_STRAINS[repairClass].find((each) => years <= each.years * (1 + 1e-12));
  if (row === undefined) return Number.NaN;
  return soft ? row.soft : row.hoop;
}

/** The largest default strain of the axial column, whatever the life and the class: it is what the bond has to follow. */
export function bondStrain(soft: boolean): number {
  return soft ? 0.25e-2 : 0.4e-2;
}

/** Factor on a long-term strength. */
export function performanceFactor({ basis, repairClass, years }: RuleAsker, test: string): number {
  if (test === 'design life regression') return 0.67;
  if (basis === 'ASME PCC-2') return 0.5;
  const [two, ten, twenty] = ISO_PERFORMANCE[repairClass];
  return years <= 2 ? two : years <= 10 ? ten : twenty;
}

/** Leak service factor: fixed at 0.333 by ASME PCC-2 and, unless the formula is asked for, in class 3 of ISO 24817. */
export function leakFactor({ basis, repairClass, years }: RuleAsker, byFormula: boolean): number {
  if (basis === 'ASME PCC-2' || (repairClass === 3 && !byFormula)) return 0.333;
  const [first, decay] = ISO_LEAK[repairClass];
  return first * 10 ** (-decay * (years - 1));
}

/** f_T1 of section 2.6 for the distance to the temperature limit in kelvin. */
export function temperatureFactor(distance: number): number {
  return Math.min(1, 6e-5 * distance ** 2 + 0.001 * distance + 0.7014);
}

/** Up to which the fatigue factor is known (2.10). */
export const MOST_CYCLES = 1e8;

/** Fatigue factor of section 2.10: 1 up to 7000 cycles, at most 1 beyond. */
export function cyclicFactor(cycles: number, ratio: number): number {
  if (cycles <= 7000) return 1;
  const squared = ratio ** 2 + (1 - ratio ** 2) / (2.888 * Math.log10(cycles) - 7.108);
  return Math.min(1, Math.sqrt(squared));
}

/** Kelvin below the glass transition, and below the heat distortion temperature, at which the limit lies (section 5). */
export function temperatureMargins(leaking: boolean): { readonly transition: number; readonly distortion: number } {
  return leaking ? { transition: 30, distortion: 25 } : { transition: 20, distortion: 15 };
}

export const LEAST_HOLE = 0.015;
export const LEAST_OVERLAP = 0.05;
export const LEAST_PLIES = 2;
export const LONGEST_LIFE = 20 * YEAR;
export const BOND_FACTOR = 3;
export const TAPER = 5;
export const THIN_LAMINATE = 12;
/** Section 5 keeps 4 MPa with a warning. */
export const LAP_SHEAR_WITH_WARNING = 4e6;
export const LEAST_FAILURE_STRAIN = 0.01;
/** Lap of neighbouring sheets. */
export const SIDE_LAP = 0.025;
