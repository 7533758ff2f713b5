/** The form of a sheet: its values by cell name, and writing them back as one change. */
import { HostError, type Area, type CellValue, type Change, type ReadValue, type WorkbookPort } from './port';
import type { SheetTemplate } from './template';

export interface FormRead {
  readonly sheet: string;
  readonly stamp: string;
  readonly values: Readonly<Record<string, ReadValue>>;
  readonly areas: Readonly<Record<string, Area>>;
}

/** null where the workbook has no such sheet. @throws HostError when a named cell is gone */
export async function readForm(port: WorkbookPort, template: SheetTemplate): Promise<FormRead | null> {
  const sheet = (await port.sheets()).find((one) => one.mark?.template === template.id);
  if (sheet === undefined) return null;
  const stamp = await port.stamp(sheet.name);
  const values: Record<string, ReadValue> = {};
  const areas: Record<string, Area> = {};
  await Promise.all(
    template.form.map(async ({ name }) => {
      const area = await port.locate(name);
      if (area === null) throw new HostError({ code: 'sheetDamaged', sheet: sheet.name, missing: name });
      areas[name] = area;
      values[name] = (await port.read(area)).values[0]?.[0] ?? null;
    }),
  );
  return { sheet: sheet.name, stamp, values, areas };
}

/** Writes the inputs that differ from what was read; refuses when the sheet has changed since. @throws HostError */
export async function writeForm(
  port: WorkbookPort,
  read: FormRead,
  values: Readonly<Record<string, CellValue>>,
  title: string,
): Promise<void> {
  const cells: Change['cells'][number][] = [];
  for (const [name, value] of Object.entries(values)) {
    const area = read.areas[name];
    if (area === undefined || read.values[name] === value) continue;
    cells.push({ sheet: area.sheet, row: area.row, column: area.column, contents: [[value]] });
  }
  if (cells.length === 0) return;
  const expect = [{ sheet: read.sheet, stamp: read.stamp }];
  await port.apply({ title, expect, newSheets: [], cells, tableRows: [], pictures: [] });
}
