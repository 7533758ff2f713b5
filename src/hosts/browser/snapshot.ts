/**
 * The whole workbook as a text: cells and looks, and what each part of the engine keeps beside them. A formula stands
 * in it once: the lines of a table have the same, and written out in each they would be most of the text.
 */
import { IResourceLoaderService, type ICellData, type IWorkbookData } from '@univerjs/core';
import type { Engine } from './engine';

export function snapshotWorkbook(engine: Engine): string {
  const whole = engine.accessor.get(IResourceLoaderService).saveUnit<IWorkbookData>(engine.unitId);
  if (whole === null) throw new Error('the engine has no workbook');
  const formulas = new Map<string, number>();
  const numberOf = (formula: string): number => {
    const number = formulas.get(formula) ?? formulas.size;
    formulas.set(formula, number);
    return number;
  };
  const pack = (cell: Cell): Cell => (typeof cell?.f === 'string' ? { ...cell, f: numberOf(cell.f) } : cell);
  const sheets = mapValues(whole.sheets, (sheet) => ({
    ...sheet,
    cellData: mapValues(sheet.cellData as Record<number, Row>, (row) => mapValues(row ?? {}, pack)),
  }));
  return JSON.stringify({ ...whole, sheets, formulas: [...formulas.keys()] });
}

/** Its formula a number among the formulas of the snapshot; of the first version the formula itself. */
type Cell = (Omit<ICellData, 'f'> & { f?: string | number | null | undefined }) | null | undefined;

type Row = Readonly<Record<number, Cell>> | null | undefined;

function mapValues<Value, Mapped>(
  values: Readonly<Record<string, Value>> | Readonly<Record<number, Value>>,
  map: (value: Value) => Mapped,
): Record<string, Mapped> {
  return Object.fromEntries(Object.entries(values).map(([key, value]) => [key, map(value)]));
}

/** @throws when the text is no workbook */
export function readSnapshot(text: string): IWorkbookData {
  const data = JSON.parse(text) as (Partial<IWorkbookData> & { formulas?: readonly string[] }) | null;
  const isWhole =
    typeof data?.id === 'string' &&
    Array.isArray(data.sheetOrder) &&
    data.sheetOrder.length > 0 &&
    data.sheetOrder.every((id) => typeof data.sheets?.[id]?.name === 'string');
  if (!isWhole) throw new Error('this is no snapshot of a workbook');
  const { formulas = [], ...whole } = data as IWorkbookData & { formulas?: readonly string[] };
  for (const { cellData } of Object.values(whole.sheets)) {
    for (const row of Object.values(cellData ?? {})) {
      for (const cell of Object.values<Cell>(row ?? {})) {
        if (typeof cell?.f === 'number') cell.f = formulas[cell.f];
      }
    }
  }
  return whole;
}

/** For an engine that knows its workbook by this id. Looks of tables and pictures name the workbook they are in. */
export function asUnit(whole: IWorkbookData, unitId: string): IWorkbookData {
  const rename = (key: string, value: unknown): unknown => (key === 'unitId' ? unitId : value);
  const resources = (whole.resources ?? []).map(({ name, data }) =>
    data === '' ? { name, data } : { name, data: JSON.stringify(JSON.parse(data, rename)) },
  );
  return { ...whole, id: unitId, resources };
}
