/** The sheets of our templates. */
import { idInLanguage, language, languages } from '../texts/language';
import type { Mark } from '../workbook/port';
import type { SheetTemplate } from '../workbook/template';
import { budgetTemplate } from './budget';
import { byCropTemplate } from './byCrop';
import { calendarTemplate, weeksTemplate } from './calendar';
import { cropRangesTemplate, cropsTemplate } from './crops';
import { homeworkTemplate } from './homework';
import { plotsTemplate } from './plots';
import { pricesTemplate } from './prices';
import { seasonTemplate } from './season';
import { seedOrderTemplate } from './seedOrder';
import { weatherRecordTemplate, weatherTemplate } from './weather';

/** The sheets of every plan, in the order of the workbook's tabs. */
export const allTemplates: readonly SheetTemplate[] = [
  seasonTemplate,
  plotsTemplate,
  calendarTemplate,
  weeksTemplate,
  seedOrderTemplate,
  pricesTemplate,
  byCropTemplate,
  budgetTemplate,
  cropsTemplate,
  cropRangesTemplate,
];

/** Those and the sheets that are made when asked for. */
export const knownTemplates: readonly SheetTemplate[] = [
  ...allTemplates,
  weatherTemplate,
  weatherRecordTemplate,
  homeworkTemplate,
];

const idsElsewhere = new Set(
  languages
    .filter((other) => other !== language)
    .flatMap((other) => knownTemplates.map(({ id }) => idInLanguage(id.slice(id.indexOf('.') + 1), other))),
);

/** Whether sheets of ours are there in words of another language, which nothing here would find its way in. */
export function areInOtherLanguage(marks: readonly (Mark | null)[]): boolean {
  return marks.some((mark) => mark !== null && idsElsewhere.has(mark.template));
}

/** Stands before every function id in a formula, its dot included. */
export const functionNamespace = 'CUCURBIT.';
