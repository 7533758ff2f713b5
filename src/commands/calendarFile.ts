/** The tasks of the Calendar sheet as an iCalendar file (RFC 5545): days, not hours, that take up nobody's time. */
import ical, { ICalEventTransparency } from 'ical-generator';
import { calendarTable, calendarTemplate } from '../templates/calendar';
import { taskKeys } from '../templates/taskKeys';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { isCellError, type ReadValue, type WorkbookPort } from '../workbook/port';
import { textOf } from '../workbook/readInputs';
import { dayOfSerial } from '../workbook/serialDate';

const { calendar: words } = catalogue;
const { columns: headers } = words;

const dayMs = 86_400_000;
const minuteMs = 60_000;

/**
 * A task is known by its place, year, plot and what it is, whatever the language: taken in again from a later file it
 * replaces itself, on whichever day it falls now, and none of another garden. One of somebody's own by its name.
 *
 * @param now of the clock
 * @returns null where the Calendar has no dated task @throws HostError
 */
export async function calendarFile(workbook: WorkbookPort, now: Date): Promise<string | null> {
  const table = await workbook.readTable(calendarTable.name);
  const place = await readNamed(workbook, 'PLACE');
  const season = await readNamed(workbook, 'SEASON_YEAR');
  const name = place === '' ? words.title : fill(words.file.name, { place });
  const without = await readNamed(workbook, calendarTemplate.report?.name ?? '');
  const made = ical({
    name: escaped(name),
    // Programs that show it say there what the sheet leaves out.
    ...(without !== '' && { description: escaped(without) }),
    prodId: { company: 'cucurbit-functions', product: 'calendar', language: 'EN' },
  });
  const times = new Map<string, number>();
  for (const row of table?.rows ?? []) {
    const cell = ({ header }: { readonly header: string }): ReadValue =>
      row[table?.headers.indexOf(header) ?? -1] ?? null;
    const said = (column: { readonly header: string }): string => printable(textOf(cell(column)));
    const first = dayIn(cell(headers.date));
    const [plot, crop, task] = [said(headers.plot), said(headers.crop), said(headers.task)];
    if (first === null || task === '') continue;
    const last = Math.max(first, dayIn(cell(headers.until)) ?? first);
    const year = season === '' ? new Date(first * dayMs).getUTCFullYear() : season;
    const key = [place, year, plot, taskKeys.get(task) ?? task]
      .map((part) => encodeURIComponent(part))
      .join('/');
    const time = (times.get(key) ?? 0) + 1;
    times.set(key, time);
    const isDone = said(headers.done) === '' ? [] : [`${headers.done.header}: ${said(headers.done)}`];
    made.createEvent({
      id: `${key}/${time}@cucurbit-functions`,
      // A program that looks at numbers takes the later file.
      sequence: Math.floor(now.getTime() / minuteMs),
      stamp: now,
      allDay: true,
      start: new Date(first * dayMs),
      // The day after the last.
      end: new Date((last + 1) * dayMs),
      summary: plot === '' ? task : fill(words.file.summary, { plot, task }),
      description: [crop, said(headers.remark), said(headers.myNote), ...isDone]
        .filter((line) => line !== '')
        .join('\n'),
      transparency: ICalEventTransparency.TRANSPARENT,
    });
  }
  return made.length() === 0 ? null : `${made.toString().trimEnd()}\r\n`;
}

async function readNamed(workbook: WorkbookPort, name: string): Promise<string> {
  const area = await workbook.locate(name);
  const value = area === null ? null : ((await workbook.read(area)).values[0]?.[0] ?? null);
  return isCellError(value) ? '' : printable(textOf(value));
}

/** As RFC 5545, 3.3.11, has it of texts: the library does so for those of events, not for the calendar's own. */
function escaped(text: string): string {
  return text.replaceAll(/[\\;,]/g, (mark) => `\\${mark}`).replaceAll(/\r\n|\r|\n/g, '\\n');
}

function dayIn(value: ReadValue): number | null {
  const day = typeof value === 'number' ? dayOfSerial(value) : null;
  return day === null ? null : Math.floor(day);
}

/** Without what no text of such a file may hold: control characters but the end of a line, and halves of characters. */
function printable(text: string): string {
  return text.replaceAll(/(?![\t\n\r])\p{Cc}/gu, '').replaceAll(/\p{Cs}/gu, '\uFFFD');
}
