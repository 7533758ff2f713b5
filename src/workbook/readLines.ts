/** The lines of a growing table: what a person typed into each, and what the sheet made of it. */
import { isCellError, type Area, type CellsRead, type ReadValue, type WorkbookPort } from './port';
import type { TableTemplate } from './template';

export interface Line {
  /** By header, own columns of people included. */
  readonly values: Readonly<Record<string, ReadValue>>;
  /** Headers of the cells that hold a formula; in an input column somebody typed it. */
  readonly formulas: ReadonlySet<string>;
  /** Nobody has typed anything into it. */
  readonly isBlank: boolean;
}

export interface LinesRead {
  readonly stamp: string;
  /** Of the table, headers included. */
  readonly area: Area;
  readonly headers: readonly string[];
  /** What stands above each header; "" while that is an error. */
  readonly units: Readonly<Record<string, string>>;
  readonly lines: readonly Line[];
  /** The lines from the sheet's first column to its last used one, for people add columns beside a table too. */
  readonly cells: CellsRead;
}

/** Where somebody typed over a formula of ours: the line, from 0, and the header. */
export function findTypedOver(
  { lines }: LinesRead,
  { columns }: TableTemplate,
): readonly { readonly index: number; readonly header: string }[] {
  const computed = columns.filter(({ kind }) => kind === 'computed');
  return lines.flatMap(({ values, formulas }, index) =>
    computed.flatMap(({ header }) => {
      const isTyped = !formulas.has(header) && (values[header] ?? '') !== '';
      return isTyped ? [{ index, header }] : [];
    }),
  );
}

/** null where the workbook has no such table. @throws HostError */
export async function readLines(port: WorkbookPort, template: TableTemplate): Promise<LinesRead | null> {
  const table = await port.readTable(template.name);
  if (table === null) return null;
  const { area, headers } = table;
  // Before the cells: what is typed in between makes the stamp an old one.
  const stamp = await port.stamp(area.sheet);
  const used = (await port.sheets()).find(({ name }) => name === area.sheet)?.used ?? null;
  const columns = Math.max(area.column + area.columns, used === null ? 0 : used.column + used.columns);
  const above = await port.read({ ...area, row: Math.max(0, area.row - 1), rows: 1 });
  const first = area.row + 1;
  const cells = await port.read({ sheet: area.sheet, row: first, column: 0, rows: area.rows - 1, columns });
  const inputs = new Set(
    template.columns.filter(({ kind }) => kind !== 'computed').map(({ header }) => header),
  );
  const lines = cells.values.map((line, row): Line => {
    const values = headers.map((header, i) => [header, line[area.column + i] ?? null] as const);
    const formulas = headers.filter((_, i) => cells.formulas[row]?.[area.column + i] != null);
    const isTyped = (value: ReadValue, column: number): boolean =>
      cells.formulas[row]?.[column] != null
        ? inputs.has(headers[column - area.column] ?? '')
        : value !== null && value !== '';
    return {
      values: Object.fromEntries(values),
      formulas: new Set(formulas),
      isBlank: !line.some(isTyped),
    };
  });
  const units = headers.map((header, i) => {
    const unit = above.values[0]?.[i] ?? '';
    return [header, isCellError(unit) ? '' : String(unit)];
  });
  return { stamp, area, headers, units: Object.fromEntries(units), lines, cells };
}
