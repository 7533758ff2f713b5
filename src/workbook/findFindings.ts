/** What the person should look at: every error and every remark in a filled table, with the cell it stands in. */
import { isCellError, type Area, type ReadValue, type WorkbookPort } from './port';
import { withoutDoubt } from './parseNumber';
import { isUnfit, textOf } from './readInputs';
import type { TableColumn, TableTemplate } from './template';

export interface Finding {
  /** A stray row stands under a table that grows and is no part of it. */
  readonly kind: 'error' | 'remark' | 'stray';
  /** The row's name: its first column. */
  readonly row: string;
  readonly header: string;
  /** An error's message, or its code where the host kept no message; of a stray row what stands in the cell. */
  readonly text: string;
  readonly area: Area;
}

/** A remark that says why its row is not computed. */
export interface Cause {
  readonly remark: string;
  /** The column to fill in: there the finding stands, as an error. */
  readonly header: string;
  /** What the finding says there; the remark itself where absent. */
  readonly says?: string;
  /** The message of the errors that only follow from it; null where none has one. */
  readonly follows: string | null;
}

/**
 * @param remarkHeader the column whose texts are remarks
 * @param restating remarks that say no more than that the row has an error: it is found by itself
 */
export async function findFindings(
  port: WorkbookPort,
  template: TableTemplate,
  remarkHeader: string,
  causes: readonly Cause[] = [],
  restating: readonly string[] = [],
): Promise<readonly Finding[]> {
  const table = await port.readTable(template.name);
  if (table === null) return [];
  const found: Finding[] = [];
  table.rows.forEach((cells, index) => {
    const row = String(cells[0] ?? '');
    const placeOf = (column: number): Omit<Finding, 'kind' | 'text'> => ({
      row,
      header: table.headers[column] ?? '',
      area: {
        sheet: table.area.sheet,
        row: table.area.row + 1 + index,
        column: table.area.column + column,
        rows: 1,
        columns: 1,
      },
    });
    const remarkColumn = table.headers.indexOf(remarkHeader);
    const said = cells[remarkColumn];
    const remark = typeof said === 'string' ? said : '';
    const present = causes.filter((cause) => remark.includes(cause.remark));
    const rest = [...present.map((cause) => cause.remark), ...restating].reduce(without, remark);
    if (rest !== '') found.push({ ...placeOf(remarkColumn), kind: 'remark', text: rest });

    const errors = present.map(({ remark: whole, header, says: text = whole }): Finding => {
      const column = table.headers.indexOf(header);
      return { ...placeOf(column < 0 ? remarkColumn : column), kind: 'error', text };
    });
    const unfit = unfitInputs(template, table.headers, cells);
    cells.forEach((value, column) => {
      if (!isCellError(value)) return;
      const text = value.message ?? value.error;
      if (present.some(({ follows }) => follows === text)) return;
      const cause = unfit.find((input) => isNamed(input, text));
      errors.push({ ...placeOf(cause?.column ?? column), kind: 'error', text });
    });
    found.push(...causesAmong(errors));
  });
  return [...found, ...(template.grows ? await findStrays(port, table.area) : [])];
}

interface UnfitInput {
  readonly column: number;
  readonly quantity: string | undefined;
  readonly given: string;
}

function unfitInputs(
  { columns }: TableTemplate,
  headers: readonly string[],
  cells: readonly ReadValue[],
): readonly UnfitInput[] {
  const isInput = ({ kind }: TableColumn): boolean => kind === 'input';
  return columns.filter(isInput).flatMap((input): UnfitInput[] => {
    const column = headers.indexOf(input.header);
    const value = cells[column] ?? null;
    return isUnfit(input, value)
      ? [{ column, quantity: input.quantity, given: withoutDoubt(textOf(value)) }]
      : [];
  });
}

/** Whether an error is about that input: a refusal names the quantity, or quotes a text. */
function isNamed({ quantity, given }: UnfitInput, error: string): boolean {
  return error.includes(`"${given}"`) || (quantity !== undefined && error.includes(quantity));
}

/** Rows under the table with something typed in its columns, each at the first such cell. */
async function findStrays(port: WorkbookPort, table: Area): Promise<readonly Finding[]> {
  const { used } = (await port.sheets()).find(({ name }) => name === table.sheet) ?? {};
  const first = table.row + table.rows;
  const rows = (used?.rows ?? 0) - first;
  if (rows <= 0) return [];
  const { values, formulas } = await port.read({ ...table, row: first, rows });
  return values.flatMap((cells, index): Finding[] => {
    const typed = cells.findIndex((value, column) => value !== null && formulas[index]?.[column] == null);
    if (typed < 0) return [];
    const area = { ...table, row: first + index, column: table.column + typed, rows: 1, columns: 1 };
    return [{ kind: 'stray', row: String(cells[0] ?? ''), header: '', text: String(cells[typed]), area }];
  });
}

function without(text: string, sentence: string): string {
  return text
    .split(sentence)
    .map((part) => part.trim())
    .filter((part) => part !== '')
    .join(' ');
}

/**
 * The errors of one row or form without those that only follow from another. An error that passes on the error of a
 * cell it depends on has no message of its own; of such errors alone the first stands for all.
 */
export function causesAmong(errors: readonly Finding[]): readonly Finding[] {
  const explained = errors.filter((error) => !isBareError(error.text));
  if (explained.length === 0) return errors.slice(0, 1);
  return explained.filter(({ text }, index) => explained.findIndex((other) => other.text === text) === index);
}

/** Whether the text of a finding is the code of an error, because nothing is known about it. */
export function isBareError(text: string): boolean {
  return text.startsWith('#');
}
