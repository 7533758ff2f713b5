/** The plan command over a daily record. The dates expected are counted by hand. */
import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { nearestNames } from '../../src/calc/crops/nearestNames';
import { runPlan } from '../../src/commands/runPlan';
import { drawForSheet } from '../../src/entries/drawnWeather';
import { pngParts } from '../../src/entries/pngParts';
import { weatherTools } from '../../src/entries/weatherTools';
import { calendarTasks } from '../../src/functions/calendarTasks';
import { functions } from '../../src/functions';
import { createMemoryWorkbook, type MemoryWorkbook } from '../../src/hosts/file/createMemoryWorkbook';
import { openXlsx } from '../../src/hosts/file/openXlsx';
import { dayOfIso, serialOfDay } from '../../src/workbook/serialDate';
import { frostsOfThreeYears as frosts, recordText as record, threeYears } from './recordText';

const serial = (iso: string): number => serialOfDay(dayOfIso(iso) ?? NaN);

async function plan(text: string | Uint8Array, options: readonly string[] = []) {
  const said: string[] = [];
  const warned: string[] = [];
  let written: MemoryWorkbook | undefined;
  let saved = 0;
  const bytes = typeof text === 'string' ? Buffer.from(text) : text;
  const code = await runPlan(['plots.csv', '--weather', 'record.csv', '--out', 'plan.xlsx', ...options], {
    readBytes: (file) =>
      file === 'record.csv' ? bytes : Buffer.from('Plot,Crop,Length,Width\nA,slicing cucumber,100,20\n'),
    nearestNames,
    ...weatherTools,
    calendarTasks,
    saveText: async () => undefined,
    drawForSheet: (weather) => drawForSheet(weather, pngParts()),
    openXlsx,
    makeWorkbook: () => {
      written = createMemoryWorkbook({ functions: [...functions.values()] });
      return { ...written, save: async () => void (saved += 1) };
    },
    say: (line) => said.push(line),
    warn: (line) => warned.push(line),
  });
  const named = async (name: string): Promise<unknown> => {
    const area = await written?.locate(name);
    return area && (await written?.read(area))?.values[0]?.[0];
  };
  const parts = async () => unzipSync((await written?.bytes()) ?? new Uint8Array());
  return { code, said: said.join('\n'), warned, saved, named, parts };
}

