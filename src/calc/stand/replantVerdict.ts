import { practice } from '../../reference/practice';
import { checkDay } from '../dates/dayLimits';
import { refuse } from '../errors';
import { checkNumber, checkShare } from '../limits/limits';
import { orAssume, type Recorder } from '../working';

export type ReplantVerdict = 'keep' | 'fill gaps' | 'too late';

/** Rows sown too thick stand at more than 1; far above that, per cent were typed. */
const thickestStand = 2;

/**
 * What to do about a stand.
 *
 * keep: stand >= least stand; else fill gaps: today <= last planting; else too late
 *
 * @param stand share of the plants meant, 0 to 2
 * @param today [whole day number]
 * @param lastPlanting last day for planting that crop [whole day number], itself included
 * @param leastStand share that is worth keeping as it is, above 0, at most 1; 0.75 when undefined
 * @returns the verdict
 * @throws outOfRange, percentForShare, notADate
 * Source: judgement: vines run into small gaps. No published figure for cucurbits was found.
 * @example replantVerdict(0.6, 20605, 20641, undefined) // 'fill gaps'
 */
export function replantVerdict(
  stand: number,
  today: number,
  lastPlanting: number,
  leastStand: number | undefined,
  record?: Recorder,
): ReplantVerdict {
  if (stand > thickestStand && stand <= 100) refuse({ code: 'percentForShare', name: 'stand', value: stand });
  checkNumber('stand', stand, 'share', { atLeast: 0, atMost: thickestStand });
  checkDay('today', today);
  checkDay('last_planting', lastPlanting);
  const { value, ground } = practice.leastStand;
  const least = orAssume(leastStand, value, 'least_stand', 'share', ground, record);
  checkShare('least_stand', least, { above: 0 });
  const isInTime = today <= lastPlanting;
  const verdict = stand >= least ? 'keep' : isInTime ? 'fill gaps' : 'too late';
  record?.({
    step: 'replantVerdict',
    inputs: { stand, least_stand: least, today, last_planting: lastPlanting },
    result: verdict,
    unit: 'none',
  });
  if (verdict !== 'keep') record?.({ remark: 'whyPlantsAreMissing' });
  return verdict;
}
