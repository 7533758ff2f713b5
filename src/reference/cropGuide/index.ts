/** What a crop may be chosen for, and the signs that something is wrong with it, each with the grounds it stands on. */
import data from './data.json';

export const cropUses = ['pickles', 'slicing', 'smallSpace', 'underCover'] as const;
export type CropUse = (typeof cropUses)[number];

interface Grounded {
  /** Keys of reference/sources, or words of unsourcedGrounds. */
  readonly grounds: readonly string[];
}

export interface ChosenFor extends Grounded {
  readonly use: CropUse;
  /** Of reference/crops. */
  readonly crop: string;
  /** A key of texts.guide.crops.useNotes. */
  readonly note?: string;
}

export interface Trouble extends Grounded {
  /** A key of texts.guide.crops.troubles. */
  readonly sign: string;
  readonly crops: readonly string[];
}

for (const one of [...data.uses, ...data.troubles]) {
  Object.freeze(one.grounds);
  Object.freeze(one);
}
for (const { crops } of data.troubles) Object.freeze(crops);

export const chosenFor = Object.freeze(data.uses) as readonly ChosenFor[];
export const troubles: readonly Trouble[] = Object.freeze(data.troubles);
