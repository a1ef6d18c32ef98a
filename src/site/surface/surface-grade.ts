import type { SourceKey, SourceTag } from '../../formula/index.js';

/** Preparation grades of ISO 8501-1, and the two power-tool grades that have none. */
export type SurfaceGradeName = 'Sa 1' | 'Sa 2' | 'Sa 2 1/2' | 'Sa 3' | 'St 2' | 'St 3' | 'SP 11' | 'SP 15';

/** A preparation grade: how it is made, and what it leaves on the steel. */
export interface SurfaceGrade {
  /** Name of the grade. */
  readonly grade: SurfaceGradeName;
  /** How it is made. */
  readonly method: 'blast' | 'hand or power tool' | 'power tool to bare metal';
  /** Rank within its method, from the lightest; grades of two methods are not compared. */
  readonly rank: number;
  /** What is left on the steel. */
  readonly meaning: string;
  /** The nearest SSPC grade; about the same, never the same. */
  readonly sspc: string;
  /** The nearest NACE grade, where there is one. */
  readonly nace?: string;
  /** Whether the grade by itself leaves a profile that a laminate can hold to. */
  readonly leavesProfile: boolean;
  /** Standard that the grade is from. */
  readonly source: SourceKey;
  /** How that standard was reached. */
  readonly tag: SourceTag;
}

/** The grades, by method from the lightest. */
export const surfaceGrades: readonly SurfaceGrade[] = [
  {
    grade: 'Sa 1',
    method: 'blast',
    rank: 1,
    meaning: 'loose scale, rust, coating and foreign matter are gone; what holds firmly stays',
    sspc: 'SP 7',
    nace: 'No. 4',
    leavesProfile: false,
    source: 'iso-8501-1',
    tag: 'secondary',
  },
  {
    grade: 'Sa 2',
    method: 'blast',
    rank: 2,
    meaning: 'most scale, rust and coating are gone; what stays is firmly stuck',
    sspc: 'SP 6 (stains on at most 33 % of each unit area)',
    nace: 'No. 3',
    leavesProfile: true,
    source: 'iso-8501-1',
    tag: 'secondary',
  },
  {
    grade: 'Sa 2 1/2',
    method: 'blast',
    rank: 3,
    meaning: 'only slight stains in spots or stripes remain',
    sspc: 'SP 10 (stains on at most 5 % of each unit area)',
    nace: 'No. 2',
    leavesProfile: true,
    source: 'iso-8501-1',
    tag: 'secondary',
  },
  {
    grade: 'Sa 3',
    method: 'blast',
    rank: 4,
    meaning: 'one metallic colour all over, nothing visible remains',
    sspc: 'SP 5 (white metal)',
    nace: 'No. 1',
    leavesProfile: true,
    source: 'iso-8501-1',
    tag: 'secondary',
  },
  {
    grade: 'St 2',
    method: 'hand or power tool',
    rank: 1,
    meaning: 'loose scale, rust and coating are gone',
    sspc: 'SP 2',
    leavesProfile: false,
    source: 'iso-8501-1',
    tag: 'secondary',
  },
  {
    grade: 'St 3',
    method: 'hand or power tool',
    rank: 2,
    meaning: 'as St 2, worked on until the metal shows a sheen',
    sspc: 'SP 3',
    leavesProfile: false,
    source: 'iso-8501-1',
    tag: 'secondary',
  },
  {
    grade: 'SP 15',
    method: 'power tool to bare metal',
    rank: 1,
    meaning: 'as SP 11, but stains may remain',
    sspc: 'SP 15',
    leavesProfile: true,
    source: 'power-tool-grade-pages',
    tag: 'secondary',
  },
  {
    grade: 'SP 11',
    method: 'power tool to bare metal',
    rank: 2,
    meaning: 'bare metal with a profile of at least 25 um; for places where blasting is not allowed',
    sspc: 'SP 11',
    leavesProfile: true,
    source: 'power-tool-grade-pages',
    tag: 'secondary',
  },
];

/**
 * The row of a grade.
 *
 * @param name of the grade
 */
export function surfaceGrade(name: SurfaceGradeName): SurfaceGrade | undefined {
  return surfaceGrades.find(({ grade }) => grade === name);
}

/**
 * Whether a grade is as good as the one required. Grades of two methods are not compared: the qualified method governs.
 *
 * @param achieved the grade on the steel
 * @param required the grade that is asked for
 */
export function surfaceGradeMeets(achieved: SurfaceGradeName, required: SurfaceGradeName): boolean {
  const [a, r] = [surfaceGrade(achieved), surfaceGrade(required)];
  return a !== undefined && r !== undefined && a.method === r.method && a.rank >= r.rank;
}
