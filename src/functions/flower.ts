import { findCrop } from '../calc/crops/findCrop';
import { femaleShare } from '../calc/flowers/femaleShare';
import { isolationVerdict } from '../calc/flowers/isolationVerdict';
import { malesPerFemale } from '../calc/flowers/malesPerFemale';
import { pollenizerLayouts, pollenizersNeeded } from '../calc/flowers/pollenizersNeeded';
import { ratioAsShare } from '../calc/flowers/ratioAsShare';
import { flowerTypes } from '../reference/crops';
import { catalogue } from '../texts/catalogue';
import { define } from './define';
import { number, optionalChoice, optionalNumber, optionalYesOrNo, text, texts } from './parameters';
import { toCell } from './toCell';

export const females = define({
  id: 'FLOWER.FEMALESHARE',
  parameters: [number('pollenizer_share'), number('monoecious_female'), optionalNumber('gynoecious_female')],
  result: 'plain',
  calculate: ([pollenizerShare, monoecious, gynoecious], record) =>
    femaleShare(pollenizerShare, monoecious, gynoecious, record),
});

/**
 * Share of flowers that are female among gynoecious plants and their pollenizers, if all flower equally.
 * @customfunction FLOWER.FEMALESHARE
 * @param pollenizer_share Share of plants that are pollenizers, 0 to 1
 * @param monoecious_female Share of a monoecious plant's flowers that are female, 0 to 1; about 0.5 by custom
 * @param [gynoecious_female] The same of a gynoecious plant, 0 to 1 (default 1)
 * @returns A share
 */
export function flowerFemaleShare(
  pollenizer_share: any,
  monoecious_female: any,
  gynoecious_female?: any,
): any {
  return toCell(females, [pollenizer_share, monoecious_female, gynoecious_female]);
}

export const males = define({
  id: 'FLOWER.MALESPERFEMALE',
  parameters: [number('female_share')],
  result: 'plain',
  grounds: ['arithmetic'],
  calculate: ([femaleShare], record) => malesPerFemale(femaleShare, record),
});

/**
 * Male flowers for each female one, out of the share of flowers that are female.
 * @customfunction FLOWER.MALESPERFEMALE
 * @param female_share Share of flowers that are female, above 0 to 1
 * @returns A ratio
 */
export function flowerMalesPerFemale(female_share: any): any {
  return toCell(males, [female_share]);
}

export const share = define({
  id: 'FLOWER.SHARE',
  parameters: [number('pollenizers'), number('others')],
  result: 'plain',
  calculate: ([pollenizers, others], record) => ratioAsShare(pollenizers, others, record),
});

/**
 * A ratio of pollenizers to other plants as a share of all plants: 1 to 3 is 25%, not 33%.
 * @customfunction FLOWER.SHARE
 * @param pollenizers Pollenizers in the ratio, 0 or more
 * @param others Other plants in the ratio, 0 or more
 * @returns A share
 */
export function flowerShare(pollenizers: any, others: any): any {
  return toCell(share, [pollenizers, others]);
}

export const pollenizers = define({
  id: 'FLOWER.POLLENIZERS',
  parameters: [
    number('plants'),
    number('share'),
    optionalNumber('losses'),
    optionalChoice('layout', pollenizerLayouts),
  ],
  result: 'plain',
  calculate: ([plants, wanted, losses, layout], record) =>
    pollenizersNeeded(plants, wanted, losses, layout, record),
});

/**
 * Pollenizers to set, so that their share holds after losses.
 * @customfunction FLOWER.POLLENIZERS
 * @param plants All plants, or the seedless plants alone when layout is "between"
 * @param share Share of all standing plants that are to be pollenizers, 0 to 1
 * @param [losses] Share of pollenizers that will be lost, 0 to below 1 (default 0)
 * @param [layout] "dedicated" places among the plants (default), or "between" them
 * @returns Whole plants
 */
export function flowerPollenizers(plants: any, share: any, losses?: any, layout?: any): any {
  return toCell(pollenizers, [plants, share, losses, layout]);
}

export const isolate = define({
  id: 'FLOWER.ISOLATE',
  parameters: [
    text('crop'),
    // Always passed, as it stands before the ranges; blank means the crop's own.
    { ...optionalChoice('flower_type', flowerTypes), optional: false },
    texts('all_crops'),
    texts('all_flower_types'),
    optionalYesOrNo('screened'),
  ],
  result: 'plain',
  calculate: ([crop, flowerType, allCrops, allTypes, screened], record) =>
    catalogue.verdicts[isolationVerdict(findCrop(crop), flowerType, allCrops, allTypes, screened, record)],
});

/**
 * Whether a planting must be kept from pollen or lacks a pollenizer: "clear", or what to do.
 * @customfunction FLOWER.ISOLATE
 * @param crop Crop or trade name of the planting
 * @param flower_type Its flower type; blank means the crop's own
 * @param all_crops Range of all crops grown together, this one too
 * @param all_flower_types Range of their flower types, of equal length; blanks mean the crop's own
 * @param [screened] TRUE if screened against bees (default FALSE)
 * @returns "clear" or a sentence
 */
export function flowerIsolate(
  crop: any,
  flower_type: any,
  all_crops: any[][],
  all_flower_types: any[][],
  screened?: any,
): any {
  return toCell(isolate, [crop, flower_type, all_crops, all_flower_types, screened]);
}
