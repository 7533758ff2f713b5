/** What came of making the calendar, as sentences. */
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import type { LeftOut } from './readPlotDates';
import type { CalendarMade } from './makeCalendar';

const { said: words, leftOut: lineWords } = catalogue.calendar;

/** More are too many to take in at once. */
const mostNamed = 5;

/** In the line: it must not run out beyond the tables under it, or the whole sheet would print smaller. */
const mostCharacters = 220;

export function sayCalendar({ tasks, plots, leftOut, kept }: CalendarMade): string[] {
  return [
    fill(words.made, { tasks, plots }),
    ...sayLeftOut(leftOut),
    ...(kept.length === 0
      ? []
      : [fill(words.kept, { count: kept.length, rows: listed(eachAs(words.keptRow, kept), mostNamed) })]),
  ];
}

/** Which plots are not in the calendar, or not with all of their work, and why. */
export function sayLeftOut(leftOut: readonly LeftOut[]): string[] {
  const whole = leftOut.filter(({ isWhole }) => isWhole);
  const part = leftOut.filter(({ isWhole }) => !isWhole);
  return [
    ...(whole.length === 0 ? [] : [fill(words.leftOut, { plots: told(words.leftOutPlot, whole) })]),
    ...(part.length === 0 ? [] : [fill(words.partly, { plots: told(words.partlyPlot, part) })]),
  ];
}

/** The same in the one line of a sheet, which has no room for sentences. */
export function sayInLine(leftOut: readonly LeftOut[]): string {
  if (leftOut.length === 0) return lineWords.none;
  const all = leftOut.map(({ kind, plot, lacks }) => fill(lineWords.kinds[kind], { plot, lacks }));
  let count = Math.min(all.length, mostNamed);
  while (count > 1 && all.slice(0, count).join('; ').length > mostCharacters) count -= 1;
  return fill(lineWords.line, { plots: listed(all, count) });
}

const eachAs = (text: string, all: readonly object[]): string[] => all.map((one) => fill(text, { ...one }));

/** Sentences, one after the other. */
function told(sentence: string, all: readonly object[]): string {
  const more = all.length - mostNamed;
  return [
    ...eachAs(sentence, all.slice(0, mostNamed)),
    ...(more > 0 ? [fill(words.moreToo, { more })] : []),
  ].join(' ');
}

function listed(all: readonly string[], most: number): string {
  const named = all.slice(0, most);
  const more = all.length - named.length;
  return [...named, ...(more > 0 ? [fill(words.more, { more })] : [])].join('; ');
}
