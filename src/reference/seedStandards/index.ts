/**
 * The federal minimum germination of vegetable seed, by the kinds of the regulation, and the kind of each crop.
 * No kind covers gourd: squash is not lent to it.
 */
import data from './data.json';

export type SeedKind = keyof typeof data.kinds;

/** Share of seeds, hard seed included. */
export const minimumGermination = Object.freeze(data.kinds) as Readonly<Record<SeedKind, number>>;

/** Crop of reference/crops → kind; a crop that is missing has none. */
export const seedKinds = Object.freeze(data.crops) as Readonly<Partial<Record<string, SeedKind>>>;

export const seedStandardSource = 'cfr-201-31';
