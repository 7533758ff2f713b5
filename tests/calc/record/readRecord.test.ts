/** What each kind of doubtful line does to a record. Expected days are read off the texts by hand. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { isStopping } from '../../../src/calc/record/recordDoubts';
import { day, daysOf, doubtsOf, linesFrom, read } from './records';

const head = 'Date,High (C),Low (C)';
const text = (...lines: readonly string[]): string => `${lines.join('\n')}\n`;

/** There is no record, and this is why. */
function expectStop(given: string, doubt: object): void {
  const { record, doubts } = read(given);
  expect(record).toBeNull();
  expect(doubts[0]).toEqual(doubt);
  expect(doubts.filter(isStopping).length).toBeGreaterThan(0);
}

describe('an open daily record', () => {
  // vega-datasets 3.2.1, seattle-weather.csv: NOAA Global Historical Climatology Network, Seattle, 2012 to 2015, in C.
  const seattle = readFileSync('node_modules/vega-datasets/data/seattle-weather.csv', 'utf8');

  test('is read as it stands: every day, in Celsius by its temperatures', () => {
    const { record, doubts } = read(seattle);
    // Another way: no library, columns by their place.
    const expected = seattle
      .trim()
      .split('\n')
      .slice(1)
      .map((line) => line.split(','))
      .map(([date, , high, low]) => ({ day: day(date ?? ''), high: Number(high), low: Number(low) }));
    expect(record?.days).toEqual(expected);
    // 4 years, one of them a leap year.
    expect(record?.days).toHaveLength(4 * 365 + 1);
    expect(record).toMatchObject({
      units: 'metric',
      unitsBy: 'temperatures',
      headers: { date: 'date', high: 'temp_max', low: 'temp_min' },
    });
    // It begins on 1 January 2012 and ends on 31 December 2015, each in the middle of a winter: of the fall of 2011 and
    // the spring of 2016, years that it does not have, nothing is said.
    expect(doubts).toEqual([{ code: 'fewSeasons', line: 1462, springs: 4, falls: 4, enough: 20 }]);
  });

  test('is read the same when it is told to be in Celsius, and refused when told to be in Fahrenheit', () => {
    expect(read(seattle, { units: 'metric' }).record?.days).toEqual(read(seattle).record?.days);
    // Its warmest night has 18.3 C: no summer is as cold in F, and the functions would refuse it.
    expect(read(seattle, { units: 'us' }).doubts[0]).toEqual({
      code: 'otherLows',
      line: 1,
      units: 'us',
      warmest: 18.3,
    });
  });
});

