import { checkCount } from '../limits/limits';
import { chanceOfTooFew, mostSeedsSummed } from '../stand/chanceOfTooFew';
import { standChance } from '../stand/standChance';
import type { Recorder } from '../working';

/**
 * The chance that the seed sown gives at least the plants wanted.
 *
 * P(Binomial(seeds, p) >= plants), p = germination x field emergence; summed as its mirror image, fewer than
 * seeds - plants + 1 failing at 1 - p, so that a small chance keeps its digits
 *
 * @param seeds sown, whole, 0 to 1e8
 * @param plants wanted, whole, 1 or more
 * @param germination [share], above 0 to 1
 * @param fieldEmergence share of germinable seeds that stand, above 0 to 1; 1 when left out
 * @returns probability; 0 with fewer seeds than plants
 * @throws outOfRange, notWhole, percentForShare
 * Source: as chanceOfTooFew.
 * @example chanceOfStand(5, 3, 0.8) // 0.94208
 */
export function chanceOfStand(
  seeds: number,
  plants: number,
  germination: number,
  fieldEmergence?: number,
  record?: Recorder,
): number {
  const sown = checkCount('seeds', seeds, 'seeds', { atLeast: 0, atMost: mostSeedsSummed });
  const wanted = checkCount('plants', plants, 'plants', { atLeast: 1 });
  const { chance } = standChance(germination, fieldEmergence, record);
  const enough = wanted > sown ? 0 : chanceOfTooFew(sown - wanted + 1, sown, 1 - chance);
  record?.({
    step: 'chanceOfStand',
    inputs: { seeds: sown, plants: wanted, standChance: chance },
    result: enough,
    unit: 'share',
  });
  return enough;
}
