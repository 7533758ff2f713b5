/** The problem of a homework in whose line a cell stands, as the call that answers it. */
import { argumentHeaders, homeworkTemplate } from '../templates/homework';
import { catalogue } from '../texts/catalogue';
import type { Area, LiveWorkbook, ReadValue, SheetInfo } from '../workbook/port';
import type { SheetTemplate } from '../workbook/template';
import type { UnfoldedCall } from '../workbook/unfoldFormula';

const { columns } = catalogue.homework;

export interface Problem {
  /** Where its number stands. */
  readonly at: Area;
  readonly position: string;
  readonly text: string;
  readonly call: Pick<UnfoldedCall, 'id' | 'isAsked' | 'args' | 'values'>;
}

/** @returns null for a cell in no such line. @throws HostError */
export async function readProblem(
  workbook: LiveWorkbook,
  at: Area,
  sheets: readonly SheetInfo[],
  templates: readonly SheetTemplate[],
): Promise<Problem | null> {
  const mark = sheets.find((sheet) => sheet.name === at.sheet)?.mark;
  const template = templates.find(({ id }) => id === mark?.template && id.startsWith(homeworkTemplate.id));
  const name = template?.tables[0]?.name;
  const table = name === undefined ? null : await workbook.readTable(name);
  const line = table?.rows[at.row - table.area.row - 1];
  if (table === null || line === undefined || !isAmong(at.column, table.area)) return null;
  const placeOf = (header: string): Area => {
    const column = table.area.column + table.headers.indexOf(header);
    return { ...at, column, rows: 1, columns: 1 };
  };
  const valueOf = (header: string): ReadValue => line[table.headers.indexOf(header)] ?? null;
  const id = valueOf(columns.function.header);
  if (typeof id !== 'string' || id === '') return null;
  const last = argumentHeaders.map((header) => !isBlank(valueOf(header))).lastIndexOf(true);
  const given = argumentHeaders.slice(0, last + 1);
  const args = given.map((header) => {
    const value = valueOf(header);
    if (isBlank(value)) return null;
    const from = [{ area: placeOf(header), values: [[value]], label: header, isColumn: false }];
    return { text: '', from, calls: [], isSum: false };
  });
  return {
    at: placeOf(columns.position.header),
    position: String(valueOf(columns.position.header)),
    text: String(valueOf(columns.problem.header)),
    call: { id, isAsked: true, args, values: given.map((header) => ({ value: valueOf(header) ?? '' })) },
  };
}

function isAmong(column: number, table: Area): boolean {
  return column >= table.column && column < table.column + table.columns;
}

const isBlank = (value: ReadValue): boolean => value === null || value === '';
