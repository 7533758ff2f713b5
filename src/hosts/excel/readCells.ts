/// <reference types="office-js" />

/** Cells of any number of areas, in as few requests as Excel's limit on the size of an answer allows. */
import type { Area } from '../../workbook/port';
import { askExcel } from './askExcel';
import type { RawCell, RawCells } from './cellContents';

/**
 * Cells in one answer. Excel on the web gives no more than 5 MB at once; a row of a table with 36 columns, most of them
 * formulas, takes 13 kB.
 */
export const cellsPerAnswer = 6000;

interface Band extends Area {
  readonly of: number;
}

/** In the order of the areas. @throws HostError */
export async function readCells(excel: typeof Excel, areas: readonly Area[]): Promise<RawCells[]> {
  const read = areas.map(() => ({
    values: [] as RawCell[][],
    formulas: [] as RawCell[][],
    types: [] as string[][],
  }));
  for (const bands of groupBands(areas.flatMap(bandsOf))) {
    const ranges = await askExcel(excel, 'read', (context) => {
      const loaded = bands.map((band) => rangeOf(context, band).load('values,formulas,valueTypes'));
      return () => loaded.map(({ values, formulas, valueTypes }) => ({ values, formulas, valueTypes }));
    });
    ranges.forEach(({ values, formulas, valueTypes }, i) => {
      const to = read[bands[i]?.of ?? 0];
      to?.values.push(...(values as RawCell[][]));
      to?.formulas.push(...(formulas as RawCell[][]));
      to?.types.push(...valueTypes);
    });
  }
  return read;
}

export function rangeOf(context: Excel.RequestContext, area: Area): Excel.Range {
  const sheet = context.workbook.worksheets.getItem(area.sheet);
  return sheet.getRangeByIndexes(area.row, area.column, area.rows, area.columns);
}

function bandsOf(area: Area, of: number): Band[] {
  const rowsPerBand = Math.max(1, Math.floor(cellsPerAnswer / area.columns));
  const bands: Band[] = [];
  for (let row = 0; row < area.rows; row += rowsPerBand) {
    bands.push({ ...area, of, row: area.row + row, rows: Math.min(rowsPerBand, area.rows - row) });
  }
  return bands;
}

function groupBands(bands: readonly Band[]): Band[][] {
  const groups: Band[][] = [];
  let cells = Infinity;
  for (const band of bands) {
    const size = band.rows * band.columns;
    if (cells + size > cellsPerAnswer) {
      groups.push([]);
      cells = 0;
    }
    groups.at(-1)?.push(band);
    cells += size;
  }
  return groups;
}
