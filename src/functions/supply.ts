import { coverLength } from '../calc/supply/coverLength';
import { fertilizerForArea } from '../calc/supply/fertilizerForArea';
import { hillShapes, hillSoil } from '../calc/supply/hillSoil';
import { trellisPosts } from '../calc/supply/trellisPosts';
import { define } from './define';
import { number, optionalChoice, optionalNumber, units } from './parameters';
import { toCell } from './toCell';

export const soilOfHills = define({
  id: 'SUPPLY.HILLSOIL',
  parameters: [
    number('hills'),
    number('diameter'),
    number('height'),
    optionalChoice('shape', hillShapes),
    units,
  ],
  result: 'plain',
  grounds: ['geometry'],
  calculate: ([count, diameter, height, shape, system], record) =>
    hillSoil(count, diameter, height, shape, system, record),
});

/**
 * Soil to draw up into hills.
 * @customfunction SUPPLY.HILLSOIL
 * @param hills Hills, whole, 1 or more
 * @param diameter Diameter of a hill at its foot, in (cm)
 * @param height Height of a hill, in (cm), at most half the diameter
 * @param [shape] "mound" (default) or "disc"
 * @param [units] "us" (default) or "metric"
 * @returns Soil, cu ft (litres)
 */
export function supplyHillSoil(hills: any, diameter: any, height: any, shape?: any, units?: any): any {
  return toCell(soilOfHills, [hills, diameter, height, shape, units]);
}

export const fertilizer = define({
  id: 'SUPPLY.FERTILIZER',
  parameters: [number('area'), number('rate'), number('grade'), units],
  result: 'plain',
  grounds: ['arithmetic'],
  calculate: ([area, rate, grade, system], record) => fertilizerForArea(area, rate, grade, system, record),
});

/**
 * Fertilizer for a field, from the rate of one nutrient and the grade on the bag; test the soil first.
 * @customfunction SUPPLY.FERTILIZER
 * @param area Area in sq ft (sq m); an acre is 43,560 sq ft
 * @param rate Nutrient wanted: N, P2O5 or K2O, lb per acre (kg per hectare)
 * @param grade Share of that nutrient in the fertilizer, such as 5% of N in 5-10-10
 * @param [units] "us" (default) or "metric"
 * @returns Fertilizer, lb (kg)
 */
export function supplyFertilizer(area: any, rate: any, grade: any, units?: any): any {
  return toCell(fertilizer, [area, rate, grade, units]);
}

export const cover = define({
  id: 'SUPPLY.COVER',
  parameters: [number('rows'), number('row_length'), number('end_tuck'), units],
  result: 'plain',
  grounds: ['geometry'],
  calculate: ([rows, rowLength, endTuck, system], record) =>
    coverLength(rows, rowLength, endTuck, system, record),
});

/**
 * Length of row cover or mulch, with what is buried at the ends.
 * @customfunction SUPPLY.COVER
 * @param rows Rows or beds covered, whole, 1 or more
 * @param row_length Length of one row, ft (m)
 * @param end_tuck Length buried at one end, 0 or more, ft (m)
 * @param [units] "us" (default) or "metric"
 * @returns Length, ft (m)
 */
export function supplyCover(rows: any, row_length: any, end_tuck: any, units?: any): any {
  return toCell(cover, [rows, row_length, end_tuck, units]);
}

export const trellis = define({
  id: 'SUPPLY.TRELLIS',
  parameters: [number('row_length'), number('post_spacing'), optionalNumber('rows'), units],
  result: 'plain',
  grounds: ['geometry'],
  calculate: ([rowLength, postSpacing, rows, system], record) =>
    trellisPosts(rowLength, postSpacing, rows, system, record),
});

/**
 * Posts for trellised rows, one at each end.
 * @customfunction SUPPLY.TRELLIS
 * @param row_length Length of one row, ft (m)
 * @param post_spacing Widest gap between posts, ft (m)
 * @param [rows] Rows of that length, whole, default 1
 * @param [units] "us" (default) or "metric"
 * @returns Whole posts of all rows
 */
export function supplyTrellis(row_length: any, post_spacing: any, rows?: any, units?: any): any {
  return toCell(trellis, [row_length, post_spacing, rows, units]);
}
