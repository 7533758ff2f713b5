/** What came of making the calendar, as sentences. */
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import type { LeftOut } from './readPlotDates';
import type { CalendarMade } from './makeCalendar';

const { said: words, leftOut: lineWords } = catalogue.calendar;

/** More are too many to take in at once. */
const mostNamed = 5;

export function sayCalendar({ tasks, plots, leftOut, kept }: CalendarMade): string[] {
  return [
    fill(words.made, { tasks, plots }),
    ...sayLeftOut(leftOut),
    ...(kept.length === 0 ? [] : [fill(words.kept, { count: kept.length, rows: name(words.keptRow, kept) })]),
  ];
}

/** Which plots are not in the calendar, or not with all of their work, and why. */
export function sayLeftOut(leftOut: readonly LeftOut[]): string[] {
  const whole = leftOut.filter(({ isWhole }) => isWhole);
  const part = leftOut.filter(({ isWhole }) => !isWhole);
  return [
    ...(whole.length === 0 ? [] : [fill(words.leftOut, { plots: name(words.leftOutPlot, whole) })]),
    ...(part.length === 0 ? [] : [fill(words.partly, { plots: name(words.partlyPlot, part) })]),
  ];
}

/** The same in the one line of a sheet, which has no room for sentences. */
export function sayInLine(leftOut: readonly LeftOut[]): string {
  if (leftOut.length === 0) return lineWords.none;
  return fill(lineWords.line, {
    plots: listed(leftOut, ({ kind, plot, lacks }) => fill(lineWords.kinds[kind], { plot, lacks })),
  });
}

const name = (sentence: string, all: readonly object[]): string =>
  listed(all, (one) => fill(sentence, { ...one }));

function listed<One>(all: readonly One[], say: (one: One) => string): string {
  const named = all.slice(0, mostNamed).map(say);
  const more = all.length - named.length;
  return [...named, ...(more > 0 ? [fill(words.more, { more })] : [])].join('; ');
}
