/** The calendar: made from Plots when asked, and whether it still says what Plots says. */
import type { Finding } from '../workbook/findFindings';
import { findSheet } from '../workbook/fillSheets';
import type { LiveWorkbook } from '../workbook/port';
import { calendarTemplate } from '../templates/calendar';
import { makeCalendar, type CalendarState } from '../templates/makeCalendar';
import type { CalendarTasks } from '../templates/drawUpCalendar';
import { sayCalendar, sayLeftOut } from '../templates/sayCalendar';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import type { Actions } from './actions';
import { element, section, setText } from './elements';
import { handOut } from './handOut';
import { nameCells } from './nameCells';
import { createNotice } from './notice';
import { failureSentence, problemSentence } from './problemSentence';
import { createTaskList } from './taskList';

const { pane } = catalogue;
const words = pane.calendar;

const settleMs = 15000;

/** null: one of its sheets is missing. */
export type CalendarRead = CalendarState | null | 'unreadable';

/** The calendar as an iCalendar file; null where no task stands in it. @throws HostError */
export type CalendarFile = (workbook: LiveWorkbook) => Promise<string | null>;

export interface CalendarSection {
  readonly element: HTMLElement;
  show(state: CalendarRead): void;
}

export interface CalendarParts {
  readonly workbook: LiveWorkbook;
  readonly actions: Actions;
  readonly calendarTasks: CalendarTasks;
  readonly calendarFile: CalendarFile;
  readonly refresh: () => Promise<void>;
}

export function createCalendarSection(parts: CalendarParts): CalendarSection {
  const { workbook, actions, calendarTasks, calendarFile, refresh } = parts;
  const { element: all } = section('calendar', words.heading);
  const state = element('p', { class: 'hint' });
  const make = element('button', { type: 'button' }, words.make);
  const without = element('p', { class: 'hint' });
  const notice = createNotice(actions);
  const save = element('button', { type: 'button' }, words.file.button);
  const help = element('p', { class: 'help' }, words.file.help);
  const tasks = createTaskList((cell) => {
    workbook.reveal(cell).then(
      () => notice.say(''),
      (cause: unknown) => notice.warn(fill(pane.findings.goneThere, { problem: problemSentence(cause) })),
    );
  });
  actions.add(make);
  actions.add(save);

  const start = (action: () => Promise<void>): void =>
    void actions.run(() => action().catch((cause: unknown) => notice.warn(failureSentence(cause))));
  const saveFile = async (): Promise<void> => {
    notice.say(words.file.working);
    const text = await calendarFile(workbook);
    if (text === null) return notice.warn(words.notMade);
    handOut(words.file.name, text, 'text/calendar');
    notice.say(words.file.saved);
  };
  const makeNow = async (): Promise<void> => {
    notice.say(words.working);
    const unsettled = await workbook.settle(settleMs);
    if (unsettled.length > 0) {
      const cells = nameCells(unsettled);
      return notice.warn(fill(words.unsettled, { cells, count: unsettled.length }));
    }
    const made = await makeCalendar(workbook, calendarTasks, pane.undo.calendar);
    if (made === null) return notice.warn(sayState(null));
    await refresh();
    notice.say(sayCalendar(made).join(' '));
  };
  make.addEventListener('click', () => start(makeNow));
  save.addEventListener('click', () => start(saveFile));
  all.append(
    element('p', { class: 'lead' }, words.lead),
    state,
    without,
    element('div', { class: 'buttons' }, make, save),
    help,
    notice.element,
    tasks.element,
  );
  return {
    element: all,
    show(read) {
      setText(state, sayState(read));
      const isMade = typeof read === 'object' && read?.isMade === true;
      setText(without, isMade ? sayLeftOut(read.leftOut).join(' ') : '');
      without.hidden = without.textContent === '';
      make.hidden = typeof read !== 'object' || read === null;
      save.hidden = !isMade;
      help.hidden = !isMade;
      setText(make, isMade ? words.again : words.make);
      tasks.show(isMade ? read.read : null);
    },
  };
}

function sayState(read: CalendarRead): string {
  if (read === 'unreadable') return words.unreadable;
  if (read === null) return fill(words.noSheets, { fill: pane.sheets.fill });
  if (!read.isMade) return words.notMade;
  return read.isCurrent ? words.current : words.outdated;
}

/** What the list of findings says of it. */
export async function findInCalendar(
  workbook: LiveWorkbook,
  state: CalendarRead | 'waiting',
): Promise<Finding[]> {
  const isOutdated = typeof state === 'object' && state?.isMade === true && !state.isCurrent;
  const sheet = isOutdated ? findSheet(await workbook.sheets(), calendarTemplate)?.name : undefined;
  if (sheet === undefined) return [];
  const area = { sheet, row: 0, column: 0, rows: 1, columns: 1 };
  return [{ kind: 'remark', row: sheet, header: '', text: words.outdated, area }];
}
