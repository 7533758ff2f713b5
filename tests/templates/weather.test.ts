/** The Weather sheets over a small record whose dates are worked out by hand, on the file host and in the browser. */
import { afterEach, describe, expect, it } from 'vitest';
import { functions } from '../../src/functions';
import { openHeadless } from '../../src/hosts/browser/openHeadless';
import { createMemoryWorkbook } from '../../src/hosts/file/createMemoryWorkbook';
import { openXlsx } from '../../src/hosts/file/openXlsx';
import { demoSeason } from '../../src/templates/demoGarden';
import { seasonTemplate } from '../../src/templates/season';
import { allTemplates, functionNamespace, knownTemplates } from '../../src/templates/sheets';
import {
  followWeather,
  requestWeather,
  weatherRecordTemplate,
  weatherTemplate,
  type WeatherDay,
} from '../../src/templates/weather';
import { fillSheets } from '../../src/workbook/fillSheets';
import type { CellContent, ReadValue, WorkbookPort } from '../../src/workbook/port';
import { readFilling } from '../../src/workbook/readFilling';
import { readForm, writeForm } from '../../src/workbook/readForm';
import { change } from '../contract/contractWorkbook';

const registered = [...functions.values()];
const open: { dispose(): void }[] = [];
afterEach(() => {
  for (const one of open.splice(0)) one.dispose();
});

/** By the calendar of JavaScript alone: 1899-12-30 is serial 0 of dates from March 1900 on. */
const serial = (iso: string): number => (Date.parse(iso) - Date.parse('1899-12-30')) / 86_400_000;

const frosts = [
  // The same day of the year three times, then a week later; and a late fall.
  ['2021-04-20', '2021-10-10'],
  ['2022-04-30', '2022-10-20'],
  ['2023-05-02', '2023-10-02'],
  ['2024-05-10', '2024-10-15'],
].flat();

/** Four whole years, 80 over 60 °F from May to September, else 50 over 40; but for the frosts. */
const days: readonly WeatherDay[] = Array.from({ length: 1461 }, (_, i) => {
  const at = serial('2021-01-01') + i;
  const iso = new Date(Date.parse('2021-01-01') + i * 86_400_000).toISOString().slice(0, 10);
  if (frosts.includes(iso)) return { serial: at, high: 50, low: 30 };
  const isWarm = iso.slice(5, 7) >= '05' && iso.slice(5, 7) <= '09';
  return { serial: at, high: isWarm ? 80 : 50, low: isWarm ? 60 : 40 };
});
const record = { place: 'Invented hollow', units: 'us', days } as const;

async function fill(port: WorkbookPort, season: Readonly<Record<string, CellContent>> = demoSeason) {
  const plan = allTemplates.map((template) => ({ template, inputs: [], form: season }));
  await fillSheets(port, [...plan, ...requestWeather(record)], 'test');
  expect(await port.settle(60_000)).toEqual([]);
  return port;
}
const inFile = () => createMemoryWorkbook({ functions: registered });
const inBrowser = () => {
  const workbook = openHeadless({
    functions: registered,
    namespace: functionNamespace,
    firstSheet: 'Notepad',
  });
  open.push(workbook);
  return workbook;
};

async function named(port: WorkbookPort, name: string): Promise<ReadValue> {
  const area = await port.locate(name);
  return area === null ? null : ((await port.read(area)).values[0]?.[0] ?? null);
}
async function cellOf(port: WorkbookPort, name: string): Promise<{ row: number; column: number }> {
  const { row = 0, column = 0 } = (await port.locate(name)) ?? {};
  return { row, column };
}
async function listed(port: WorkbookPort, name: string, columns: number): Promise<(readonly ReadValue[])[]> {
  const area = await port.locate(name);
  if (area === null) throw new Error(name);
  const { values } = await port.read({ ...area, columns });
  return values.filter(([first]) => first !== null);
}

