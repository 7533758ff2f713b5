/**
 * A formula that goes from one row to another with the line it belongs to: cells of the old row become cells of the
 * new one, whether they are fixed by "$" or not. Cells of other rows, of other sheets, and names stay.
 */

/** Texts, names of sheets, table columns and function names are passed over; whole rows and single cells are caught. */
const pattern =
  /"(?:[^"]|"")*"|'(?:[^']|'')*'!\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?|\w[\w.]*!\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?|\[(?:[^[\]]|\[[^[\]]*\])*\]|(?<![\w.$])(\$?)(\d+):(\$?)(\d+)(?![\w.(])|(?<![\w.])(\$?[A-Z]{1,3}\$?)(\d+)(?![\w.(])/gi;

/** @param formula en-US, with its "="; rows count from 0 */
export function carryFormula(formula: string, fromRow: number, toRow: number): string {
  const carry = (digits: string): string => (Number(digits) === fromRow + 1 ? String(toRow + 1) : digits);
  return formula.replace(
    pattern,
    (whole, fixed, first?: string, fixedToo?: string, last?: string, column?: string, row?: string) => {
      if (row !== undefined) return `${column}${carry(row)}`;
      if (first !== undefined && last !== undefined)
        return `${fixed}${carry(first)}:${fixedToo}${carry(last)}`;
      return whole;
    },
  );
}
