/** The options of plan: what they become, and the sentence for what they are not. */
import { describe, expect, test } from 'vitest';
import { readPlanOptions } from '../../src/commands/planOptions';

const complete = [
  'plots.csv',
  '--last-frost',
  '2026-05-02',
  '--first-frost',
  '2026-10-10',
  '--out',
  'a.xlsx',
];

describe('readPlanOptions', () => {
  test('takes a language that is there, and names those where it is not', () => {
    expect(readPlanOptions([...complete, '--language', 'es']).out).toBe('a.xlsx');
    expect(() => readPlanOptions([...complete, '--language', 'fr'])).toThrow(
      '--language is "fr". Give en (English) or es (Spanish). El valor de --language es "fr". Dé en (inglés) o es (español).',
    );
  });

  test('has defaults for what may be left out', () => {
    // Serials: 2026-05-02 is 46144, 161 days later 46305 (SEASON.DAYS of README).
    expect(readPlanOptions(complete)).toEqual({
      plots: 'plots.csv',
      out: 'a.xlsx',
      calendar: null,
      replace: false,
      seedPrices: null,
      prices: [],
      weather: null,
      taken: [],
      season: {
        SEASON_YEAR: 2026,
        LAST_FROST: 46144,
        FIRST_FROST: 46305,
        FROST_RISK: 0.5,
        ASSURANCE: 0.9,
        UNITS: 'us',
      },
    });
  });

  test('takes the others, "=" between name and value too, shares in percent too', () => {
    const given = [
      '--frost-risk=10%',
      '--units',
      'metric',
      '--assurance',
      '0.95',
      '--place',
      'By the mill',
      '--replace',
    ];
    const options = readPlanOptions([...complete, ...given]);
    expect(options.replace).toBe(true);
    expect(options.season).toMatchObject({
      FROST_RISK: 0.1,
      UNITS: 'metric',
      ASSURANCE: 0.95,
      PLACE: 'By the mill',
    });
  });

  test.each([
    [['--foo', '3'], 'There is no option --foo. npm run -s plan -- --help lists them.'],
    [['-x'], 'There is no option -x.'],
    [['--out'], '--out is missing. Give it as --out plan.xlsx.'],
    [['--last-frost', '--replace'], '--last-frost is missing. Give it as --last-frost 2026-05-02.'],
    [['--units='], '--units is missing. Give it as --units metric.'],
    [['--replace=yes'], '--replace stands alone. Take "yes" away.'],
    [
      ['--last-frost', '2026-02-30'],
      '--last-frost is "2026-02-30", and February has 28 days. Give a day that there is, such as 2026-05-02.',
    ],
    [['--first-frost', '10/10/2026'], '--first-frost is "10/10/2026". Give a day of the calendar'],
    [
      ['--first-frost', '2026-04-30'],
      '--first-frost (2026-04-30) must come after --last-frost (2026-05-02).',
    ],
    [
      ['--first-frost', '2029-10-10'],
      // 161 days in 2026, and three years with one leap day, 2028-02-29: 161 + 3 * 365 + 1.
      '--first-frost (2029-10-10) is 1257 days after --last-frost (2026-05-02). Check the year of each:',
    ],
    // 366 days: from before a leap day to the same day of the next year. One more is too many.
    [
      ['--last-frost', '2027-05-02', '--first-frost', '2028-05-03'],
      '--first-frost (2028-05-03) is 367 days after',
    ],
    [['--frost-risk', '0'], '--frost-risk is "0". Give a number above 0 and below 1, such as 0.5.'],
    [['--frost-risk', '1'], '--frost-risk is "1". Give a number above 0 and below 1'],
    [['--frost-risk', 'abc'], '--frost-risk is "abc". Give a number above 0 and below 1'],
    [['--assurance', '-1'], '--assurance is "-1". Give a number above 0 and below 1, such as 0.9.'],
    [['--units', 'feet'], '--units is "feet". Give us (feet, inches, pounds, Fahrenheit) or metric.'],
    [['--out', 'plan.csv'], '--out is "plan.csv". Give a name that ends in .xlsx.'],
    [
      ['more.csv'],
      '"more.csv" is one file too many. Give one, and put a name with spaces between quotation marks.',
    ],
  ])('%j is refused in a sentence', (given, sentence) => {
    expect(() => readPlanOptions([...complete, ...given])).toThrow(sentence);
  });

  test('a whole year between the frosts is taken', () => {
    // 2027-05-02 to 2028-05-02: 366 days, for 2028-02-29 lies between.
    const { season } = readPlanOptions([...complete, '--last-frost=2027-05-02', '--first-frost=2028-05-02']);
    expect(Number(season['FIRST_FROST']) - Number(season['LAST_FROST'])).toBe(366);
  });

  test.each([
    [[], 'Give a file with the plots, such as plots.csv. npm run -s plan -- --help shows how.'],
    [['plots.csv'], '--out is missing. Give it as --out plan.xlsx.'],
    [
      complete.slice(0, 3).concat('--out', 'a.xlsx'),
      '--first-frost is missing. Give it as --first-frost 2026-10-10.',
    ],
  ])('%j lacks something', (given, sentence) => {
    expect(() => readPlanOptions(given)).toThrow(sentence);
  });
});