describe.each([
  ['file', inFile],
  ['browser', inBrowser],
])('the Weather sheets in the %s', (_, make) => {
  it('list the frosts of each year and give the dates at the Season’s risk (by hand)', async () => {
    const port = await fill(make(), { ...demoSeason, FROST_RISK: 0.25 });
    expect(await listed(port, 'FROST_YEARS', 4)).toEqual([
      // April 10 days, then 31, 30, 31, 31, 30 and 10.
      [2021, serial('2021-04-20'), serial('2021-10-10'), 173],
      [2022, serial('2022-04-30'), serial('2022-10-20'), 173],
      [2023, serial('2023-05-02'), serial('2023-10-02'), 153],
      [2024, serial('2024-05-10'), serial('2024-10-15'), 158],
    ]);
    // PERCENTILE.INC at 75% of four: a quarter of the way from the third to the fourth; May 2 and 2 days.
    expect(await named(port, 'WEATHER_LAST_FROST')).toBe(serial('2027-05-04'));
    // At 25%: three quarters of the way from the first to the second; October 2 and 6 of 8 days.
    expect(await named(port, 'WEATHER_FIRST_FROST')).toBe(serial('2027-10-08'));
    expect(await named(port, 'WEATHER_FREE_DAYS')).toBe(157);
    expect(await named(port, 'YEARS_WITH_FROSTS')).toBe(4);
    expect(await named(port, 'LEAST_FREE_DAYS')).toBe(153);
    expect(await named(port, 'MIDDLE_FREE_DAYS')).toBe(165.5);
    expect(await named(port, 'MOST_FREE_DAYS')).toBe(173);
    // After 2 May one of four springs; before 10 October one of four falls.
    expect(await named(port, 'CHANCE_AFTER_LAST_FROST')).toBe(0.25);
    expect(await named(port, 'CHANCE_BEFORE_FIRST_FROST')).toBe(0.25);
    expect(await named(port, 'RECORD_FIRST_DAY')).toBe(serial('2021-01-01'));
    expect(await named(port, 'RECORD_LAST_DAY')).toBe(serial('2024-12-31'));
    expect(await named(port, 'DAYS_MISSING')).toBe(0);
  });

  it('count heat, pick by it, and space sowings by it (by hand)', async () => {
    const season = { ...demoSeason, HEAT_SOWING: serial('2027-05-15'), HEAT_BASE: 50, HEAT_METHOD: 'mean' };
    const port = make();
    const plan = allTemplates.map((template) => ({ template, inputs: [], form: season }));
    await fillSheets(port, [...plan, ...requestWeather(record, season)], 'test');
    expect(await port.settle(60_000)).toEqual([]);
    // 53 days to maturity, the middle of 50 to 55 rounded up; (80 + 60)/2 - 50 = 20 degree days on each, and on the day
    // of the pick.
    expect(await named(port, 'HEAT_DAYS')).toBe(53);
    expect(await named(port, 'HEAT_TARGET')).toBe(1080);
    expect(await listed(port, 'HEAT_YEARS', 2)).toEqual([2021, 2022, 2023, 2024].map((year) => [year, 1080]));
    // May 16 more days, June 30, July 7.
    expect(await named(port, 'CALENDAR_PICK')).toBe(serial('2027-07-07'));
    expect(await named(port, 'MIDDLE_HEAT_PICK')).toBe(serial('2027-07-07'));
    expect((await listed(port, 'PICK_YEARS', 3))[0]).toEqual([2021, serial('2021-07-07'), 53]);
    // 14 days of 20.
    expect(await named(port, 'HEAT_BETWEEN')).toBe(280);
    expect(await named(port, 'SOWING_IN_RECORD')).toBe(serial('2024-05-15'));
    // 53, 18, 14 and 14 days before 10 October: 3 July.
    expect(await named(port, 'LAST_SOWING_COMPARED')).toBe(serial('2027-07-03'));
    expect(await listed(port, 'HEAT_SOWINGS', 1)).toEqual(
      ['2027-05-15', '2027-05-29', '2027-06-12', '2027-06-26'].map((iso) => [serial(iso)]),
    );
    // Base 60, and of a high of 80 its 20 degrees over it, whatever the low.
    const byCrop = await port.readTable('HeatByCrop');
    expect(byCrop?.rows[0]?.slice(2, 7)).toEqual(['reduced', 60, 90, 53, 1080]);
  });

  it.each([
    // At 68 °F: Harrington and Minges 1954, in Knott's Handbook 1997.
    ['slicing cucumber', 6],
    ['pumpkin', 'no table'],
    ['gourd', 'no table'],
  ])('have days to emergence where a table has the crop: %s', async (crop, expected) => {
    const port = make();
    const form = { HEAT_CROP: crop, HEAT_BASE: 50, HEAT_METHOD: 'mean', SOIL_TEMPERATURE: 68 };
    const plan = allTemplates.map((template) => ({ template, inputs: [], form: demoSeason }));
    await fillSheets(
      port,
      [...plan, ...requestWeather({ ...record, days: days.slice(0, 400) }, form)],
      'test',
    );
    expect(await port.settle(60_000)).toEqual([]);
    expect(await named(port, 'EMERGENCE_DAYS')).toBe(expected);
    expect((await named(port, 'EMERGENCE_SHARE')) === 'no table').toBe(expected === 'no table');
  });

  it('pick later than the calendar what is sown in the cold (by hand)', async () => {
    const season = { ...demoSeason, HEAT_SOWING: serial('2027-04-15'), HEAT_BASE: 50, HEAT_METHOD: 'mean' };
    const port = make();
    const plan = allTemplates.map((template) => ({ template, inputs: [], form: season }));
    await fillSheets(port, [...plan, ...requestWeather(record, season)], 'test');
    expect(await port.settle(60_000)).toEqual([]);
    // From the longest day on: 54 days of 20. No day of April has any, nor has that of a frost in May.
    expect(await named(port, 'HEAT_TARGET')).toBe(1080);
    expect(await listed(port, 'PICK_YEARS', 3)).toEqual([
      [2021, serial('2021-06-23'), 69],
      [2022, serial('2022-06-23'), 69],
      [2023, serial('2023-06-24'), 70],
      [2024, serial('2024-06-24'), 70],
    ]);
    expect(await named(port, 'CALENDAR_PICK')).toBe(serial('2027-06-07'));
    expect(await named(port, 'MIDDLE_HEAT_PICK')).toBe(serial('2027-06-24'));
    // 14 days of 20, not the none of April.
    expect(await named(port, 'HEAT_BETWEEN')).toBe(280);
  });

  it('follow the record as it is mended by hand', async () => {
    const port = await fill(make());
    const table = await port.readTable('Weather');
    const place = (iso: string) => ({
      sheet: table?.area.sheet ?? '',
      row: (table?.area.row ?? 0) + 1 + serial(iso) - serial('2021-01-01'),
    });
    const cells = [
      { ...place('2023-05-12'), column: 2, contents: [[28]] },
      { ...place('2024-09-01'), column: 1, contents: Array.from({ length: 12 }, () => [null, null]) },
    ];
    await port.apply(change({ cells }));
    expect(await port.settle(60_000)).toEqual([]);
    expect((await listed(port, 'FROST_YEARS', 4)).slice(2)).toEqual([
      [2023, serial('2023-05-12'), serial('2023-10-02'), 143],
      [2024, serial('2024-05-10'), 'void', 'void'],
    ]);
    expect(await named(port, 'DAYS_MISSING')).toBe(12);
    expect(await named(port, 'LEAST_FREE_DAYS')).toBe(143);
    // Colder from the sowing on, so that more days are needed: 10 degree days a day until then 20.
    const sown = Number(await named(port, 'SOWING_COMPARED'));
    const before = Number(await named(port, 'MIDDLE_HEAT_PICK'));
    const iso = new Date(Date.parse('1899-12-30') + sown * 86_400_000).toISOString().slice(4, 10);
    const cold = ['2021', '2022', '2023', '2024'].map((year) => ({
      ...place(`${year}${iso}`),
      column: 1,
      contents: [[62], [62], [62], [62]],
    }));
    await port.apply(
      change({
        cells: [...cold, { sheet: 'Weather', ...(await cellOf(port, 'HEAT_WANTED')), contents: [[1080]] }],
      }),
    );
    expect(await port.settle(60_000)).toEqual([]);
    expect(await named(port, 'MIDDLE_HEAT_PICK')).toBe(before + 4);
  });

  it('have the Season follow, until a date is typed in its place', async () => {
    const port = await fill(make(), { ...demoSeason, ...followWeather });
    const dateOf = async (risk: number) => {
      const read = await readForm(port, seasonTemplate);
      if (read === null) throw new Error('no Season');
      await writeForm(port, read, { FROST_RISK: risk }, 'risk');
      expect(await port.settle(60_000)).toEqual([]);
      return named(port, 'LAST_FROST');
    };
    expect(await dateOf(0.25)).toBe(serial('2027-05-04'));
    // The middle of the four: between 30 April and 2 May.
    expect(await dateOf(0.5)).toBe(serial('2027-05-01'));
    // 14 days after a mean date.
    expect(await named(port, 'SET_OUT_DATE')).toBe(serial('2027-05-15'));
    const read = await readForm(port, seasonTemplate);
    expect([...(read?.following ?? [])].sort()).toEqual(['FIRST_FROST', 'LAST_FROST']);
    if (read === null) throw new Error('no Season');
    expect(await writeForm(port, read, { LAST_FROST: serial('2027-05-09') }, 'typed')).toEqual([]);
    expect(await port.settle(60_000)).toEqual([]);
    expect(await named(port, 'LAST_FROST')).toBe(serial('2027-05-09'));
    expect(await named(port, 'FIRST_FROST')).toBe(await named(port, 'WEATHER_FIRST_FROST'));
  });

  it('are renewed where they are, and made only when asked for', async () => {
    const port = await fill(make());
    const again = [...allTemplates, weatherTemplate, weatherRecordTemplate].map((template) => ({
      template,
      inputs: [],
      form: {},
    }));
    const report = await fillSheets(port, again, 'again');
    expect(report).toMatchObject({ made: [], kept: 0, gone: [] });
    expect(await port.settle(60_000)).toEqual([]);
    expect(await listed(port, 'FROST_YEARS', 1)).toHaveLength(4);
  });
});

