import { sameDateIn, yearOfDay } from '../dates/calendar';
import type { KnownHeat } from './heatWhereKnown';

export interface StartOfYear {
  readonly year: number;
  readonly start: number;
}

/**
 * The day of the year, such as that of a sowing, in every year in which the record has it between its first and last
 * day.
 *
 * @param start of any year [whole day number]; 29 February is 1 March where there is none
 */
export function startsInRecord(
  { firstDay, lastDay }: Pick<KnownHeat, 'firstDay' | 'lastDay'>,
  start: number,
): readonly StartOfYear[] {
  const starts: StartOfYear[] = [];
  for (let year = yearOfDay(firstDay); year <= yearOfDay(lastDay); year++) {
    const day = sameDateIn(year, start);
    if (day >= firstDay && day <= lastDay) starts.push({ year, start: day });
  }
  return starts;
}
