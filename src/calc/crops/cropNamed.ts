import { crops, type Crop } from '../../reference/crops';
import { plainName } from './plainName';

/** Names as they are written and as they are compared, so that most look-ups need no rewriting. */
const byName: ReadonlyMap<string, Crop> = new Map(
  crops.flatMap((crop) =>
    [crop.name, ...crop.synonyms].flatMap((name) => [
      [name, crop] as const,
      [plainName(name), crop] as const,
    ]),
  ),
);

/**
 * The crop that a name or trade name stands for, undefined when there is none. Constant time: it is asked for
 * every line of a table. See findCrop for the one that refuses.
 *
 * @param name a crop's name or synonym, capitals and spaces as they come
 * @returns the crop's record
 * Source: reference/crops; synonyms are the trade's.
 * @example cropNamed('Cantaloupe')?.name // 'muskmelon'
 */
export function cropNamed(name: string): Crop | undefined {
  return byName.get(name) ?? byName.get(plainName(name));
}
