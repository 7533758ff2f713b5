import { bushelKinds, bushelWeights } from '../../reference/bushels';
import { findCrop } from '../crops/findCrop';
import { recordGrounds } from '../crops/recordGrounds';
import { refuse } from '../errors';
import { checkNumber } from '../limits/limits';
import type { Recorder } from '../working';

/**
 * A harvest in bushels. Where sources differ the working has them all.
 *
 * bushels = pounds / pounds in a bushel of the crop
 *
 * @param pounds 0 or more
 * @param cropName a crop's name or synonym
 * @returns bushels, unrounded
 * @throws outOfRange, unknownName, noBushel
 * Source: reference/bushels, which names the ground of each weight; cucumber 48 lb: USDA AIB 539.
 * @example bushelsOf(480, 'cucumber') // 10
 */
export function bushelsOf(pounds: number, cropName: string, record?: Recorder): number {
  checkNumber('pounds', pounds, 'lb', { atLeast: 0 });
  const crop = findCrop(cropName).name;
  const kind = bushelKinds[crop] ?? refuse({ code: 'noBushel', crop });
  const weight = bushelWeights[kind];
  record?.({ step: 'bushelWeight', inputs: { crop }, result: weight.pounds, unit: 'lb' });
  recordGrounds([weight.ground], weight.pounds, 'lb', 'bushelWeight', record);
  for (const other of weight.elsewhere) {
    record?.({ step: 'otherBushelWeight', inputs: { crop }, result: other.pounds, unit: 'lb' });
    recordGrounds([other.ground], other.pounds, 'lb', 'bushelWeight', record);
  }
  const bushels = pounds / weight.pounds;
  record?.({
    step: 'bushelsOf',
    inputs: { pounds, bushelWeight: weight.pounds },
    result: bushels,
    unit: 'bushels',
  });
  record?.({ remark: 'bushelsDiffer' });
  record?.({ source: 'il-bushel' });
  return bushels;
}