describe('a daily record in place of the frost dates', () => {
  const withRecord = ['plots.csv', '--weather', 'record.csv', '--out', 'a.xlsx'];

  test('needs no other option', () => {
    const { season, weather } = readPlanOptions(withRecord);
    expect(season).toEqual({ FROST_RISK: 0.5, ASSURANCE: 0.9, UNITS: 'us' });
    expect(weather).toEqual({
      file: 'record.csv',
      year: undefined,
      units: undefined,
      hemisphere: 'north',
      risk: 0.5,
    });
  });

  test('takes the risk, the year, its units and where the place lies', () => {
    const given = [
      '--frost-risk',
      '0.1',
      '--year=2027',
      '--weather-units',
      'metric',
      '--hemisphere',
      'south',
    ];
    const { season, weather } = readPlanOptions([...withRecord, ...given]);
    expect(season).toMatchObject({ FROST_RISK: 0.1, UNITS: 'us' });
    expect(weather).toMatchObject({ year: 2027, units: 'metric', hemisphere: 'south', risk: 0.1 });
  });

  test('brings its risk along also into a plan that has one', () => {
    const { season } = readPlanOptions(['old.xlsx', ...withRecord.slice(1)]);
    expect(season).toEqual({ FROST_RISK: 0.5 });
  });

  test.each([
    [
      ['--last-frost', '2026-05-02'],
      '--weather gives both frost dates out of the record. Leave --last-frost out, or leave --weather out and give both dates.',
    ],
    [['--first-frost', '2026-10-10'], 'Leave --first-frost out, or leave --weather out'],
    [['--year', '26'], '--year is "26". Give a year from 1900 to 2199, such as 2026.'],
    [['--hemisphere', 'east'], '--hemisphere is "east". Give north or south.'],
    [
      ['--weather-units', 'F'],
      '--weather-units is "F". Give us (for a record in Fahrenheit) or metric (in Celsius).',
    ],
    [['--frost-risk', '10'], '--frost-risk is "10". Give a number above 0 and below 1'],
  ])('%j is refused', (given, sentence) => {
    expect(() => readPlanOptions([...withRecord, ...given])).toThrow(sentence);
  });

  test.each([['--year=2027'], ['--weather-units=us'], ['--hemisphere=south']])(
    '%s says nothing without one',
    (option) => {
      const [name = ''] = option.split('=');
      expect(() => readPlanOptions([...complete, option])).toThrow(
        `${name} goes with --weather. Leave it out, or give the record as --weather record.csv.`,
      );
    },
  );
});
