/** The sheet of pictures: what the Weather sheets say now is read back, drawn, and put there as one change. */
import { allOf, input, native, when } from '../workbook/expressions';
import { findSheet, takeFreeName } from '../workbook/fillSheets';
import { layOut } from '../workbook/layOut';
import type { Computation, Expression, ReadValue, WorkbookPort } from '../workbook/port';
import type { SheetTemplate } from '../workbook/template';
import { catalogue } from '../texts/catalogue';
import { idInLanguage } from '../texts/language';
import { isStill } from './isStill';
import { weatherRecordTemplate, type WeatherRecord } from './weather';

const words = catalogue.weather;
const sheetWords = catalogue.pictures.sheet;

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
  /** Whether the sheets still say what is drawn. */
  readonly stands: Expression;
}

/** A drawn picture, ready for a sheet. */
export interface SheetPicture {
  readonly name: string;
  readonly png: Uint8Array;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly altText: string;
}

const recordTable = weatherRecordTemplate.tables[0]?.name ?? '';
/** Says whether the pictures in the sheet are of what the sheets say now. */
export const stateName = 'PICTURES_STATE';
const stateOf = (stands: Expression): Computation => ({
  compute: when(native('IFERROR', stands, false), sheetWords.stands, sheetWords.older),
});

const picturesTemplate = (stands: Expression): SheetTemplate => ({
  id: idInLanguage('weatherPictures'),
  version: 1,
  sheet: sheetWords.name,
  title: sheetWords.name,
  lead: [sheetWords.lead],
  cautions: [],
  form: [
    {
      ...sheetWords.state,
      name: stateName,
      kind: 'computed',
      content: stateOf(stands),
      format: 'text',
      choices: [],
    },
  ],
  tables: [],
  optional: true,
  page: { landscape: false, pagesWide: 1, repeatFirstColumn: false },
});

/** The cells that pictures are drawn by, beside the record, and the lists that follow from it. */
const frostCells = [
  'FROST_RISK',
  'SEASON_YEAR',
  'RECORD_UNITS',
  'RECORD_PLACE',
  'HEMISPHERE',
  'FROST_AT',
  'FROST_RULE',
];
const heatCells = [
  'HEAT_TARGET',
  'BASE_USED',
  'CEILING_USED',
  'METHOD_USED',
  'SOWING_COMPARED',
  'SOWING_IN_RECORD',
];
const drawnLists = ['HEAT_SOWINGS', 'LAST_FROSTS', 'FIRST_FROSTS'];

const sumOf = (values: readonly ReadValue[]): number =>
  values.reduce<number>((sum, value) => sum + (typeof value === 'number' ? value : 0), 0);

/** The record as it stands in its table, and what the Weather and Season sheets ask of it; null where either lacks. */
export async function readWeatherToDraw(port: WorkbookPort): Promise<WeatherToDraw | null> {
  const table = await port.readTable(recordTable);
  if (table === null) return null;
  const cell = async (name: string): Promise<ReadValue> => (await column(name))[0] ?? null;
  const column = async (name: string): Promise<readonly ReadValue[]> => {
    const area = await port.locate(name);
    return area === null ? [] : (await port.read(area)).values.map(([value]) => value ?? null);
  };
  const ofFrost = await Promise.all(frostCells.map(cell));
  const ofHeat = await Promise.all(heatCells.map(cell));
  const [risk, year, units, place, hemisphere, threshold, rule] = ofFrost;
  const [target, base, ceiling, method, sowing, inRecord] = ofHeat;
  const lists = await Promise.all(drawnLists.map(column));
  const sowings = (lists[0] ?? []).filter((value) => typeof value === 'number');
  if (typeof risk !== 'number' || typeof year !== 'number') return null;
  const { date, high, low } = words.record;
  const [dateAt, highAt, lowAt] = [date, high, low].map(({ header }) => table.headers.indexOf(header));
  const numberAt = (row: readonly ReadValue[], at: number | undefined): number | null => {
    const value = row[at ?? -1];
    return typeof value === 'number' ? value : null;
  };
  const days = table.rows.flatMap((row) => {
    const serial = numberAt(row, dateAt);
    return serial === null ? [] : [{ serial, high: numberAt(row, highAt), low: numberAt(row, lowAt) }];
  });
  return {
    record: {
      place: typeof place === 'string' ? place : '',
      units: units === 'metric' ? 'metric' : 'us',
      days,
    },
    stands: native(
      'AND',
      ...frostCells.map((name, i) => isStill(input(name), ofFrost[i] ?? null)),
      ...heatCells.map((name, i) => isStill(input(name), ofHeat[i] ?? null)),
      // A list that is an error now counts as one of nothing.
      ...drawnLists.map((name, i) =>
        isStill(native('IFERROR', native('SUM', input(name)), 0), sumOf(lists[i] ?? [])),
      ),
      ...table.headers.map((header, at) =>
        isStill(native('SUM', allOf(recordTable, header)), sumOf(table.rows.map((row) => row[at] ?? null))),
      ),
    ),
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
const firstRow = 5;

/**
 * Puts the pictures into their sheet, one under another, in place of those that are there, and a formula above them
 * that says whether what they were drawn of has changed since.
 *
 * @returns the name of the sheet @throws HostError; then nothing was written
 */
export async function putWeatherPictures(
  port: WorkbookPort,
  pictures: readonly SheetPicture[],
  { stands }: Pick<WeatherToDraw, 'stands'>,
  title: string,
): Promise<string> {
  const there = await port.sheets();
  const template = picturesTemplate(stands);
  const ours = findSheet(there, template);
  const taken = new Set(there.map(({ name }) => name.toLowerCase()));
  const sheet = ours?.name ?? takeFreeName(template.sheet, taken);
  const state = ours === undefined ? null : await port.locate(stateName);
  let row = firstRow;
  const placed = pictures.map((picture) => {
    const at = { ...picture, sheet, row, column: 0 };
    row += Math.ceil(picture.heightPx / rowPx) + 1;
    return at;
  });
  await port.apply({
    title,
    expect: [],
    newSheets: ours === undefined ? [layOut(template, sheet, [])] : [],
    cells: state === null ? [] : [{ ...state, contents: [[stateOf(stands)]] }],
    tableRows: [],
    pictures: placed,
    marks: [],
  });
  return sheet;
}
