import { traits, type Trait } from '../../reference/crops';
import { refuse } from '../errors';
import { nearestNames } from './nearestNames';
import { plainName } from './plainName';

const names = Object.keys(traits) as Trait[];
const byName: ReadonlyMap<string, Trait> = new Map(names.map((name) => [plainName(name), name]));

/**
 * The trait that a name stands for.
 *
 * @param name a trait of reference/crops, capitals and spaces as they come
 * @returns the trait
 * @throws unknownName with the nearest names
 * Source: project convention: the traits are ours.
 * @example findTrait('Row Spacing') // 'row spacing'
 */
export function findTrait(name: string): Trait {
  return (
    byName.get(plainName(name)) ??
    refuse({ code: 'unknownName', kind: 'figure', given: name.trim(), nearest: nearestNames(name, names) })
  );
}
