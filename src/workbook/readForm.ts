/** The form of a sheet: its values by cell name, and writing them back as one change. */
import {
  HostError,
  type Area,
  type CellsRead,
  type CellContent,
  type Change,
  type ReadValue,
  type WorkbookPort,
} from './port';
import type { FormLine, SheetTemplate } from './template';

export interface FormRead {
  readonly sheet: string;
  readonly stamp: string;
  readonly values: Readonly<Record<string, ReadValue>>;
  /** Cells that hold a formula. In an input cell somebody typed it, or it follows another cell of ours. */
  readonly computed: ReadonlySet<string>;
  /** Of those the inputs that follow the cell that their line names. */
  readonly following: ReadonlySet<string>;
  readonly areas: Readonly<Record<string, Area>>;
}

/** The lines of the form, and the first cells of its lists. null where the workbook has no such sheet. @throws HostError when a named cell is gone */
export async function readForm(port: WorkbookPort, template: SheetTemplate): Promise<FormRead | null> {
  const sheet = (await port.sheets()).find((one) => one.mark?.template === template.id);
  if (sheet === undefined) return null;
  const stamp = await port.stamp(sheet.name);
  const values: Record<string, ReadValue> = {};
  const areas: Record<string, Area> = {};
  const computed = new Set<string>();
  const following = new Set<string>();
  const firstCells = (template.lists ?? []).flatMap(({ columns }) => columns.slice(0, 1));
  const lines: readonly LineOfForm[] = [
    ...template.form,
    ...firstCells.map(({ name, header }) => ({ name, label: header })),
  ];
  await Promise.all(
    lines.map(async (line) => {
      const { name } = line;
      const { area, read } = await readLine(port, sheet.name, line);
      areas[name] = area;
      values[name] = read.values[0]?.[0] ?? null;
      const formula = read.formulas[0]?.[0];
      if (formula != null) computed.add(name);
      if (isFollowing(line, formula)) following.add(name);
    }),
  );
  return { sheet: sheet.name, stamp, values, computed, following, areas };
}

type LineOfForm = Pick<FormLine, 'name' | 'label' | 'follows'>;

/** Whether the formula of the line's cell is but the cell that the line can follow. */
export function isFollowing<Line extends Pick<FormLine, 'follows'>>(
  line: Line,
  formula: string | null | undefined,
): line is Line & { readonly follows: string } {
  return line.follows !== undefined && formula?.toUpperCase() === `=${line.follows}`;
}

/** The cell of a line of the form, wherever somebody moved it. @throws HostError when it is gone */
export async function readLine(
  port: WorkbookPort,
  sheet: string,
  { name, label }: Pick<FormLine, 'name' | 'label'>,
): Promise<{ readonly area: Area; readonly read: CellsRead }> {
  const area = await port.locate(name);
  if (area === null) throw new HostError({ code: 'sheetDamaged', sheet, missing: label });
  return { area, read: await port.read(area) };
}

/**
 * Writes the inputs that differ from what was read; refuses when the sheet has changed since. A formula of somebody's
 * stays; one that follows a cell of ours gives way.
 * @param along cells of other sheets that go into the same change
 * @returns the names of the cells that were left alone for their formula
 * @throws HostError
 */
export async function writeForm(
  port: WorkbookPort,
  read: FormRead,
  values: Readonly<Record<string, CellContent>>,
  title: string,
  along: Pick<Change, 'cells' | 'expect'> = { cells: [], expect: [] },
): Promise<readonly string[]> {
  const kept: string[] = [];
  const cells: Change['cells'][number][] = [...along.cells];
  for (const [name, value] of Object.entries(values)) {
    const area = read.areas[name];
    if (area === undefined || read.values[name] === value) continue;
    if (read.computed.has(name) && !read.following.has(name)) kept.push(name);
    else cells.push({ sheet: area.sheet, row: area.row, column: area.column, contents: [[value]] });
  }
  if (cells.length === 0) return kept;
  const expect = [{ sheet: read.sheet, stamp: read.stamp }, ...along.expect];
  await port.apply({ title, expect, newSheets: [], cells, tableRows: [], pictures: [], marks: [] });
  return kept;
}
