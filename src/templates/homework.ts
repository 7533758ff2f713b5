/** The Homework sheet, a problem a row, and its key. The rows are put there by `makeHomework`. */
import type { SheetInfo } from '../workbook/port';
import type { Format, SheetTemplate, TableColumn } from '../workbook/template';
import { call, column, given, isBlank, when } from '../workbook/expressions';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { idInLanguage } from '../texts/language';

const words = catalogue.homework;
const { columns: headers } = words;

/** As many as any of the problems' functions takes. */
export const argumentHeaders = [1, 2, 3, 4, 5, 6, 7].map((position) =>
  fill(headers.argument.header, { position }),
);

const made = (
  { header, note }: { readonly header: string; readonly note: string },
  width: number,
  format: Format,
): TableColumn => ({ header, note, width, format, kind: 'made', compute: null, choices: [], unit: null });

/** Problems that ask a date, or a share, by their function; all others ask a plain number. */
const asking = {
  date: [
    'DATE.SETOUT',
    'DATE.STARTTRANSPLANTS',
    'DATE.HARDENOFF',
    'DATE.FIRSTSOWING',
    'DATE.LASTSOWING',
    'DATE.FIRSTPICK',
    'DATE.LASTPICK',
    'DATE.COVEROFF',
    'DATE.AFTERSPRAY',
    'DATE.AFTERMANURE',
    'FROST.SPRINGDATE',
    'FROST.FALLDATE',
    'HEAT.DATE',
  ],
  percentHundredth: [
    'STAND.COUNT',
    'SEED.CHANCE',
    'SEED.TEST',
    'FROST.CHANCE',
    'EMERGENCE.PERCENT',
    'FLOWER.FEMALESHARE',
    'FLOWER.SHARE',
    'FLOWER.NOPOLLENIZER',
  ],
} as const;

export const answerFormats: Readonly<Record<string, Format>> = Object.fromEntries(
  (['date', 'percentHundredth'] as const).flatMap((format) => asking[format].map((id) => [id, format])),
);

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
      rowsNamedBy: headers.function.header,
      rows: null,
      // Answer and Verdict are to be seen beside the pane in a window 1366 px wide.
      columns: [
        made(headers.position, 9, 'text'),
        { ...made(headers.problem, 44, 'text'), wraps: true },
        { ...made(headers.answer, 12, 'general'), kind: 'input', formats: answerFormats },
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

/** A second homework and those after it have a sheet and a table of their own. @param nth from 1 */
export function nthTemplate(template: SheetTemplate, nth: number): SheetTemplate {
  const suffix = nth === 1 ? '' : String(nth);
  const tables = template.tables.map((table) => ({ ...table, name: `${table.name}${suffix}` }));
  return { ...template, id: `${template.id}${suffix}`, tables };
}

/** The templates, and one for each homework after the first that is there. */
export function withLaterHomework(
  templates: readonly SheetTemplate[],
  sheets: readonly Pick<SheetInfo, 'mark'>[],
): readonly SheetTemplate[] {
  const { id } = homeworkTemplate;
  const later = sheets.flatMap(({ mark }) => {
    const nth = mark?.template.startsWith(id) === true ? Number(mark.template.slice(id.length)) : NaN;
    return nth > 1 ? [nthTemplate(homeworkTemplate, nth)] : [];
  });
  return [...templates, ...later];
}

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
      rowsNamedBy: headers.function.header,
      rows: null,
      columns: [
        made({ ...headers.position, note: '' }, 8, 'text'),
        made({ ...headers.problem, note: '' }, 96, 'text'),
        { ...made(headers.rightAnswer, 16, 'general'), formats: answerFormats },
        made({ ...headers.function, note: '' }, 24, 'text'),
      ],
    },
  ],
  page,
};
