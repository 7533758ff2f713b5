/** The Homework sheet, a problem a row, and its key. The rows are put there by `makeHomework`. */
import type { Format, SheetTemplate, TableColumn } from '../workbook/template';
import { call, column, given, isBlank, when } from '../workbook/expressions';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { idInLanguage } from '../texts/language';

const words = catalogue.homework;
const { columns: headers } = words;

/** More than any of the problems' functions takes. */
export const argumentHeaders = [1, 2, 3, 4, 5, 6].map((position) =>
  fill(headers.argument.header, { position }),
);

const made = (
  { header, note }: { readonly header: string; readonly note: string },
  width: number,
  format: Format,
): TableColumn => ({ header, note, width, format, kind: 'made', compute: null, choices: [], unit: null });

const page = { landscape: true, pagesWide: 2, repeatFirstColumn: false } as const;
const answer = column(headers.answer.header);

export const homeworkTemplate: SheetTemplate = {
  id: idInLanguage('homework'),
  version: 1,
  sheet: words.sheet,
  title: words.title,
  lead: words.lead,
  cautions: [],
  form: [],
  optional: true,
  tables: [
    {
      name: 'Homework',
      heading: '',
      grows: true,
      rows: null,
      // Answer and Verdict are to be seen beside the pane in a window 1366 px wide.
      columns: [
        made(headers.position, 6, 'text'),
        { ...made(headers.problem, 44, 'text'), wraps: true },
        { ...made(headers.answer, 12, 'general'), kind: 'input' },
        {
          ...made(headers.verdict, 54, 'text'),
          wraps: true,
          kind: 'computed',
          compute: when(
            isBlank(answer),
            '',
            call(
              'CHECK.SLIP',
              answer,
              column(headers.function.header),
              ...argumentHeaders.map((header) => given(column(header))),
            ),
          ),
        },
        made(headers.steps, 60, 'text'),
        made(headers.function, 24, 'text'),
        ...argumentHeaders.map((header) => made({ header, note: headers.argument.note }, 13, 'general')),
      ],
    },
  ],
  page,
};

/** Values only, and no sheet of the plan: it is made for whoever marks. */
export const homeworkKeyTemplate: SheetTemplate = {
  id: idInLanguage('homework-key'),
  version: 1,
  sheet: words.keySheet,
  title: words.keyTitle,
  lead: words.keyLead,
  cautions: [],
  form: [],
  optional: true,
  tables: [
    {
      name: 'HomeworkKey',
      heading: '',
      grows: false,
      rows: null,
      columns: [
        made({ ...headers.position, note: '' }, 8, 'text'),
        made({ ...headers.problem, note: '' }, 96, 'text'),
        made(headers.rightAnswer, 16, 'general'),
      ],
    },
  ],
  page,
};
