/** The Weather sheet over records too short for what it computes: every cell says in words why there is no figure. */
import { afterEach, describe, expect, it } from 'vitest';
import { enoughSeasons as enoughOfFunctions } from '../../src/calc/frost/frostDateAtRisk';
import { functions } from '../../src/functions';
import { openHeadless } from '../../src/hosts/browser/openHeadless';
import { createMemoryWorkbook } from '../../src/hosts/file/createMemoryWorkbook';
import { demoSeason } from '../../src/templates/demoGarden';
import { allTemplates, functionNamespace } from '../../src/templates/sheets';
import { enoughSeasons, requestWeather, weatherTemplate } from '../../src/templates/weather';
import { english } from '../../src/texts/english';
import { fillSheets } from '../../src/workbook/fillSheets';
import { isCellError, type ReadValue, type WorkbookPort } from '../../src/workbook/port';
import { readForm } from '../../src/workbook/readForm';

const registered = [...functions.values()];
const open: { dispose(): void }[] = [];
afterEach(() => {
  for (const one of open.splice(0)) one.dispose();
});
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

it('counts as few what the functions count as few', () => {
  expect(enoughSeasons).toBe(enoughOfFunctions);
});

/** By the calendar of JavaScript alone: 1899-12-30 is serial 0 of dates from March 1900 on. */
const serial = (iso: string): number => (Date.parse(iso) - Date.parse('1899-12-30')) / 86_400_000;

async function fill(port: WorkbookPort, first: string, last: string): Promise<void> {
  const count = serial(last) - serial(first) + 1;
  const days = Array.from({ length: count }, (_, i) => ({ serial: serial(first) + i, high: 80, low: 60 }));
  const plan = allTemplates.map((template) => ({ template, inputs: [], form: demoSeason }));
  await fillSheets(port, [...plan, ...requestWeather({ place: '', units: 'us', days })], 'test');
  expect(await port.settle(60_000)).toEqual([]);
}

const { weather, noYear } = english;

async function listed(port: WorkbookPort, name: string): Promise<ReadValue> {
  const area = await port.locate(name);
  if (area === null) throw new Error(name);
  return (await port.read(area)).values[0]?.[0] ?? null;
}

describe.each([
  ['file', inFile],
  ['browser', inBrowser],
])('of a record that is too short the Weather sheet in the %s', (_, make) => {
  it.each([
    ['a July', '2021-07-01', '2021-07-31'],
    ['a winter, of which neither year has a whole cold season', '2021-01-10', '2021-02-20'],
    ['a day', '2021-05-09', '2021-05-09'],
  ])('says so in words in each cell: %s', async (__, first, last) => {
    const port = make();
    await fill(port, first, last);
    const form = await readForm(port, weatherTemplate);
    const heats = await port.readTable('HeatByCrop');
    const lists = (weatherTemplate.lists ?? []).flatMap(({ columns }) =>
      columns.flatMap(({ name }) => (name === '' ? [] : [name])),
    );
    const cells = [
      ...Object.entries(form?.values ?? {}),
      ...(heats?.rows ?? []).map((row) => [String(row[0]), row[6] ?? null] as const),
      ...(await Promise.all(lists.map(async (name) => [name, await listed(port, name)] as const))),
    ];
    expect(cells.length).toBeGreaterThan(40);
    expect(cells.filter(([, value]) => isCellError(value) && value.message === null)).toEqual([]);
  });

  it('names what is wanting line by line: a July', async () => {
    const port = make();
    await fill(port, '2021-07-01', '2021-07-31');
    const values = (await readForm(port, weatherTemplate))?.values;
    expect(values).toMatchObject({
      WEATHER_FREE_DAYS: weather.noFrostDate,
      LEAST_FREE_DAYS: weather.noYear,
      MIDDLE_FREE_DAYS: weather.noYear,
      MOST_FREE_DAYS: weather.noYear,
      HEAT_TARGET: weather.noYear,
      EARLIEST_HEAT_PICK: weather.noYear,
      MIDDLE_HEAT_PICK: weather.noYear,
      LATEST_HEAT_PICK: weather.noYear,
      SOWING_IN_RECORD: weather.notInRecord,
      HEAT_BETWEEN: weather.notTold,
      // What needs no record stays.
      HEAT_DAYS: 53,
    });
    expect((await port.readTable('HeatByCrop'))?.rows.map((row) => row[6])).toEqual(
      Array.from({ length: 9 }, () => weather.notTold),
    );
    expect(await listed(port, 'HEAT_YEARS')).toBe(noYear.start);
    expect(await listed(port, 'PICK_YEARS')).toBe(weather.picks.noHeat);
    expect(await listed(port, 'HEAT_SOWINGS')).toBe(weather.sowings.notInRecord);
  });

  it.each([
    // From 24 July to 23 July a cold season is whole: Utah Climate Center, freeze table.
    ['2021-07-01', '2021-07-31', 0, weather.trust.none],
    ['2021-07-20', '2022-07-30', 1, weather.trust.one],
    ['2021-07-20', '2023-07-30', 2, weather.trust.few],
    ['2001-07-24', '2020-07-23', 19, weather.trust.few],
    ['2001-07-24', '2021-07-23', 20, weather.trust.enough],
  ])('says how far to trust its dates: %s to %s', async (first, last, count, said) => {
    const port = make();
    await fill(port, first, last);
    const values = (await readForm(port, weatherTemplate))?.values;
    expect([values?.['SEASONS_COUNTED'], values?.['FROST_CAUTION']]).toEqual([count, said]);
  });

  it('lists no season in words: a winter', async () => {
    const port = make();
    await fill(port, '2021-01-10', '2021-02-20');
    expect(await listed(port, 'FROST_YEARS')).toBe(noYear.season);
  });
});
