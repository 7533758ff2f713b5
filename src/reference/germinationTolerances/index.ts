/**
 * The widest range between replicates of 100 seeds that is tolerated before a retest, by the number of replicates
 * and the average germination: all in whole per cent. The copy that was read ends before the range of two
 * replicates at 70, and the regulation gives two replicates none at 98 and 99.
 */
import data from './data.json';

export const replicateCounts = ['4', '2'] as const;
export type ReplicateCount = (typeof replicateCounts)[number];

Object.values(data).forEach(Object.freeze);

export const germinationTolerances = Object.freeze(data) as Readonly<
  Record<ReplicateCount, Readonly<Partial<Record<number, number>>>>
>;

export const germinationToleranceSource = 'cfr-201-55';
