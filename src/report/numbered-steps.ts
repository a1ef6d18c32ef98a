import type { RecordedEntry, RecordedStep } from '../formula/recorder.js';

/** A step of a record and the number by which a sheet calls it. */
export interface NumberedStep {
  /** `4.2` is the second step of the fourth part. */
  readonly number: string;
  readonly step: RecordedStep;
}

/** The steps of a record in order: parts are numbered 1, 2, 3, the steps of a part 1.1, 1.2, 1.3. */
export function numberedSteps(record: readonly RecordedEntry[]): NumberedStep[] {
  let part = 0;
  let count = 0;
  return record.flatMap((entry) => {
    if (entry.sort === 'heading') {
      part += 1;
      count = 0;
    }
    if (entry.sort !== 'step') return [];
    count += 1;
    return [{ number: `${part}.${count}`, step: entry }];
  });
}
