import { refuse } from '../errors';
import { checkCount, checkNumber, checkPositive } from '../limits/limits';
import { inMetric } from '../units/inMetric';
import type { UnitSystem } from '../units/units';
import { orAssume, type Recorder } from '../working';

/** Gallons an hour per 100 ft: the least of tape on the market is some four times that. Judgement. */
const leastFlow = 3;
/** Judgement: water of a longer run goes deeper than the roots of a bed. */
const longestRunHours = 6;
export const minutesPerHour = 60;

/**
 * Hours that drip tape must run to water a bed.
 *
 * hours = depth x wetted width x length that the flow is told for / (flow x lines)
 *
 * @param depth of water on the wetted width [in or mm], 0 or more
 * @param wettedWidth of the bed [in or cm], above 0
 * @param flow of one line [gallons an hour per 100 ft, or litres an hour per m], at least 3 gallons
 * @param lines of tape on the bed, whole, 1 or more; 1 when undefined
 * @returns hours, unrounded
 * @throws outOfRange, notWhole, flowPerMinute
 * Source: Penn State Extension, 2013: its table of hours for an inch on a bed 30 in wide.
 * @example dripRunTime(1, 30, 13.2, undefined, unitSystems.us) // 11.8
 */
export function dripRunTime(
  depth: number,
  wettedWidth: number,
  flow: number,
  lines: number | undefined,
  units: UnitSystem,
  record?: Recorder,
): number {
  checkNumber('depth', depth, units.waterDepth, { atLeast: 0 });
  checkPositive('wetted_width', wettedWidth, units.spacing);
  checkPositive('flow', flow, units.dripFlow);
  const least = units.name === 'metric' ? inMetric(leastFlow, 'gphPer100Ft').value : leastFlow;
  if (flow < least) {
    refuse({ code: 'flowPerMinute', flow, unit: units.dripFlow, perHour: flow * minutesPerHour });
  }
  const given = lines === undefined ? undefined : checkCount('lines', lines, 'none', { atLeast: 1 });
  const tapes = orAssume(given, 1, 'lines', 'none', 'judgement', record);

  const { spacingPerLength, dripFlowLength, waterPerAreaAndDepth } = units;
  const water = depth * (wettedWidth / spacingPerLength) * dripFlowLength * waterPerAreaAndDepth;
  record?.({
    step: 'waterOnBed',
    inputs: { depth, wetted_width: wettedWidth, spacingPerLength, dripFlowLength, waterPerAreaAndDepth },
    result: water,
    unit: units.waterVolume,
  });
  const hours = water / (flow * tapes);
  record?.({
    step: 'dripRunTime',
    inputs: { waterOnBed: water, flow, lines: tapes },
    result: hours,
    unit: 'hours',
  });
  if (hours > longestRunHours) record?.({ remark: 'splitTheRun' });
  record?.({ source: 'psu-drip' });
  return hours;
}
