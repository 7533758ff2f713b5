import type { Crop } from '../../reference/crops';
import { speciesOfCrop } from '../crops/speciesOfCrop';
import { orAssume, type Recorder } from '../working';

export type CrossingVerdict = 'cross' | 'may cross' | 'seldom cross' | 'do not cross' | 'seedless';

export interface Crossing {
  readonly verdict: CrossingVerdict;
  /** The species that both may be of. */
  readonly shared: readonly string[];
  /** Pollen spoils this year's fruit: a parthenocarpic cucumber beside another. */
  readonly spoilsFruit: boolean;
  /** Seed is to be saved of what may be Cucurbita pepo, whose crosses can bear bitter fruit. */
  readonly mayTurnBitter: boolean;
}

const bitterSpecies = 'Cucurbita pepo';
const crossingGenus = 'Cucurbita ';

/**
 * Whether two crops cross, and what that means for the fruit and for saved seed.
 *
 * cross: the one species of each is the same; may cross: some species of theirs is; seedless: the same, but one is
 * triploid; seldom cross: different species of Cucurbita; do not cross: all else
 *
 * @param savingSeed whether seed is to be saved from them; no when undefined
 * @throws noFigure
 * Source: Iowa State Extension: vine crops cross within a species only, and this year's fruit does not show it.
 * Between some species of Cucurbita: Purdue Extension. Pollinated parthenocarpic cucumbers are seedy and bitter:
 * University of Florida CV268. Bitter fruit from crossed seed: a Washington State column.
 * @example crossing(findCrop('zucchini'), findCrop('pumpkin'), true).verdict // 'cross'
 */
export function crossing(
  cropA: Crop,
  cropB: Crop,
  savingSeed: boolean | undefined,
  record?: Recorder,
): Crossing {
  const speciesA = speciesOfCrop(cropA, record);
  const speciesB = speciesOfCrop(cropB, record);
  const saving = orAssume(savingSeed, false, 'saving_seed', 'none', 'judgement', record);

  const all = [...speciesA, ...speciesB];
  const shared = speciesA.filter((name) => speciesB.includes(name));
  const areSquash = [speciesA, speciesB].every((names) =>
    names.some((name) => name.startsWith(crossingGenus)),
  );
  const flowers = [cropA, cropB].map((crop) => crop.figures['flower type']?.text);
  let verdict: CrossingVerdict = areSquash ? 'seldom cross' : 'do not cross';
  if (shared.length > 0) {
    verdict = flowers.includes('triploid') ? 'seedless' : new Set(all).size === 1 ? 'cross' : 'may cross';
  }
  // A parthenocarpic type gives no pollen to another of its kind.
  const spoilsFruit = shared.length > 0 && flowers.filter((type) => type === 'parthenocarpic').length === 1;
  const mayTurnBitter = saving && all.includes(bitterSpecies);
  record?.({
    step: 'crossing',
    inputs: { crop_a: cropA.name, crop_b: cropB.name },
    result: verdict,
    unit: 'none',
  });
  record?.({ source: 'isu-vine-crosses' });
  if (areSquash) record?.({ source: 'purdue-crosses' });
  if (spoilsFruit) record?.({ source: 'uf-cv268' });
  if (mayTurnBitter) record?.({ source: 'wa-bitter-squash' });
  return { verdict, shared, spoilsFruit, mayTurnBitter };
}
