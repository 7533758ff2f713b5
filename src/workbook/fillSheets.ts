/**
 * Fills template sheets, or refreshes those that are there. Nobody's cells are overwritten: a sheet name in use is
 * passed over for a free one, and a value typed over one of our formulas stays and is counted.
 */
import { shadeTable } from './dressTemplate';
import { layOut, listContent, markOf, tableRow } from './layOut';
import {
  HostError,
  type Block,
  type CellContent,
  type Change,
  type NewSheet,
  type Progress,
  type ReadValue,
  type ShadeRule,
  type SheetInfo,
  type WorkbookPort,
} from './port';
import { readLine } from './readForm';
import type { InputRow, SheetTemplate, TableColumn, TableTemplate } from './template';

export interface FillRequest {
  readonly template: SheetTemplate;
  /** Rows for the template's growing table when the sheet is made. Not used where the sheet is there already. */
  readonly inputs: readonly InputRow[];
  /** Values for the form's inputs, and the report, when the sheet is made, by cell name; null leaves a cell empty. */
  readonly form: Readonly<Record<string, CellContent>>;
}

export interface FillReport {
  readonly made: readonly string[];
  readonly refreshed: readonly string[];
  /** Cells where somebody typed over a formula; left as they are. */
  readonly kept: number;
  /** Rows that a template brings itself and that are no longer in its sheet. */
  readonly gone: readonly GoneRow[];
}

export interface GoneRow {
  readonly sheet: string;
  /** What the row is called, by its first cells. */
  readonly row: string;
}

type PlacedBlock = Block & { readonly sheet: string };

/** @throws HostError; then nothing was written */
export async function fillSheets(
  port: WorkbookPort,
  requests: readonly FillRequest[],
  title: string,
  progress?: Progress,
): Promise<FillReport> {
  const there = await port.sheets();
  const taken = new Set(there.map((sheet) => sheet.name.toLowerCase()));
  const newSheets: NewSheet[] = [];
  const cells: PlacedBlock[] = [];
  const expect: Change['expect'][number][] = [];
  const marks: Change['marks'][number][] = [];
  const rules: (ShadeRule & { readonly sheet: string })[] = [];
  const refreshed: string[] = [];
  const gone: GoneRow[] = [];
  let kept = 0;
  for (const { template, inputs, form } of requests) {
    const ours = findSheet(there, template);
    if (ours === undefined) {
      newSheets.push(layOut(withForm(template, form), takeFreeName(template.sheet, taken), inputs));
    } else {
      expect.push({ sheet: ours.name, stamp: await port.stamp(ours.name) });
      const formulas = await computedCells(port, ours.name, template);
      cells.push(...formulas.blocks);
      kept += formulas.kept;
      gone.push(...formulas.gone.map((row) => ({ sheet: ours.name, row })));
      rules.push(...formulas.rules.map((rule) => ({ sheet: ours.name, ...rule })));
      if ((ours.mark?.version ?? 0) < template.version)
        marks.push({ sheet: ours.name, mark: markOf(template) });
      refreshed.push(ours.name);
    }
  }
  await port.apply({ title, expect, newSheets, cells, tableRows: [], pictures: [], rules, marks }, progress);
  return { made: newSheets.map((sheet) => sheet.name), refreshed, kept, gone };
}

/** The sheet that the template made, whatever it is called by now. */
export function findSheet(sheets: readonly SheetInfo[], template: SheetTemplate): SheetInfo | undefined {
  return sheets.find((sheet) => sheet.mark?.template === template.id);
}

/** Spreadsheet programs take no longer name of a sheet. */
const longestName = 31;

/** @param taken in lower case; the name is added to it */
export function takeFreeName(wanted: string, taken: Set<string>): string {
  let name = wanted.slice(0, longestName);
  for (let n = 2; taken.has(name.toLowerCase()); n++) {
    name = `${wanted.slice(0, longestName - ` ${n}`.length)} ${n}`;
  }
  taken.add(name.toLowerCase());
  return name;
}

function withForm(template: SheetTemplate, form: FillRequest['form']): SheetTemplate {
  const { report } = template;
  return {
    ...template,
    ...(report && { report: { ...report, content: form[report.name] ?? report.content } }),
    form: template.form.map((line) => {
      const content = form[line.name];
      return content === undefined ? line : { ...line, content };
    }),
  };
}

interface Computed {
  readonly blocks: PlacedBlock[];
  readonly kept: number;
  readonly gone: readonly string[];
  readonly rules: readonly ShadeRule[];
}

