import { figureBounds } from '../calc/crops/cropFigure';
import { cropGrounds } from '../calc/crops/cropGrounds';
import { valueOfCrop } from '../calc/crops/valueOfCrop';
import { findCrop } from '../calc/crops/findCrop';
import { findTrait } from '../calc/crops/findTrait';
import { cropNames, traits } from '../reference/crops';
import { sayGrounds } from './citation';
import { define } from './define';
import { optionalChoice, text, units } from './parameters';
import { toCell, toCells } from './toCell';

export const value = define({
  id: 'CROP.VALUE',
  parameters: [text('crop'), text('trait'), optionalChoice('bound', figureBounds), units],
  result: 'plain',
  calculate: ([crop, trait, bound, system], record) => valueOfCrop(crop, trait, bound, system, record),
});

/**
 * A figure of the reference for a crop, such as its row spacing or its days to maturity.
 * @customfunction CROP.VALUE
 * @param crop Crop or trade name, such as "zucchini"; CROP.LIST has the names
 * @param trait What is asked, such as "row spacing"; CROP.TRAITS has the list
 * @param [bound] "low", "mid" (default) or "high" of the range
 * @param [units] "us" (default) or "metric"
 * @returns A number or a word
 */
export function cropValue(crop: any, trait: any, bound?: any, units?: any): any {
  return toCell(value, [crop, trait, bound, units]);
}

export const name = define({
  id: 'CROP.NAME',
  parameters: [text('crop')],
  result: 'plain',
  grounds: ['own list'],
  calculate: ([crop]) => findCrop(crop).name,
});

/**
 * The crop of the reference that a trade name stands for.
 * @customfunction CROP.NAME
 * @param crop Crop or trade name, such as "zucchini"; capitals and spaces as they come
 * @returns The name that CROP.LIST has, such as "summer squash"; #N/A with the nearest names when it is not known
 */
export function cropName(crop: any): any {
  return toCell(name, [crop]);
}

export const source = define({
  id: 'CROP.SOURCE',
  parameters: [text('crop'), text('trait')],
  result: 'plain',
  grounds: ['own list'],
  calculate: ([cropName, traitName]) => {
    const { grounds, note } = cropGrounds(findCrop(cropName), findTrait(traitName));
    return sayGrounds(grounds, note);
  },
});

/**
 * Where a figure of the reference comes from, or that it has no source.
 * @customfunction CROP.SOURCE
 * @param crop Crop or trade name; CROP.LIST has the names
 * @param trait What is asked, such as "row spacing"; CROP.TRAITS has the list
 * @returns The publication, or "common practice, no source" or "judgement"
 */
export function cropSource(crop: any, trait: any): any {
  return toCell(source, [crop, trait]);
}

export const list = define({
  id: 'CROP.LIST',
  parameters: [],
  result: 'plain',
  grounds: ['own list'],
  calculate: () => cropNames.map((name) => [name]),
});

/**
 * The names of all crops of the reference, one below the other.
 * @customfunction CROP.LIST
 * @returns A column of names
 */
export function cropList(): any[][] {
  // Declared as a matrix for functions.json: the metadata generator reads the return type.
  return toCells(list, []);
}

export const traitList = define({
  id: 'CROP.TRAITS',
  parameters: [],
  result: 'plain',
  grounds: ['own list'],
  calculate: () => Object.keys(traits).map((name) => [name]),
});

/**
 * The names of all that the reference has on crops, one below the other.
 * @customfunction CROP.TRAITS
 * @returns A column of names
 */
export function cropTraits(): any[][] {
  return toCells(traitList, []);
}
