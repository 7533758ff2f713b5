import type { JarSize } from '../../reference/pickling';
import { checkPositive } from '../limits/limits';
import { roundingOf } from '../whole/roundingOf';
import { floorWhole } from '../whole/wholeNumbers';
import { orAssume, type Recorder } from '../working';
import { poundsPerJar } from './poundsPerJar';

/**
 * Jars of pickles that a weight of cucumbers fills. It plans the picking; the jar is filled by a tested recipe.
 *
 * jars = pounds / pounds a jar, rounded down; as few as: the same with the most pounds a jar
 *
 * @param pounds of fresh cucumbers, above 0
 * @param jar "quart" when undefined
 * @returns whole jars, the usual count and the cautious one
 * @throws outOfRange
 * Source: as poundsPerJar.
 * @example jarsFromPounds(14, 'quart') // { usual: 7, fewest: 4 }
 */
export function jarsFromPounds(
  pounds: number,
  jar: JarSize | undefined,
  record?: Recorder,
): { readonly usual: number; readonly fewest: number } {
  checkPositive('pounds', pounds, 'lb');
  const perJar = poundsPerJar(orAssume(jar, 'quart', 'jar', 'none', 'judgement', record), record);
  const usual = floorWhole(pounds / perJar.usual);
  record?.({
    step: 'usualJars',
    inputs: { pounds, usualPerJar: perJar.usual },
    result: usual,
    unit: 'jars',
    ...roundingOf(pounds / perJar.usual, usual),
  });
  const fewest = floorWhole(pounds / perJar.most);
  record?.({
    step: 'fewestJars',
    inputs: { pounds, mostPerJar: perJar.most },
    result: fewest,
    unit: 'jars',
    ...roundingOf(pounds / perJar.most, fewest),
  });
  record?.({ remark: 'cucumbersOnly' });
  record?.({ remark: 'canning' });
  return { usual, fewest };
}