describe('the columns', () => {
  test.each([
    ['a bare header', 'Date,High,Low'],
    ['words of a program', 'date,temp_max,temp_min'],
    ['short words', 'DATE,TMAX,TMIN'],
    ['joined words', 'ObservationDate,MaxTemp,MinTemp'],
    ['long words', 'Day,Daily maximum air temperature,Daily minimum air temperature'],
    ['words of another order', 'Date/Time,Max Temp,Min Temp'],
    ['the height of the thermometer', 'time,temperature_2m_max,T2M_MIN'],
    ['words of a national service', 'MESS_DATUM,TXK,TNK'],
    ['a word that is the same in several languages', 'Datum,tmax (deg c),tmin (deg c)'],
    ['Spanish words', 'Fecha,Máxima,Mínima'],
    ['Spanish words without accents', 'fecha,max,min'],
    ['accents that are letters of their own', 'Fecha,Máxima,Mínima'.normalize('NFD')],
    ['capitals', 'FECHA,TEMPERATURA MÁXIMA (°C),TEMPERATURA MÍNIMA (°C)'],
    ['long Spanish words', 'Día,Temperatura máxima del aire (°C),Temperatura mínima del aire (°C)'],
    ['the scale in Spanish', 'Fecha y hora,Temp. máx. (grados centígrados),Temp. mín. (grados centígrados)'],
    ['superlatives', 'Fecha (aaaa-mm-dd),Temperatura más alta,Temperatura más baja'],
  ])('are found by %s', (_, header) => {
    expect(daysOf(text(header, '2020-05-01,20,10'), { units: 'metric' })).toEqual([['2020-05-01', 20, 10]]);
  });

  test('are found in any order among others, whose words are other ones', () => {
    const given = text(
      'STATION,NAME,TMIN (°C),TMIN_ATTRIBUTES,PRCP,Max humidity,Time of TMAX,DATE,Time,TMAX (°C),Max Temp Flag,Mean temp',
      'X1,Upper field,1.5,"H,,S",0.2,97,14:00,2020-05-01,07:00,12.8,E,9',
    );
    expect(daysOf(given)).toEqual([['2020-05-01', 12.8, 1.5]]);
    expect(read(given).record).toMatchObject({
      place: 'Upper field',
      headers: { date: 'DATE', high: 'TMAX (°C)', low: 'TMIN (°C)' },
    });
  });

  test('are found in Spanish among others', () => {
    const given = text(
      'Clave de la estación,Nombre de la estación,Precipitación,Humedad máxima,Hora de la máxima,Fecha,Hora,Máxima (°C),Mínima (°C),Temperatura media',
      'X1,Parcela alta,0.2,97,14:00,2020-05-01,07:00,12.8,1.5,9',
    );
    expect(daysOf(given)).toEqual([['2020-05-01', 12.8, 1.5]]);
    expect(read(given).record).toMatchObject({ place: 'Parcela alta', units: 'metric', unitsBy: 'header' });
  });

  test('may say tenths of degrees in Spanish', () => {
    const given = text('Fecha,Máxima (décimas de grado C),Mínima (décimas de grado C)', '2020-05-01,128,15');
    expect(daysOf(given)).toEqual([['2020-05-01', 12.8, 1.5]]);
  });

  test('may give the date in three', () => {
    const given = text('Low (C),Year,Month,Day,High (C)', '1,2020,5,1,12', '2,2020,5,2,13');
    expect(daysOf(given)).toEqual([
      ['2020-05-01', 12, 1],
      ['2020-05-02', 13, 2],
    ]);
  });

  test.each([
    ['YEAR,MO,DY,T2M_MAX,T2M_MIN', '2020,5,1,12,1'],
    // 31 and 28 or 29 and 31 and 30 days lie before: 2020 is a leap year.
    ['year,yday,tmax (deg c),tmin (deg c)', '2020,122,12,1'],
    ['Year,Day of year,High,Low', '2020,122,12,1'],
    ['Año,Mes,Día,Máxima,Mínima', '2020,5,1,12,1'],
    ['Año,Día del año,Máxima,Mínima', '2020,122,12,1'],
  ])('may give the date in parts: %s', (header, line) => {
    expect(daysOf(text(header, line), { units: 'metric' })).toEqual([['2020-05-01', 12, 1]]);
  });

  test('with a day of the year: the ninth, the last, and none after it', () => {
    const given = text('year,yday,High (C),Low (C)', '2019,9,3,1', '2019,365,2,0', '2019,366,2,0');
    expect(daysOf(given)).toEqual([
      ['2019-01-09', 3, 1],
      ['2019-12-31', 2, 0],
    ]);
    expect(doubtsOf(given)).toContainEqual({ code: 'noSuchDay', line: 4, given: '2019-366' });
  });

  test('go by a whole date where its parts stand beside it', () => {
    const given = text('Date/Time,Year,Month,Day,Max Temp (°C),Min Temp (°C)', '2020-05-01,2020,05,01,12,1');
    expect(daysOf(given)).toEqual([['2020-05-01', 12, 1]]);
  });

  test('may lie under lines about the station', () => {
    const given = text('# Station: Upper field; 5" of rain', 'Units,metric', '', head, '2020-05-01,12,1');
    expect(daysOf(given)).toEqual([['2020-05-01', 12, 1]]);
    expect(doubtsOf(given)).toEqual([{ code: 'linesBefore', line: 4, count: 3 }]);
  });

  test.each([
    ['no header', text('2020-05-01,12,1'), { code: 'noHeader', line: 1 }],
    [
      'no temperature',
      text('Upper field', 'Date,Rain,Wind', '2020-05-01,12,1'),
      { code: 'headerLacks', line: 2, measures: ['high', 'low'] },
    ],
    [
      'no date',
      text('Week,High (C),Low (C)', '18,12,1'),
      { code: 'headerLacks', line: 1, measures: ['date'] },
    ],
    ['nothing', '\uFEFF \n\n', { code: 'nothingThere', line: 1 }],
    ['no low', text('Date,High (C)', '2020-05-01,12'), { code: 'columnMissing', line: 1, measure: 'low' }],
    [
      'two lows',
      text('Date,High,Low,Tmin', '2020-05-01,12,1,2'),
      { code: 'columnTwice', line: 1, measure: 'low', header: 'Low', otherHeader: 'Tmin' },
    ],
    ['no days', text(head), { code: 'noDays', line: 1 }],
    ['no temperatures', text(head, '2020-05-01,M,M'), { code: 'noDays', line: 1 }],
    ['an open quotation mark', text(head, '2020-05-01,12,"1'), { code: 'openQuote', line: 2 }],
    [
      'decimal commas between commas',
      text(head, '2020-05-01,12,8,1,0', '2020-05-02,12,8,1,0'),
      { code: 'mostlyRagged', line: 2, count: 2, lines: 2 },
    ],
  ])('are wanting: %s', (_, given, doubt) => expectStop(given, doubt));

  test('may lack the highs: frost asks for the lows only', () => {
    const given = text('Date,Low (C)', '2020-05-01,1');
    expect(daysOf(given)).toEqual([['2020-05-01', null, 1]]);
    expect(doubtsOf(given)).toEqual([{ code: 'highMissing', line: 1 }]);
  });
});

