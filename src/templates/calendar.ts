/** The Calendar and Weeks sheets: rows that `makeCalendar` puts there from Plots, and the bars that read them. */
import type {
  DatedColumn,
  Expression,
  Format,
  Shade,
  SheetTemplate,
  TableColumn,
  TableTemplate,
} from '../workbook/template';
import { allOf, column, input, isBlank, native, operate, when } from '../workbook/expressions';
import { catalogue } from '../texts/catalogue';
import { idInLanguage } from '../texts/language';
import { cropWidth } from './sayCrop';

const words = catalogue.calendar;
const { columns: headers, weeks } = words;

/** Serial 2 is a Monday. */
const mondayOf = (date: Expression): Expression =>
  operate(operate(7, '*', native('ROUNDUP', operate(operate(date, '-', 8), '/', 7), 0)), '+', 2);

type Headed = { readonly header: string; readonly note: string };

const made = ({ header, note }: Headed, width: number, format: Format = 'general'): TableColumn => ({
  header,
  note,
  width,
  format,
  kind: 'made',
  compute: null,
  choices: [],
  unit: null,
});

const date = column(headers.date.header);

export const calendarTable: TableTemplate = {
  name: 'Calendar',
  heading: '',
  grows: true,
  rows: null,
  columns: [
    made(headers.date, 12, 'date'),
    {
      ...made(headers.week, 12, 'date'),
      kind: 'computed',
      compute: when(native('ISNUMBER', date), mondayOf(date), ''),
    },
    made(headers.plot, 16, 'text'),
    made(headers.crop, cropWidth, 'text'),
    // With its turn: a task that is reckoned to need two lines makes its row twice as high.
    made(headers.task, 27, 'text'),
    made(headers.until, 12, 'date'),
    made(headers.remark, 66, 'text'),
    { ...made(headers.done, 8, 'text'), kind: 'input', choices: words.done },
    { ...made(headers.myNote, 30, 'text'), kind: 'input' },
  ],
};

export const calendarTemplate: SheetTemplate = {
  id: idInLanguage('calendar'),
  version: 1,
  sheet: words.sheet,
  title: words.title,
  lead: words.lead,
  report: { name: 'CALENDAR_WITHOUT', content: null },
  cautions: words.cautions,
  form: [],
  tables: [calendarTable],
  page: { landscape: true, pagesWide: 1, repeatFirstColumn: false },
};

const weekCount = 40;
const firstWeek = input('WEEKS_FROM');
const underCover = column(weeks.columns.underCover.header);
const inGround = column(weeks.columns.inGround.header);
const firstPick = column(weeks.columns.firstPick.header);
const lastPick = column(weeks.columns.lastPick.header);

const allStarts = [weeks.columns.underCover, weeks.columns.inGround].map(({ header }) =>
  allOf('Weeks', header),
);

/** Blank while there is no plot. */
const beginning = when(
  operate(native('COUNT', ...allStarts), '=', 0),
  '',
  mondayOf(native('MIN', ...allStarts)),
);
const mondayIn = (week: number): Expression => (week === 0 ? firstWeek : operate(firstWeek, '+', 7 * week));

/** By native functions that every program has and that depend on no language. */
const nameOfMonth = (date: Expression): Expression =>
  weeks.months.reduceRight<Expression>(
    (others, name, month) => when(operate(native('MONTH', date), '=', month + 1), name, others),
    { value: '' },
  );

/** The month stands where it is another than the week's before. */
const datesOf = (week: number): DatedColumn => {
  const monday = mondayIn(week);
  const isSame =
    week === 0
      ? { value: false }
      : operate(native('MONTH', monday), '=', native('MONTH', mondayIn(week - 1)));
  return {
    month: { compute: when(isBlank(firstWeek), '', when(isSame, '', nameOfMonth(monday))) },
    day: { compute: week === 0 ? beginning : when(isBlank(firstWeek), '', monday) },
    name: week === 0 ? 'WEEKS_FROM' : '',
  };
};

/** Plants without a first pick grow until frost; where that is not known only the week that they begin in. */
const nextDay = operate(inGround, '+', 1);
const frost = input('FIRST_FROST');
const growsUntil = when(
  isBlank(firstPick),
  when(native('ISNUMBER', frost), native('MAX', frost, nextDay), nextDay),
  firstPick,
);

/** The letter of a plot in a week: of two in one week the later. */
const letterIn = (week: number): Expression => {
  const monday = mondayIn(week);
  const next = mondayIn(week + 1);
  const { letters } = weeks;
  const isPicked = native(
    'AND',
    native('ISNUMBER', firstPick),
    operate(when(isBlank(lastPick), firstPick, lastPick), '>=', monday),
    operate(firstPick, '<', next),
  );
  const isGrowing = native('AND', operate(growsUntil, '>', monday), operate(inGround, '<', next));
  const isCovered = native(
    'AND',
    operate(inGround, '>=', next),
    native('ISNUMBER', underCover),
    operate(underCover, '<', next),
  );
  return when(
    isBlank(inGround),
    '',
    when(
      isPicked,
      letters.picking,
      when(isGrowing, letters.growing, when(isCovered, letters.underCover, '')),
    ),
  );
};

/** The later, the darker. */
const barShades: Readonly<Record<string, Shade>> = {
  [weeks.letters.underCover]: 'pale',
  [weeks.letters.growing]: 'middle',
  [weeks.letters.picking]: 'deep',
};

export const weeksTable: TableTemplate = {
  name: 'Weeks',
  heading: '',
  grows: false,
  rows: null,
  columns: [
    made(weeks.columns.plot, 14, 'text'),
    made(weeks.columns.crop, cropWidth - 2, 'text'),
    made(weeks.columns.underCover, 11, 'date'),
    made(weeks.columns.inGround, 11, 'date'),
    made(weeks.columns.firstPick, 11, 'date'),
    made(weeks.columns.lastPick, 11, 'date'),
    ...Array.from({ length: weekCount }, (_, week): TableColumn => ({
      ...made({ header: String(week + 1), note: '' }, 3.5),
      kind: 'computed',
      compute: letterIn(week),
      shades: barShades,
      dated: datesOf(week),
    })),
  ],
};

export const weeksTemplate: SheetTemplate = {
  id: idInLanguage('weeks'),
  version: 1,
  sheet: weeks.sheet,
  title: weeks.title,
  lead: weeks.lead,
  report: { name: 'WEEKS_WITHOUT', content: null },
  cautions: [],
  form: [],
  tables: [weeksTable],
  page: { landscape: true, pagesWide: 1, repeatFirstColumn: true },
};
