import { bushelForPickles, cannerLoads, picklingSource, type JarSize } from '../../reference/pickling';
import { pintsPerQuart } from '../units/units';
import type { Recorder } from '../working';

/**
 * Cucumbers that go into a jar of pickles: on average, and where they pack worst.
 *
 * usual = pounds of a canner load / its jars; most = pounds of a bushel / fewest quarts of it, half of that a pint
 *
 * @param jar "quart" or "pint"
 * @returns pounds of fresh cucumbers a jar
 * Source: USDA AIB 539, Guide 6: 14 lb for 7 quarts, 9 lb for 9 pints; a bushel of 48 lb gives 16 to 24 quarts.
 * @example poundsPerJar('quart') // { usual: 2, most: 3 }
 */
export function poundsPerJar(
  jar: JarSize,
  record?: Recorder,
): { readonly usual: number; readonly most: number } {
  const { pounds, jars } = cannerLoads[jar];
  const usual = pounds / jars;
  record?.({
    step: 'usualPerJar',
    inputs: { loadPounds: pounds, loadJars: jars },
    result: usual,
    unit: 'lb',
  });
  const { pounds: bushel, fewestQuarts } = bushelForPickles;
  const fewest = jar === 'quart' ? fewestQuarts : fewestQuarts * pintsPerQuart;
  const most = bushel / fewest;
  record?.({ step: 'mostPerJar', inputs: { bushel, fewestJars: fewest }, result: most, unit: 'lb' });
  record?.({ source: picklingSource });
  return { usual, most };
}
