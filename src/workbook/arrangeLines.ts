/**
 * Edits of a growing table's lines as one change. A line goes whole: what is typed over a formula, people's own
 * columns in the table and beside it. As after sorting, what refers to a line from elsewhere refers to its place.
 */
import type { CellContent, Carried, CellValue, Change } from './port';
import type { LinesRead } from './readLines';
import type { InputRow, TableTemplate } from './template';

/** A line as it is to stand after the change. */
export interface PlannedLine {
  /** Which line it was before, from 0; null for a blank one. */
  readonly from: number | null;
  /** Inputs that are put into it, by header; null empties a cell. */
  readonly put: InputRow;
}

const asItWas = (from: number): PlannedLine => ({ from, put: {} });

export function linesAsTheyAre(read: LinesRead): PlannedLine[] {
  return read.lines.map((_, index) => asItWas(index));
}

/** New lines under the last one that is in use: a table keeps a blank line, and blank lines are filled first. */
export function addLines(read: LinesRead, inputs: readonly InputRow[]): PlannedLine[] {
  const used = countUsed(read);
  const spare = read.lines.length - used;
  return [
    ...linesAsTheyAre(read).slice(0, used),
    ...inputs.map((put, i): PlannedLine => ({ from: i < spare ? used + i : null, put })),
    ...linesAsTheyAre(read).slice(used + inputs.length),
  ];
}

/** Copies of a line, each with other inputs, come right after it. */
export function copyLine(read: LinesRead, index: number, puts: readonly InputRow[]): PlannedLine[] {
  const lines = linesAsTheyAre(read);
  const used = countUsed(read);
  return [
    ...lines.slice(0, index + 1),
    ...puts.map((put): PlannedLine => ({ from: index, put })),
    ...lines.slice(index + 1, used),
    ...lines.slice(used + puts.length),
  ];
}

/** The table keeps its length: a blank line comes to its end. */
export function removeLine(read: LinesRead, index: number): PlannedLine[] {
  const lines = linesAsTheyAre(read);
  return [...lines.slice(0, index), ...lines.slice(index + 1), { from: null, put: {} }];
}

/** Two lines change places. */
export function swapLines(read: LinesRead, index: number, other: number): PlannedLine[] {
  return linesAsTheyAre(read).map((line, i) =>
    i === index ? asItWas(other) : i === other ? asItWas(index) : line,
  );
}

/** How many lines there are up to the last that somebody has typed into. */
export function countUsed({ lines }: LinesRead): number {
  let used = lines.length;
  while (lines[used - 1]?.isBlank === true) used -= 1;
  return used;
}

type Content = CellContent | Carried;

/** undefined leaves a cell as it is. */
type PlannedCells = readonly (Content | undefined)[];

/** Refuses when the sheet has changed since it was read. */
export function arrangeLines(
  read: LinesRead,
  template: TableTemplate,
  planned: readonly PlannedLine[],
  title: string,
): Change {
  const { area, stamp, lines } = read;
  const first = area.row + 1;
  const rows = planned.map((line, index) => planCells(read, template, line, index));
  const end = area.column + area.columns;
  const added = rows.slice(lines.length);
  const beside = (row: PlannedCells): PlannedCells =>
    row.map((content, column) => (column >= area.column && column < end ? undefined : content));
  return {
    title,
    expect: [{ sheet: area.sheet, stamp }],
    newSheets: [],
    cells: [
      ...blocksOf(area.sheet, first, rows.slice(0, lines.length)),
      ...blocksOf(area.sheet, first + lines.length, added.map(beside)),
    ],
    tableRows:
      added.length === 0
        ? []
        : [
            {
              table: template.name,
              rows: added.map((row) => row.slice(area.column, end).map((content) => content ?? null)),
            },
          ],
    pictures: [],
    marks: [],
  };
}

function planCells(read: LinesRead, template: TableTemplate, line: PlannedLine, index: number): PlannedCells {
  const { area, headers, cells, lines } = read;
  const isFormula = (row: number, column: number): boolean => cells.formulas[row]?.[column] != null;
  const isEmpty = (row: number, column: number): boolean =>
    (cells.values[row]?.[column] ?? null) === null && !isFormula(row, column);
  const carry = (row: number): Carried => ({ carriedFrom: area.row + 1 + row });
  return (cells.values[0] ?? []).map((_, column): Content | undefined => {
    const { header, compute = null } =
      template.columns.find((each) => each.header === headers[column - area.column]) ?? {};
    const given: CellValue | undefined = header === undefined ? undefined : line.put[header];
    if (given !== undefined) return given;
    const { from } = line;
    if (from === index) return undefined;
    const isNew = index >= lines.length;
    if (compute !== null && (from === null || isFormula(from, column))) {
      return !isNew && isFormula(index, column) ? undefined : { compute };
    }
    if (from !== null) return isEmpty(from, column) && isEmpty(index, column) ? undefined : carry(from);
    // A formula in somebody's own column goes on into a new line, and stays in one that is emptied.
    const last = lines.length - 1;
    if (header === undefined && isNew) return isFormula(last, column) ? carry(last) : undefined;
    if (header === undefined && isFormula(index, column)) return undefined;
    return isEmpty(index, column) ? undefined : null;
  });
}

interface Run {
  readonly row: number;
  readonly column: number;
  readonly contents: Content[][];
}

/** Neighbouring cells that are written, in as few rectangles as come by themselves. */
function blocksOf(sheet: string, first: number, rows: readonly PlannedCells[]): Change['cells'][number][] {
  const blocks: (Run & { readonly sheet: string })[] = [];
  const latest = new Map<number, Run>();
  rows.forEach((cells, index) => {
    for (const { column, contents } of runsOf(cells)) {
      const row = first + index;
      const above = latest.get(column);
      const isBelow = above !== undefined && above.row + above.contents.length === row;
      if (isBelow && above.contents[0]?.length === contents.length) {
        above.contents.push(contents);
        continue;
      }
      const block = { sheet, row, column, contents: [contents] };
      latest.set(column, block);
      blocks.push(block);
    }
  });
  return blocks;
}

function runsOf(cells: PlannedCells): { readonly column: number; readonly contents: Content[] }[] {
  const runs: { column: number; contents: Content[] }[] = [];
  cells.forEach((content, column) => {
    if (content === undefined) return;
    const last = runs.at(-1);
    if (last !== undefined && last.column + last.contents.length === column) last.contents.push(content);
    else runs.push({ column, contents: [content] });
  });
  return runs;
}