/** The cells of a sheet that hold our formulas, written afresh, and the rules of its tables. */
async function computedCells(port: WorkbookPort, sheet: string, template: SheetTemplate): Promise<Computed> {
  const blocks: PlacedBlock[] = [];
  const gone: string[] = [];
  const rules: ShadeRule[] = [];
  let kept = 0;
  const standing = await Promise.all(template.form.map((line) => readLine(port, sheet, line)));
  for (const [i, { content, kind }] of template.form.entries()) {
    const { area, read } = standing[i] as (typeof standing)[number];
    if (kind === 'input') continue;
    if (isTyped(read.values[0]?.[0], read.formulas[0]?.[0])) kept += 1;
    else blocks.push({ sheet: area.sheet, row: area.row, column: area.column, contents: [[content]] });
  }
  for (const list of template.lists ?? []) {
    const header = list.columns[0]?.header ?? '';
    const { area, read } = await readLine(port, sheet, { name: list.columns[0]?.name ?? '', label: header });
    if (isTyped(read.values[0]?.[0], read.formulas[0]?.[0])) kept += 1;
    else {
      const contents = [[listContent(list)]];
      blocks.push({ sheet: area.sheet, row: area.row, column: area.column, contents });
    }
  }
  for (const table of template.tables) {
    const part = await computedColumns(port, sheet, table);
    blocks.push(...part.blocks);
    kept += part.kept;
    gone.push(...part.gone);
    rules.push(...part.rules);
  }
  return { blocks, kept, gone, rules };
}

async function computedColumns(port: WorkbookPort, sheet: string, table: TableTemplate): Promise<Computed> {
  const there = await port.readTable(table.name);
  if (there === null) throw new HostError({ code: 'sheetDamaged', sheet, missing: table.name });
  const { area } = there;
  const read = await port.read(area);
  const rows = there.rows.map((row) => contentsOf(table, row));
  const blocks: PlacedBlock[] = [];
  let kept = 0;
  for (const [ordinal, column] of table.columns.entries()) {
    const index = there.headers.indexOf(column.header);
    if (index < 0) throw new HostError({ code: 'columnGone', sheet, missing: column.header });
    // Runs of formula cells between typed ones, so that a typed cell is never touched.
    let run: CellContent[][] = [];
    const flush = (endRow: number): void => {
      if (run.length > 0) {
        blocks.push({
          sheet: area.sheet,
          row: endRow - run.length,
          column: area.column + index,
          contents: run,
        });
      }
      run = [];
    };
    for (let row = 1; row < area.rows; row++) {
      const content = rows[row - 1]?.[ordinal] ?? null;
      if (!isComputed(content)) {
        const there = read.values[row]?.[index] ?? null;
        if (content !== null && there !== content && nameNow(column, there) === content) run.push([content]);
        else flush(area.row + row);
      } else if (isTyped(read.values[row]?.[index], read.formulas[row]?.[index])) {
        kept += 1;
        flush(area.row + row);
      } else {
        run.push([content]);
      }
    }
    flush(area.row + area.rows);
  }
  const gone = (table.rows ?? []).filter((row) => !rows.includes(row));
  const columnsAt = table.columns.map(({ header }) => area.column + there.headers.indexOf(header));
  return {
    blocks,
    kept,
    gone: gone.map((row) => nameOf(row).join(', ')),
    rules: shadeTable(table, { headerRow: area.row, columnsAt }),
  };
}

/** What the template has in that row of the sheet, wherever somebody moved it; nothing in a row that is not ours. */
function contentsOf(table: TableTemplate, row: readonly ReadValue[]): readonly CellContent[] {
  if (table.rows === null) return tableRow(table, {});
  return (
    table.rows.find((own) =>
      nameOf(own).every((cell, column) => cell === nameNow(table.columns[column], row[column] ?? null)),
    ) ?? []
  );
}

/** What a cell that names a row would say in this version. */
export function nameNow(column: TableColumn | undefined, name: ReadValue): ReadValue {
  return (typeof name === 'string' ? column?.formerly?.[name] : undefined) ?? name;
}

/** A row is known by the cells before the first that is typed or computes. */
function nameOf(row: readonly CellContent[]): readonly CellContent[] {
  const end = row.findIndex((cell) => cell === null || isComputed(cell));
  return end < 0 ? row : row.slice(0, end);
}

function isComputed(content: CellContent): boolean {
  return typeof content === 'object' && content !== null;
}

function isTyped(value: unknown, formula: string | null | undefined): boolean {
  return (formula ?? null) === null && value !== null && value !== undefined && value !== '';
}
