/** What the calendar reads besides Plots. */
import type { WorkbookPort } from '../workbook/port';

/** Days from pick to pick by crop, as the Crops sheet has them. */
export async function readIntervals(port: WorkbookPort): Promise<ReadonlyMap<string, number> | null> {
  const table = await port.readTable('Crops');
  if (table === null) return null;
  const at = table.headers.indexOf('picking interval');
  return new Map(
    table.rows.flatMap((row): [string, number][] => {
      const value = row[at];
      return typeof value === 'number' ? [[String(row[0]), value]] : [];
    }),
  );
}

/** Later than every day where Season has none. */
export async function readFirstFrost(port: WorkbookPort): Promise<number> {
  const area = await port.locate('FIRST_FROST');
  const value = area === null ? null : ((await port.read(area)).values[0]?.[0] ?? null);
  return typeof value === 'number' ? value : Infinity;
}