describe('a line', () => {
  const good = '2020-05-01,12,1';
  test.each([
    ['of words for a date', 'May 2,12,1', { code: 'notADay', given: 'May 2' }],
    ['of a footer', '2020-05-02,12,1,9', { code: 'raggedLine', expected: 3, found: 4 }],
    ['of 29 February in no leap year', '2019-02-29,12,1', { code: 'noSuchDay', given: '2019-02-29' }],
    ['of a century that is no leap year', '1900-02-29,12,1', { code: 'noSuchDay', given: '1900-02-29' }],
    ['before the days of spreadsheets', '1900-02-28,12,1', { code: 'tooEarly', given: '1900-02-28' }],
    ['of a century before', '1899-12-31,12,1', { code: 'tooEarly', given: '1899-12-31' }],
    ['of a day to come', '2026-06-02,12,1', { code: 'futureDay', day: day('2026-06-02') }],
  ])('%s is left out and named', (_, line, doubt) => {
    expect(daysOf(text(head, line, good))).toEqual([['2020-05-01', 12, 1]]);
    expect(doubtsOf(text(head, line, good))).toContainEqual({ line: 2, ...doubt });
  });

  test.each([
    ['1900-03-01', 'the first day of spreadsheets'],
    ['2020-02-29', 'a leap day'],
    ['2000-02-29', 'the leap day of a century'],
    ['2026-06-01', 'today'],
  ])('of %s is taken: %s', (date) => {
    expect(daysOf(text(head, `${date},12,1`))).toEqual([[date, 12, 1]]);
  });

  test.each([
    '',
    'M',
    '-',
    '--',
    'NA',
    'N/A',
    'NaN',
    'null',
    '-99',
    '-99.9',
    '-999',
    '999.9',
    '9999',
    '-9999',
    '-9999.0',
  ])('has no high where it says %j', (mark) => {
    const given = text(head, `2020-05-01,${mark},1`, '2020-05-02,12,1');
    expect(daysOf(given)?.[0]).toEqual(['2020-05-01', null, 1]);
    expect(doubtsOf(given)).toEqual([]);
  });

  test.each([
    ['words', 'warm,1', null, 1, { code: 'notATemperature', measure: 'high', given: 'warm' }],
    ['another unit', '12,274K', 12, null, { code: 'notATemperature', measure: 'low', given: '274K' }],
    [
      'more than was ever measured',
      '56.8,1',
      null,
      1,
      { code: 'impossible', measure: 'high', degrees: 56.8, units: 'metric' },
    ],
    [
      'less than was ever measured',
      '12,-89.3',
      12,
      null,
      { code: 'impossible', measure: 'low', degrees: -89.3, units: 'metric' },
    ],
    ['a low above the high', '1,12', null, null, { code: 'lowAboveHigh', high: 1, low: 12 }],
  ])('with %s is left empty there and named', (_, temperatures, high, low, doubt) => {
    const given = text(head, `2020-05-01,${temperatures}`, '2020-05-02,12,1', '2020-05-03,12,1');
    expect(daysOf(given)?.[0]).toEqual(['2020-05-01', high, low]);
    expect(doubtsOf(given)).toContainEqual({ line: 2, ...doubt });
  });

  test('with the extremes ever measured is taken, in either scale', () => {
    // WMO archive: 56.7 C is 134.06 F; -89.2 C is -128.56 F, but no function takes less than -90 in either scale.
    expect(daysOf(text(head, '2020-05-01,56.7,-89.2'))).toEqual([['2020-05-01', 56.7, -89.2]]);
    const inF = text('Date,High (F),Low (F)', '2020-05-01,134.06,-90');
    expect(daysOf(inF)).toEqual([['2020-05-01', 134.06, -90]]);
  });

  test('may have decimal commas, quotes, signs, a time and a cell too many that is empty', () => {
    const given = text(
      'Date;High (C);Low (C)',
      '2020-05-01 00:00;"12,8";−1,5;',
      '2020-05-02T00:00:00;+13;,5',
    );
    expect(daysOf(given)).toEqual([
      ['2020-05-01', 12.8, -1.5],
      ['2020-05-02', 13, 0.5],
    ]);
  });
});

