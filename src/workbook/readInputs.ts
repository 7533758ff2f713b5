/** Rows of a delimited text as input rows of a table template. */
import type { CellValue } from './port';
import { dayOfIso, serialOfDay } from './serialDate';
import { parseNumber } from './parseNumber';
import type { Delimited } from './readDelimited';
import type { InputRow, TableColumn, TableTemplate } from './template';

export type InputProblem =
  | { readonly code: 'unknownHeader'; readonly line: number; readonly header: string }
  | { readonly code: 'missingHeader'; readonly line: number; readonly header: string }
  | { readonly code: 'notANumber'; readonly line: number; readonly header: string; readonly given: string }
  | { readonly code: 'notADate'; readonly line: number; readonly header: string; readonly given: string }
  | {
      readonly code: 'sameName';
      readonly line: number;
      readonly header: string;
      readonly given: string;
      readonly firstLine: number;
    };

export interface InputsRead {
  readonly inputs: readonly InputRow[];
  readonly problems: readonly InputProblem[];
}

/**
 * A cell that cannot be read as its column's kind stays as the text it is: the row's functions say what is wrong
 * with it, and nothing typed is lost.
 */
export function readInputs(table: TableTemplate, delimited: Delimited): InputsRead {
  const problems: InputProblem[] = [];
  const columns = delimited.headers.map((header) => matchColumn(table, header));
  delimited.headers.forEach((header, index) => {
    if (columns[index] === undefined)
      problems.push({ code: 'unknownHeader', line: delimited.headerLine, header });
  });
  const nameHeader = table.columns[0]?.header ?? '';
  if (!columns.some((column) => column?.header === nameHeader)) {
    problems.push({ code: 'missingHeader', line: delimited.headerLine, header: nameHeader });
  }
  const lineOfName = new Map<string, number>();
  const inputs = delimited.rows.map(({ line, cells }) => {
    const row: Record<string, CellValue> = {};
    columns.forEach((column, index) => {
      const text = cells[index]?.trim() ?? '';
      if (column === undefined || text === '') return;
      const read = readCell(column, text, delimited.decimalComma);
      if (typeof read === 'object') problems.push({ ...read, line, header: column.header, given: text });
      row[column.header] = typeof read === 'object' ? text : read;
    });
    const name = String(row[nameHeader] ?? '');
    const firstLine = lineOfName.get(name.toLowerCase());
    if (name !== '' && firstLine !== undefined) {
      problems.push({ code: 'sameName', line, header: nameHeader, given: name, firstLine });
    }
    if (firstLine === undefined) lineOfName.set(name.toLowerCase(), line);
    return row;
  });
  return { inputs, problems };
}

function matchColumn(table: TableTemplate, header: string): TableColumn | undefined {
  const wanted = header.trim().toLowerCase();
  return table.columns.find((column) => column.kind === 'input' && column.header.toLowerCase() === wanted);
}

function readCell(
  column: TableColumn,
  text: string,
  decimalComma: boolean,
): string | number | { code: 'notANumber' | 'notADate' } {
  if (column.format === 'text') return text;
  if (column.format === 'date') {
    const day = dayOfIso(text);
    return day === null ? { code: 'notADate' } : serialOfDay(day);
  }
  return parseNumber(text, decimalComma) ?? { code: 'notANumber' };
}
