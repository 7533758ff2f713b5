/** The Weather sheets over the stand-in for Excel, with our own functions: in pieces that a request can take. */
import { expect, it } from 'vitest';
import { functions } from '../../../src/functions';
import { openExcelWorkbook } from '../../../src/hosts/excel/openExcelWorkbook';
import { createMemoryWorkbook } from '../../../src/hosts/file/createMemoryWorkbook';
import { demoFilling } from '../../../src/templates/demoGarden';
import { requestWeather, type WeatherDay } from '../../../src/templates/weather';
import { fillSheets } from '../../../src/workbook/fillSheets';
import { isCellError, type ReadValue, type WorkbookPort } from '../../../src/workbook/port';
import { openStandIn } from '../../excelStandIn/openStandIn';
import { quickClock } from './openTestWorkbook';

const registered = [...functions.values()];
/** To 31 December 2025, warm in summer, cold in winter, never twice the same. */
function daysOf(years: number): WeatherDay[] {
  const count = Math.floor(365.25 * years);
  return Array.from({ length: count }, (_, i) => {
    const serial = 46022 - count + 1 + i;
    const season = Math.sin((((serial % 365.25) - 110) / 365.25) * 2 * Math.PI);
    const low = Math.round(45 + 25 * season + 8 * Math.sin(i * 12.9898));
    return { serial, high: low + 20, low };
  });
}
const requests = (years: number) => [
  ...demoFilling,
  ...requestWeather({ place: 'Invented hollow', units: 'us', days: daysOf(years) }),
];
function open() {
  const standIn = openStandIn({ firstSheet: 'Kitchen', functions: registered });
  return {
    standIn,
    workbook: openExcelWorkbook({ ...standIn, namespace: 'CUCURBIT.', clock: quickClock() }),
  };
}

/** Excel on the web takes no more, by its documentation; the stand-in refuses it too. */
const mostBytes = 5_000_000;

it('a hundred years of days arrive, each request within the limit', async () => {
  const { standIn, workbook } = open();
  await fillSheets(workbook, requests(100), 'test');
  expect(Math.max(...standIn.takeRequests())).toBeLessThan(mostBytes);
  expect(standIn.book.tables.find(({ name }) => name === 'Weather')?.span.rows).toBe(1 + 36_525);
  standIn.close();
}, 120_000);

it('the lists are those of the file, every cell', async () => {
  const { standIn, workbook } = open();
  const file = createMemoryWorkbook({ functions: registered });
  const cellsOf = async (port: WorkbookPort): Promise<(ReadValue | undefined)[][]> => {
    await fillSheets(port, requests(3), 'test');
    expect(await port.settle(60_000)).toEqual([]);
    const { used = null } = (await port.sheets()).find(({ name }) => name === 'Weather') ?? {};
    const { values } = await port.read(used ?? { sheet: 'Weather', row: 0, column: 0, rows: 1, columns: 1 });
    return values.map((row) =>
      row.map((value) => {
        if (isCellError(value)) return value.error;
        return typeof value === 'number' ? Number(value.toPrecision(12)) : value === '' ? null : value;
      }),
    );
  };
  expect(await cellsOf(workbook)).toEqual(await cellsOf(file));
  standIn.close();
}, 120_000);
