/** The whole workbook as a text: cells and looks, and what each part of the engine keeps beside them. */
import { IResourceLoaderService, type IWorkbookData } from '@univerjs/core';
import type { Engine } from './engine';

/** There is one workbook in an engine. */
export const unitId = 'workbook';

export function snapshotWorkbook(engine: Engine): string {
  const whole = engine.accessor.get(IResourceLoaderService).saveUnit<IWorkbookData>(engine.unitId);
  if (whole === null) throw new Error('the engine has no workbook');
  return JSON.stringify(whole);
}

/** @throws when the text is no workbook */
export function readSnapshot(text: string): IWorkbookData {
  const data = JSON.parse(text) as Partial<IWorkbookData> | null;
  const isWhole =
    data?.id === unitId &&
    Array.isArray(data.sheetOrder) &&
    data.sheetOrder.length > 0 &&
    data.sheetOrder.every((id) => typeof data.sheets?.[id]?.name === 'string');
  if (!isWhole) throw new Error('this is no snapshot of a workbook');
  return data as IWorkbookData;
}
