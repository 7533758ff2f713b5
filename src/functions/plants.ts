import type { HillPattern } from '../calc/plants/hillRowsInPlot';
import { plantsInBeds } from '../calc/plants/plantsInBeds';
import { plantsInHills } from '../calc/plants/plantsInHills';
import { plantsInRows } from '../calc/plants/plantsInRows';
import { plantsPerLand } from '../calc/plants/plantsPerLand';
import type { RowEdge } from '../calc/plants/rowsInPlot';
import { define } from './define';
import { number, optionalChoice, optionalNumber, units } from './parameters';
import { toCell } from './toCell';

export const density = define({
  id: 'PLANTS.DENSITY',
  parameters: [number('row_spacing'), number('plant_spacing'), units],
  result: 'plain',
  grounds: ['farm-rule-book'],
  calculate: ([rowSpacing, plantSpacing, system], record) =>
    plantsPerLand(rowSpacing, plantSpacing, system, record),
});

export const inRows = define({
  id: 'PLANTS.INROWS',
  parameters: [
    number('length'),
    number('width'),
    number('row_spacing'),
    number('plant_spacing'),
    optionalChoice<RowEdge>('edge', ['inset', 'onedge']),
    units,
  ],
  result: 'plain',
  grounds: ['geometry'],
  calculate: ([length, width, rowSpacing, plantSpacing, edge, system], record) =>
    plantsInRows(length, width, rowSpacing, plantSpacing, system, edge, record),
});

export const inHills = define({
  id: 'PLANTS.INHILLS',
  parameters: [
    number('length'),
    number('width'),
    number('hill_spacing'),
    number('plants_per_hill'),
    optionalChoice<HillPattern>('pattern', ['square', 'staggered']),
    optionalNumber('row_spacing'),
    units,
  ],
  result: 'plain',
  grounds: ['geometry'],
  calculate: ([length, width, hillSpacing, plantsPerHill, pattern, rowSpacing, system], record) =>
    plantsInHills(length, width, hillSpacing, plantsPerHill, system, pattern, rowSpacing, record),
});

export const inBeds = define({
  id: 'PLANTS.INBEDS',
  parameters: [
    number('length'),
    number('width'),
    number('bed_width'),
    number('path_width'),
    number('rows_per_bed'),
    number('plant_spacing'),
    units,
  ],
  result: 'plain',
  grounds: ['geometry'],
  calculate: ([length, width, bedWidth, pathWidth, rowsPerBed, plantSpacing, system], record) =>
    plantsInBeds(length, width, bedWidth, pathWidth, rowsPerBed, plantSpacing, system, record),
});

/**
 * Plants per acre (or hectare) at a row spacing and a spacing in the row, fractions kept.
 * @customfunction PLANTS.DENSITY
 * @param row_spacing Distance between rows, ft (m)
 * @param plant_spacing Distance between plants in the row, in (cm)
 * @param [units] "us" (default) or "metric"
 * @returns Plants per acre or hectare
 */
export function plantsDensity(row_spacing: any, plant_spacing: any, units?: any): any {
  return toCell(density, [row_spacing, plant_spacing, units]);
}

/**
 * Plants that fit in a plot in rows along its length.
 * @customfunction PLANTS.INROWS
 * @param length Length of the plot, along the rows, ft (m)
 * @param width Width of the plot, across the rows, ft (m)
 * @param row_spacing Distance between rows, ft (m)
 * @param plant_spacing Distance between plants in the row, in (cm)
 * @param [edge] "inset" (default): half a spacing inside; "onedge": first row and plant on the edge
 * @param [units] "us" (default) or "metric"
 * @returns Whole plants
 */
export function plantsInRowsOfPlot(
  length: any,
  width: any,
  row_spacing: any,
  plant_spacing: any,
  edge?: any,
  units?: any,
): any {
  return toCell(inRows, [length, width, row_spacing, plant_spacing, edge, units]);
}

/**
 * Plants that fit in a plot in hills, in straight ranks or staggered.
 * @customfunction PLANTS.INHILLS
 * @param length Length of the plot, along the rows, ft (m)
 * @param width Width of the plot, across the rows, ft (m)
 * @param hill_spacing Distance between hills in the row, ft (m)
 * @param plants_per_hill Plants left in each hill, whole, 1 or more
 * @param [pattern] "square" (default) or "staggered": every other row shifted by half a spacing
 * @param [row_spacing] Distance between rows, ft (m); left out: as the hills (staggered: 0.866 of it)
 * @param [units] "us" (default) or "metric"
 * @returns Whole plants
 */
export function plantsInHillsOfPlot(
  length: any,
  width: any,
  hill_spacing: any,
  plants_per_hill: any,
  pattern?: any,
  row_spacing?: any,
  units?: any,
): any {
  return toCell(inHills, [length, width, hill_spacing, plants_per_hill, pattern, row_spacing, units]);
}

/**
 * Plants that fit in a plot in beds along its length, with paths between the beds.
 * @customfunction PLANTS.INBEDS
 * @param length Length of the plot, along the beds, ft (m)
 * @param width Width of the plot, across the beds, ft (m)
 * @param bed_width Width of a bed, ft (m)
 * @param path_width Width of a path between two beds, ft (m), 0 or more
 * @param rows_per_bed Rows in each bed, whole, 1 or more
 * @param plant_spacing Distance between plants in the row, in (cm)
 * @param [units] "us" (default) or "metric"
 * @returns Whole plants
 */
export function plantsInBedsOfPlot(
  length: any,
  width: any,
  bed_width: any,
  path_width: any,
  rows_per_bed: any,
  plant_spacing: any,
  units?: any,
): any {
  return toCell(inBeds, [length, width, bed_width, path_width, rows_per_bed, plant_spacing, units]);
}
