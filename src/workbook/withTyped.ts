import type { CellValue, SheetTemplate } from './template';

/** What stands in cells of a template's own rows: by table, by the row's name, by header. */
export type TypedCells = Readonly<
  Record<string, Readonly<Record<string, Readonly<Record<string, CellValue>>>>>
>;

/** The template with those cells in its rows; itself where none of its tables is named. */
export function withTyped(template: SheetTemplate, cells: TypedCells): SheetTemplate {
  if (!template.tables.some(({ name }) => name in cells)) return template;
  return {
    ...template,
    tables: template.tables.map((table) => {
      const typed = cells[table.name];
      if (typed === undefined || table.rows === null) return table;
      const rows = table.rows.map((row) => {
        const given = typed[String(row[0])] ?? {};
        return row.map((content, index) => given[table.columns[index]?.header ?? ''] ?? content);
      });
      return { ...table, rows };
    }),
  };
}
