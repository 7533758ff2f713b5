import { checkPositive } from '../limits/limits';
import type { UnitSystem } from '../units/units';
import type { Recorder } from '../working';

/**
 * The length of row on an area, all rows together.
 *
 * row length = area / row spacing
 *
 * @param area [sq ft or sq m], above 0
 * @param rowSpacing between rows [ft or m], above 0
 * @returns row length [ft or m]
 * @throws outOfRange
 * Source: plane geometry; an acre in 8 ft rows is 5,445 ft of row.
 * @example rowInArea(43560, 8, unitSystems.us) // 5445
 */
export function rowInArea(area: number, rowSpacing: number, units: UnitSystem, record?: Recorder): number {
  checkPositive('area', area, units.area);
  checkPositive('row_spacing', rowSpacing, units.length);
  const row = area / rowSpacing;
  record?.({
    step: 'rowInArea',
    inputs: { area, row_spacing: rowSpacing },
    result: row,
    unit: units.length,
  });
  return row;
}