describe('a plan with a record', () => {
  it('goes into a file and comes back whole, dates that follow and all', async () => {
    const port = inFile();
    await fill(port, { ...demoSeason, ...followWeather, FROST_RISK: 0.25 });
    const filling = await readFilling(
      openXlsx(await (port as ReturnType<typeof inFile>).bytes()),
      knownTemplates,
      inFile,
    );
    const again = inFile();
    await fillSheets(again, filling?.requests ?? [], 'again');
    expect(filling?.requests.flatMap(({ problems }) => problems)).toEqual([]);
    expect(await again.readTable('Weather')).toEqual(await port.readTable('Weather'));
    expect(await named(again, 'LAST_FROST')).toBe(serial('2027-05-04'));
    const season = await readForm(again, seasonTemplate);
    expect(season?.following.has('LAST_FROST')).toBe(true);
    expect(await listed(again, 'FROST_YEARS', 4)).toEqual(await listed(port, 'FROST_YEARS', 4));
  });

  it('has no Weather sheet where there was none', async () => {
    const port = inFile();
    await fillSheets(
      port,
      allTemplates.map((template) => ({ template, inputs: [], form: demoSeason })),
      'test',
    );
    const filling = await readFilling({ ...port, daysToAdd: 0 }, knownTemplates, inFile);
    expect(filling?.requests.map(({ template }) => template.id)).toEqual(allTemplates.map(({ id }) => id));
  });
});

