import { refuse, type SourceReference } from '../../formula/index.js';
import { frozen } from '../../numeric/frozen.js';
import { type Stress, stress } from '../../quantity/index.js';

/** To the 43rd edition the psi values of API 5L govern; from the 44th the MPa values do. The two differ by up to 2 %. */
export type GradeEdition = '43rd and earlier' | '44th and later';

/** A grade of line pipe with its strengths. */
export interface LinePipeGrade {
  /** Grade by its name. */
  readonly grade: string;
  /** Edition whose strengths these are. */
  readonly edition: GradeEdition;
  /** Specified minimum yield strength. */
  readonly yieldStrength: Stress;
  /** Specified minimum tensile strength. */
  readonly tensileStrength: Stress;
  /** How the table was reached. */
  readonly tag: 'secondary';
  /** Where the row stands. */
  readonly source: SourceReference;
}

/** Grade, yield and tensile strength in psi (43rd), name, yield and tensile strength in MPa (44th). */
type Row = readonly [string, number, number, string, number, number];

const rows: readonly Row[] = [
  ['A25', 25000, 45000, 'L175', 175, 310],
  ['A', 30000, 48000, 'L210', 210, 335],
  ['B', 35000, 60000, 'L245', 245, 415],
  ['X42', 42000, 60000, 'L290', 290, 415],
  ['X46', 46000, 63000, 'L320', 320, 435],
  ['X52', 52000, 66000, 'L360', 360, 460],
  ['X56', 56000, 71000, 'L390', 390, 490],
  ['X60', 60000, 75000, 'L415', 415, 520],
  ['X65', 65000, 77000, 'L450', 450, 535],
  ['X70', 70000, 82000, 'L485', 485, 570],
  ['X80', 80000, 90000, 'L555', 555, 625],
];

/** The grades of line pipe in this table. */
export const linePipeGrades: readonly string[] = /* @__PURE__ */ frozen(/* @__PURE__ */ rows.map(([grade]) => grade));

/**
 * Specified minimum yield and tensile strength of a line-pipe grade, from the edition that the pipe was made to.
 *
 * @param grade   `X52`, `B`, or the metric name `L360`
 * @param edition which values govern; it has no default, since they differ
 * @throws CalculationError `invalid-input`
 * @see API 5L, read in the open tables that docs/tables.md names; only the governing unit of each edition is kept
 */
export function linePipeGrade(grade: string, edition: GradeEdition): LinePipeGrade {
  const wanted = grade.trim().toUpperCase();
  const row = rows.find(([name, , , metric]) => name === wanted || metric === wanted);
  if (row === undefined) {
    const constraint = `must be one of ${rows.map(([name, , , metric]) => `${name} (${metric})`).join(', ')}`;
    refuse({ code: 'invalid-input', parameter: 'grade', value: grade, unit: '', constraint });
  }
  const [name, yieldPsi, tensilePsi, , yieldMPa, tensileMPa] = row;
  if (edition === '43rd and earlier') {
    const strengths = { yieldStrength: stress.psi(yieldPsi), tensileStrength: stress.psi(tensilePsi) };
    return { grade: name, edition, ...strengths, tag: 'secondary', source: { key: 'api-5l-43', locator: 'Table 3A' } };
  }
  if (edition === '44th and later') {
    const strengths = { yieldStrength: stress.MPa(yieldMPa), tensileStrength: stress.MPa(tensileMPa) };
    return {
      grade: name,
      edition,
      ...strengths,
      tag: 'secondary',
      source: { key: 'api-5l-44', locator: 'tensile requirements' },
    };
  }
  const constraint = "must be '43rd and earlier' or '44th and later'";
  refuse({ code: 'invalid-input', parameter: 'edition', value: edition, unit: '', constraint });
}
