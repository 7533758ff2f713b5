import type { DateWords } from '../../src/workbook/serialDate';

/** By the names of the months that the machine's own tables have (ICU, CLDR). */
export const wordsOf = (locale: string, isDayFirst: boolean): DateWords => ({
  months: Array.from({ length: 12 }, (_, month) => [
    new Intl.DateTimeFormat(locale, { month: 'long', timeZone: 'UTC' }).format(Date.UTC(2000, month, 1)),
  ]),
  isDayFirst,
});

/** A whole day number, as those tables write it. */
export const written = (day: number, locale: string, style: Intl.DateTimeFormatOptions): string =>
  new Intl.DateTimeFormat(locale, { ...style, timeZone: 'UTC' }).format(day * 86_400_000);
