/**
 * What people put into the sheets of our templates, ready to fill sheets anew elsewhere: the inputs of forms, the
 * rows of growing tables, and what was typed over a figure of ours. All else in the workbook stays where it is.
 */
import { formatIn, namingColumn } from './dressTemplate';
import { fillSheets, findSheet, nameNow, type FillRequest } from './fillSheets';
import {
  HostError,
  isCellError,
  type CellContent,
  type CellValue,
  type Format,
  type ReadValue,
  type TableRead,
  type WorkbookPort,
} from './port';
import { isFollowing } from './readForm';
import { isBlank, readCell, readInputs, textOf, type InputProblem } from './readInputs';
import type { InputRow, SheetTemplate, TableColumn, TableTemplate } from './template';

/** A workbook that can be read; a file on which nobody works is one too. */
export interface ReadableBook extends Pick<WorkbookPort, 'sheets' | 'read' | 'readTable' | 'locate'> {
  /** What is to be added to its dates: a workbook can count days from another first day. */
  readonly daysToAdd: number;
}

export interface SheetFilling extends FillRequest {
  /** The line of its sheet that each of the inputs stands on, from 1; of rows that an action of ours made none. */
  readonly lines: readonly number[];
  readonly problems: readonly InputProblem[];
}

export interface FillingRead {
  /** One for each template, in their order; for an optional one where its sheet is there. */
  readonly requests: readonly SheetFilling[];
  /** Figures of ours with something typed over them. */
  readonly typedOver: number;
}

/**
 * @param makeFresh makes an empty workbook that computes at once. A file may hold values where we compute: what is
 * other than there is taken as typed.
 * @returns null where no sheet is ours
 * @throws HostError sheetDamaged
 */
export async function readFilling(
  book: ReadableBook,
  templates: readonly SheetTemplate[],
  makeFresh: () => WorkbookPort,
): Promise<FillingRead | null> {
  const sheets = await book.sheets();
  const ours = new Map(templates.map((template) => [template, findSheet(sheets, template)?.name]));
  if ([...ours.values()].every((sheet) => sheet === undefined)) return null;
  const form: Record<string, CellContent> = {};
  const rows = new Map<SheetTemplate, RowsRead>();
  for (const [template, sheet] of ours) {
    if (sheet === undefined) continue;
    Object.assign(form, await readFormInputs(book, template, sheet));
    rows.set(template, await readRows(book, template, sheet));
  }
  const wanted = templates.filter(
    (template) => template.optional !== true || ours.get(template) !== undefined,
  );
  const fresh = makeFresh();
  await fillSheets(
    fresh,
    wanted.map((template) => ({ template, inputs: [], form })),
    '',
  );
  const typed = new Map<SheetTemplate, TypedOver>();
  for (const [template, sheet] of ours) {
    if (sheet !== undefined) typed.set(template, await putTyped(book, fresh, template));
  }
  return {
    requests: wanted.map((template) => ({
      ...(rows.get(template) ?? noRows),
      template: typed.get(template)?.template ?? template,
      form,
    })),
    typedOver: [...typed.values()].reduce((sum, { count }) => sum + count, 0),
  };
}

function demand<Found>(found: Found | null, sheet: string, missing: string): Found {
  if (found === null) throw new HostError({ code: 'sheetDamaged', sheet, missing });
  return found;
}

/** What cannot be read as its line's kind stays as the text it is. */
async function readFormInputs(
  book: ReadableBook,
  template: SheetTemplate,
  sheet: string,
): Promise<Record<string, CellContent>> {
  const values: Record<string, CellContent> = {};
  const reported = template.report === undefined ? null : await book.locate(template.report.name);
  if (template.report !== undefined && reported !== null) {
    values[template.report.name] = textOf((await book.read(reported)).values[0]?.[0] ?? null);
  }
  for (const line of template.form.filter(({ kind }) => kind === 'input')) {
    const area = demand(await book.locate(line.name), sheet, line.name);
    const read = await book.read(area);
    if (isFollowing(line, read.formulas[0]?.[0]) && (await book.locate(line.follows)) !== null) {
      values[line.name] = { compute: { input: line.follows } };
      continue;
    }
    const given = dated(book, line.format, read.values[0]?.[0] ?? null);
    const value = isBlank(given) ? null : readCell(line, given, false);
    values[line.name] = typeof value === 'object' && value !== null ? textOf(given) : value;
  }
  return values;
}

type RowsRead = Pick<SheetFilling, 'inputs' | 'lines' | 'problems'>;
const noRows: RowsRead = { inputs: [], lines: [], problems: [] };

/** The rows of the template's growing table; a row of which nobody typed anything is none. */
async function readRows(book: ReadableBook, template: SheetTemplate, sheet: string): Promise<RowsRead> {
  const table = template.tables.find(({ rows }) => rows === null);
  if (table === undefined) return noRows;
  if (isMade(table)) return { ...noRows, inputs: await readMade(book, table, sheet) };
  const { area, headers, rows } = await readGrown(book, table.name, sheet);
  const columnOf = (header: string): TableColumn | undefined =>
    table.columns.find((column) => isSameHeader(column.header, header));
  const typed = headers.flatMap((header, index) => {
    const column = columnOf(header);
    return column?.kind === 'computed' ? [] : [{ header, index, format: column?.format ?? 'general' }];
  });
  const lines = rows
    .map((cells, index) => ({
      line: area.row + index + 2,
      cells: typed.map(({ index: at, format }) => dated(book, format, cells[at] ?? null)),
    }))
    .filter(({ cells }) => !cells.every(isBlank));
  const read = readInputs(table, {
    headers: typed.map(({ header }) => header),
    headerLine: area.row + 1,
    rows: lines,
    decimalComma: false,
  });
  return { inputs: read.inputs, problems: read.problems, lines: lines.map(({ line }) => line) };
}

