/** Daily records as texts, for the tests of reading them. */
import { readRecord, type RecordChoices, type RecordRead } from '../../../src/calc/record/readRecord';
import type { RecordDay } from '../../../src/calc/record/settleDays';
import { splitRecords } from '../../../src/workbook/splitRecords';
import { dayOfIso, isoOfDay } from '../../../src/workbook/serialDate';

export const read = (text: string, choices: Partial<RecordChoices> = {}): RecordRead =>
  readRecord(text, splitRecords, { today: day('2026-06-01'), hemisphere: 'north', ...choices });

export function day(iso: string): number {
  const found = dayOfIso(iso);
  if (found === null) throw new Error(`no day ${iso}`);
  return found;
}

/** With the doubts that name the length of a record left out: most records here are short. */
export function doubtsOf(text: string, choices: Partial<RecordChoices> = {}): RecordRead['doubts'] {
  const ofShortness = new Set(['voidSeason', 'fewSeasons']);
  return read(text, choices).doubts.filter(({ code }) => !ofShortness.has(code));
}

/** As [date, high, low]. */
export function daysOf(text: string, choices: Partial<RecordChoices> = {}): unknown[] | null {
  const days = read(text, choices).record?.days ?? null;
  return days?.map((one: RecordDay) => [isoOfDay(one.day), one.high, one.low]) ?? null;
}

/** Days from a first on, each with the same temperatures unless told otherwise. */
export function linesFrom(
  iso: string,
  count: number,
  temperatures: (index: number) => string = () => '20,10',
): string[] {
  return Array.from({ length: count }, (_, i) => `${isoOfDay(day(iso) + i)},${temperatures(i)}`);
}
