import { chanceOfStand } from '../calc/seed/chanceOfStand';
import { seedsNeeded } from '../calc/seed/seedsNeeded';
import { seedsPerHill } from '../calc/seed/seedsPerHill';
import { seedWeight } from '../calc/seed/seedWeight';
import { define } from './define';
import { number, optionalNumber, units } from './parameters';
import { toCell } from './toCell';

export const needed = define({
  id: 'SEED.NEEDED',
  parameters: [
    number('plants'),
    number('germination'),
    optionalNumber('field_emergence'),
    optionalNumber('assurance'),
    optionalNumber('tested'),
  ],
  result: 'plain',
  grounds: ['independent seeds'],
  calculate: ([plants, germination, emergence, assurance, tested], record) =>
    seedsNeeded(plants, germination, emergence, assurance, tested, record),
});

export const perHill = define({
  id: 'SEED.PERHILL',
  parameters: [
    number('plants_per_hill'),
    number('germination'),
    optionalNumber('field_emergence'),
    optionalNumber('assurance'),
  ],
  result: 'plain',
  grounds: ['independent seeds'],
  calculate: ([plants, germination, emergence, assurance], record) =>
    seedsPerHill(plants, germination, emergence, assurance, record),
});

export const chance = define({
  id: 'SEED.CHANCE',
  parameters: [number('seeds'), number('plants'), number('germination'), optionalNumber('field_emergence')],
  result: 'plain',
  grounds: ['independent seeds'],
  calculate: ([seeds, plants, germination, emergence], record) =>
    chanceOfStand(seeds, plants, germination, emergence, record),
});

export const weight = define({
  id: 'SEED.WEIGHT',
  parameters: [number('seeds'), number('seeds_per_unit'), units],
  result: 'plain',
  calculate: ([seeds, perUnit, system], record) => seedWeight(seeds, perUnit, system, record),
});

/**
 * Seeds to sow for a stand of plants: an average, or with an assurance that there are enough.
 * @customfunction SEED.NEEDED
 * @param plants Plants wanted, whole, 1 or more
 * @param germination Share of seeds that germinate, above 0 to 1, such as 80%
 * @param [field_emergence] Share of germinable seeds that stand in the field, above 0 to 1, default 1
 * @param [assurance] Chance that the seed is enough, above 0, below 1; left out: an average
 * @param [tested] Seeds in the germination test, whole; allows for its chance, needs an assurance
 * @returns Whole seeds
 */
export function seedNeeded(
  plants: any,
  germination: any,
  field_emergence?: any,
  assurance?: any,
  tested?: any,
): any {
  return toCell(needed, [plants, germination, field_emergence, assurance, tested]);
}

/**
 * Seeds to drop in each hill so that enough plants come up before thinning.
 * @customfunction SEED.PERHILL
 * @param plants_per_hill Plants left to stand in a hill, whole, 1 or more
 * @param germination Share of seeds that germinate, above 0 to 1, such as 80%
 * @param [field_emergence] Share of germinable seeds that stand in the field, above 0 to 1, default 1
 * @param [assurance] Chance that a hill is full, above 0, below 1, default 0.9
 * @returns Whole seeds a hill
 */
export function seedPerHill(
  plants_per_hill: any,
  germination: any,
  field_emergence?: any,
  assurance?: any,
): any {
  return toCell(perHill, [plants_per_hill, germination, field_emergence, assurance]);
}

/**
 * Chance that the seed sown gives at least the plants wanted.
 * @customfunction SEED.CHANCE
 * @param seeds Seeds sown, whole, up to 100 million
 * @param plants Plants wanted, whole, 1 or more
 * @param germination Share of seeds that germinate, above 0 to 1, such as 80%
 * @param [field_emergence] Share of germinable seeds that stand in the field, above 0 to 1, default 1
 * @returns A share
 */
export function seedChance(seeds: any, plants: any, germination: any, field_emergence?: any): any {
  return toCell(chance, [seeds, plants, germination, field_emergence]);
}

/**
 * Weight of a number of seeds, in ounces (grams).
 * @customfunction SEED.WEIGHT
 * @param seeds Number of seeds, 0 or more
 * @param seeds_per_unit Seeds per oz (per g), from the packet
 * @param [units] "us" (default) or "metric"
 * @returns Weight in oz (g)
 */
export function seedWeightOf(seeds: any, seeds_per_unit: any, units?: any): any {
  return toCell(weight, [seeds, seeds_per_unit, units]);
}
