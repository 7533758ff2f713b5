/**
 * What every pane is handed, whatever the host. The calculations under the worksheet functions, not their wrappers:
 * those register themselves with Excel, from a page that this one does not wait for.
 */
import { nearestNames } from '../calc/crops/nearestNames';
import { lastSowingDate } from '../calc/dates/lastSowingDate';
import { successionDates } from '../calc/dates/successionDates';
import { CalcError } from '../calc/errors';
import { rowForDemand } from '../calc/row/rowForDemand';
import { seedsNeeded } from '../calc/seed/seedsNeeded';
import { seedWeight } from '../calc/seed/seedWeight';
import { convertTyped } from '../calc/units/convertTyped';
import { unitSystems, type Unit } from '../calc/units/units';
import { sayProblem } from '../functions/wording';
import type { Answer, PaneTools } from '../taskpane/paneTools';
import { dayOfSerial, serialOfDay } from '../workbook/serialDate';

function answer<Value>(compute: () => Value): Answer<Value> {
  try {
    return { value: compute() };
  } catch (error) {
    if (error instanceof CalcError) return { wrong: sayProblem(error.problem) };
    throw error;
  }
}

/** NaN is refused with advice. */
const day = (serial: number): number => dayOfSerial(serial) ?? NaN;

export const paneTools: PaneTools = {
  nearestNames,
  convert: (value, converts, to) => convertTyped(value, converts as Unit, to),
  rowForDemand: (...args) => answer(() => rowForDemand(...args)),
  seedsNeeded: (...args) => answer(() => seedsNeeded(...args)),
  // A count divided by a count for each unit of weight: the same in either system.
  seedWeight: (seeds, perWeight) => answer(() => seedWeight(seeds, perWeight, unitSystems.us)),
  lastSowing: (firstFrost, ...days) => answer(() => serialOfDay(lastSowingDate(day(firstFrost), ...days))),
  successionDates: (first, last, every) =>
    answer(() => successionDates(day(first), day(last), every).map(serialOfDay)),
};
