import type { Assumption, Entry, Recorder, Remark, Step } from '../../src/calc/working';

/** Runs a calculation with its working noted. */
export function recording<T>(calculate: (record: Recorder) => T): {
  value: T;
  steps: Step[];
  assumptions: Assumption[];
  remarks: string[];
} {
  const entries: Entry[] = [];
  const value = calculate((entry) => entries.push(entry));
  return {
    value,
    steps: entries.filter((entry): entry is Step => 'step' in entry),
    assumptions: entries.filter((entry): entry is Assumption => 'assumed' in entry),
    remarks: entries.filter((entry): entry is Remark => 'remark' in entry).map(({ remark }) => remark),
  };
}
