/**
 * Calculations for the pane, without cells: serial dates in and out, a refusal as its advice. Not the wrappers of the
 * worksheet functions, because those register themselves with the program, from a page that the pane does not wait for.
 */
import { lastSowingDate } from '../calc/dates/lastSowingDate';
import { successionDates } from '../calc/dates/successionDates';
import type { Hemisphere } from '../calc/frost/coldSeason';
import { frostDatesOfRecord } from '../calc/frost/frostDatesOfRecord';
import { rowForDemand } from '../calc/row/rowForDemand';
import { seedsNeeded } from '../calc/seed/seedsNeeded';
import { seedWeight } from '../calc/seed/seedWeight';
import { unitSystems, type UnitSystemName } from '../calc/units/units';
import { dayOfSerial, serialOfDay } from '../workbook/serialDate';
import { answering } from './answering';

/** What is no date becomes NaN, which is refused with advice. */
const day = (serial: number): number => dayOfSerial(serial) ?? NaN;

interface DatedLows {
  readonly units: UnitSystemName;
  readonly days: readonly { readonly serial: number; readonly low: number | null }[];
}

export const answers = {
  frostDates: answering(({ units, days }: DatedLows, risk: number, year: number, hemisphere: Hemisphere) => {
    const dates = days.map(({ serial }) => day(serial));
    const lows = days.map(({ low }) => low);
    const found = frostDatesOfRecord(dates, lows, risk, year, unitSystems[units], hemisphere);
    return { ...found, lastFrost: serialOfDay(found.lastFrost), firstFrost: serialOfDay(found.firstFrost) };
  }),
  rowForDemand: answering((wantedPerWeek: number, yieldPer100: number, weeks: number) =>
    rowForDemand(wantedPerWeek, yieldPer100, weeks),
  ),
  seedsNeeded: answering(
    (plants: number, germination: number, fieldEmergence: number | undefined, assurance: number) =>
      seedsNeeded(plants, germination, fieldEmergence, assurance),
  ),
  // A count divided by the count of a unit of weight: the same in either system.
  seedWeight: answering((seeds: number, perWeight: number) => seedWeight(seeds, perWeight, unitSystems.us)),
  lastSowing: answering(
    (
      firstFrost: number,
      daysToMaturity: number,
      harvestDays: number,
      fallDays: number,
      frostMargin: number,
    ) => serialOfDay(lastSowingDate(day(firstFrost), daysToMaturity, harvestDays, fallDays, frostMargin)),
  ),
  successionDates: answering((first: number, last: number, everyDays: number) =>
    successionDates(day(first), day(last), everyDays).map(serialOfDay),
  ),
};
