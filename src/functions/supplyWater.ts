import { dripRunTime } from '../calc/supply/dripRunTime';
import { waterForDepth } from '../calc/supply/waterForDepth';
import { waterNeed } from '../calc/supply/waterNeed';
import { define } from './define';
import { number, optionalNumber, units } from './parameters';
import { toCell } from './toCell';

export const water = define({
  id: 'SUPPLY.WATER',
  parameters: [number('area'), number('depth'), units],
  result: 'plain',
  grounds: ['units'],
  calculate: ([area, depth, system], record) => waterForDepth(area, depth, system, record),
});

/**
 * Water that brings a depth onto an area.
 * @customfunction SUPPLY.WATER
 * @param area Area watered, sq ft (sq m); an acre is 43,560 sq ft
 * @param depth Depth of water, in (mm)
 * @param [units] "us" (default) or "metric"
 * @returns Water, US gallons (litres)
 */
export function supplyWater(area: any, depth: any, units?: any): any {
  return toCell(water, [area, depth, units]);
}

export const need = define({
  id: 'SUPPLY.WATERNEED',
  parameters: [
    number('reference_et'),
    number('crop_coefficient'),
    optionalNumber('days'),
    optionalNumber('rain'),
  ],
  result: 'plain',
  calculate: ([referenceEt, cropCoefficient, days, rain], record) =>
    waterNeed(referenceEt, cropCoefficient, days, rain, record),
});

/**
 * Depth of water that a crop uses beyond the rain.
 * @customfunction SUPPLY.WATERNEED
 * @param reference_et Reference evapotranspiration of a day, ET0, from a weather station; in or mm
 * @param crop_coefficient Kc of the crop at its stage, about 0.5 at first, 1 in mid-season; at most 2
 * @param [days] Days, above 0, default 1
 * @param [rain] Rain of those days, in the same depth, default 0; under plastic mulch leave it out
 * @returns Depth of water, as reference_et
 */
export function supplyWaterNeed(reference_et: any, crop_coefficient: any, days?: any, rain?: any): any {
  return toCell(need, [reference_et, crop_coefficient, days, rain]);
}

export const runTime = define({
  id: 'SUPPLY.DRIPRUNTIME',
  parameters: [number('depth'), number('wetted_width'), number('flow'), optionalNumber('lines'), units],
  result: 'plain',
  calculate: ([depth, wettedWidth, flow, lines, system], record) =>
    dripRunTime(depth, wettedWidth, flow, lines, system, record),
});

/**
 * Hours that drip tape must run to water a bed; split a run of over 6 hours.
 * @customfunction SUPPLY.DRIPRUNTIME
 * @param depth Depth of water on the wetted width, in (mm)
 * @param wetted_width Width of the bed that is wetted, in (cm)
 * @param flow Flow of one line, gallons an hour per 100 ft (litres an hour per m), from its maker
 * @param [lines] Lines of tape on the bed, whole, default 1
 * @param [units] "us" (default) or "metric"
 * @returns Hours
 */
export function supplyDripRunTime(depth: any, wetted_width: any, flow: any, lines?: any, units?: any): any {
  return toCell(runTime, [depth, wetted_width, flow, lines, units]);
}