/** With the rows typed right under it, for not every program lets a table grow over them. */
async function readGrown(book: ReadableBook, name: string, sheet: string): Promise<TableRead> {
  const table = demand(await book.readTable(name), sheet, name);
  const { area } = table;
  const used = (await book.sheets()).find((one) => one.name === area.sheet)?.used;
  const end = used === null || used === undefined ? 0 : used.row + used.rows;
  const below: (readonly ReadValue[])[] = [];
  for (let row = area.row + area.rows; row < end; row += rowsAtOnce) {
    const { values } = await book.read({ ...area, row, rows: Math.min(rowsAtOnce, end - row) });
    const blank = values.findIndex((cells) => cells.every(isBlank));
    below.push(...values.slice(0, blank < 0 ? undefined : blank));
    if (blank >= 0) break;
  }
  return { ...table, rows: [...table.rows, ...below] };
}

/** A sheet may say that it is a million rows long. */
const rowsAtOnce = 100;

function isMade({ columns }: TableTemplate): boolean {
  return columns.some(({ kind }) => kind === 'made');
}

/** Rows that an action of ours made, and what people put beside them, as they stand. */
async function readMade(book: ReadableBook, table: TableTemplate, sheet: string): Promise<InputRow[]> {
  const { headers, rows } = await readGrown(book, table.name, sheet);
  const columns = table.columns.filter(({ kind }) => kind !== 'computed');
  const inputs = rows.map((cells): InputRow => {
    const name = cells[headers.indexOf(table.columns[namingColumn(table)]?.header ?? '')];
    const values = columns.map((column): [string, CellValue] => {
      const { header } = column;
      const value = dated(book, formatIn(column, name), cells[headers.indexOf(header)] ?? null);
      return [header, isCellError(value) ? value.error : value];
    });
    return Object.fromEntries(values.filter(([, value]) => !isBlank(value)));
  });
  return inputs.filter((input) => Object.keys(input).length > 0);
}

function dated({ daysToAdd }: ReadableBook, format: Format, value: ReadValue): ReadValue {
  return format === 'date' && typeof value === 'number' ? value + daysToAdd : value;
}

function isSameHeader(one: string, other: string): boolean {
  return one.toLowerCase() === other.toLowerCase();
}

interface TypedOver {
  readonly template: SheetTemplate;
  readonly count: number;
}

/** The template with what was typed into the cells of its own rows, and over them, in their place. */
async function putTyped(
  book: ReadableBook,
  fresh: WorkbookPort,
  template: SheetTemplate,
): Promise<TypedOver> {
  let count = 0;
  const tables: TableTemplate[] = [];
  for (const table of template.tables) {
    const there = table.rows === null ? null : await book.readTable(table.name);
    const computed = there === null ? null : await fresh.readTable(table.name);
    if (table.rows === null || there === null || computed === null || !hasRowNames(table.rows)) {
      tables.push(table);
      continue;
    }
    const { formulas } = await book.read(there.area);
    const rowOf = new Map(
      there.rows.map(([name], index) => [textOf(nameNow(table.columns[0], name ?? null)), index]),
    );
    const columnsAt = table.columns.map(({ header }) =>
      there.headers.findIndex((one) => isSameHeader(one, header)),
    );
    const rows = table.rows.map((contents, r) => {
      const row = rowOf.get(textOf(computed.rows[r]?.[0] ?? null)) ?? -1;
      return contents.map((content, c): CellContent => {
        const at = columnsAt[c] ?? -1;
        const value = nameNow(table.columns[c], there.rows[row]?.[at] ?? null);
        if (c === 0 || isBlank(value) || isCellError(value)) return content;
        if (table.columns[c]?.kind === 'input') return value;
        const isTyped =
          table.keepsTypedOver === true &&
          (formulas[row + 1]?.[at] ?? null) === null &&
          !isSameValue(value, computed.rows[r]?.[c] ?? null);
        if (!isTyped) return content;
        count += 1;
        return value;
      });
    });
    tables.push({ ...table, rows });
  }
  return { template: { ...template, tables }, count };
}

/** Rows are known by their first cell, wherever somebody sorted them to. */
function hasRowNames(rows: readonly (readonly CellContent[])[]): boolean {
  return new Set(rows.map(([name]) => name)).size === rows.length;
}

/** A file keeps 15 to 17 digits, and programs differ in the last ones. */
function isSameValue(one: ReadValue, other: ReadValue): boolean {
  if (typeof one !== 'number' || typeof other !== 'number') return textOf(one) === textOf(other);
  return one.toPrecision(12) === other.toPrecision(12);
}
