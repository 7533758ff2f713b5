import { checkShare } from '../limits/limits';
import { orAssume, type Recorder } from '../working';

/**
 * Share of female flowers in a stand of gynoecious plants with monoecious pollenizers among them.
 *
 * female share = p m + (1 - p) g
 *
 * @param pollenizerShare p, monoecious plants among all [share], 0 to 1
 * @param monoeciousFemale m, female flowers of a monoecious plant [share], 0 to 1
 * @param gynoeciousFemale g, female flowers of a gynoecious plant [share], 0 to 1, 1 when undefined
 * @returns female flowers among all flowers [share]
 * @throws outOfRange, percentForShare
 * Source: arithmetic of a mixture in which every plant bears as many flowers. Blends carry 10 to 15 % monoecious
 * seed: North Carolina AG-552, terminology. m is asked for: about half is common practice, no source; Robinson and
 * Decker-Walters (1997, from memory) have 10 to 25 males a female.
 * @example femaleShare(0.1, 0.5, undefined) // 0.95
 */
export function femaleShare(
  pollenizerShare: number,
  monoeciousFemale: number,
  gynoeciousFemale: number | undefined,
  record?: Recorder,
): number {
  checkShare('pollenizer_share', pollenizerShare);
  checkShare('monoecious_female', monoeciousFemale);
  const gynoecious = orAssume(gynoeciousFemale, 1, 'gynoecious_female', 'share', 'judgement', record);
  checkShare('gynoecious_female', gynoecious);
  const share = pollenizerShare * monoeciousFemale + (1 - pollenizerShare) * gynoecious;
  record?.({
    step: 'femaleShare',
    inputs: {
      pollenizer_share: pollenizerShare,
      monoecious_female: monoeciousFemale,
      gynoecious_female: gynoecious,
    },
    result: share,
    unit: 'share',
  });
  record?.({ remark: 'femalesIfAllFlowerEqually' });
  record?.({ remark: 'monoeciousFemaleVaries' });
  record?.({ source: 'nc-ag-552-terms' });
  return share;
}
