import { checkNumber, checkShare } from '../limits/limits';
import { rowLengthOfYield } from '../units/units';
import { orAssume, type Recorder } from '../working';

/**
 * Marketable yield of a length of row.
 *
 * yield = row length / 100 x yield per 100 x marketable
 *
 * @param rowLength all rows together [ft or m], 0 or more
 * @param yieldPer100 yield of 100 ft or 100 m of row [any unit of weight or count], 0 or more
 * @param marketable share of that yield that can be sold, 0 to 1, 1 when undefined
 * @returns yield [the unit of yieldPer100]
 * @throws outOfRange, percentForShare
 * Source: project convention: proportion. Extension tables give marketable yields already, hence the default.
 * @example rowYield(250, 150, undefined) // 375
 */
export function rowYield(
  rowLength: number,
  yieldPer100: number,
  marketable: number | undefined,
  record?: Recorder,
): number {
  checkNumber('row_length', rowLength, 'none', { atLeast: 0 });
  checkNumber('yield_per_100', yieldPer100, 'none', { atLeast: 0 });
  const share = orAssume(marketable, 1, 'marketable', 'share', 'judgement', record);
  checkShare('marketable', share);
  const yielded = (rowLength / rowLengthOfYield) * yieldPer100 * share;
  record?.({
    step: 'rowYield',
    inputs: { row_length: rowLength, rowLengthOfYield, yield_per_100: yieldPer100, marketable: share },
    result: yielded,
    unit: 'none',
  });
  if (marketable === undefined) record?.({ remark: 'yieldIsMarketable' });
  return yielded;
}
