import { plainName } from '../crops/plainName';
import type { AreaUnit } from '../units/units';

const squares = new Map<string, AreaUnit>();
const lands = new Map<string, AreaUnit>();
const spellings: readonly (readonly [Map<string, AreaUnit>, AreaUnit, string])[] = [
  [squares, 'sq in', 'in inch inches'],
  [squares, 'sq ft', 'ft foot feet'],
  [squares, 'sq yd', 'yd yds yard yards'],
  [squares, 'sq mi', 'mi mile miles'],
  [squares, 'sq m', 'm metre metres meter meters'],
  [squares, 'sq km', 'km kilometre kilometres kilometer kilometers'],
  [lands, 'acre', 'ac acre acres'],
  [lands, 'are', 'are ares'],
  [lands, 'hectare', 'ha hectare hectares'],
];
for (const [names, unit, words] of spellings) for (const word of words.split(' ')) names.set(word, unit);

/** "sq ft", "square feet", "sqft"; "ft2", "ft^2", "ft²". */
const squarePattern = /^(?:square|sq) ?(\w+)$|^([a-z]+) ?\^?[2²]$/;

/**
 * The unit of area that somebody wrote.
 *
 * @param written a unit in its usual spellings: one or many, in full or short, with or without dots
 * @returns the unit, undefined when it is none of those in `areaUnits`. A bare "a" is none: are or acre?
 * Source: NIST Handbook 44, appendix C, names and symbols of units; the spellings are the trade's.
 * @example areaUnitNamed('Sq. Yards') // 'sq yd'
 */
export function areaUnitNamed(written: string): AreaUnit | undefined {
  const plain = plainName(written).replaceAll('.', '');
  const [, before, after] = squarePattern.exec(plain) ?? [];
  return lands.get(plain) ?? squares.get(before ?? after ?? '');
}
