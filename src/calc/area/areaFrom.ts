import { refuse } from '../errors';
import { checkPositive } from '../limits/limits';
import { areaUnits, squareMetresPerSquareFoot, type UnitSystem } from '../units/units';
import type { Recorder } from '../working';
import { areaUnitNamed } from './areaUnitNamed';

/** One of the unit, in the unit of the other system. */
const otherSystem = { sqFt: squareMetresPerSquareFoot, sqM: 1 / squareMetresPerSquareFoot } as const;

/**
 * An area in the unit that the other functions take.
 *
 * area = value x square feet (or square metres) in one of the unit; 1 sq ft = 0.09290304 sq m
 *
 * @param value [`unit`], above 0
 * @param unit as areaUnitNamed reads it
 * @returns area [sq ft or sq m]
 * @throws outOfRange, notAChoice
 * Source: NIST Handbook 44, appendix C; all factors are exact, by the international foot.
 * @example areaFrom(1, 'acre', unitSystems.us) // 43560
 */
export function areaFrom(value: number, unit: string, units: UnitSystem, record?: Recorder): number {
  checkPositive('value', value, 'none');
  const name =
    areaUnitNamed(unit) ??
    refuse({ code: 'notAChoice', name: 'unit', given: unit, choices: Object.keys(areaUnits) });
  const { counts, of } = areaUnits[name];
  const areaOfUnit = counts * (of === units.area ? 1 : otherSystem[of]);
  const area = value * areaOfUnit;
  record?.({ step: 'areaFrom', inputs: { value, unit: name, areaOfUnit }, result: area, unit: units.area });
  return area;
}
