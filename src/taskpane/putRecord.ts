/** A record into the Weather sheets: new ones, or other days in those that are there. */
import { fillSheets } from '../workbook/fillSheets';
import { HostError, type CellValue, type Change, type LiveWorkbook } from '../workbook/port';
import { readForm } from '../workbook/readForm';
import { replaceRows } from '../workbook/replaceRows';
import type { TableTemplate } from '../workbook/template';
import {
  requestWeather,
  weatherRecordTemplate,
  weatherTemplate,
  type WeatherRecord,
} from '../templates/weather';
import type { Hemisphere } from '../templates/weatherTools';
import { catalogue } from '../texts/catalogue';

const title = catalogue.pane.undo.weather;
const table = weatherRecordTemplate.tables[0] as TableTemplate;

/** What the sheets hold now; null where neither is there. */
export interface RecordThere {
  /** Of the table, blank ones too. */
  readonly rows: number;
  /** Days. */
  readonly count: number;
  /** Serials; null where no day is left. */
  readonly first: number | null;
  readonly last: number | null;
}

/** @throws HostError */
export async function findRecord(workbook: LiveWorkbook): Promise<RecordThere | null> {
  const there = await workbook.readTable(table.name);
  if (there === null) return null;
  const dates = there.rows.map(([date]) => date).filter((date) => typeof date === 'number');
  return {
    rows: there.rows.length,
    count: dates.length,
    first: dates.length === 0 ? null : dates.reduce((least, date) => Math.min(least, date)),
    last: dates.length === 0 ? null : dates.reduce((most, date) => Math.max(most, date)),
  };
}

/** @returns the names of the sheets that were made @throws HostError; then nothing was written */
export async function putRecord(
  workbook: LiveWorkbook,
  record: WeatherRecord,
  hemisphere: Hemisphere,
): Promise<readonly string[]> {
  const requests = requestWeather(record, { HEMISPHERE: hemisphere });
  const form = await readForm(workbook, weatherTemplate);
  const inputs = requests.flatMap((request) => request.inputs);
  const rows = form === null ? null : await replaceRows(workbook, table, inputs);
  if (form !== null && rows === null) {
    throw new HostError({ code: 'sheetDamaged', sheet: form.sheet, missing: table.name });
  }
  if (rows === null || form === null) {
    const report = await fillSheets(workbook, requests, title);
    return report.made;
  }
  const values: Readonly<Record<string, CellValue>> = {
    RECORD_PLACE: record.place === '' ? null : record.place,
    RECORD_UNITS: record.units,
    HEMISPHERE: hemisphere,
  };
  const cells: Change['cells'][number][] = Object.entries(values).flatMap(([name, value]) => {
    const area = form.areas[name];
    return area === undefined || form.computed.has(name)
      ? []
      : [{ sheet: area.sheet, row: area.row, column: area.column, contents: [[value]] }];
  });
  const change: Change = {
    title,
    expect: [{ sheet: form.sheet, stamp: form.stamp }, ...rows.expect],
    newSheets: [],
    cells: [...cells, ...rows.cells],
    tableRows: rows.tableRows,
    pictures: [],
    marks: [],
  };
  await workbook.apply(change);
  return [];
}
