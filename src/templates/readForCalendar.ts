/** What the calendar reads besides Plots. */
import type { WorkbookPort } from '../workbook/port';
import { catalogue } from '../texts/catalogue';

/** Days from pick to pick by crop, as the Crops sheet has them. */
export async function readIntervals(port: WorkbookPort): Promise<ReadonlyMap<string, number> | null> {
  const table = await port.readTable('Crops');
  if (table === null) return null;
  const at = table.headers.indexOf(catalogue.sheets.crops.traits['picking interval']);
  return new Map(
    table.rows.flatMap((row): [string, number][] => {
      const value = row[at];
      return typeof value === 'number' ? [[String(row[0]), value]] : [];
    }),
  );
}

/** null where Season has none, or where its frosts are no season: then it stands for no plot's end. */
export async function readFirstFrost(port: WorkbookPort): Promise<number | null> {
  const [frost, days] = await Promise.all(
    ['FIRST_FROST', 'FROST_FREE_DAYS'].map((name) => readNumber(port, name)),
  );
  return days == null || frost == null ? null : Math.floor(frost);
}

async function readNumber(port: WorkbookPort, name: string): Promise<number | null> {
  const area = await port.locate(name);
  const value = area === null ? null : ((await port.read(area)).values[0]?.[0] ?? null);
  return typeof value === 'number' ? value : null;
}
