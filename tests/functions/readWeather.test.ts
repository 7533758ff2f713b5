/** A daily record for the pane and the commands: serial numbers, and sentences for a grower. */
import { describe, expect, test } from 'vitest';
import { readWeather } from '../../src/functions/readWeather';
import { splitRecords } from '../../src/workbook/splitRecords';
import { dayOfIso, isoOfDay, serialOfDay } from '../../src/workbook/serialDate';

const serial = (iso: string): number => serialOfDay(dayOfIso(iso) ?? NaN);
const read = (...lines: readonly string[]) =>
  readWeather(lines.join('\n'), splitRecords, { today: serial('2026-06-01'), hemisphere: 'north' });
const head = 'Date,High (F),Low (F)';

test('days come as serial numbers, with what was taken', () => {
  const { record, found } = read('Station,Name,Day,Tmax F,Tmin F', 'X1,Upper field,2020-05-01,54,M');
  // 1 May 2020 is serial 43952: Excel's own DATEVALUE, from memory, check; the LibreOffice fixture has the same epoch.
  expect(record).toEqual({
    place: 'Upper field',
    units: 'us',
    days: [{ serial: 43952, high: 54, low: null }],
  });
  expect(found).toBe(
    '1 day, 2020-05-01 to 2020-05-01, in Fahrenheit (as the header says). Date from "Day", low from "Tmin F", high from "Tmax F". Station: Upper field.',
  );
});

describe('a doubt is said with what came of it', () => {
  const good = '2020-05-01,54,40';
  test.each([
    [[''], 'There is nothing in it. Give a header line'],
    [['2020-05-01,54,40'], 'No line names the columns. Put one above the days'],
    [['Date,High'], 'No column holds the low. Name it in the header'],
    [['Date,Low (F)', '2020-05-01,40'], 'No column holds the high. Frost dates can be told'],
    [['Date,Low,Tmin', '2020-05-01,40,41'], '"Low" and "Tmin" both look like the column of the low.'],
    [['Upper field', head, good], '1 line above the header was passed over.'],
    [[head, '2020-05-01,54,"40'], 'A quotation mark is opened and never closed.'],
    [[head, good, '2020-05-02,54'], 'The line has 2 cells and the header has 3. The line was left out'],
    [[head, '2020-05-02,5,4,1'], '1 of 1 lines have not as many cells as the header.'],
    [
      [`Station,${head}`, `A,${good}`, 'B,2020-05-02,54,40'],
      'This line is of station "B", line 2 of "A". Give the lines of one station only.',
    ],
    [[head, good, 'Monday,54,40'], '"Monday" is no date that can be read. The line was left out'],
    [[head, good, '2019-02-29,54,40'], 'The calendar has no 2019-02-29. The line was left out.'],
    [[head, '1/2/2020,54,40'], 'In "1/2/2020", as in all other dates here, either number may be the month.'],
    [
      [head, '1/13/2020,54,40', '14/1/2020,54,40'],
      'In "14/1/2020" the day and the month stand the other way round than in "1/13/2020" on line 2.',
    ],
    [[head, good, '1880-01-01,54,40'], '1880-01-01 is before 1 March 1900'],
    [[head, good, '2026-06-02,54,40'], '2026-06-02 is still to come. The line was left out'],
    [[head, '2020-05-01,warm,40'], '"warm" is no temperature. The high was left empty'],
    [
      [head, '2020-05-01,140,40'],
      'No high is 140 degrees Fahrenheit where cucurbits grow. It was left empty.',
    ],
    [['Date,High F,Low C', good], '"High F" and "Low C" name different scales.'],
    [
      ['Date,High,Low', good],
      'Fahrenheit or Celsius? The header does not say, and of 1 day the hottest has 54.',
    ],
    [
      [head, '2020-05-01,40,54', '2020-05-02,54,40'],
      'The low (54) is above the high (40). Both were left empty',
    ],
    [[head, '2020-05-01,40,54'], 'In 1 of 1 lines the low is above the high. Exchange the headers'],
    [[head, good, good], '2020-05-01 stands on line 2 too, and says the same. It was taken once.'],
    [
      [head, good, '2020-05-01,54,41'],
      '2020-05-01 stands on line 2 too, with other temperatures. The day was left empty',
    ],
    [[head], 'Under the header there is no day with a temperature.'],
    [[head, '2020-05-02,54,40', good], 'The days are not in the order of the calendar. They were sorted.'],
    [[head, good, '2020-05-04,54,40'], '2 days are missing, from 2020-05-02 to 2020-05-03.'],
    [[head, good, '2020-05-02,54,M'], '1 day has no low, this is the first.'],
    [[head, good], 'The spring of 2020 does not count: ten or more days are missing'],
    [[head, good], '0 springs count and 0 falls. Of fewer than 20'],
  ])('%j', (lines, said) => {
    const { doubts } = read(...lines);
    const sentences = doubts.map(({ sentence }) => sentence);
    expect(sentences.join('\n')).toContain(said);
    for (const sentence of sentences) expect(sentence).not.toMatch(/[{}]|undefined|NaN/);
  });

  test.each([
    [
      'tenths',
      ['Date,Tmax,Tmin', ...Array.from({ length: 9 }, (_, i) => `2020-05-0${i + 1},228,115`)],
      'Days as hot as 228 are not of this earth',
    ],
    [
      'Fahrenheit among Celsius',
      ['Date,High C,Low C', ...Array.from({ length: 9 }, (_, i) => `2020-05-0${i + 1},68,50`)],
      'The hottest day of 2020 has 68 degrees Celsius',
    ],
    [
      'hours',
      [head, ...Array.from({ length: 9 }, (_, i) => `2020-05-01,${60 + i},50`)],
      'with other temperatures, and 8 lines are like this one.',
    ],
    [
      'cold nights in Fahrenheit',
      [head, ...Array.from({ length: 366 }, (_, i) => `${isoOfDay(18262 + i)},60,20`)],
      'The warmest night has 20 degrees Fahrenheit, which no year has where cucurbits grow.',
    ],
    [
      'the other hemisphere',
      [
        'Date,High C,Low C',
        ...Array.from({ length: 31 }, (_, i) => `2020-07-${String(i + 1).padStart(2, '0')},5,0`),
        ...Array.from({ length: 31 }, (_, i) => `2021-01-${String(i + 1).padStart(2, '0')},25,15`),
      ],
      'The warm half of the year is that of the south. Say that the place lies in the south',
    ],
    [
      'gaps',
      [head, ...Array.from({ length: 9 }, (_, i) => `2020-05-${11 + 2 * i},60,50`)],
      '3 more of this kind.',
    ],
  ])('of many lines: %s', (_, lines, said) => {
    const sentences = read(...lines).doubts.map(({ sentence }) => sentence);
    expect(sentences.join('\n')).toContain(said);
    for (const sentence of sentences) expect(sentence).not.toMatch(/[{}]|undefined|NaN/);
  });

  test('a cell that holds a book is quoted in part', () => {
    const { doubts } = read(head, good, `${'x'.repeat(5000)},54,40`);
    expect(doubts.find(({ sentence }) => sentence.includes('xxx'))?.sentence.length).toBeLessThan(250);
  });
});
