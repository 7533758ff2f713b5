import { replicateTolerance } from '../calc/seed/replicateTolerance';
import { testedGermination } from '../calc/seed/testedGermination';
import { define } from './define';
import { number, optionalNumber } from './parameters';
import { toCell, toCells } from './toCell';

export const test = define({
  id: 'SEED.TEST',
  parameters: [number('germinated'), number('tested'), optionalNumber('confidence')],
  result: 'plain',
  calculate: ([germinated, tested, confidence], record) => {
    const { estimate, low, high } = testedGermination(germinated, tested, confidence, record);
    return [[estimate, low, high]];
  },
});

/**
 * Germination that a test shows, with the low and the high end of what the lot may have, in a row.
 * @customfunction SEED.TEST
 * @param germinated Seeds that germinated, whole, 0 to all tested
 * @param tested Seeds in the test, whole, 1 or more; 400 is usual
 * @param [confidence] Chance that the two ends hold the lot's germination, above 0, below 1, default 0.95
 * @returns Three shares in a row: estimate, low, high
 */
export function seedTest(germinated: any, tested: any, confidence?: any): any[][] {
  return toCells(test, [germinated, tested, confidence]);
}

export const tolerance = define({
  id: 'SEED.TOLERANCE',
  parameters: [number('mean'), number('replicates')],
  result: 'plain',
  calculate: ([mean, replicates], record) => replicateTolerance(mean, replicates, record),
});

/**
 * Widest range between replicates of 100 seeds before a federal germination test is done again.
 * @customfunction SEED.TOLERANCE
 * @param mean Average germination of the replicates, 70% to 99%; rounds to a whole per cent
 * @param replicates Replicates of 100 seeds, 4 or 2
 * @returns A share; #N/A outside the table of 7 CFR 201.55
 */
export function seedTolerance(mean: any, replicates: any): any {
  return toCell(tolerance, [mean, replicates]);
}
