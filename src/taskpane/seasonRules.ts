/** What the pane knows of single cells of the Season sheet, by their names. */
import type { FormLine } from '../workbook/template';
import { dayOfSerial, serialOfDay } from '../workbook/serialDate';
import type { CellValue } from '../workbook/port';
import { mostSeasonDays } from '../templates/season';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { sayDay } from './sayDay';

const { pane } = catalogue;

/** Asked of every grower every year; the other figures wait behind one more click. */
const asked: ReadonlySet<string> = new Set([
  'PLACE',
  'SEASON_YEAR',
  'LAST_FROST',
  'FIRST_FROST',
  'FROST_RISK',
  'UNITS',
  'ASSURANCE',
]);

export function isSeldomChanged(line: FormLine): boolean {
  return !asked.has(line.name);
}

export const unitsField = 'UNITS';

/** The field that the advice stands at. */
export const frostsField = 'FIRST_FROST';
const otherFrostsField = 'LAST_FROST';

/** What is wrong with the two frost dates together; null also where one of them is missing. */
export function checkFrosts(values: Readonly<Record<string, CellValue>>): string | null {
  const lastFrost = dayOf(values[otherFrostsField]);
  const firstFrost = dayOf(values[frostsField]);
  if (lastFrost === null || firstFrost === null) return null;
  const days = firstFrost - lastFrost;
  if (days > mostSeasonDays) return fill(pane.wrong.frostsApart, { days });
  if (days > 0) return null;
  return fill(pane.wrong.frostsReversed, {
    lastFrost: sayDay(serialOfDay(lastFrost)),
    firstFrost: sayDay(serialOfDay(firstFrost)),
  });
}

function dayOf(value: CellValue | undefined): number | null {
  return typeof value === 'number' ? dayOfSerial(value) : null;
}
