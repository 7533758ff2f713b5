/** A sheet of ours as values: a new sheet without a formula, for somebody who does not have our functions. */
import { widthOf } from './appearance';
import { dressLine, dressList, dressTable, framing, namingColumn, type Dress } from './dressTemplate';
import { columnWidths, textColumnOf } from './layOut';
import {
  HostError,
  isCellError,
  type CellValue,
  type Dressing,
  type NewSheet,
  type Note,
  type ReadValue,
  type Role,
  type WorkbookPort,
} from './port';
import type { SheetTemplate } from './template';

/** Other than the template's own: the copy is not taken for the sheet that the template made. */
export function markOfValues({ id, version }: SheetTemplate): NewSheet['mark'] {
  return { template: `${id}-values`, version };
}

/** A line of the form or a table, as it stands in the sheet. */
interface Part {
  readonly dress: Dress;
  /** null for a line. */
  readonly headerRow: number | null;
  /** Column → characters. */
  readonly widths: readonly (readonly [number, number])[];
}

export interface SheetRead {
  readonly sheet: string;
  /** Of all cells from A1. */
  readonly values: readonly (readonly ReadValue[])[];
}

/**
 * @param line stands under the title and says what the sheet is
 * @throws HostError where a table, a column or a named cell of the sheet is gone
 */
export async function valuesSheet(
  port: WorkbookPort,
  template: SheetTemplate,
  { sheet, values }: SheetRead,
  name: string,
  line: string,
): Promise<NewSheet> {
  const parts = await findParts(port, template, sheet);
  const lineRow = values.findIndex(([first]) => first === template.title) + 1;
  const moved = <At extends { readonly row: number }>(at: At): At =>
    at.row < lineRow ? at : { ...at, row: at.row + 1 };
  const contents = values.map((row) => row.map(contentOf));
  const lineColumn = textColumnOf(template);
  contents.splice(
    lineRow,
    0,
    (values[0] ?? []).map((_, column) => (column === lineColumn ? line : null)),
  );
  const headers = parts.flatMap(({ headerRow }) =>
    headerRow === null ? [] : [moved({ row: headerRow }).row],
  );
  return {
    name,
    mark: markOfValues(template),
    blocks: [{ row: 0, column: 0, contents }],
    tables: [],
    dressings: [
      ...dressTexts(template, values).map(moved),
      { row: lineRow, column: lineColumn, rows: 1, columns: 1, role: 'caution', format: 'general' },
      ...parts.flatMap(({ dress }) => dress.dressings.filter(isInSheet)).map(moved),
    ],
    lists: [],
    rules: parts.flatMap(({ dress }) => dress.rules).map(moved),
    notes: [...parts.flatMap(({ dress }) => dress.notes), ...errorNotes(values)].map(moved),
    names: {},
    widths: widthsOf(template, parts),
    ...framing(template, headers),
  };
}

/** A cell without text is empty. An error stands as its code. */
function contentOf(value: ReadValue): CellValue {
  if (isCellError(value)) return value.error;
  return value === '' ? null : value;
}

/** What our functions said: whoever gets the sheet cannot ask them. */
function errorNotes(values: readonly (readonly ReadValue[])[]): Note[] {
  return values.flatMap((cells, row) =>
    cells.flatMap((value, column) =>
      isCellError(value) && value.message !== null ? [{ row, column, text: value.message }] : [],
    ),
  );
}

async function findParts(port: WorkbookPort, template: SheetTemplate, sheet: string): Promise<Part[]> {
  const demand = <Found>(found: Found | null, missing: string): Found => {
    if (found === null) throw new HostError({ code: 'sheetDamaged', sheet, missing });
    return found;
  };
  const parts: Part[] = [];
  for (const line of template.form) {
    const { row, column } = demand(await port.locate(line.name), line.label);
    parts.push({ dress: dressLine(line, row, column), headerRow: null, widths: [] });
  }
  const report = template.report === undefined ? null : await port.locate(template.report.name);
  if (report !== null) {
    const { row, column } = report;
    const dressing = { row, column, rows: 1, columns: 1, role: 'lead', format: 'general' } as const;
    parts.push({
      dress: { dressings: [dressing], lists: [], rules: [], notes: [] },
      headerRow: null,
      widths: [],
    });
  }
  for (const each of template.tables) {
    const { area, headers, rows } = demand(await port.readTable(each.name), each.name);
    const { row: headerRow, column, columns } = area;
    const columnsAt = each.columns.map(({ header }) => {
      const index = headers.indexOf(header);
      return column + demand(index < 0 ? null : index, header);
    });
    const names = rows.map((cells) => cells[(columnsAt[namingColumn(each)] ?? column) - column]);
    const dress = dressTable(each, { headerRow, names, column, columns, columnsAt });
    const widths = each.columns.map((of, index) => [columnsAt[index] ?? 0, widthOf(of)] as const);
    parts.push({ dress, headerRow, widths });
  }
  for (const list of template.lists ?? []) {
    const [first] = list.columns;
    const { row, column } = demand(await port.locate(first?.name ?? ''), first?.header ?? '');
    parts.push({ dress: dressList(list, row - 1, column), headerRow: null, widths: [] });
  }
  return parts;
}

/** Somebody may have taken out the row above or the column before. */
function isInSheet({ row, column }: Dressing): boolean {
  return row >= 0 && column >= 0;
}

/** A form has the template's, a table those of its columns where they stand now. */
function widthsOf(template: SheetTemplate, parts: readonly Part[]): number[] {
  const widths = template.form.length > 0 ? columnWidths(template) : [];
  for (const [column, width] of parts.flatMap((part) => part.widths)) {
    widths[column] = Math.max(widths[column] ?? 0, width);
  }
  return Array.from(widths, (width: number | undefined) => width ?? ownColumnWidth);
}

/** Of a column that somebody put in. */
const ownColumnWidth = 12;

/** Titles and remarks, known by their words, wherever rows were put in above them. */
function dressTexts(template: SheetTemplate, values: readonly (readonly ReadValue[])[]): Dressing[] {
  const roles = new Map<ReadValue | undefined, Role>([
    ...[...template.tables, ...(template.lists ?? [])].map(({ heading }) => [heading, 'label'] as const),
    ...template.cautions.map((text) => [text, 'caution'] as const),
    ...template.lead.map((text) => [text, 'lead'] as const),
    [template.title, 'title'],
  ]);
  return values.flatMap((cells, row): Dressing[] => {
    const column = cells.findIndex((value) => value !== '' && value !== null);
    const role = column < 0 ? undefined : roles.get(cells[column]);
    return role === undefined ? [] : [{ row, column, rows: 1, columns: 1, role, format: 'general' }];
  });
}
