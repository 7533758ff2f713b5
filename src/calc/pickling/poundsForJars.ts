import type { JarSize } from '../../reference/pickling';
import { checkCount } from '../limits/limits';
import { orAssume, type Recorder } from '../working';
import { poundsPerJar } from './poundsPerJar';

/**
 * Cucumbers to pick for a number of jars of pickles. It plans the picking; the jar is filled by a tested recipe.
 *
 * pounds = jars x pounds a jar; as many as: the same with the most pounds a jar
 *
 * @param jars whole, 1 or more
 * @param jar "quart" when undefined
 * @returns pounds of fresh cucumbers, the usual weight and the cautious one
 * @throws outOfRange, notWhole
 * Source: as poundsPerJar.
 * @example poundsForJars(7, 'quart') // { usual: 14, most: 21 }
 */
export function poundsForJars(
  jars: number,
  jar: JarSize | undefined,
  record?: Recorder,
): { readonly usual: number; readonly most: number } {
  const wanted = checkCount('jars', jars, 'jars', { atLeast: 1 });
  const perJar = poundsPerJar(orAssume(jar, 'quart', 'jar', 'none', 'judgement', record), record);
  const usual = wanted * perJar.usual;
  record?.({
    step: 'usualPounds',
    inputs: { jars: wanted, usualPerJar: perJar.usual },
    result: usual,
    unit: 'lb',
  });
  const most = wanted * perJar.most;
  record?.({
    step: 'mostPounds',
    inputs: { jars: wanted, mostPerJar: perJar.most },
    result: most,
    unit: 'lb',
  });
  record?.({ remark: 'cucumbersOnly' });
  record?.({ remark: 'canning' });
  return { usual, most };
}