describe('a date with the month in words', () => {
  test.each(['01-Jan-2000', '1 January 2000', 'January 1, 2000', 'Jan. 1 2000', '1/jan/2000 00:00'])(
    'is one, whichever stands first: %s',
    (given) => {
      expect(daysOf(text(head, `"${given}",12,1`))).toEqual([['2000-01-01', 12, 1]]);
    },
  );

  test.each(['1-Jam-2000', '1 Janus 2000', '1-Jan-00'])('is none: %s', (given) => {
    expect(doubtsOf(text(head, `${given},12,1`))).toContainEqual({ code: 'notADay', line: 2, given });
  });
});

describe('a temperature with its scale or a mark', () => {
  const bare = 'Date,High,Low';

  test('is taken, and names the scale', () => {
    const given = text(bare, '2020-05-01,49.4 F,40F', '2020-05-02,50 °F,41');
    expect(daysOf(given)).toEqual([
      ['2020-05-01', 49.4, 40],
      ['2020-05-02', 50, 41],
    ]);
    expect(read(given).record).toMatchObject({ units: 'us', unitsBy: 'cells' });
    expect(read(text(bare, '2020-05-01,12 C,1')).record).toMatchObject({ units: 'metric', unitsBy: 'cells' });
  });

  test('is refused in the other scale', () => {
    const doubt = { code: 'cellOfOtherScale', line: 2, given: '49.4 F', units: 'metric' };
    expectStop(text(head, '2020-05-01,49.4 F,1'), doubt);
    expectStop(text(bare, '2020-05-01,12C,33F'), { ...doubt, given: '33F' });
    expect(read(text(bare, '2020-05-01,49.4 F,1'), { units: 'metric' }).doubts[0]).toEqual(doubt);
  });

  test('is taken where it is an estimate, which is said', () => {
    const given = text(head, '2020-05-01,12.5E,1');
    expect(daysOf(given)).toEqual([['2020-05-01', 12.5, 1]]);
    expect(doubtsOf(given)).toEqual([{ code: 'estimated', line: 2, measure: 'high', given: '12.5E' }]);
  });
});

