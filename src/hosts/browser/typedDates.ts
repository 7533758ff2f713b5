/** Dates that people type and paste into the grid, whose engine reads them as the US writes them. */
import { CellValueType, isTextFormat, type IAccessor } from '@univerjs/core';
import { AFTER_CELL_EDIT, INumfmtService, SheetInterceptorService } from '@univerjs/sheets';
import { dayOfText, isoOfDay, type DateWords } from '../../workbook/serialDate';

/** Before what makes a date of a text (0). */
const priority = 50;

/**
 * What is typed reaches the engine as yyyy-mm-dd, which has one meaning. A cell of texts keeps it as it is. Where
 * people write the day first, what is a date only with the month first stays text in any cell.
 */
export function readTypedDates(accessor: IAccessor, dates: DateWords): void {
  const formats = accessor.get(INumfmtService);
  accessor.get(SheetInterceptorService).writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority,
    handler(cell, { unitId, subUnitId, row, col }, next) {
      if (typeof cell?.v !== 'string' || cell.f != null) return next(cell);
      // Behind an apostrophe.
      if (cell.t === CellValueType.FORCE_STRING) return next(cell);
      if (isTextFormat(formats.getValue(unitId, subUnitId, row, col)?.pattern)) return next(cell);
      const v = inOneMeaning(cell.v, dates);
      return next(isMonthFirst(v, dates) ? { ...cell, t: CellValueType.FORCE_STRING } : { ...cell, v });
    },
  });
}

const timeBehind = /^(.*?)(,?\s+\d{1,2}:\d{2}(?::\d{2})?(?:\s*[ap]m)?)?$/is;

/** The text, and where it is a date, or a date and a time, the date as yyyy-mm-dd. */
export function inOneMeaning(text: string, dates: DateWords): string {
  const [, date = '', time = ''] = timeBehind.exec(text.trim()) ?? [];
  const day = dayOfText(date, dates) ?? dayOfText(withYear(date), dates);
  return day === null ? text : isoOfDay(day) + time.replace(',', '');
}

/** Whether only the engine would read it as a date, and silently: 6/25/2026 where people write 25/6/2026. */
function isMonthFirst(text: string, { isDayFirst }: DateWords): boolean {
  const [, date = ''] = timeBehind.exec(text.trim()) ?? [];
  return isDayFirst && inFigures.test(date);
}

/** Two figures and perhaps the year; 6.25 is a number. */
const inFigures = /^(?!\d+\.\d+$)\d{1,2}[\s/.-]+\d{1,2}(?:[\s/.-]+\d{2,4})?$/;

/** A day and a month, in figures or by name, and perhaps two figures of the year; 5.6 is a number. */
const shortened =
  /^(?!\d+\.\d+$)(\d{1,2}(?:[/.-]\d{1,2}|[\s/.-]+(?:de\s+)?\p{L}+\.?))(?:[\s/.-]+(?:del?\s+)?(\d{2}))?$/u;

/** The same with the month first: its figures are a day, and where the month has no such day the engine's. */
const dayBehind = /^\p{L}+\.?[\s/.-]+\d{1,2}$/u;

/** Of 30 to 99 the years are of the last century, as in spreadsheets. */
const firstOfLastCentury = 30;

function withYear(date: string): string {
  if (dayBehind.test(date)) return `${date}/${new Date().getFullYear()}`;
  const [, dayAndMonth, year] = shortened.exec(date) ?? [];
  if (dayAndMonth === undefined) return date;
  if (year === undefined) return `${dayAndMonth}/${new Date().getFullYear()}`;
  return `${dayAndMonth}/${Number(year) < firstOfLastCentury ? 20 : 19}${year}`;
}
