import { minimumGermination, seedKinds, seedStandardSource } from '../../reference/seedStandards';
import { refuse } from '../errors';
import type { Recorder } from '../working';
import { findCrop } from './findCrop';

/**
 * The federal labelling standard for the germination of a crop's seed. Seed below it may be sold, so marked.
 *
 * standard = minimum of the kind that the crop is of
 *
 * @param cropName a crop's name or synonym
 * @returns least germination, hard seed included [share]
 * @throws unknownName, noSeedStandard
 * Source: 7 CFR 201.31; marking below it: 7 CFR 201.29.
 * @example leastGermination('cantaloupe') // 0.75
 */
export function leastGermination(cropName: string, record?: Recorder): number {
  const crop = findCrop(cropName);
  const kind = seedKinds[crop.name] ?? refuse({ code: 'noSeedStandard', crop: crop.name });
  record?.({ step: 'seedKind', inputs: { crop: crop.name }, result: kind, unit: 'none' });
  const standard = minimumGermination[kind];
  record?.({ step: 'seedStandard', inputs: { kind }, result: standard, unit: 'share' });
  record?.({ source: seedStandardSource });
  record?.({ remark: 'belowStandardMayBeSold' });
  record?.({ source: 'cfr-201-29' });
  return standard;
}