describe('dates with the year last', () => {
  test('have the month or the day first as the whole record tells', () => {
    const monthFirst = text(head, '5/1/2020,12,1', '5/13/2020,12,1');
    expect(daysOf(monthFirst)?.map((one) => (one as string[])[0])).toEqual(['2020-05-01', '2020-05-13']);
    const dayFirst = text(head, '1.5.2020,12,1', '13.5.2020,12,1');
    expect(daysOf(dayFirst)?.map((one) => (one as string[])[0])).toEqual(['2020-05-01', '2020-05-13']);
  });

  test('are refused when either would do', () => {
    expectStop(text(head, '5/5/2020,12,1', '5/1/2020,12,1'), {
      code: 'dayOrMonthFirst',
      line: 3,
      given: '5/1/2020',
    });
  });

  test('are refused when one line tells one and one the other', () => {
    expectStop(text(head, '5/13/2020,12,1', '5/14/2020,12,1', '15/5/2020,12,1'), {
      code: 'dayAndMonthFirst',
      line: 4,
      given: '15/5/2020',
      other: '5/13/2020',
      otherLine: 2,
    });
  });
});

describe('the scale', () => {
  const cool = (count: number): string => text('Date,High,Low', ...linesFrom('2020-01-01', count));
  const hot = text('Date,High,Low', '2020-07-01,90,60');

  test('is Fahrenheit where it is hotter than Celsius ever was', () => {
    expect(read(hot).record).toMatchObject({ units: 'us', unitsBy: 'temperatures' });
  });

  test('is Celsius where 300 days have none over 50, and unknown of fewer', () => {
    expect(read(cool(300)).record).toMatchObject({ units: 'metric', unitsBy: 'temperatures' });
    expectStop(cool(299), { code: 'scaleUnknown', line: 2, hottest: 20, days: 299 });
  });

  test('is what the person says, before all', () => {
    expect(read(cool(299), { units: 'us' }).record).toMatchObject({ units: 'us', unitsBy: 'asked' });
    expect(daysOf(hot, { units: 'metric' })).toEqual([['2020-07-01', null, null]]);
  });

  test('that the person says is refused once, not day by day, where no air was ever so hot', () => {
    const summer = text('Date,High (F),Low (F)', ...linesFrom('2020-06-01', 90, () => '90,60'));
    const { record, doubts } = read(summer, { units: 'metric' });
    expect(record).toBeNull();
    expect(doubts).toEqual([{ code: 'askedScale', line: 2, units: 'metric', year: 2020, hottest: 90 }]);
  });

  test('of tenths is told by the header', () => {
    const given = text('Date,Tmax (tenths of degrees C),Tmin (tenths of degrees C)', '2020-05-01,128,-5');
    expect(daysOf(given)).toEqual([['2020-05-01', 12.8, -0.5]]);
    // -99 is -9.9 there, and no mark of a missing one as elsewhere.
    expect(daysOf(given.replace('-5', '-99'))).toEqual([['2020-05-01', 12.8, -9.9]]);
    const untold = text('Date,Tmax,Tmin', ...linesFrom('2020-05-01', 10, () => '228,115'));
    expectStop(untold, { code: 'noScale', line: 2, hottest: 228 });
  });

  test('must be one', () => {
    expectStop(text('Date,High (F),Low (°C)', '2020-05-01,60,1'), {
      code: 'scalesDiffer',
      line: 1,
      header: 'High (F)',
      otherHeader: 'Low (°C)',
    });
  });

  test('of Fahrenheit in a Celsius column is found', () => {
    const given = text(head, ...linesFrom('2020-05-01', 40, (i) => (i < 35 ? '20,10' : '68,50')));
    expectStop(given, { code: 'otherScale', line: 37, units: 'metric', year: 2020, hottest: 68 });
    // Four days are slips: each is left empty and named; five doubts of a kind are listed and the rest counted.
    const slips = text(head, ...linesFrom('2020-05-01', 40, (i) => (i < 36 ? '20,10' : '68,50')));
    expect(doubtsOf(slips).map(({ code, line }) => [code, line])).toEqual([
      ['impossible', 38],
      ['impossible', 38],
      ['impossible', 39],
      ['impossible', 39],
      ['impossible', 40],
      ['andMore', 40],
      ['noLow', 38],
    ]);
  });

  test('of Celsius in a Fahrenheit column is found, also of one year among others', () => {
    const year = (first: string, temperatures: string): string[] => linesFrom(first, 365, () => temperatures);
    const given = text(
      'Date,High (F),Low (F)',
      ...year('2021-01-01', '70,50'),
      ...year('2022-01-01', '21,10'),
    );
    expectStop(given, { code: 'otherScale', line: 367, units: 'us', year: 2022, hottest: 21 });
  });
});