describe('file and browser', () => {
  it('agree on every cell of the Weather sheets', async () => {
    const spoiled = days.map((day, i) => (i === 500 ? { ...day, low: 99 } : day));
    for (const of of [days, spoiled, days.slice(0, 40)]) {
      const [one, other] = [inFile(), inBrowser()];
      for (const port of [one, other]) {
        const plan = allTemplates.map((template) => ({ template, inputs: [], form: demoSeason }));
        await fillSheets(port, [...plan, ...requestWeather({ ...record, days: of })], 'test');
        expect(await port.settle(60_000)).toEqual([]);
      }
      const used = (await one.sheets()).find(({ name }) => name === 'Weather')?.used;
      if (used == null) throw new Error('no Weather');
      const inOne = (await one.read(used)).values;
      const inOther = (await other.read(used)).values;
      const differing = inOne.flatMap((row, r) =>
        row.flatMap((value, c) => {
          const round = (cell: ReadValue | undefined) =>
            typeof cell === 'number' ? Number(cell.toPrecision(12)) : cell === '' ? null : (cell ?? null);
          const [mine, yours] = [round(value), round(inOther[r]?.[c])].map((cell) => JSON.stringify(cell));
          return mine === yours ? [] : [`row ${r} column ${c}: ${mine} and ${yours}`];
        }),
      );
      expect(differing).toEqual([]);
    }
  });
});
