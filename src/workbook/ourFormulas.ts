/** The formulas of a workbook that use our functions, as they are to be entered again. */
import type { CellsRead } from './port';

/** Formula cells one under another, `formulas` from `row` down. */
export interface FormulaRun {
  readonly row: number;
  readonly column: number;
  readonly formulas: readonly string[];
}

/** @param at where the cells that were read begin */
export function ourFormulas(
  { formulas }: Pick<CellsRead, 'formulas'>,
  at: { readonly row: number; readonly column: number },
  namespace: string,
): FormulaRun[] {
  const runs: { row: number; column: number; formulas: string[] }[] = [];
  for (let j = 0; j < (formulas[0]?.length ?? 0); j++) {
    let isRun = false;
    formulas.forEach((line, i) => {
      const again = enteredAgain(line[j] ?? '', namespace);
      if (again !== null && isRun) runs.at(-1)?.formulas.push(again);
      else if (again !== null) runs.push({ row: at.row + i, column: at.column + j, formulas: [again] });
      isRun = again !== null;
    });
  }
  return runs;
}

/**
 * A program that did not know our functions keeps CUCURBIT.SEED.NEEDED as _xldudf_CUCURBIT_SEED_NEEDED, sometimes with
 * the number of a file before it. Texts and names of sheets in quotes are passed over.
 * @param namespace its dot included; neither it nor a function's id has an underscore
 * @returns the formula with our names as they are; null when it uses none of our functions
 */
export function enteredAgain(formula: string, namespace: string): string | null {
  const name = namespace.slice(0, -1);
  const pattern = new RegExp(
    `"(?:[^"]|"")*"|'(?:[^']|'')*'(?=!)|(?<![\\w.])(?:(?:\\[\\d+\\]!)?_xldudf_${name}[._]|${name}\\.)([\\w.]+)(?=\\s*\\()`,
    'gi',
  );
  let isOurs = false;
  const again = formula.replace(pattern, (whole, id: string | undefined) => {
    if (id === undefined) return whole;
    isOurs = true;
    return `${namespace}${id.replaceAll('_', '.')}`;
  });
  return isOurs ? again : null;
}
