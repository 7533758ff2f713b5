/** What a bushel weighs. Pumpkin, watermelon and gourd are not sold by the bushel. */
import data from './data.json';

interface SourcedWeight {
  readonly pounds: number;
  /** A key of reference/sources, or a word of unsourcedGrounds. */
  readonly ground: string;
}

/** The weight that is reckoned with, and those of other sources. */
export interface BushelWeight extends SourcedWeight {
  readonly elsewhere: readonly SourcedWeight[];
}

for (const weight of Object.values(data.weights)) {
  weight.elsewhere.forEach(Object.freeze);
  Object.freeze(weight.elsewhere);
  Object.freeze(weight);
}

export type BushelKind = keyof typeof data.weights;

export const bushelWeights = Object.freeze(data.weights) as Readonly<Record<BushelKind, BushelWeight>>;

/** Crop of reference/crops → kind; a crop that is missing has none. */
export const bushelKinds = Object.freeze(data.crops) as Readonly<Partial<Record<string, BushelKind>>>;
