/** The numbers that people typed into tables, as they are in other units: in inputs, and over our formulas. */
import type { Area, Change, WorkbookPort } from './port';
import { textOf } from './readInputs';
import type { SheetTemplate } from './template';

export interface Converted {
  readonly expect: Change['expect'];
  readonly cells: Change['cells'];
  /** Cells with a formula of somebody's in an input: it is theirs to change. */
  readonly left: readonly Area[];
}

/** @param convert a number of a column, by what the column says in `converts` @throws HostError */
export async function convertCells(
  port: WorkbookPort,
  templates: readonly SheetTemplate[],
  convert: (value: number, converts: string) => number,
): Promise<Converted> {
  const expect = new Map<string, string>();
  const cells: Change['cells'][number][] = [];
  const left: Area[] = [];
  for (const template of templates.flatMap(({ tables }) => tables)) {
    const table = await port.readTable(template.name);
    if (table === null) continue;
    const { area, headers } = table;
    if (!expect.has(area.sheet)) expect.set(area.sheet, await port.stamp(area.sheet));
    const { values, formulas } = await port.read(area);
    for (const { header, kind, converts } of template.columns) {
      const at = headers.indexOf(header);
      if (converts === undefined || at < 0) continue;
      for (let row = 1; row < area.rows; row++) {
        const unit =
          typeof converts === 'string'
            ? converts
            : converts.units[textOf(values[row]?.[headers.indexOf(converts.by)] ?? null)];
        if (unit === undefined) continue;
        const place = { sheet: area.sheet, row: area.row + row, column: area.column + at };
        const value = values[row]?.[at];
        if (formulas[row]?.[at] != null) {
          if (kind === 'input') left.push({ ...place, rows: 1, columns: 1 });
        } else if (typeof value === 'number') {
          cells.push({ ...place, contents: [[convert(value, unit)]] });
        }
      }
    }
  }
  return { expect: [...expect].map(([sheet, stamp]) => ({ sheet, stamp })), cells, left };
}
