/** What came of making the calendar, as sentences. */
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import type { CalendarMade } from './makeCalendar';

const { said: words } = catalogue.calendar;

/** More are too many to take in at once. */
const mostNamed = 5;

export function sayCalendar({ tasks, plots, leftOut, kept }: CalendarMade): string[] {
  return [
    fill(words.made, { tasks, plots }),
    ...(leftOut.length === 0 ? [] : [fill(words.leftOut, { plots: name(words.leftOutPlot, leftOut) })]),
    ...(kept.length === 0 ? [] : [fill(words.kept, { count: kept.length, rows: name(words.keptRow, kept) })]),
  ];
}

function name(sentence: string, all: readonly object[]): string {
  const named = all.slice(0, mostNamed).map((one) => fill(sentence, { ...one }));
  const more = all.length - named.length;
  return [...named, ...(more > 0 ? [fill(words.more, { more })] : [])].join('; ');
}
