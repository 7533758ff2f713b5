import { seedLife } from '../../reference/seedLife';
import { seedKinds } from '../../reference/seedStandards';
import { findCrop } from '../crops/findCrop';
import { recordGrounds } from '../crops/recordGrounds';
import { refuse } from '../errors';
import { checkCount } from '../limits/limits';
import type { Recorder } from '../working';

const years = { atLeast: 1900, atMost: 9999 };

/**
 * Years that seed of a crop should still keep in good storage. It is no promise of germination: test before use.
 *
 * left = usual life - (year - year of packing), not under 0; where sources differ, the shorter life
 *
 * @param cropName a crop's name or synonym
 * @param yearPacked whole, 1900 to 9999
 * @param year of sowing, whole, not before `yearPacked`
 * @returns years
 * @throws unknownName, noSeedLife, outOfRange, notWhole, packedLater
 * Source: reference/seedLife, which names the grounds of each. The caution: North Carolina AG-552, planting.
 * @example seedLifeLeft('cucumber', 2023, 2026) // 2
 */
export function seedLifeLeft(cropName: string, yearPacked: number, year: number, record?: Recorder): number {
  const crop = findCrop(cropName);
  const kind = seedKinds[crop.name] ?? '';
  const life = seedLife[kind] ?? refuse({ code: 'noSeedLife', crop: crop.name });
  const packed = checkCount('year_packed', yearPacked, 'none', years);
  const now = checkCount('year', year, 'none', years);
  if (packed > now) refuse({ code: 'packedLater', packed, year: now });

  const { low, high, grounds } = life;
  record?.({ step: 'seedLife', inputs: { kind, low, high }, result: low, unit: 'years' });
  recordGrounds(grounds, low, 'years', 'seedLife', record);
  const left = Math.max(0, low - (now - packed));
  record?.({
    step: 'seedLifeLeft',
    inputs: { seedLife: low, year: now, year_packed: packed },
    result: left,
    unit: 'years',
  });
  record?.({ remark: left === 0 ? 'seedOutlived' : 'testStoredSeed' });
  record?.({ source: 'nc-ag-552-planting' });
  return left;
}
