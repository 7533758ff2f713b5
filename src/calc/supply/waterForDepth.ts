import { checkFieldArea } from '../limits/checkFieldArea';
import { checkNumber } from '../limits/limits';
import type { UnitSystem } from '../units/units';
import type { Recorder } from '../working';

/**
 * Water that stands so deep on an area.
 *
 * water = area x depth; 1 in on 1 sq ft is 144 / 231 gallon, 1 mm on 1 sq m is 1 litre
 *
 * @param area that is watered [sq ft or sq m], at least 10 sq ft or 1 sq m
 * @param depth [in or mm], 0 or more
 * @returns water [US gallons or litres], unrounded; what runs off or blows away comes on top
 * @throws outOfRange, areaInLandUnits
 * Source: definition of the units; an acre-inch is 27,154 gallons.
 * @example waterForDepth(43560, 1, unitSystems.us) // 27154.29
 */
export function waterForDepth(area: number, depth: number, units: UnitSystem, record?: Recorder): number {
  checkFieldArea(area, units);
  checkNumber('depth', depth, units.waterDepth, { atLeast: 0 });
  const { waterPerAreaAndDepth } = units;
  const water = area * depth * waterPerAreaAndDepth;
  record?.({
    step: 'waterForDepth',
    inputs: { area, depth, waterPerAreaAndDepth },
    result: water,
    unit: units.waterVolume,
  });
  record?.({ remark: 'waterLostComesOnTop' });
  return water;
}
