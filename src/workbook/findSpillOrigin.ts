import { isCellError, type Area, type WorkbookPort } from './port';
import { unfoldFormula, type UnfoldOptions } from './unfoldFormula';

/** How far above and left of a cell is looked: further than any list of ours reaches, and quick to read. */
const reach = { rows: 1000, columns: 40 };

/**
 * The cell whose formula fills this one with a part of its list. Programs tell it in different ways, or not at all, so
 * it is worked out: of the formulas above and to the left with no other between, the one whose list comes this far.
 *
 * @returns null where none of ours is known to. @throws HostError
 */
export async function findSpillOrigin(
  workbook: WorkbookPort,
  at: Area,
  options: UnfoldOptions,
): Promise<Area | null> {
  const top = Math.max(0, at.row - reach.rows);
  const left = Math.max(0, at.column - reach.columns);
  const { values, formulas } = await workbook.read({
    ...at,
    row: top,
    column: left,
    rows: at.row - top + 1,
    columns: at.column - left + 1,
  });
  const value = values.at(-1)?.at(-1) ?? null;
  if (value === null || value === '' || formulas.at(-1)?.at(-1) !== null) return null;
  for (const [row, column] of nearestFormulas(formulas)) {
    if (formulas[row]?.[column]?.toUpperCase().includes(options.namespace) !== true) continue;
    const origin = { ...at, row: top + row, column: left + column, rows: 1, columns: 1 };
    const unfolded = await unfoldFormula(workbook, origin, options);
    if (typeof unfolded !== 'object' || unfolded === null || isCellError(unfolded.shown)) continue;
    const { rows, columns } = unfolded.size;
    if (origin.row + rows > at.row && origin.column + columns > at.column) return origin;
  }
  return null;
}

/** Those between which and the last cell stands no other formula. */
function nearestFormulas(
  formulas: readonly (readonly (string | null)[])[],
): (readonly [row: number, column: number])[] {
  const found: (readonly [number, number])[] = [];
  let lowest = -1;
  for (let column = (formulas[0]?.length ?? 0) - 1; column >= 0; column--) {
    const row = formulas.map((cells) => cells[column] !== null).lastIndexOf(true);
    if (row > lowest) found.push([(lowest = row), column]);
  }
  return found;
}