describe('the days', () => {
  test('are sorted, which is said', () => {
    const given = text(head, '2020-05-02,13,2', '2020-05-01,12,1');
    expect(daysOf(given)).toEqual([
      ['2020-05-01', 12, 1],
      ['2020-05-02', 13, 2],
    ]);
    expect(doubtsOf(given)).toEqual([{ code: 'notInOrder', line: 3 }]);
  });

  test('that come twice alike are one', () => {
    const given = text(head, '2020-05-01,12,M', '2020-05-01,12,1');
    expect(daysOf(given)).toEqual([['2020-05-01', 12, 1]]);
    expect(doubtsOf(given)).toEqual([
      { code: 'sameDayTwice', line: 3, day: day('2020-05-01'), otherLine: 2 },
    ]);
  });

  test('that come twice with other temperatures are left empty', () => {
    const given = text(head, '2020-05-01,12,1', '2020-05-01,12,2', '2020-05-02,13,2');
    expect(daysOf(given)).toEqual([
      ['2020-05-01', null, null],
      ['2020-05-02', 13, 2],
    ]);
    expect(doubtsOf(given)).toContainEqual({
      code: 'sameDayDiffers',
      line: 3,
      day: day('2020-05-01'),
      otherLine: 2,
    });
  });

  test('that keep coming twice are two records', () => {
    const twice = linesFrom('2020-05-01', 10).flatMap((line) => [line, line.replace('20,10', '21,11')]);
    expectStop(text(head, ...twice), {
      code: 'twoRecords',
      line: 3,
      day: day('2020-05-01'),
      otherLine: 2,
      count: 10,
    });
  });

  test('of two stations are refused, with the lines', () => {
    const given = text(`Station,${head}`, 'A,2020-05-01,12,1', ',2020-05-02,12,1', 'B,2020-05-03,12,1');
    expectStop(given, {
      code: 'otherStation',
      line: 4,
      station: 'B',
      otherStation: 'A',
      otherLine: 2,
    });
  });

  test('with the low above the high in most lines are refused', () => {
    expectStop(text(head, '2020-05-01,1,12', '2020-05-02,1,12', '2020-05-03,12,1'), {
      code: 'columnsSwapped',
      line: 2,
      count: 2,
      days: 3,
    });
  });

  test('have their gaps named, five of them and the rest counted', () => {
    const given = text(
      head,
      ...[1, 3, 5, 7, 9, 11, 13, 17].map((d) => `2020-05-${String(d).padStart(2, '0')},12,1`),
    );
    const gaps = doubtsOf(given);
    expect(gaps[0]).toEqual({
      code: 'gap',
      line: 3,
      from: day('2020-05-02'),
      to: day('2020-05-02'),
      count: 1,
    });
    expect(gaps.map(({ code }) => code)).toEqual(['gap', 'gap', 'gap', 'gap', 'gap', 'andMore']);
    expect(gaps.at(-1)).toEqual({ code: 'andMore', line: 7, of: 'gap', count: 2 });
  });

  test('without any high that can be used are named as a whole', () => {
    const given = text(head, ...linesFrom('2020-05-01', 9, () => 'warm,1'));
    expect(doubtsOf(given).find(({ code }) => code === 'noHigh')).toEqual({ code: 'noHigh', line: 1 });
    expect(doubtsOf(text(head, '2020-05-01,warm,1', '2020-05-02,12,1')).map(({ code }) => code)).toEqual([
      'notATemperature',
    ]);
  });

  test('without a low are counted', () => {
    const given = text(head, '2020-05-01,12,1', '2020-05-02,12,M', '2020-05-03,12,M');
    expect(doubtsOf(given)).toEqual([{ code: 'noLow', line: 3, count: 2 }]);
  });
});

