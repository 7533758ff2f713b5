/** After edits a plan has the figures that it has when it is opened anew: nothing is left of how it was calculated. */
import { afterEach, expect, test } from 'vitest';
import { functions } from '../../src/functions';
import { demoFilling } from '../../src/templates/demoGarden';
import { fillSheets } from '../../src/workbook/fillSheets';
import { isCellError, type ReadValue } from '../../src/workbook/port';
import { openTyped, type TypedWorkbook } from '../hosts/browser/typing';

/** Of the whole garden, on a machine under load. */
const settleMs = 120_000;

const open: TypedWorkbook[] = [];
afterEach(() => {
  for (const { workbook } of open.splice(0)) workbook.dispose();
});
function opened(snapshot?: string): TypedWorkbook {
  const typed = openTyped(undefined, [...functions.values()], snapshot);
  open.push(typed);
  return typed;
}

type Cells = Readonly<Record<string, ReadValue>>;

/** Every cell that shows something, by sheet, row and column. */
async function cellsOf({ workbook }: TypedWorkbook): Promise<Cells> {
  expect(await workbook.settle(settleMs)).toEqual([]);
  const cells: Record<string, ReadValue> = {};
  for (const { name, used } of await workbook.sheets()) {
    const { values } = used === null ? { values: [] } : await workbook.read(used);
    values.forEach((row, r) =>
      row.forEach((value, c) => {
        if (value === null || value === '') return;
        cells[`${name} ${r + 1},${c + 1}`] = isCellError(value) ? value.error : value;
      }),
    );
  }
  return cells;
}

async function placeIn({ workbook }: TypedWorkbook, table: string, line: number, header: string) {
  const read = await workbook.readTable(table);
  if (read === null) throw new Error(`no table ${table}`);
  return {
    sheet: read.area.sheet,
    row: read.area.row + 1 + line,
    column: read.area.column + read.headers.indexOf(header),
  };
}

test('the demo garden, after a length and a crop were changed and changed back', async () => {
  const typed = opened();
  await fillSheets(typed.workbook, demoFilling, '');
  const before = await cellsOf(typed);
  expect(Object.keys(before).length).toBeGreaterThan(3000);
  const edits = [
    ['Plots', 0, 'Length', 120],
    ['Plots', 2, 'Crop', 'watermelon'],
    ['Plots', 0, 'Length', 100],
    ['Plots', 2, 'Crop', 'bush cucumber'],
  ] as const;
  for (const [table, line, header, v] of edits) {
    const { sheet, row, column } = await placeIn(typed, table, line, header);
    await typed.type(sheet, row, column, [[{ v }]]);
    const now = await cellsOf(typed);
    const anew = await cellsOf(opened(typed.workbook.snapshot()));
    expect(now, `${header} ${v}`).toEqual(anew);
  }
  expect(await cellsOf(typed)).toEqual(before);
}, 900_000);
