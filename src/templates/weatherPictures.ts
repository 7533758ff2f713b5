/** The sheet of pictures: what the Weather sheets say now is read back, drawn, and put there as one change. */
import { findSheet, takeFreeName } from '../workbook/fillSheets';
import { layOut } from '../workbook/layOut';
import type { ReadValue, WorkbookPort } from '../workbook/port';
import type { SheetTemplate } from '../workbook/template';
import { english } from '../texts/english';
import { weatherRecordTemplate, type WeatherRecord } from './weather';

const words = english.weather;
const sheetWords = english.pictures.sheet;

/** What is asked of the record, as the sheets have it. Serial dates. */
export interface WeatherAsked {
  readonly risk: number;
  readonly year: number;
  readonly hemisphere: 'north' | 'south';
  readonly threshold: number | undefined;
  readonly rule: 'inc' | 'exc';
  /** null where the sheet has no sowing or no target. */
  readonly heat: {
    /** Days of the record. */
    readonly sowings: readonly number[];
    readonly target: number;
    readonly base: number;
    readonly ceiling: number | undefined;
    readonly method: 'mean' | 'modified' | 'sine' | 'reduced';
  } | null;
}

export interface WeatherToDraw {
  readonly record: WeatherRecord;
  readonly asked: WeatherAsked;
}

/** A drawn picture, ready for a sheet. */
export interface SheetPicture {
  readonly name: string;
  readonly png: Uint8Array;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly altText: string;
}

export const weatherPicturesTemplate: SheetTemplate = {
  id: 'weatherPictures',
  version: 1,
  sheet: sheetWords.name,
  title: sheetWords.name,
  lead: [sheetWords.lead],
  cautions: [],
  form: [],
  tables: [],
  optional: true,
  page: { landscape: false, pagesWide: 1, repeatFirstColumn: false },
};

/** The record as it stands in its table, and what the Weather and Season sheets ask of it; null where either lacks. */
export async function readWeatherToDraw(port: WorkbookPort): Promise<WeatherToDraw | null> {
  const table = await port.readTable(weatherRecordTemplate.tables[0]?.name ?? '');
  if (table === null) return null;
  const cell = async (name: string): Promise<ReadValue> => (await column(name))[0] ?? null;
  const column = async (name: string): Promise<readonly ReadValue[]> => {
    const area = await port.locate(name);
    return area === null ? [] : (await port.read(area)).values.map(([value]) => value ?? null);
  };
  const [risk, year, units, place, hemisphere, threshold, rule] = await Promise.all(
    ['FROST_RISK', 'SEASON_YEAR', 'RECORD_UNITS', 'RECORD_PLACE', 'HEMISPHERE', 'FROST_AT', 'FROST_RULE'].map(
      cell,
    ),
  );
  const [target, base, ceiling, method, sowing, inRecord] = await Promise.all(
    ['HEAT_TARGET', 'BASE_USED', 'CEILING_USED', 'METHOD_USED', 'SOWING_COMPARED', 'SOWING_IN_RECORD'].map(
      cell,
    ),
  );
  const sowings = (await column('HEAT_SOWINGS')).filter((value) => typeof value === 'number');
  if (typeof risk !== 'number' || typeof year !== 'number') return null;
  const { date, high, low } = words.record;
  const [dateAt, highAt, lowAt] = [date, high, low].map(({ header }) => table.headers.indexOf(header));
  const numberAt = (row: readonly ReadValue[], at: number | undefined): number | null => {
    const value = row[at ?? -1];
    return typeof value === 'number' ? value : null;
  };
  return {
    record: {
      place: typeof place === 'string' ? place : '',
      units: units === 'metric' ? 'metric' : 'us',
      days: table.rows.flatMap((row) => {
        const serial = numberAt(row, dateAt);
        return serial === null ? [] : [{ serial, high: numberAt(row, highAt), low: numberAt(row, lowAt) }];
      }),
    },
    asked: {
      risk,
      year,
      hemisphere: hemisphere === 'south' ? 'south' : 'north',
      threshold: typeof threshold === 'number' ? threshold : undefined,
      rule: rule === 'exc' ? 'exc' : 'inc',
      heat:
        sowings.length === 0 ||
        typeof target !== 'number' ||
        typeof base !== 'number' ||
        typeof sowing !== 'number' ||
        typeof inRecord !== 'number'
          ? null
          : {
              sowings: sowings.map((date) => date - sowing + inRecord),
              target,
              base,
              ceiling: typeof ceiling === 'number' ? ceiling : undefined,
              method: methods.find((one) => one === method) ?? 'mean',
            },
    },
  };
}

const methods = ['mean', 'modified', 'sine', 'reduced'] as const;

/** A row is at least as high, in any program. */
const rowPx = 20;
const firstRow = 3;

/**
 * Puts the pictures into their sheet, one under another, in place of those that are there.
 *
 * @returns the name of the sheet @throws HostError; then nothing was written
 */
export async function putWeatherPictures(
  port: WorkbookPort,
  pictures: readonly SheetPicture[],
  title: string,
): Promise<string> {
  const there = await port.sheets();
  const ours = findSheet(there, weatherPicturesTemplate);
  const taken = new Set(there.map(({ name }) => name.toLowerCase()));
  const sheet = ours?.name ?? takeFreeName(weatherPicturesTemplate.sheet, taken);
  let row = firstRow;
  const placed = pictures.map((picture) => {
    const at = { ...picture, sheet, row, column: 0 };
    row += Math.ceil(picture.heightPx / rowPx) + 1;
    return at;
  });
  await port.apply({
    title,
    expect: [],
    newSheets: ours === undefined ? [layOut(weatherPicturesTemplate, sheet, [])] : [],
    cells: [],
    tableRows: [],
    pictures: placed,
    marks: [],
  });
  return sheet;
}
