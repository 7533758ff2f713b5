/** The tasks as they stand in the Calendar sheet, narrowed down by plot, crop and week; each a button that goes there. */
import { textOf } from '../workbook/readInputs';
import type { LinesRead } from '../workbook/readLines';
import type { Area, ReadValue } from '../workbook/port';
import { dayOfIso, dayOfSerial, isoOfDay, serialOfDay } from '../workbook/serialDate';
import { todaySerial } from '../workbook/today';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { locale } from '../texts/language';
import { element, paneId, setText } from './elements';
import { sayDay } from './sayDay';

const words = catalogue.pane.calendar.tasks;
const { columns: headers } = catalogue.calendar;

/** More would make the pane slow; a choice shows the others. */
const mostShown = 100;

export interface TaskList {
  readonly element: HTMLElement;
  /** null: none stand in the sheet. */
  show(read: LinesRead | null): void;
}

/** As it is shown; "" for what is blank. */
interface Task {
  readonly date: string;
  readonly until: string;
  readonly week: string;
  readonly plot: string;
  readonly crop: string;
  readonly task: string;
  readonly remark: string;
  readonly done: string;
  readonly cell: Area;
}

export function createTaskList(reveal: (cell: Area) => void): TaskList {
  const choices = (['plot', 'crop', 'week'] as const).map((name) => createChoice(name, () => filter()));
  const count = element('p', { role: 'status', class: 'hint' });
  const more = element('p', { class: 'help' });
  const box = element('ul', { class: 'lines tasks' });
  const all = element(
    'fieldset',
    {},
    element('legend', {}, words.heading),
    element('p', { class: 'help' }, words.help),
    element('div', { class: 'fields' }, ...choices.map((choice) => choice.element)),
    count,
    box,
    more,
  );
  const items: Item[] = [];
  let tasks: readonly Task[] = [];

  const filter = (): void => {
    const wanted = tasks.filter((task) => choices.every((choice) => choice.takes(task)));
    const shown = wanted.slice(0, mostShown);
    // Buttons stay where they are and say another task, so that focus and scroll stay too.
    const gone = items.splice(shown.length);
    const hadFocus = gone.some(({ button }) => button === document.activeElement);
    for (const item of gone) item.element.remove();
    while (items.length < shown.length) items.push(createItem(reveal));
    box.append(...items.slice(box.childElementCount).map((item) => item.element));
    shown.forEach((task, index) => items[index]?.show(task));
    box.hidden = items.length === 0;
    if (hadFocus) (items.at(-1)?.button ?? choices[0]?.select)?.focus();
    const isCut = wanted.length > mostShown;
    const said = isCut
      ? fill(words.first, { shown: mostShown, count: wanted.length })
      : fill(words.count, { shown: wanted.length, count: tasks.length });
    setText(count, tasks.length === 0 ? '' : said);
    setText(more, isCut ? words.more : '');
    more.hidden = more.textContent === '';
  };
  return {
    element: all,
    show(read) {
      tasks = read === null ? [] : tasksOf(read);
      all.hidden = tasks.length === 0;
      for (const choice of choices) choice.show(tasks);
      filter();
    },
  };
}

function tasksOf({ area, headers: there, lines }: LinesRead): readonly Task[] {
  const column = area.column + Math.max(0, there.indexOf(headers.task.header));
  return lines.flatMap(({ values, isBlank }, index) => {
    if (isBlank) return [];
    const say = ({ header }: { readonly header: string }): string => textOf(values[header] ?? null);
    const sayDate = ({ header }: { readonly header: string }): string => {
      const value = values[header] ?? null;
      return typeof value === 'number' ? sayDay(value) : textOf(value);
    };
    return {
      date: sayDate(headers.date),
      until: sayDate(headers.until),
      week: weekOf(values[headers.week.header] ?? null),
      plot: say(headers.plot),
      crop: say(headers.crop),
      task: say(headers.task),
      remark: say(headers.remark),
      done: say(headers.done),
      cell: { sheet: area.sheet, row: area.row + 1 + index, column, rows: 1, columns: 1 },
    };
  });
}

/** Its Monday, in figures that sort; a text in a date's place as it is. */
function weekOf(value: ReadValue): string {
  const day = typeof value === 'number' ? dayOfSerial(value) : null;
  return day === null ? textOf(value) : isoOfDay(Math.floor(day));
}

interface Choice {
  readonly element: HTMLElement;
  readonly select: HTMLSelectElement;
  /** What is chosen stays chosen where it is still there. */
  show(tasks: readonly Task[]): void;
  takes(task: Task): boolean;
}

function createChoice(name: 'plot' | 'crop' | 'week', onChoose: () => void): Choice {
  const id = paneId(`tasks of ${name}`);
  const select = element('select', { id });
  select.addEventListener('change', onChoose);
  let shown = '';
  return {
    element: element(
      'div',
      { class: 'field' },
      element('label', { for: id }, headers[name].header),
      element('div', { class: 'control' }, select),
    ),
    select,
    show(tasks) {
      const values = [...new Set(tasks.map((task) => task[name]))]
        .filter((value) => value !== '')
        .sort((one, other) => one.localeCompare(other, locale, { numeric: true }));
      const options = name === 'week' ? weekOptions(values) : values.map((value) => [value, value] as const);
      const now = JSON.stringify(options);
      if (now === shown) return;
      shown = now;
      const chosen = select.value;
      const all = ['', words.all] as const;
      select.replaceChildren(...[all, ...options].map(([value, text]) => element('option', { value }, text)));
      select.value = values.includes(chosen) ? chosen : '';
    },
    takes: (task) => select.value === '' || task[name] === select.value,
  };
}

/** By date, the week that it is now before them. */
function weekOptions(mondays: readonly string[]): readonly (readonly [string, string])[] {
  const today = todaySerial();
  // Serial 2 is a Monday.
  const monday = weekOf(today - ((today - 2) % 7));
  const isNow = mondays.includes(monday);
  const say = (week: string): string => {
    const day = dayOfIso(week);
    return day === null ? week : sayDay(serialOfDay(day));
  };
  return [
    ...(isNow ? [[monday, fill(words.thisWeek, { monday: say(monday) })] as const] : []),
    ...mondays.filter((each) => each !== monday).map((each) => [each, say(each)] as const),
  ];
}

interface Item {
  readonly element: HTMLElement;
  readonly button: HTMLButtonElement;
  show(task: Task): void;
}

function createItem(reveal: (cell: Area) => void): Item {
  const name = element('span', { class: 'line-name' });
  const done = element('span', { class: 'task-done' });
  const remark = element('span', { class: 'line-details' });
  const button = element('button', { type: 'button' }, name, ' ', done, ' ', remark);
  let cell: Area | null = null;
  button.addEventListener('click', () => {
    if (cell !== null) reveal(cell);
  });
  return {
    element: element('li', {}, button),
    button,
    show(task) {
      const { date, until, plot } = task;
      cell = task.cell;
      const days = until === '' || until === date ? date : fill(words.days, { date, until });
      const parts = [days, task.task, plot].filter((part) => part !== '');
      setText(name, parts.length === 0 ? words.nameless : parts.join(words.separator));
      setText(done, task.done === '' ? '' : fill(words.done, { done: task.done }));
      setText(remark, task.remark);
    },
  };
}
