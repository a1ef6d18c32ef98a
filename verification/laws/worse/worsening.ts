import type { RepairCase } from '../../../src/repair/index.js';

/** What has to become of a case that was changed. */
export type Demand =
  /** Never better, in nothing: the law where none is named. */
  | 'no better'
  /** What waits for a cure never waits less; all else may move either way. */
  | 'no shorter wait'
  /** Of the same sizes and verdict. */
  | 'the same'
  | 'not designed'
  /** The door does not let it in. */
  | 'refused'
  /** Something is said that was not said before, or the door does not let it in. */
  | 'a warning more'
  /** A field is warned of that was not, whatever becomes of the case, or the door does not let it in. */
  | 'a warning of its field';

/** One way in which a case gets worse, by a factor above 1 where it has a size; nothing where the case has no such thing. */
export interface Worsening {
  readonly name: string;
  readonly demands?: Demand;
  readonly of: (repairCase: RepairCase, factor: number) => RepairCase | undefined;
  /** Makes a drawn case one that has what gets worse, where few have it. */
  readonly from?: (repairCase: RepairCase, share: number) => RepairCase | undefined;
}

/** Changes some fields of one part of a case. */
export type Section = 'pipe' | 'service' | 'defect' | 'loads' | 'repair' | 'laminate' | 'site';

export function change<S extends Section>(base: RepairCase, section: S, fields: Partial<RepairCase[S]>): RepairCase {
  return { ...base, [section]: { ...base[section], ...fields } };
}
export const times = <T extends number>(value: T, factor: number): T => (value * factor) as T;
export const less = <T extends number>(value: T, factor: number): T => (value / factor) as T;