describe('the seasons', () => {
  // In the north a cold season runs from 24 July to 23 July: Utah Climate Center, freeze table.
  const frosty = (first: string, count: number): string =>
    text(head, ...linesFrom(first, count, (i) => (i % 7 === 0 ? '10,-1' : '10,2')));

  test('of one whole year count, and are too few', () => {
    expect(read(frosty('2020-07-24', 365)).doubts).toEqual([
      { code: 'fewSeasons', line: 366, springs: 1, falls: 1, enough: 20 },
    ]);
  });

  test('that the record begins or ends in the middle of do not count', () => {
    // From 1 January to 30 April: the fall before is of a year that is not there, the spring is not over.
    expect(read(frosty('2020-01-01', 121)).doubts).toEqual([
      { code: 'voidSeason', line: 2, side: 'spring', year: 2020 },
      { code: 'fewSeasons', line: 122, springs: 0, falls: 0, enough: 20 },
    ]);
  });

  test('of the south are the other way round', () => {
    // 24 January to 23 January: the fall of the south comes first there, in the same year as its spring.
    expect(read(frosty('2020-01-24', 366), { hemisphere: 'south' }).doubts).toEqual([
      { code: 'fewSeasons', line: 367, springs: 1, falls: 1, enough: 20 },
    ]);
  });

  test('are enough from twenty on', () => {
    const { doubts } = read(frosty('1990-07-24', 20 * 365 + 5));
    expect(doubts).toEqual([]);
  });
});

describe('the hemisphere', () => {
  const year = (summer: string, winter: string): string =>
    text(head, ...linesFrom('2021-06-01', 92, () => summer), ...linesFrom('2021-12-01', 90, () => winter));

  test('must be the one whose warm half the record has', () => {
    expect(read(year('25,15', '5,0')).record).not.toBeNull();
    expectStop(year('5,0', '25,15'), { code: 'otherHemisphere', line: 1, hemisphere: 'south' });
    expect(read(year('5,0', '25,15'), { hemisphere: 'south' }).record).not.toBeNull();
    const { doubts } = read(year('25,15', '5,0'), { hemisphere: 'south' });
    expect(doubts[0]).toEqual({ code: 'otherHemisphere', line: 1, hemisphere: 'north' });
  });

  test('cannot be told where the halves hardly differ, or one is not there', () => {
    expect(read(year('20,10', '25,14')).record).not.toBeNull();
    expect(read(text(head, ...linesFrom('2021-06-01', 92, () => '5,0'))).record).not.toBeNull();
  });
});

test('too many lines are refused', () => {
  const given = text(head, ...Array.from({ length: 100_001 }, () => '2020-05-01,12,1'));
  expectStop(given, { code: 'tooManyLines', line: 1, count: 100_001, most: 100_000 });
});
