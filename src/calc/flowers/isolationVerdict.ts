import type { Crop, FlowerType } from '../../reference/crops';
import { cropNamed } from '../crops/cropNamed';
import { refuse } from '../errors';
import { orAssume, type Recorder } from '../working';
import { planting, type Planting } from './planting';

export type IsolationVerdict = 'clear' | 'pollen on the sheet' | 'pollen next door' | 'no pollenizer';

const isCucumber = ({ crop }: Planting): boolean => crop.figures.species?.text === 'Cucumis sativus';
const isWatermelon = ({ crop }: Planting): boolean => crop.figures.species?.text === 'Citrullus lanatus';
const givesCucumberPollen = (one: Planting): boolean =>
  isCucumber(one) && one.flowerType !== 'parthenocarpic';
const isSeededWatermelon = (one: Planting): boolean => isWatermelon(one) && one.flowerType !== 'triploid';

/**
 * Whether a planting wants pollen kept away, or pollen that is not there. The lists are gone through once, however many
 * plantings ask with them; they are not to be changed in place.
 *
 * parthenocarpic cucumber, not screened: pollen on the sheet if another cucumber bears pollen, else next door;
 * triploid watermelon: no pollenizer unless a seeded watermelon is among the crops; all else clear
 *
 * @param crop the planting's crop
 * @param flowerType its flower type, the crop's own when undefined
 * @param allCrops names of all crops grown together, its own among them; null where none is named. A name that is
 *   not known counts for nothing: its own line says so
 * @param allFlowerTypes their flower types in the same order; null for the crop's own
 * @param screened whether bees are kept out of a parthenocarpic cucumber, no when undefined. It gives a triploid
 *   watermelon no pollen, so it does not clear that
 * @returns the verdict
 * @throws unequalLists
 * Source: University of Florida CV268: pollinated, greenhouse cucumbers are seedy, distorted and bitter, keep bees
 * out; University of Delaware Weekly Crop Update: seedless watermelon needs pollenizers. No distance is sourced.
 * @example isolationVerdict(findCrop('English cucumber'), undefined, ['cucumber'], [null], false)
 * // 'pollen on the sheet'
 */
export function isolationVerdict(
  crop: Crop,
  flowerType: FlowerType | undefined,
  allCrops: readonly (string | null)[],
  allFlowerTypes: readonly (string | null)[],
  screened: boolean | undefined,
  record?: Recorder,
): IsolationVerdict {
  if (allCrops.length !== allFlowerTypes.length) {
    refuse({
      code: 'unequalLists',
      name: 'all_crops',
      count: allCrops.length,
      otherName: 'all_flower_types',
      otherCount: allFlowerTypes.length,
    });
  }
  const own = planting(crop, flowerType);
  const isShut = orAssume(screened, false, 'screened', 'none', 'judgement', record);
  const counted = (step: keyof Counts, source: string): number => {
    const count = countPlantings(allCrops, allFlowerTypes)[step];
    record?.({ step, inputs: {}, result: count, unit: 'none' });
    record?.({ source });
    return count;
  };
  let verdict: IsolationVerdict = 'clear';
  if (isCucumber(own) && own.flowerType === 'parthenocarpic' && !isShut) {
    const count = counted('cucumbersWithPollen', 'uf-cv268');
    verdict = count > 0 ? 'pollen on the sheet' : 'pollen next door';
    record?.({ remark: 'neighborsUnknown' });
  } else if (isWatermelon(own) && own.flowerType === 'triploid') {
    const count = counted('seededWatermelons', 'ud-pollenizers');
    verdict = count > 0 ? 'clear' : 'no pollenizer';
  }
  record?.({
    step: 'isolationVerdict',
    inputs: { crop: crop.name, flower_type: own.flowerType, screened: isShut },
    result: verdict,
    unit: 'none',
  });
  return verdict;
}

type Names = readonly (string | null)[];

interface Counts {
  readonly cucumbersWithPollen: number;
  readonly seededWatermelons: number;
}

/** Every line of a table asks with the same two lists: they are gone through once. Nobody changes a list in place. */
const countsByLists = new WeakMap<Names, WeakMap<Names, Counts>>();

function countPlantings(names: Names, types: Names): Counts {
  const byTypes = countsByLists.get(names) ?? new WeakMap<Names, Counts>();
  countsByLists.set(names, byTypes);
  const known = byTypes.get(types);
  if (known !== undefined) return known;
  const all = names.flatMap((name, i) => {
    const crop = name === null ? undefined : cropNamed(name);
    return crop === undefined ? [] : [planting(crop, types[i])];
  });
  const counts = {
    cucumbersWithPollen: all.filter(givesCucumberPollen).length,
    seededWatermelons: all.filter(isSeededWatermelon).length,
  };
  byTypes.set(types, counts);
  return counts;
}
