/** What the pane knows of single cells of the Season sheet, by their names. */
import type { FormLine } from '../workbook/template';
import { isoOfDay, dayOfSerial } from '../workbook/serialDate';
import type { CellValue } from '../workbook/port';
import { mostSeasonDays } from '../templates/season';
import { english } from '../texts/english';
import { fill } from '../texts/fill';

const { pane } = english;

export interface FieldLimits {
  readonly above?: number;
  readonly atLeast?: number;
  readonly atMost?: number;
  readonly below?: number;
  readonly isWhole?: boolean;
  /** A number under 1 is most likely a share typed where per cent is asked. */
  readonly isHardlyBelowOne?: boolean;
}

/** In what the field shows: per cent as 0 to 100. */
const limitsByName: Readonly<Record<string, FieldLimits>> = {
  SEASON_YEAR: { atLeast: 1901, atMost: 9998, isWhole: true },
  // No amount of seed is enough for certain.
  ASSURANCE: { above: 0, below: 100, isHardlyBelowOne: true },
  SEEDS_PER_CELL: { atLeast: 1, isWhole: true },
  // Half a per cent of losses can be meant.
  TRAY_CULLS: { atLeast: 0, atMost: 100 },
  POLLENIZER_LOSSES: { atLeast: 0, atMost: 100 },
};

export function limitsOf(line: FormLine): FieldLimits {
  const known = limitsByName[line.name];
  if (known !== undefined) return known;
  if (line.format === 'percent') return { atLeast: 0, atMost: 100, isHardlyBelowOne: true };
  return line.format === 'whole' ? { atLeast: 0, isWhole: true } : {};
}

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
    lastFrost: isoOfDay(lastFrost),
    firstFrost: isoOfDay(firstFrost),
  });
}

function dayOf(value: CellValue | undefined): number | null {
  return typeof value === 'number' ? dayOfSerial(value) : null;
}
