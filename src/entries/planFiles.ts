/** Plans as files; its own part of the page, loaded when first asked for. */
import { nearestNames } from '../calc/crops/nearestNames';
import { openPlan } from '../commands/openPlan';
import { functions } from '../functions';
import { createMemoryWorkbook, type MemoryWorkbook } from '../hosts/file/createMemoryWorkbook';
import { openXlsx } from '../hosts/file/openXlsx';
import { withLaterHomework } from '../templates/homework';
import { knownTemplates } from '../templates/sheets';
import { catalogue } from '../texts/catalogue';
import type { FileRead } from '../workbook/desk';
import { fillSheets } from '../workbook/fillSheets';
import type { LiveWorkbook, WorkbookPort } from '../workbook/port';
import { readFilling } from '../workbook/readFilling';

const makeWorkbook = (): MemoryWorkbook => createMemoryWorkbook({ functions: [...functions.values()] });

export async function writePlan(workbook: WorkbookPort): Promise<Uint8Array | null> {
  const templates = withLaterHomework(knownTemplates, await workbook.sheets());
  const read = await readFilling({ ...workbook, daysToAdd: 0 }, templates, makeWorkbook);
  if (read === null) return null;
  const file = makeWorkbook();
  await fillSheets(file, read.requests, catalogue.pane.undo.sheets);
  return file.bytes();
}

export function readPlanFile(name: string, bytes: Uint8Array, workbook: LiveWorkbook): Promise<FileRead> {
  return openPlan(name, bytes, { ...workbook, daysToAdd: 0 }, { openXlsx, makeWorkbook, nearestNames });
}
