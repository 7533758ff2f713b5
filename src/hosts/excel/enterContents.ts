/** What a change puts into cells that lie together, the first of them at a place of a sheet. */
import { carryFormula } from '../../workbook/carryFormula';
import { isCarried, type Area, type Carried, type CellContent } from '../../workbook/port';
import { enterContent, enterStanding, isFormula, standingOf, type RawCell } from './cellContents';
import type { Checked } from './checkChange';
import { isSameName } from './surveyWorkbook';

export type Place = Pick<Area, 'sheet' | 'row' | 'column'>;

/** Told of each cell where it is, for a cell in a table can name its row. */
export function enterContents(
  checked: Checked,
  { sheet, row, column }: Place,
  contents: readonly (readonly (CellContent | Carried)[])[],
  namespace: string,
  tableAt: (place: Place) => string | null,
): RawCell[][] {
  return contents.map((line, i) =>
    line.map((content, j) => {
      const to = { sheet, row: row + i, column: column + j };
      return isCarried(content)
        ? enterCarried(checked, to, content)
        : enterContent(content, { namespace, table: tableAt(to) });
    }),
  );
}

function enterCarried({ carried }: Checked, to: Place, { carriedFrom }: Carried): RawCell {
  const origin = carried.find(
    ({ area }) =>
      isSameName(area.sheet, to.sheet) &&
      to.column >= area.column &&
      to.column < area.column + area.columns &&
      carriedFrom >= area.row &&
      carriedFrom < area.row + area.rows,
  );
  const at = <Cell>(lines: readonly (readonly Cell[])[] | undefined, none: Cell): Cell =>
    lines?.[carriedFrom - (origin?.area.row ?? 0)]?.[to.column - (origin?.area.column ?? 0)] ?? none;
  const { values, formulas, types } = origin?.cells ?? {};
  const standing = standingOf(at<RawCell>(values, ''), at<RawCell>(formulas, ''), at(types, 'Empty'));
  return isFormula(standing) ? carryFormula(standing.formula, carriedFrom, to.row) : enterStanding(standing);
}
