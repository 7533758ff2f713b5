import type { CalendarFile } from '../taskpane/calendarSection';

/** The library for calendar files is a part of the page that is loaded when it is first asked for. */
export const calendarWhenAsked: CalendarFile = async (workbook) =>
  (await import('../commands/calendarFile')).calendarFile(workbook, new Date());
