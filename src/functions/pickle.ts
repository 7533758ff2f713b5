import { jarsFromPounds } from '../calc/pickling/jarsFromPounds';
import { poundsForJars } from '../calc/pickling/poundsForJars';
import { jarSizes } from '../reference/pickling';
import { define } from './define';
import { number, optionalChoice } from './parameters';
import { toCells } from './toCell';

export const jarsOf = define({
  id: 'PICKLE.JARS',
  parameters: [number('pounds'), optionalChoice('jar', jarSizes)],
  result: 'plain',
  calculate: ([pounds, jar], record) => {
    const { usual, fewest } = jarsFromPounds(pounds, jar, record);
    return [[usual, fewest]];
  },
});

/**
 * Jars of cucumber pickles that a weight gives, and as few as; can by a current tested recipe.
 * @customfunction PICKLE.JARS
 * @param pounds Fresh cucumbers, lb
 * @param [jar] "quart" (default) or "pint"
 * @returns Two whole numbers in a row: jars usually, and as few as
 */
export function pickleJars(pounds: any, jar?: any): any[][] {
  return toCells(jarsOf, [pounds, jar]);
}

export const poundsOf = define({
  id: 'PICKLE.POUNDS',
  parameters: [number('jars'), optionalChoice('jar', jarSizes)],
  result: 'plain',
  calculate: ([count, jar], record) => {
    const { usual, most } = poundsForJars(count, jar, record);
    return [[usual, most]];
  },
});

/**
 * Cucumbers for jars of pickles, and as much as; can by a current tested recipe.
 * @customfunction PICKLE.POUNDS
 * @param jars Jars to fill, whole, 1 or more
 * @param [jar] "quart" (default) or "pint"
 * @returns Two weights in a row, lb: usually, and as much as
 */
export function picklePounds(jars: any, jar?: any): any[][] {
  return toCells(poundsOf, [jars, jar]);
}
