/** What to look at in the Season sheet: its errors, named as its lines are. */
import { causesAmong, type Finding } from '../workbook/findFindings';
import { isCellError } from '../workbook/port';
import type { FormRead } from '../workbook/readForm';
import type { SheetTemplate } from '../workbook/template';
import { english } from '../texts/english';

/** The line that compares the year with the dates; its answer is a sentence, not an error. */
const yearCheck = 'YEAR_CHECK';

export function findInSeason(template: SheetTemplate, read: FormRead): Finding[] {
  const errors: Finding[] = [];
  const remarks: Finding[] = [];
  for (const { name, label } of template.form) {
    const value = read.values[name] ?? null;
    const area = read.areas[name];
    if (area === undefined) continue;
    const place = { row: read.sheet, header: label, area };
    if (isCellError(value)) errors.push({ ...place, kind: 'error', text: value.message ?? value.error });
    else if (name === yearCheck && value === english.sheets.season.yearDiffers) {
      remarks.push({ ...place, kind: 'remark', text: value });
    }
  }
  return [...causesAmong(errors), ...remarks];
}

/** What is found in the plots, without errors that say nothing of their own while the season has one that does. */
export function withoutFollowers(
  inPlots: readonly Finding[],
  inSeason: readonly Finding[],
): readonly Finding[] {
  if (!inSeason.some(({ kind }) => kind === 'error')) return inPlots;
  return inPlots.filter(({ kind, text }) => kind === 'remark' || !text.startsWith('#'));
}
