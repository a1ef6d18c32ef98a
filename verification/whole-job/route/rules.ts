import { type RuleValues, YEAR } from './rule-values.js';

/** A number of the rule set; one that the set does not have is a slip of this route. */
export function ruleOf({ rules }: { readonly rules: RuleValues }, path: string): number {
  const value = rules[path];
  if (value === undefined) throw new Error(`the rule set has no ${path}`);
  return value;
}

/** What a question to the rule sets needs to know. */
export interface RuleAsker {
  readonly rules: RuleValues;
  readonly repairClass: 1 | 2 | 3;
  /** Seconds. */
  readonly life: number;
  readonly rare: boolean;
}

/** The row of a table that holds for a life: that of the next longer life; undefined beyond the last one. */
function rowFor(asker: { readonly rules: RuleValues; readonly life: number }, table: string): string | undefined {
  for (let index = 0; asker.rules[`${table}[${index}].life`] !== undefined; index++) {
    if (asker.life <= ruleOf(asker, `${table}[${index}].life`) * (1 + 1e-12)) return `${table}[${index}]`;
  }
  return undefined;
}

/** A row of default strains; `softAxial` is the axial one of a laminate of less than half the stiffness along the pipe. */
export interface DefaultStrains {
  readonly hoop: number;
  readonly axial: number;
  readonly softAxial: number;
}

function strainsOf(
  set: { readonly rules: RuleValues; readonly life: number },
  table: string,
): DefaultStrains | undefined {
  const row = rowFor(set, table);
  if (row === undefined) return undefined;
  const of = (column: string): number => ruleOf(set, `${row}.${column}`);
  return { hoop: of('hoop'), axial: of('axial'), softAxial: of('softAxial') };
}

/** Default strains for a life: the column of the next longer life. */
export function defaultStrains(asker: RuleAsker): DefaultStrains | undefined {
  return strainsOf(asker, `defaultStrains.${asker.rare ? 'rare' : 'continuous'}.${asker.repairClass}`);
}

/** The default strains that the bond has to follow, whatever the life and the class. */
export function bondStrains({ rules }: { readonly rules: RuleValues }): DefaultStrains | undefined {
  return strainsOf({ rules, life: ruleOf({ rules }, 'overlap.bondStrains.life') }, 'overlap.bondStrains.table');
}

/** Factor on a long-term strength. */
export function performanceFactor(asker: RuleAsker, test: string): number {
  const table = test === 'design life regression' ? 'designLifeTest' : 'survivalTest';
  const row = rowFor(asker, `performance.${table}.${asker.repairClass}`);
  return row === undefined ? Number.NaN : ruleOf(asker, `${row}.factor`);
}

/** Leak service factor: of ISO 24817 in class 3 the fixed one, unless its formula is asked for. */
export function leakFactor(asker: RuleAsker, byFormula: boolean): number {
  const option = `leakFactorOption.${asker.repairClass}`;
  const from =
    byFormula && asker.rules[`${option}.firstYear`] !== undefined ? option : `leakFactor.${asker.repairClass}`;
  const years = asker.life / YEAR;
  return ruleOf(asker, `${from}.firstYear`) * 10 ** (-ruleOf(asker, `${from}.decay`) * (years - 1));
}

/** f_T1 of section 2.6 for the distance to the temperature limit in kelvin. */
export function temperatureFactor(set: { readonly rules: RuleValues }, distance: number): number {
  const [a, b, c] = ['quadratic', 'linear', 'constant'].map((term) => ruleOf(set, `temperatureFactor.${term}`)) as [
    number,
    number,
    number,
  ];
  return Math.min(1, a * distance ** 2 + b * distance + c);
}

/** Fatigue factor of section 2.10: 1 up to the free cycles, at most 1 beyond. */
export function cyclicFactor(set: { readonly rules: RuleValues }, cycles: number, ratio: number): number {
  if (cycles <= ruleOf(set, 'cyclic.freeCycles')) return 1;
  const divisor = ruleOf(set, 'cyclic.slope') * Math.log10(cycles) - ruleOf(set, 'cyclic.intercept');
  return Math.min(1, Math.sqrt(ratio ** 2 + (1 - ratio ** 2) / divisor));
}

/** Lap of neighbouring sheets. */
export const SIDE_LAP = 0.025;
