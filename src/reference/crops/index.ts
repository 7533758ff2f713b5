/** The crop types and their figures, each with the grounds it stands on. An absent figure has no source: ask. */
import data from './data.json';

/** What is known of a crop, in the order of the Crops sheet. Figures are in the US unit. */
export const traits = {
  'row spacing': { kind: 'length', unit: 'ft' },
  'plant spacing': { kind: 'spacing', unit: 'in' },
  'hill spacing': { kind: 'length', unit: 'ft' },
  'hill row spacing': { kind: 'length', unit: 'ft' },
  'seeds per hill': { kind: 'count', unit: 'seeds' },
  'plants per hill': { kind: 'count', unit: 'plants' },
  'sowing depth': { kind: 'spacing', unit: 'in' },
  'seeds per weight': { kind: 'seedCount', unit: 'seedsPerOz' },
  'germination standard': { kind: 'share', unit: 'share' },
  'days to maturity': { kind: 'days', unit: 'days' },
  'days counted from': { kind: 'text', unit: 'none' },
  'harvest days': { kind: 'days', unit: 'days' },
  'picking interval': { kind: 'days', unit: 'days' },
  'fall days': { kind: 'days', unit: 'days' },
  'frost margin': { kind: 'days', unit: 'days' },
  'flower to pick': { kind: 'days', unit: 'days' },
  'picking size': { kind: 'spacing', unit: 'in' },
  'size measured': { kind: 'text', unit: 'none' },
  'transplant weeks': { kind: 'weeks', unit: 'weeks' },
  'soil minimum': { kind: 'temperature', unit: 'F' },
  'soil optimum low': { kind: 'temperature', unit: 'F' },
  'soil optimum high': { kind: 'temperature', unit: 'F' },
  'soil maximum': { kind: 'temperature', unit: 'F' },
  'soil at planting': { kind: 'temperature', unit: 'F' },
  'storage temperature': { kind: 'temperature', unit: 'F' },
  'storage humidity': { kind: 'share', unit: 'share' },
  'storage days': { kind: 'days', unit: 'days' },
  'flower type': { kind: 'text', unit: 'none' },
  species: { kind: 'text', unit: 'none' },
  'yield per 100': { kind: 'yield', unit: 'lbPer100Ft' },
} as const;
Object.values(traits).forEach(Object.freeze);
Object.freeze(traits);

export type Trait = keyof typeof traits;
export type TextTrait = { [T in Trait]: (typeof traits)[T]['kind'] extends 'text' ? T : never }[Trait];
export type NumberTrait = Exclude<Trait, TextTrait>;

/** `grounds`: keys of reference/sources, or the words of sources.unsourcedGrounds. `note`: a key of texts.cropNotes. */
interface Grounded {
  readonly grounds: readonly string[];
  readonly note?: string;
}
export interface NumberFigure extends Grounded {
  readonly low: number;
  readonly high: number;
}
export interface TextFigure extends Grounded {
  readonly text: string;
}

export interface Crop {
  readonly name: string;
  /** Those of every language. */
  readonly synonyms: readonly string[];
  readonly spanishNames: readonly string[];
  readonly figures: Readonly<
    Partial<Record<NumberTrait, NumberFigure>> & Partial<Record<TextTrait, TextFigure>>
  >;
}

const all = data.map((crop) => ({ ...crop, synonyms: [...crop.synonyms, ...crop.spanishNames] }));

for (const crop of all) {
  for (const figure of Object.values(crop.figures)) {
    Object.freeze(figure.grounds);
    Object.freeze(figure);
  }
  Object.freeze(crop.synonyms);
  Object.freeze(crop.spanishNames);
  Object.freeze(crop.figures);
  Object.freeze(crop);
}

export const crops = Object.freeze(all) as readonly Crop[];
export const cropNames: readonly string[] = Object.freeze(crops.map((crop) => crop.name));

export const flowerTypes = [
  'monoecious',
  'gynoecious',
  'parthenocarpic',
  'andromonoecious',
  'triploid',
] as const;
export type FlowerType = (typeof flowerTypes)[number];