describe('a daily record', () => {
  test('gives the season its frost dates at the mean risk, for the year after it ends', async () => {
    const { code, said, warned, named } = await plan(threeYears);
    expect(code).toBe(0);
    // Of three springs the middle one: 20 April; of three falls 11 October.
    expect([await named('LAST_FROST'), await named('FIRST_FROST'), await named('FROST_RISK')]).toEqual([
      serial('2024-04-20'),
      serial('2024-10-11'),
      0.5,
    ]);
    expect(await named('SEASON_YEAR')).toBe(2024);
    expect(said).toContain(
      'record.csv: 1095 days, 2021-01-01 to 2023-12-31, in Celsius (as the header says). Date from "Date", low from "Low (C)", high from "High (C)".',
    );
    expect(said).toContain(
      'Frost at a risk of 50 %: last 2024-04-20, first 2024-10-11, out of 3 springs and 3 falls.',
    );
    expect(said).toContain('For 2024, the year after the record ends; --year gives another.');
    expect(warned).toEqual([
      'record.csv, line 1096: 3 springs count and 3 falls. Of fewer than 20 one more year can move a frost date by a week, and of one year no risk can be told. Give a longer record where there is one.',
    ]);
  });

  test('has its pictures in a sheet of the workbook, each with its figures as alternative text', async () => {
    const { parts } = await plan(threeYears);
    const all = Object.entries(await parts());
    const drawings = all.filter(([name]) => /^xl\/drawings\/drawing\d+\.xml$/.test(name));
    const texts = drawings.flatMap(([, xml]) =>
      [...strFromU8(xml).matchAll(/ descr="([^"]*)"/g)].map(([, text]) => text),
    );
    expect(texts).toEqual([
      expect.stringMatching(/^Chance of frost by date\..* 3 springs and 3 falls\./),
      expect.stringMatching(/^Heat from sowing to first pick\..* in the weather of 2023\./),
      // 10, 20 and 30 April to 1, 11 and 21 October: 174 days each.
      expect.stringMatching(/^Frost-free days, year by year\..* least 174 \(2021\), middle 174, most 174/),
    ]);
    const png = Uint8Array.of(0x89, 0x50, 0x4e, 0x47);
    const pictures = all.filter(([name]) => /^xl\/media\/.*\.png$/.test(name));
    expect(pictures.map(([, bytes]) => bytes.slice(0, 4))).toEqual([png, png, png]);
    const book = strFromU8(all.find(([name]) => name === 'xl/workbook.xml')?.[1] ?? new Uint8Array());
    expect(book).toContain('name="Weather pictures"');
  });

  test('gives them at another risk and for another year', async () => {
    const { said, named } = await plan(threeYears, ['--frost-risk', '0.1', '--year', '2027']);
    // Springs 40, 50, 60 days after 1 March: at nine tenths 50 + 0.8 x 10 = 58, 28 April. Falls 214, 224, 234: at one
    // tenth 214 + 0.2 x 10 = 216, 3 October (PERCENTILE.INC by hand).
    expect([await named('LAST_FROST'), await named('FIRST_FROST'), await named('FROST_RISK')]).toEqual([
      serial('2027-04-28'),
      serial('2027-10-03'),
      0.1,
    ]);
    expect(said).not.toContain('--year gives another');
  });

  test('of the south has its first frost in the next year', async () => {
    const south = record(
      '2020-02-01',
      '2023-01-31',
      ['2020-05-01', '2020-09-10', '2021-05-05', '2021-09-12', '2022-05-09', '2022-09-14'],
      [12, 1, 2],
    );
    const { named, warned } = await plan(south, ['--hemisphere', 'south', '--year', '2024']);
    expect(warned.join('\n')).not.toContain('hemisphere');
    expect([await named('LAST_FROST'), await named('FIRST_FROST'), await named('SEASON_YEAR')]).toEqual([
      serial('2024-09-12'),
      serial('2025-05-05'),
      2024,
    ]);
    const north = await plan(south);
    expect([north.code, north.saved]).toEqual([2, 0]);
    expect(north.warned[0]).toBe(
      'record.csv, line 1: The warm half of the year is that of the south. Say that the place lies in the south, or look whether month and day changed places.',
    );
  });

  test('whose few frosts come about New Year says the same in the sheet as on the screen', async () => {
    const mild = record('2020-07-24', '2023-07-23', ['2020-12-10', '2022-01-15', '2022-12-12']);
    const { said, named } = await plan(mild, ['--year', '2027']);
    // Springs -81, -45, -79 days from 1 March: the middle one, 12 December. Falls 284, 320, 286: 12 December.
    expect(said).toContain('Frost at a risk of 50 %: last 2026-12-12, first 2027-12-12');
    expect([await named('LAST_FROST'), await named('FIRST_FROST')]).toEqual([
      serial('2026-12-12'),
      serial('2027-12-12'),
    ]);
  });

  test.each([
    [
      'that cannot be read',
      'Date,High (C)\n2020-05-01,12\n',
      [],
      'record.csv, line 1: No column holds the low.',
    ],
    ['that is empty', '', [], 'record.csv, line 1: There is nothing in it.'],
    [
      'where it never froze',
      record('2020-07-24', '2023-07-23', []),
      [],
      'No frost date can be taken from record.csv: It never froze in 3 seasons: there is no date to give.',
    ],
    [
      'where it froze in one year of three, for the mean',
      record('2020-07-24', '2023-07-23', frosts.slice(0, 1)),
      [],
      'No frost date can be taken from record.csv: Frost comes in fewer years than that: in 33.3% of them, and 50% was asked for. Give a smaller risk.',
    ],
    [
      'where no season counts',
      record('2021-01-01', '2021-04-30', frosts),
      [],
      'No frost date can be taken from record.csv: No season can be counted',
    ],
    [
      'where frost is so rare that it leaves more than a year',
      record('2020-07-24', '2023-07-23', ['2020-12-08', '2021-01-02', '2021-12-10', '2023-01-15']),
      // Springs -58, -81, -45 days from 1 March: at one tenth -81 + 0.2 x 23 = -76.4, 15 December. Falls 282, 284, 320:
      // at nine tenths 284 + 0.8 x 36 = 312.8, 7 January.
      ['--frost-risk', '0.9', '--year', '2027'],
      'At a risk of 90 % there are 388 days from the last frost (2026-12-15) to the first (2028-01-07) in record.csv, more than a year',
    ],
  ])('%s is refused, and nothing is written', async (_, text, options, sentence) => {
    const { code, warned, saved } = await plan(text, options);
    expect([code, saved]).toEqual([2, 0]);
    expect(warned.join('\n')).toContain(sentence);
    expect(warned.at(-1)).toBe('Nothing was written.');
  });

  test('of one year gives its dates, with the warning', async () => {
    const { code, warned, named } = await plan(record('2021-01-01', '2021-12-31', frosts));
    expect(code).toBe(0);
    expect(await named('LAST_FROST')).toBe(serial('2022-04-10'));
    expect(warned.at(-1)).toContain('1 spring counts and 1 fall. Of fewer than 20');
  });

  test('has its doubts named by line, and the plan is written', async () => {
    const doubtful = threeYears.replace('2021-06-10,25,14', '2021-06-10,14,25');
    const { code, warned, saved } = await plan(doubtful);
    expect([code, saved]).toEqual([1, 1]);
    expect(warned.join('\n')).toContain(
      'record.csv, line 162: The low (25) is above the high (14). Both were left empty',
    );
  });

  test('far bigger than a record is refused', async () => {
    const { code, warned } = await plan(new Uint8Array(20_000_001));
    expect(code).toBe(2);
    expect(warned[0]).toMatch(/far larger than a list of plots or a record of days/);
  });

  test('that is no text is refused', async () => {
    const { warned } = await plan(Uint8Array.from([0x44, 0xb0, 0x43]));
    expect(warned[0]).toBe('The text of record.csv is neither UTF-8 nor UTF-16. Save it as "CSV UTF-8".');
  });

  test('in UTF-16, with its mark or without, is read as in UTF-8', async () => {
    const { said } = await plan(threeYears);
    for (const mark of ['', '\uFEFF']) {
      const other = await plan(Buffer.from(mark + threeYears, 'utf16le'));
      expect([other.code, other.said]).toEqual([0, said]);
    }
  });

  test('without one high that can be used wants mending', async () => {
    const { code, warned, saved } = await plan(threeYears.replace(/,(?:12|25|9),/g, ',warm,'));
    expect([code, saved]).toEqual([1, 1]);
    expect(warned.join('\n')).toContain('No day has a high that can be used');
  });
});
