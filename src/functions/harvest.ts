import { rowYield } from '../calc/harvest/rowYield';
import { define } from './define';
import { number, optionalNumber } from './parameters';
import { toCell } from './toCell';

export const yieldOfRow = define({
  id: 'HARVEST.YIELD',
  parameters: [number('row_length'), number('yield_per_100'), optionalNumber('marketable')],
  result: 'plain',
  calculate: ([rowLength, yieldPer100, marketable], record) =>
    rowYield(rowLength, yieldPer100, marketable, record),
});

/**
 * Yield of a length of row, from the yield of 100 ft (or 100 m) of row.
 * @customfunction HARVEST.YIELD
 * @param row_length Length of all rows together, ft (m)
 * @param yield_per_100 Yield of 100 ft (100 m) of row, any unit
 * @param [marketable] Share that can be sold, 0 to 1 (default 1: published yields are marketable already)
 * @returns Yield, in the unit of yield_per_100
 */
export function harvestYield(row_length: any, yield_per_100: any, marketable?: any): any {
  return toCell(yieldOfRow, [row_length, yield_per_100, marketable]);
}
